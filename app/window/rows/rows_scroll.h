/// Rows in a view that scrolls down where a rescue is long.
#pragma once

#include "app/papers/rows.h"

#include <QScrollArea>

#include <functional>

namespace afterbeat::window {

/// Holds a canvas of rows and brings a row into view.
class RowsScroll : public QScrollArea {
  Q_OBJECT

public:
  /// Takes over the canvas.
  explicit RowsScroll(QWidget* canvas, QWidget* parent = nullptr);
  /// Scrolls to a row's band; an empty one moves nothing.
  void revealBand(const QRectF& band);
  /// The band that stays in view when rows get another size.
  void setKept(std::function<QRectF()> band) { kept_ = std::move(band); }

signals:
  /// The height in view changed.
  void viewHeightChanged(int height);

protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  std::function<QRectF()> kept_;
};

/// A stretch without the few pixels of it at the end of one row or the begin of another, which
/// would be seen as a mark of their own.
[[nodiscard]] Interval withoutSlivers(const papers::RowsPicture& picture, Interval stretch);

/// The height of a row, from `least` to `most`, with which rows and legend fill `room` at this
/// width as far as they can.
[[nodiscard]] double rowHeightFor(const papers::RowsPicture& picture, const papers::RowsLook& look,
                                  double width, double room, double least, double most);

} // namespace afterbeat::window
