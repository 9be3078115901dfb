#include "app/window/compare/chart_canvas.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace afterbeat::window {

namespace {

constexpr int kMargin = 12;
constexpr double kReach = 8;

} // namespace

papers::ChartLook ChartCanvas::lookFor(const QPalette& palette, const QFont& font) {
  papers::ChartLook look =
      isDark(palette) ? papers::ChartLook::screenDark() : papers::ChartLook::screenLight();
  look.font = font;
  look.paper = Look::of(palette, font).paper;
  // The window shows them as text beside the chart.
  look.sentences = false;
  return look;
}

ChartCanvas::ChartCanvas(QWidget* parent) : QWidget(parent) {
  describePictures();
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Base);
  setAccessibleName(tr("Chart"));
}

void ChartCanvas::show(std::shared_ptr<const papers::Chart> chart) {
  chart_ = std::move(chart);
  current_.reset();
  pressed_.reset();
  pointed_.clear();
  order_.clear();
  setAccessibleName(chart_ ? chart_->title : tr("Chart"));
  layOut();
  emit currentChanged();
}

void ChartCanvas::layOut() {
  placed_.reset();
  // This may make the canvas higher at once.
  askForHeight();
  const QRectF area = QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin);
  if (chart_ && area.width() > 50 && area.height() > 50) {
    placed_ = std::make_unique<papers::ChartPlaced>(chart_, area, lookFor(palette(), font()));
  }
  repaintAll();
}

void ChartCanvas::repaintAll() {
  kept_ = {};
  update();
}

/// Lanes that are too low hide each other's names.
void ChartCanvas::askForHeight() {
  const double across = width() - 2.0 * kMargin, room = room_ - 2.0 * kMargin;
  const papers::ChartLook look = lookFor(palette(), font());
  const bool higher = chart_ && chart_->lanes() && across > 50 &&
                      papers::tightChartHeight(*chart_, across, look) > room;
  setMinimumHeight(
      higher ? static_cast<int>(std::ceil(papers::leastChartHeight(*chart_, across, look))) +
                   2 * kMargin
             : 0);
}

void ChartCanvas::setRoom(int height) {
  room_ = height;
  askForHeight();
  repaintAll();
}

int ChartCanvas::axisRaised() const {
  const QRect seen = visibleRegion().boundingRect();
  if (!placed_ || seen.isEmpty() || height() <= room_) {
    return 0;
  }
  return std::max(0, placed_->axis().toAlignedRect().bottom() - seen.bottom());
}

QRect ChartCanvas::raisedAxis() const {
  const int by = axisRaised();
  return by > 0 ? placed_->axis().toAlignedRect().translated(0, -by) : QRect();
}

std::vector<papers::ChartHit> ChartCanvas::under(const QPointF& place) const {
  return placed_ && !raisedAxis().contains(place.toPoint()) ? placed_->at(place, kReach)
                                                            : std::vector<papers::ChartHit>();
}

bool ChartCanvas::bars() const {
  return chart_ && chart_->points.empty() && !chart_->bars.empty();
}

std::size_t ChartCanvas::count() const {
  return !chart_ ? 0 : bars() ? chart_->bars.size() : chart_->points.size();
}

std::optional<papers::ChartHit> ChartCanvas::hit(std::size_t index) const {
  if (!placed_) {
    return std::nullopt;
  }
  return bars() ? placed_->bar(index) : placed_->point(index);
}

std::optional<QPointF> ChartCanvas::placeOf(std::size_t index) const {
  const auto there = hit(index);
  return there ? std::optional<QPointF>(there->at) : std::nullopt;
}

const std::vector<std::size_t>& ChartCanvas::order() const {
  if (order_.size() != count()) {
    order_.resize(count());
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    if (!bars()) {
      const bool lanes = chart_->lanes();
      std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
        const papers::ChartPoint &one = chart_->points[a], &other = chart_->points[b];
        return lanes && one.y != other.y ? one.y < other.y : one.x < other.x;
      });
    }
  }
  return order_;
}

void ChartCanvas::setCurrent(std::size_t index) {
  if (index >= count()) {
    return;
  }
  current_ = index;
  const auto there = hit(index);
  setAccessibleDescription(there ? wordsFor(*there) : QString());
  QAccessibleEvent told(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&told);
  if (there && hasFocus()) {
    QToolTip::showText(mapToGlobal(there->at.toPoint() + QPoint(12, 12)), wordsFor(*there), this);
  }
  update();
  emit currentChanged();
}

void ChartCanvas::step(int by) {
  const auto& all = order();
  if (all.empty()) {
    return;
  }
  if (!current_) {
    setCurrent(by > 0 ? all.front() : all.back());
    return;
  }
  const auto at = std::find(all.begin(), all.end(), *current_) - all.begin();
  const auto next = std::clamp<std::ptrdiff_t>(at + by, 0, std::ssize(all) - 1);
  setCurrent(all[static_cast<std::size_t>(next)]);
}

/// To the nearest point of the next lane; along a chart without lanes, a tenth of its points.
void ChartCanvas::jump(int direction) {
  if (bars() || !current_) {
    step(direction);
    return;
  }
  if (!chart_->lanes()) {
    step(direction * std::max(1, static_cast<int>(count()) / 10));
    return;
  }
  const papers::ChartPoint& here = chart_->points[*current_];
  std::optional<std::size_t> best;
  const auto away = [&](std::size_t i) {
    const papers::ChartPoint& point = chart_->points[i];
    return std::pair(std::abs(point.y - here.y), std::abs(point.x - here.x));
  };
  for (std::size_t i = 0; i < count(); ++i) {
    const bool beyond = direction > 0 ? chart_->points[i].y > here.y : chart_->points[i].y < here.y;
    if (beyond && (!best || away(i) < away(*best))) {
      best = i;
    }
  }
  if (best) {
    setCurrent(*best);
  }
}

QString ChartCanvas::wordsFor(const papers::ChartHit& hit) const {
  QStringList parts;
  const auto record = placed_->record(hit);
  if (record && names_) {
    parts << names_(*record);
  }
  if (hit.bar) {
    const papers::ChartBar& bar = chart_->bars[hit.index];
    parts << bar.label;
  } else {
    const papers::ChartPoint& point = chart_->points[hit.index];
    if (!chart_->lanes()) {
      parts << papers::valueText(chart_->words, chart_->x, point.x)
            << papers::valueText(chart_->words, chart_->y, point.y);
    } else {
      parts << chart_->y.names.value(static_cast<qsizetype>(point.y))
            << papers::valueText(chart_->words, chart_->x, point.x);
    }
    if (point.count > 1) {
      parts << tr("%1 records").arg(point.count);
    }
  }
  parts.removeAll(QString());
  return parts.join(QStringLiteral(", "));
}

QString ChartCanvas::spokenDescription() const {
  if (!chart_) {
    return {};
  }
  const auto there = current_ ? hit(*current_) : std::nullopt;
  return there ? wordsFor(*there) : papers::asText(*chart_);
}

bool ChartCanvas::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    if (pointed_.empty()) {
      QToolTip::hideText();
    } else {
      QString text = wordsFor(pointed_.front());
      if (pointed_.size() > 1) {
        text += QLatin1Char('\n') + tr("and %1 more here").arg(pointed_.size() - 1);
      }
      QToolTip::showText(help->globalPos(), text, this);
    }
    return true;
  }
  return QWidget::event(event);
}

QPixmap ChartCanvas::painted(const QRect& part) const {
  const double ratio = devicePixelRatioF();
  QPixmap picture(part.size() * ratio);
  picture.setDevicePixelRatio(ratio);
  picture.fill(lookFor(palette(), font()).paper);
  QPainter inside(&picture);
  inside.setRenderHint(QPainter::Antialiasing);
  inside.translate(-part.topLeft());
  placed_->paint(inside);
  return picture;
}

void ChartCanvas::keep(const QRect& part) {
  keptOf_ = part;
  kept_ = painted(part);
  if (const int by = axisRaised(); by > 0) {
    const QRect axis = placed_->axis().toAlignedRect();
    QPainter over(&kept_);
    over.drawPixmap(axis.topLeft() - QPoint(0, by) - part.topLeft(), painted(axis));
  }
}

void ChartCanvas::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  if (!placed_) {
    return;
  }
  if (kept_.isNull() || !keptOf_.contains(event->rect())) {
    keep(event->rect() | visibleRegion().boundingRect());
  }
  painter.drawPixmap(keptOf_.topLeft(), kept_);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRegion(QRegion(rect()) - raisedAxis());
  std::vector<papers::ChartHit> lit;
  if (!pointed_.empty()) {
    lit.push_back(pointed_.front());
  }
  // Without the focus as well: a dialog that asks about this point takes it away.
  if (const auto there = current_ ? hit(*current_) : std::nullopt) {
    lit.push_back(*there);
  }
  placed_->paintHighlight(painter, lit);
  painter.setClipping(false);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Look::of(palette(), font()).accent, 1));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  }
}

void ChartCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layOut();
}

/// Scrolled.
void ChartCanvas::moveEvent(QMoveEvent* event) {
  QWidget::moveEvent(event);
  repaintAll();
}

void ChartCanvas::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    layOut();
  }
}

void ChartCanvas::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
  case Qt::Key_Right:
    step(1);
    return;
  case Qt::Key_Left:
    step(-1);
    return;
  case Qt::Key_Down:
    jump(1);
    return;
  case Qt::Key_Up:
    jump(-1);
    return;
  case Qt::Key_Home:
    if (count() > 0) {
      setCurrent(order().front());
    }
    return;
  case Qt::Key_End:
    if (count() > 0) {
      setCurrent(order().back());
    }
    return;
  case Qt::Key_Return:
  case Qt::Key_Enter:
    if (const auto there = current_ ? hit(*current_) : std::nullopt) {
      if (const auto record = placed_->record(*there)) {
        emit wanted(*record);
      }
    }
    return;
  default:
    QWidget::keyPressEvent(event);
  }
}

void ChartCanvas::mouseMoveEvent(QMouseEvent* event) {
  pointed_ = under(event->position());
  setCursor(pointed_.empty() ? Qt::ArrowCursor : Qt::PointingHandCursor);
  update();
}

void ChartCanvas::mousePressEvent(QMouseEvent* event) {
  pointed_ = under(event->position());
  pressed_.reset();
  if (!pointed_.empty() && event->button() == Qt::LeftButton) {
    pressed_ = pointed_.front().index;
    setCurrent(*pressed_);
  }
}

/// Opens where the button went down and came up over the same thing.
void ChartCanvas::mouseReleaseEvent(QMouseEvent* event) {
  const auto now = under(event->position());
  if (pressed_ && !now.empty() && now.front().index == *pressed_) {
    if (const auto record = placed_->record(now.front())) {
      emit wanted(*record);
    }
  }
  pressed_.reset();
}

void ChartCanvas::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  pointed_.clear();
  update();
}

void ChartCanvas::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void ChartCanvas::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

} // namespace afterbeat::window
