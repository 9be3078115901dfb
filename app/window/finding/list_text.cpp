#include "app/window/finding/list_text.h"

#include <QItemSelectionModel>
#include <QTableView>
#include <QTreeView>

#include <algorithm>

namespace afterbeat::window {

namespace {

bool hidden(const QAbstractItemView& view, int column) {
  if (view.model()->headerData(column, Qt::Horizontal, kCopyRole).toBool()) {
    return false;
  }
  if (const auto* table = qobject_cast<const QTableView*>(&view)) {
    return table->isColumnHidden(column);
  }
  const auto* tree = qobject_cast<const QTreeView*>(&view);
  return tree != nullptr && tree->isColumnHidden(column);
}

/// Tabs and line ends inside a text would be taken for columns and rows.
QString oneCell(QString text) {
  return text.replace(QLatin1Char('\t'), QLatin1Char(' '))
      .replace(QLatin1Char('\n'), QLatin1Char(' '));
}

QString rowText(const QAbstractItemView& view, const QModelIndex& row) {
  QStringList cells;
  for (int column = 0; column < view.model()->columnCount(row.parent()); ++column) {
    if (!hidden(view, column)) {
      const QModelIndex cell = row.siblingAtColumn(column);
      const QVariant whole = cell.data(kCopyRole);
      cells << oneCell((whole.isValid() ? whole : cell.data()).toString());
    }
  }
  return cells.join(QLatin1Char('\t'));
}

void addAll(const QAbstractItemView& view, const QModelIndex& parent, QStringList& lines) {
  for (int row = 0; row < view.model()->rowCount(parent); ++row) {
    const QModelIndex index = view.model()->index(row, 0, parent);
    lines << rowText(view, index);
    addAll(view, index, lines);
  }
}

} // namespace

QString tabbedText(const QAbstractItemView& view) {
  if (view.model() == nullptr) {
    return {};
  }
  QStringList lines, titles;
  for (int column = 0; column < view.model()->columnCount(view.rootIndex()); ++column) {
    if (!hidden(view, column)) {
      titles << oneCell(view.model()->headerData(column, Qt::Horizontal).toString());
    }
  }
  if (std::any_of(titles.begin(), titles.end(), [](const QString& t) { return !t.isEmpty(); })) {
    lines << titles.join(QLatin1Char('\t'));
  }
  QModelIndexList rows =
      view.selectionModel() ? view.selectionModel()->selectedRows() : QModelIndexList();
  if (rows.size() > 1) {
    std::sort(rows.begin(), rows.end());
    for (const QModelIndex& row : rows) {
      lines << rowText(view, row);
    }
  } else {
    addAll(view, view.rootIndex(), lines);
  }
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

} // namespace afterbeat::window
