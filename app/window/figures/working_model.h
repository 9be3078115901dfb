/// The working of a figure as a table: from, length, what was going on.
#pragma once

#include "app/window/look/figure_words.h"
#include "core/measures/figures.h"

#include <QAbstractTableModel>

#include <memory>
#include <optional>
#include <vector>

namespace afterbeat::window {

class WorkingModel final : public QAbstractTableModel {
  Q_OBJECT

public:
  enum Column { fromColumn, lengthColumn, whatColumn, columnCount_ };

  using QAbstractTableModel::QAbstractTableModel;

  /// A row for each part; `record` gives the clock.
  void show(const Record& record, std::shared_ptr<const Figures> figures, MeasureId measure);
  void clear();
  [[nodiscard]] const WorkingPart& part(int row) const { return rows_[std::size_t(row)]; }
  [[nodiscard]] QString what(int row) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

private:
  [[nodiscard]] QString from(const WorkingPart& part) const;
  [[nodiscard]] QString length(const WorkingPart& part) const;
  /// Words are made when a row is looked at: a working can have thousands.
  std::vector<WorkingPart> rows_;
  std::shared_ptr<const Figures> figures_;
  std::optional<Moments> moments_;
};

} // namespace afterbeat::window
