#include "app/window/handover/sheet_preview.h"

#include "app/papers/sheet_content.h"
#include "app/window/look/look.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr int kMargin = 14;
constexpr int kLargestZoom = 6;
constexpr double kStep = 1.25;
/// More than this is enlarged from fewer: a page of this size is sharper than a printer's.
constexpr double kMostPixels = 24e6;

std::shared_ptr<const papers::HandoverSheet> setSheet(const SheetSource& source) {
  return std::make_shared<const papers::HandoverSheet>(
      papers::layOutHandoverSheet(*source.record, *source.figures, source.options));
}

QImage paintedSheet(const papers::HandoverSheet& sheet, QSizeF pixels) {
  const double most = std::sqrt(kMostPixels / std::max(1.0, pixels.width() * pixels.height()));
  pixels *= std::min(1.0, most);
  QImage image(pixels.toSize().expandedTo(QSize(1, 1)), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(image.width() / sheet.page.size.width(), image.height() / sheet.page.size.height());
  papers::paintSheet(painter, sheet.page, sheet.rows);
  return image;
}

} // namespace

SheetPreview::SheetPreview(QWidget* parent) : QAbstractScrollArea(parent) {
  setAccessibleName(tr("Handover sheet as it will be printed"));
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::StrongFocus);
  viewport()->setBackgroundRole(QPalette::Mid);
  pool_.setMaxThreadCount(1);
}

SheetPreview::~SheetPreview() {
  pool_.waitForDone();
}

void SheetPreview::showSheet(const std::optional<SheetSource>& sheet) {
  source_ = sheet;
  stale_ = true;
  if (!sheet) {
    sheet_.reset();
    image_ = {};
    leftToPen_.clear();
    viewport()->update();
  }
  request();
}

void SheetPreview::setZoom(int step) {
  zoom_ = std::clamp(step, 0, kLargestZoom);
  adjustBars();
  request();
  viewport()->update();
}

QString SheetPreview::text() const {
  return sheet_ ? sheet_->page.asText() : QString();
}

QSizeF SheetPreview::pageSize() const {
  return QPageSize(source_ ? source_->options.paper : QPageSize::A4).size(QPageSize::Point);
}

double SheetPreview::pixelsPerPoint() const {
  const QSizeF room = maximumViewportSize() - QSize(2 * kMargin, 2 * kMargin);
  const QSizeF page = pageSize();
  const double whole = std::min(room.width() / page.width(), room.height() / page.height());
  return std::max(0.1, whole) * std::pow(kStep, zoom_);
}

QRectF SheetPreview::pageRect() const {
  const QSizeF size = pageSize() * pixelsPerPoint();
  const QSizeF room = viewport()->size();
  const double left = std::max<double>(kMargin, (room.width() - size.width()) / 2);
  const double top = std::max<double>(kMargin, (room.height() - size.height()) / 2);
  // On whole pixels of the device, so that the picture is shown as it was drawn.
  const double ratio = devicePixelRatioF();
  const auto whole = [ratio](double place) { return std::round(place * ratio) / ratio; };
  return QRectF(QPointF(whole(left - horizontalScrollBar()->value()),
                        whole(top - verticalScrollBar()->value())),
                size);
}

void SheetPreview::adjustBars() {
  const QSizeF size = pageSize() * pixelsPerPoint();
  const auto set = [](QScrollBar* bar, double whole, int room) {
    bar->setRange(0, std::max(0, static_cast<int>(std::ceil(whole)) + 2 * kMargin - room));
    bar->setPageStep(room);
    bar->setSingleStep(40);
  };
  set(horizontalScrollBar(), zoom_ == 0 ? 0 : size.width(), viewport()->width());
  set(verticalScrollBar(), zoom_ == 0 ? 0 : size.height(), viewport()->height());
}

/// One picture at a time; whatever is asked for meanwhile is drawn once, afterwards.
void SheetPreview::request() {
  asked_ = source_.has_value();
  if (busy_ || !asked_ || !isVisible()) {
    return;
  }
  asked_ = false;
  busy_ = true;
  const QSizeF pixels = pageSize() * pixelsPerPoint() * devicePixelRatioF();
  const auto known = stale_ ? nullptr : sheet_;
  stale_ = false;
  pool_.start([this, source = *source_, known, pixels, pen = leftToPen_, say = words()] {
    Drawn drawn{known, pen, {}};
    if (!known) {
      drawn.sheet = setSheet(source);
      drawn.leftToPen = papers::leftToPen(
          papers::makeSheetContent(*source.record, *source.figures, source.options, say));
    }
    drawn.image = paintedSheet(*drawn.sheet, pixels);
    QMetaObject::invokeMethod(
        this, [this, drawn] { take(drawn); }, Qt::QueuedConnection);
  });
}

void SheetPreview::take(const Drawn& made) {
  busy_ = false;
  if (source_) {
    sheet_ = made.sheet;
    leftToPen_ = made.leftToPen;
    image_ = made.image;
    setAccessibleDescription(text());
    viewport()->update();
  }
  if (asked_) {
    request();
  }
  emit drawn();
}

void SheetPreview::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(viewport());
  painter.fillRect(viewport()->rect(), palette().color(QPalette::Window));
  if (!source_) {
    return;
  }
  const QRectF page = pageRect();
  if (image_.size() == (page.size() * devicePixelRatioF()).toSize()) {
    image_.setDevicePixelRatio(devicePixelRatioF());
    painter.drawImage(page.topLeft(), image_);
  } else {
    painter.fillRect(page, Qt::white);
    painter.drawImage(page, image_);
  }
  painter.setPen(palette().color(QPalette::Mid));
  painter.drawRect(page.adjusted(-1, -1, 0, 0));
}

void SheetPreview::resizeEvent(QResizeEvent* event) {
  QAbstractScrollArea::resizeEvent(event);
  adjustBars();
  request();
}

bool SheetPreview::viewportEvent(QEvent* event) {
  if (event->type() == QEvent::Show || event->type() == QEvent::ScreenChangeInternal) {
    request();
  }
  return QAbstractScrollArea::viewportEvent(event);
}

/// Plus and minus belong to the sheet while it has the keyboard, not to the waves' menu.
bool SheetPreview::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    const auto* pressed = static_cast<QKeyEvent*>(event);
    const int key = pressed->key();
    const bool plain = (pressed->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0;
    if (plain &&
        (key == Qt::Key_Plus || key == Qt::Key_Equal || key == Qt::Key_Minus || key == Qt::Key_0)) {
      event->accept();
      return true;
    }
  }
  return QAbstractScrollArea::event(event);
}

void SheetPreview::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
  case Qt::Key_Plus:
  case Qt::Key_Equal:
    setZoom(zoom_ + 1);
    break;
  case Qt::Key_Minus:
    setZoom(zoom_ - 1);
    break;
  case Qt::Key_0:
    setZoom(0);
    break;
  default:
    QAbstractScrollArea::keyPressEvent(event);
  }
}

void SheetPreview::wheelEvent(QWheelEvent* event) {
  if (!event->modifiers().testFlag(Qt::ControlModifier)) {
    QAbstractScrollArea::wheelEvent(event);
    return;
  }
  setZoom(zoom_ + (event->angleDelta().y() > 0 ? 1 : -1));
  event->accept();
}

} // namespace afterbeat::window
