/// The place of the rows: the canvas, scrolled where a rescue is long.
#pragma once

#include "app/window/rows/rows_canvas.h"
#include "app/window/rows/rows_scroll.h"

namespace afterbeat::window {

class RowsView final : public RowsScroll {
  Q_OBJECT

public:
  RowsView(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] RowsCanvas* canvas() const { return canvas_; }

private:
  RowsCanvas* canvas_;
};

} // namespace afterbeat::window
