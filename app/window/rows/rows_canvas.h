/// The rows of the whole rescue, to look at and to point into.
#pragma once

#include "app/papers/rows.h"
#include "app/window/look/look.h"

#include <QPixmap>
#include <QWidget>

#include <memory>
#include <optional>

namespace afterbeat::window {

class Selection;
class Session;

/// Paints with the painter that paper uses, chooses the height of a row so that the whole rescue
/// fits where it can, and turns pointing and keys into a selected stretch.
///
/// The rows in view are painted once and kept; a frame of selecting or pointing paints only what
/// lies over them. Readers of the screen find one child for each row, with its text.
class RowsCanvas final : public QWidget {
  Q_OBJECT

public:
  RowsCanvas(Session& session, Selection& selection, QWidget* parent = nullptr);
  /// The height that is in view; rows shrink, down to a limit, to fit into it.
  void setViewHeight(int height);
  /// The least height of a view this wide in which the whole rescue is seen at once.
  [[nodiscard]] int leastHeight(int viewWidth) const;
  /// More than this the rows cannot use.
  [[nodiscard]] int mostHeight(int viewWidth) const;
  [[nodiscard]] QSize sizeHint() const override;
  /// The band of the row that holds a moment, in this widget's coordinates: the first or the last
  /// one's for a moment before or after all rows; empty without rows.
  [[nodiscard]] QRectF bandHolding(Time t) const;
  [[nodiscard]] const papers::RowsOverlay& overlay() const { return overlay_; }

  [[nodiscard]] int rowCount() const;
  /// Everything the rows show, in words.
  [[nodiscard]] QString asText() const;
  /// What a row says, and where it is in this widget.
  [[nodiscard]] QString rowText(int index) const;
  [[nodiscard]] QRect rowRect(int index) const;
  /// The row that holds the middle of the selected stretch; -1: none.
  [[nodiscard]] int currentRow() const;
  /// What lies under a point, in words; empty outside the rows.
  [[nodiscard]] QString wordsAt(const QPointF& point) const;
  /// Selects the middle of a row.
  void selectRow(int index);

signals:
  /// Everything of the present record was painted.
  void painted();
  /// The reader moved the selection by a key.
  void movedByKey();
  /// The reader wants to see the waves of what is selected.
  void wavesAsked();

protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void refresh();
  void updateWorking();
  void updateOverlay();
  void layOut();
  void restyle();
  void forgetPlaces();
  void keepRows(const QRect& shown);
  void announceRow();
  [[nodiscard]] QRectF area() const;
  /// Where everything lies; null without a record.
  [[nodiscard]] const papers::RowsPlaced* placed() const;
  [[nodiscard]] Duration secondsOf(double pixels) const;
  /// The moment under a point, or the nearest in its row for a drag that leaves it.
  [[nodiscard]] std::optional<Time> dragTime(const QPointF& point) const;

  Session& session_;
  Selection& selection_;
  std::shared_ptr<const papers::RowsPicture> picture_;
  mutable std::unique_ptr<papers::RowsPlaced> placed_;
  papers::RowsOverlay overlay_;
  Look look_;
  int viewHeight_ = 0;
  /// All rows are shown at once, with fewer words.
  bool squeezed_ = false;
  /// The rows of a part of this widget as painted, with the part's place.
  QPixmap kept_;
  QRect keptPlace_;
  /// Where the button went down, and whether the pointer has moved far enough since.
  std::optional<Time> pressedAt_;
  QPointF pressedPoint_;
  bool dragging_ = false;
  int announcedRow_ = -1;
};

/// Lets readers of the screen see the rows; called once before the first canvas.
void installRowsAccessibility();

} // namespace afterbeat::window
