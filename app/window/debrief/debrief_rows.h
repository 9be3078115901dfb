/// The rows of the whole rescue for a group to look at: with the moment that is spoken of, the
/// cursor of the replay, and without the words of people unless they are wanted.
#pragma once

#include "app/papers/rows.h"
#include "app/window/look/look.h"
#include "app/window/rows/rows_scroll.h"

#include <memory>
#include <optional>

namespace afterbeat::window {

class Selection;
class Session;

class DebriefRowsCanvas final : public QWidget {
  Q_OBJECT

public:
  DebriefRowsCanvas(Session& session, Selection& selection, QWidget* parent = nullptr);
  void setViewHeight(int height);
  /// Made anew from the record and its figures; `wordsShown`: with the words people wrote into it.
  void refresh(bool wordsShown);
  /// The stretch that is spoken of.
  void setMoment(std::optional<Interval> moment);
  [[nodiscard]] const papers::RowsOverlay& overlay() const { return overlay_; }
  /// More than this it cannot use.
  [[nodiscard]] int mostHeight() const;
  /// The band of the row that holds a moment: the first or the last one's for a moment before or
  /// after all rows; empty without rows.
  [[nodiscard]] QRectF bandHolding(Time t) const;
  [[nodiscard]] const papers::RowsPicture* picture() const { return picture_.get(); }

signals:
  /// The reader pointed at a moment.
  void pointedAt(afterbeat::Time t);

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void layOut();
  void updateRow(std::optional<Time> t);
  [[nodiscard]] QRectF area() const;

  Session& session_;
  Selection& selection_;
  std::unique_ptr<papers::RowsPicture> picture_;
  papers::RowsOverlay overlay_;
  Look look_;
  int viewHeight_ = 0;
  bool fit_ = false;
};

class DebriefRows final : public RowsScroll {
  Q_OBJECT

public:
  DebriefRows(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] DebriefRowsCanvas* canvas() const { return canvas_; }
  void reveal(Time t);

private:
  DebriefRowsCanvas* canvas_;
};

} // namespace afterbeat::window
