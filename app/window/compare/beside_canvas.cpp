#include "app/window/compare/beside_canvas.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr int kMargin = 12;

} // namespace

BesideCanvas::BesideCanvas(QWidget* parent) : QWidget(parent) {
  describePictures();
  setFocusPolicy(Qt::StrongFocus);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Base);
  setAccessibleName(tr("Rows of the records under each other"));
}

void BesideCanvas::show(BesideOrder order) {
  order_ = std::move(order);
  current_ = -1;
  layOut();
}

void BesideCanvas::layOut() {
  if (order_.records.empty()) {
    picture_ = {};
  } else {
    picture_ =
        BesidePicture(order_, std::max(200, width() - 2 * kMargin), Look::of(palette(), font()));
  }
  setFixedHeight(std::max(1, static_cast<int>(std::ceil(picture_.height())) + 2 * kMargin));
  update();
}

QSize BesideCanvas::sizeHint() const {
  return {600, static_cast<int>(picture_.height()) + 2 * kMargin};
}

QRectF BesideCanvas::currentBox() const {
  const auto rows = picture_.rows();
  return current_ >= 0 && current_ < static_cast<int>(rows.size())
             ? rows[static_cast<std::size_t>(current_)]->box.translated(kMargin, kMargin)
             : QRectF();
}

QRectF BesideCanvas::alignedBox() const {
  const QRectF place = picture_.alignedPlace();
  return place.isEmpty() ? place : place.translated(kMargin, kMargin);
}

void BesideCanvas::setCurrent(int row) {
  const int count = static_cast<int>(picture_.rows().size());
  current_ = count == 0 ? -1 : std::clamp(row, 0, count - 1);
  update();
  if (current_ < 0) {
    return;
  }
  emit moved(currentBox());
  setAccessibleDescription(picture_.rowText(*picture_.rows()[static_cast<std::size_t>(current_)]));
  QAccessibleEvent told(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&told);
}

QString BesideCanvas::spokenDescription() const {
  const auto rows = picture_.rows();
  return current_ >= 0 && current_ < static_cast<int>(rows.size())
             ? picture_.rowText(*rows[static_cast<std::size_t>(current_)])
             : picture_.asText();
}

int BesideCanvas::indexAt(const QPointF& point) const {
  const auto rows = picture_.rows();
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const BesideRow* row) {
    return row->box.contains(point - QPointF(kMargin, kMargin));
  });
  return found == rows.end() ? -1 : static_cast<int>(found - rows.begin());
}

bool BesideCanvas::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const int at = indexAt(help->pos());
    if (at >= 0) {
      QToolTip::showText(help->globalPos(),
                         picture_.rowText(*picture_.rows()[static_cast<std::size_t>(at)]), this);
    } else {
      QToolTip::hideText();
    }
    return true;
  }
  return QWidget::event(event);
}

void BesideCanvas::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRect(event->rect());
  painter.translate(kMargin, kMargin);
  const QRectF shown = QRectF(event->rect()).translated(-kMargin, -kMargin);
  painter.save();
  picture_.paint(painter, shown);
  painter.restore();
  if (hasFocus() && current_ >= 0) {
    const Look look = Look::of(palette(), font());
    painter.setPen(QPen(look.accent, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(currentBox().translated(-kMargin, -kMargin).adjusted(-4, 0, 4, 0));
  }
}

void BesideCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) {
    layOut();
  }
}

void BesideCanvas::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    layOut();
  }
}

void BesideCanvas::keyPressEvent(QKeyEvent* event) {
  const int last = static_cast<int>(picture_.rows().size()) - 1;
  switch (event->key()) {
  case Qt::Key_Down:
    setCurrent(current_ + 1);
    return;
  case Qt::Key_Up:
    setCurrent(current_ - 1);
    return;
  case Qt::Key_Home:
    setCurrent(0);
    return;
  case Qt::Key_End:
    setCurrent(last);
    return;
  case Qt::Key_Return:
  case Qt::Key_Enter:
    if (current_ >= 0 && current_ <= last) {
      emit wanted(picture_.rows()[static_cast<std::size_t>(current_)]->record);
    }
    return;
  default:
    QWidget::keyPressEvent(event);
  }
}

void BesideCanvas::mousePressEvent(QMouseEvent* event) {
  const int at = indexAt(event->position());
  if (at >= 0) {
    setCurrent(at);
  }
}

void BesideCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
  const int at = indexAt(event->position());
  if (at >= 0) {
    emit wanted(picture_.rows()[static_cast<std::size_t>(at)]->record);
  }
}

void BesideCanvas::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  if (current_ < 0) {
    setCurrent(0);
  }
  update();
}

void BesideCanvas::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

} // namespace afterbeat::window
