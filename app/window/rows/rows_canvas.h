/// The rows of the whole rescue, to look at and to point into.
#pragma once

#include "app/papers/rows.h"
#include "app/window/look/look.h"

#include <QWidget>

#include <memory>

namespace afterbeat::window {

class Selection;
class Session;

/// Paints with the painter that paper uses, chooses the height of a row so that the whole rescue
/// fits where it can, and turns pointing and keys into a selected stretch.
class RowsCanvas final : public QWidget {
  Q_OBJECT

public:
  RowsCanvas(Session& session, Selection& selection, QWidget* parent = nullptr);
  /// The height that is in view; rows shrink, down to a limit, to fit into it.
  void setViewHeight(int height);
  [[nodiscard]] QSize sizeHint() const override;
  /// The band of the row that holds a moment, in this widget's coordinates; empty if none does.
  [[nodiscard]] QRectF bandHolding(Time t) const;
  [[nodiscard]] const papers::RowsOverlay& overlay() const { return overlay_; }

signals:
  /// Everything of the present record was painted.
  void painted();
  /// The reader moved the selection by a key.
  void movedByKey();

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void refresh();
  void updateOverlay();
  void layOut();
  void restyle();
  [[nodiscard]] QRectF area() const;
  [[nodiscard]] Duration secondsOf(double pixels) const;

  Session& session_;
  Selection& selection_;
  std::unique_ptr<papers::RowsPicture> picture_;
  papers::RowsOverlay overlay_;
  Look look_;
  int viewHeight_ = 0;
  /// All rows are shown at once, with fewer words.
  bool squeezed_ = false;
};

} // namespace afterbeat::window
