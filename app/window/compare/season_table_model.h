/// The records of a season as lines of a table; fetches only what is looked at.
#pragma once

#include "app/window/compare/season_desk.h"

#include <QAbstractTableModel>

#include <unordered_map>
#include <unordered_set>

namespace afterbeat::window {

class SeasonTableModel final : public QAbstractTableModel {
  Q_OBJECT

public:
  /// Gives the `RowsSketch` of the line as a pointer, or null while it is being fetched.
  static constexpr int kSketchRole = Qt::UserRole + 100;

  explicit SeasonTableModel(SeasonDesk& desk, QObject* parent = nullptr);
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role = Qt::DisplayRole) const override;
  /// Place of a line in the season.
  [[nodiscard]] std::uint32_t place(int row) const;
  /// What a column sorts by; empty for the picture.
  [[nodiscard]] std::optional<std::variant<Fact, MeasureId>> sorts(int column) const;
  [[nodiscard]] int sketchColumn() const { return 1; }
  /// After a reset: the lines that were there are the first of those that are there now.
  [[nodiscard]] bool linesStayed() const { return linesStayed_; }
  [[nodiscard]] const Arranged& shown() const { return shown_; }

private:
  struct Column {
    std::optional<std::variant<Fact, MeasureId>> what;
  };
  void arrange();
  void keepSketches(const Arranged& before);
  [[nodiscard]] QString text(const Column& column, std::uint32_t place) const;
  [[nodiscard]] QString title(const Column& column) const;
  /// What the column holds: a figure's definition with its source.
  [[nodiscard]] static QString about(const Column& column);
  [[nodiscard]] const archive::RowsSketch* sketch(std::uint32_t place) const;
  void fetchSketches() const;

  SeasonDesk& desk_;
  Arranged shown_;
  std::vector<Column> columns_;
  bool linesStayed_ = false;
  /// What was asked for by painting; told to be fetched once the painting is done.
  mutable std::unordered_set<std::uint32_t> wanted_;
  mutable std::unordered_map<std::uint32_t, archive::RowsSketch> sketches_;
  mutable bool asked_ = false;
  mutable LatestWork work_;
};

/// What is known of a record, in the window's language; "not recorded" where it is not.
[[nodiscard]] QString factWords(Fact fact, const RecordFacts& facts);
[[nodiscard]] QString factTitle(Fact fact);

} // namespace afterbeat::window
