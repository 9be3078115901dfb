#include "app/window/rows/rows_view.h"

#include "app/window/session/selection.h"

namespace afterbeat::window {

RowsView::RowsView(Session& session, Selection& selection, QWidget* parent)
    : RowsScroll(new RowsCanvas(session, selection), parent),
      canvas_(static_cast<RowsCanvas*>(widget())) {
  connect(this, &RowsScroll::viewHeightChanged, canvas_, &RowsCanvas::setViewHeight);
  const auto chosen = [this, &selection] {
    const Interval& stretch = selection.stretch();
    return canvas_->bandHolding(stretch.begin + stretch.length() / 2);
  };
  setKept(chosen);
  connect(&selection, &Selection::stretchChanged, this, [this, chosen] { revealBand(chosen()); });
}

} // namespace afterbeat::window
