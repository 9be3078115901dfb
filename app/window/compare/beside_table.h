/// Moments and figures of records side by side, with what each differs from the first.
#pragma once

#include "app/window/compare/beside_load.h"

#include <QAbstractTableModel>

namespace afterbeat::window {

/// A row for each moment, in seconds from the one aligned at, then one for each figure; a column
/// for each record.
class BesideTable final : public QAbstractTableModel {
  Q_OBJECT

public:
  using QAbstractTableModel::QAbstractTableModel;
  void show(const SideBySide& compared, const std::vector<BesideRecord>& records);
  /// A row that only names what follows.
  [[nodiscard]] bool isHeading(int row) const;
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role = Qt::DisplayRole) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
  struct Cell {
    QString text;
    bool recorded = false;
  };
  struct Row {
    QString title;
    std::vector<Cell> cells;
    bool heading = false;
    QString about;
  };
  void addMoments(const SideBySide& compared);
  void addFigures(const SideBySide& compared);
  [[nodiscard]] static QString differenceFromFirst(const FigureRow& figure, std::size_t record);
  QStringList names_;
  std::vector<Row> rows_;
};

} // namespace afterbeat::window
