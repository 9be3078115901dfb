/// Everything that happened as a table, and the filter that typing sets on it.
#pragma once

#include "app/window/finding/happenings.h"
#include "app/window/look/figure_words.h"

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>

namespace afterbeat::window {

class HappeningsModel final : public QAbstractTableModel {
  Q_OBJECT

public:
  enum Column { clockColumn, sinceColumn, whatColumn, originColumn, columnCount_ };

  using QAbstractTableModel::QAbstractTableModel;

  void show(const Record& record, std::vector<Happening> all);
  [[nodiscard]] const Happening& at(int row) const { return all_[static_cast<std::size_t>(row)]; }
  [[nodiscard]] bool hasClock() const { return moments_ && moments_->hasClock(); }
  /// All typed words stand in what is shown of a row or in its kind, whatever the case.
  [[nodiscard]] bool matches(int row, const QStringList& typed) const;
  /// The row that began last, up to a moment; -1 where none did.
  [[nodiscard]] int lastBegun(Time t) const;
  /// The row whose middle is nearest to that of a stretch, of equals the one of these words; -1
  /// without rows.
  [[nodiscard]] int nearest(const Interval& stretch, const QString& what) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

private:
  [[nodiscard]] QString text(int row, int column) const;

  std::vector<Happening> all_;
  std::optional<Moments> moments_;
};

class HappeningsFilter final : public QSortFilterProxyModel {
  Q_OBJECT

public:
  using QSortFilterProxyModel::QSortFilterProxyModel;
  void setTyped(const QString& text);

protected:
  [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
  QStringList typed_;
};

} // namespace afterbeat::window
