#include "app/window/rows/rows_view.h"

#include "app/window/session/selection.h"

#include <QResizeEvent>
#include <QScrollBar>

namespace afterbeat::window {

RowsView::RowsView(Session& session, Selection& selection, QWidget* parent)
    : QScrollArea(parent), selection_(selection), canvas_(new RowsCanvas(session, selection)) {
  setWidget(canvas_);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setAccessibleName(tr("Rows"));
  connect(&selection_, &Selection::stretchChanged, this, &RowsView::reveal);
}

void RowsView::reveal() {
  const Interval& stretch = selection_.stretch();
  const QRectF band = canvas_->bandHolding(stretch.begin + stretch.length() / 2);
  if (!band.isEmpty()) {
    ensureVisible(width() / 2, static_cast<int>(band.center().y()), 0,
                  static_cast<int>(band.height()));
  }
}

void RowsView::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  canvas_->setViewHeight(viewport()->height());
}

} // namespace afterbeat::window
