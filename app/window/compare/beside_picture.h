/// Rows of several records under each other, aligned at one moment: the same two minutes of all,
/// then the next two.
#pragma once

#include "app/window/compare/beside_load.h"
#include "app/window/look/look.h"

#include <QCoreApplication>
#include <QRectF>

#include <memory>
#include <optional>
#include <vector>

namespace afterbeat::window {

/// What the picture is made of.
struct BesideOrder {
  std::vector<BesideRecord> records;
  SideBySide compared;
  Duration rowLength{120'000'000};
  /// What is shown as differing most, in each record; empty: nothing.
  std::vector<std::optional<Interval>> marked;
  /// A few words for it, in each record: "call to device arrived, 7 min 11 s".
  QStringList markedWords;
};

/// One record's row of one stretch.
struct BesideRow {
  std::size_t record = 0;
  /// On the record's own axis.
  Interval stretch;
  QRectF box;
  /// Empty where the record has nothing in this stretch.
  std::shared_ptr<const papers::RowsPlaced> placed;
  /// Room above the row for the words of what is marked where it begins; empty: it does not.
  QRectF label;
};

/// One record's waiting before the first row, told in a line instead of shown in empty rows.
struct BesideWaiting {
  std::size_t record = 0;
  /// "call 7 min 39 s before device on, device arrived 28.3 s before".
  QString words;
  /// What is marked begins in it.
  bool marked = false;
  QRectF box;
};

/// The rows of one stretch, under a line of words.
struct BesideBlock {
  /// From the moment aligned at.
  Duration from{}, to{};
  QRectF heading;
  std::vector<BesideRow> rows;
};

/// The shortest of `lengths` in which at least half of the records lie within the first row.
[[nodiscard]] Duration fittingRowLength(const BesideOrder& order,
                                        const std::vector<Duration>& lengths);

/// Laid out once for a width; knows no screen. The rows begin where the first of the records does
/// something: what comes before is waiting.
class BesidePicture {
  Q_DECLARE_TR_FUNCTIONS(afterbeat::window::BesidePicture)

public:
  BesidePicture() = default;
  BesidePicture(BesideOrder order, double width, const Look& look);

  [[nodiscard]] double height() const { return height_; }
  [[nodiscard]] const std::vector<BesideBlock>& blocks() const { return blocks_; }
  [[nodiscard]] const std::vector<BesideWaiting>& waiting() const { return waiting_; }
  [[nodiscard]] const BesideOrder& order() const { return order_; }
  /// Paints what meets `shown`.
  void paint(QPainter& painter, const QRectF& shown) const;
  /// The row under a point; null outside.
  [[nodiscard]] const BesideRow* rowAt(const QPointF& point) const;
  /// All rows from top to bottom that show something.
  [[nodiscard]] std::vector<const BesideRow*> rows() const;
  /// Where the rows that hold a marked stretch begin and end; empty: there are none.
  [[nodiscard]] QRectF markedPlace() const;
  /// The block that holds the moment aligned at; empty: no row does.
  [[nodiscard]] QRectF alignedPlace() const;
  /// What a row says, for readers of the screen.
  [[nodiscard]] QString rowText(const BesideRow& row) const;
  /// "From power on to 2 min after".
  [[nodiscard]] QString headingText(const BesideBlock& block) const;
  [[nodiscard]] QString asText() const;

private:
  void layOut(double width);
  double addRow(BesideBlock& block, std::size_t record, double top, double width);
  void paintBlock(QPainter& painter, const BesideBlock& block) const;
  void paintRow(QPainter& painter, const BesideRow& row) const;
  void paintLabel(QPainter& painter, const BesideRow& row) const;
  void paintWaiting(QPainter& painter, const BesideWaiting& waiting) const;
  double addWaiting(double top, double width);
  [[nodiscard]] std::optional<Interval> covered(std::size_t record) const;
  [[nodiscard]] std::optional<Interval> marked(std::size_t record) const;
  [[nodiscard]] QString markedWords(std::size_t record) const;
  [[nodiscard]] QString waitingText(const BesideWaiting& waiting) const;

  BesideOrder order_;
  Look look_;
  std::vector<BesideBlock> blocks_;
  std::vector<BesideWaiting> waiting_;
  /// Where the first row begins, from the moment aligned at.
  Duration origin_{};
  double height_ = 0, text_ = 12, gutter_ = 30;
};

} // namespace afterbeat::window
