/// The place of the rows: the canvas, scrolled where a rescue is long.
#pragma once

#include "app/window/rows/rows_canvas.h"

#include <QScrollArea>

namespace afterbeat::window {

class RowsView final : public QScrollArea {
  Q_OBJECT

public:
  RowsView(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] RowsCanvas* canvas() const { return canvas_; }

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  void reveal();

  Selection& selection_;
  RowsCanvas* canvas_;
};

} // namespace afterbeat::window
