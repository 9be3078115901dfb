/// The place of the rows: the canvas, scrolled where a rescue is long, and the steps through it.
#pragma once

#include "app/window/rows/rows_canvas.h"

#include <QList>
#include <QScrollArea>

class QAction;

namespace afterbeat::window {

class RowsView final : public QScrollArea {
  Q_OBJECT

public:
  RowsView(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] RowsCanvas* canvas() const { return canvas_; }
  /// Next and previous pause, next and previous shock.
  [[nodiscard]] QList<QAction*> actions() const { return actions_; }

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  void addStep(const QString& text, const QKeySequence& key, bool shocks, bool forward);
  void step(bool shocks, bool forward);
  void reveal();

  Session& session_;
  Selection& selection_;
  RowsCanvas* canvas_;
  QList<QAction*> actions_;
};

} // namespace afterbeat::window
