/// The rows of several records under each other, to look at and to walk through by keys.
#pragma once

#include "app/window/compare/beside_picture.h"
#include "app/window/look/pictures_for_ears.h"

#include <QWidget>

namespace afterbeat::window {

/// Arrows go from row to row; Enter, or a double click, opens the row's record.
class BesideCanvas final : public QWidget, public Described {
  Q_OBJECT

public:
  explicit BesideCanvas(QWidget* parent = nullptr);
  void show(BesideOrder order);
  [[nodiscard]] const BesidePicture& picture() const { return picture_; }
  /// The row that the keyboard is at; -1: none.
  [[nodiscard]] int current() const { return current_; }
  [[nodiscard]] QRectF currentBox() const;
  void setCurrent(int row);
  /// The rows that hold the moment aligned at; empty: none do.
  [[nodiscard]] QRectF alignedBox() const;
  [[nodiscard]] QString spokenDescription() const override;
  [[nodiscard]] QSize sizeHint() const override;

signals:
  /// The keyboard moved to another row, which should come into view.
  void moved(const QRectF& box);
  void wanted(std::size_t record);

protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void layOut();
  [[nodiscard]] int indexAt(const QPointF& point) const;

  BesideOrder order_;
  BesidePicture picture_;
  int current_ = -1;
};

} // namespace afterbeat::window
