#include "app/window/tables/table_model.h"

#include "app/window/finding/list_text.h"
#include "app/window/look/look.h"

#include <QBrush>
#include <QFont>
#include <QGuiApplication>
#include <QPalette>

namespace afterbeat::window {

namespace {

Duration middlesApart(const Interval& a, const Interval& b) {
  return std::chrono::abs((a.begin + a.length() / 2) - (b.begin + b.length() / 2));
}

} // namespace

void TableModel::show(TableContent content) {
  beginResetModel();
  content_ = std::move(content);
  endResetModel();
}

int TableModel::rowFor(const Interval& stretch) const {
  int best = -1;
  for (int i = 0; i < rowCount(); ++i) {
    if (best < 0 ||
        middlesApart(row(i).stretch, stretch) < middlesApart(row(best).stretch, stretch)) {
      best = i;
    }
  }
  return best;
}

int TableModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(content_.rows.size());
}

int TableModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(content_.columns.size());
}

QVariant TableModel::data(const QModelIndex& index, int role) const {
  const TableColumn& column = content_.columns[static_cast<std::size_t>(index.column())];
  const TableCell& here = cell(index);
  switch (role) {
  case Qt::DisplayRole:
  case Qt::ToolTipRole:
    return here.text;
  case Qt::AccessibleTextRole:
    return QStringLiteral("%1: %2 %3")
        .arg(column.title, here.text, here.recorded ? column.unit : QString());
  case Qt::TextAlignmentRole:
    return QVariant::fromValue(
        Qt::Alignment((column.number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
  case Qt::ForegroundRole:
    return here.recorded
               ? QVariant()
               : QBrush(Look::of(QGuiApplication::palette(), QGuiApplication::font()).faintInk);
  default:
    return {};
  }
}

QVariant TableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section >= columnCount()) {
    return {};
  }
  const TableColumn& column = content_.columns[static_cast<std::size_t>(section)];
  switch (role) {
  case Qt::DisplayRole:
    return column.unit.isEmpty() ? column.title
                                 : QStringLiteral("%1\n%2").arg(column.title, column.unit);
  case Qt::AccessibleTextRole:
    return column.unit.isEmpty() ? column.title
                                 : QStringLiteral("%1, %2").arg(column.title, column.unit);
  case Qt::TextAlignmentRole:
    return QVariant::fromValue(
        Qt::Alignment((column.number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignBottom));
  default:
    return {};
  }
}

bool TableSorting::lessThan(const QModelIndex& left, const QModelIndex& right) const {
  const auto& table = *static_cast<const TableModel*>(sourceModel());
  const TableCell &a = table.cell(left), &b = table.cell(right);
  if (table.content().columns[static_cast<std::size_t>(left.column())].number) {
    if (a.number && b.number) {
      return *a.number < *b.number;
    }
    // Descending order asks the other way round.
    return sortOrder() == Qt::AscendingOrder ? a.number.has_value() && !b.number
                                             : !a.number && b.number.has_value();
  }
  return QString::localeAwareCompare(a.text, b.text) < 0;
}

} // namespace afterbeat::window
