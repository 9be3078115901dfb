#include "app/window/compare/beside_table.h"

#include "app/window/compare/beside_words.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QBrush>
#include <QFont>
#include <QGuiApplication>

namespace afterbeat::window {

void BesideTable::show(const SideBySide& compared, const std::vector<BesideRecord>& records) {
  beginResetModel();
  rows_.clear();
  names_.clear();
  for (std::size_t i = 0; i < records.size(); ++i) {
    names_ << letterOf(i);
  }
  if (!records.empty()) {
    addMoments(compared);
    addFigures(compared);
  }
  endResetModel();
}

void BesideTable::addMoments(const SideBySide& compared) {
  rows_.push_back({tr("Moments, from %1").arg(momentName(compared.alignedAt)), {}, true, {}});
  for (const MomentRow& moment : compared.moments) {
    Row row;
    row.title = momentName(moment.moment);
    for (const auto& seconds : moment.seconds) {
      row.cells.push_back(seconds ? Cell{offsetWords(*seconds), true}
                                  : Cell{tr("not recorded"), false});
    }
    rows_.push_back(std::move(row));
  }
}

QString BesideTable::differenceFromFirst(const FigureRow& figure, std::size_t record) {
  const double difference = *figure.differences[record];
  const FigureCell& cell = figure.cells[record];
  const FigureCell first{cell.value - difference, Status::ok};
  // Where 99 % stands beside 100 %, "the same" would look wrong.
  if (differsBelowReading(figure.measure, difference) &&
      cellWords(figure.measure, first) != cellWords(figure.measure, cell)) {
    return tr("nearly the same");
  }
  return differenceWords(figure.measure, difference);
}

void BesideTable::addFigures(const SideBySide& compared) {
  rows_.push_back({tr("Figures, and how they differ from the first"), {}, true, {}});
  for (const FigureRow* figure : inOrder(compared.figures)) {
    Row row;
    row.title = titleWords(figure->measure);
    row.about = definitionWords(figure->measure);
    for (std::size_t i = 0; i < figure->cells.size(); ++i) {
      QString text = cellWords(figure->measure, figure->cells[i]);
      if (figure->differences[i]) {
        text += QStringLiteral("   (%1)").arg(differenceFromFirst(*figure, i));
      }
      row.cells.push_back({text, figure->cells[i].ok()});
    }
    rows_.push_back(std::move(row));
  }
}

bool BesideTable::isHeading(int row) const {
  return rows_[static_cast<std::size_t>(row)].heading;
}

int BesideTable::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int BesideTable::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(names_.size()) + 1;
}

QVariant BesideTable::data(const QModelIndex& index, int role) const {
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  const auto column = static_cast<std::size_t>(index.column());
  const Cell* cell = column > 0 && column <= row.cells.size() ? &row.cells[column - 1] : nullptr;
  switch (role) {
  case Qt::DisplayRole:
    return column == 0 ? row.title : cell ? cell->text : QString();
  case Qt::ToolTipRole:
    return column == 0 ? row.about : QString();
  case Qt::AccessibleTextRole:
    return cell ? tr("%1, record %2: %3").arg(row.title, names_[index.column() - 1], cell->text)
                : row.title;
  case Qt::FontRole:
    if (row.heading) {
      QFont bold = QGuiApplication::font();
      bold.setBold(true);
      return bold;
    }
    return {};
  case Qt::ForegroundRole:
    return cell && !cell->recorded
               ? QBrush(Look::of(QGuiApplication::palette(), QGuiApplication::font()).faintInk)
               : QVariant();
  default:
    return {};
  }
}

QVariant BesideTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) {
    return {};
  }
  if (role == Qt::DisplayRole) {
    return section == 0 ? QString() : names_.value(section - 1);
  }
  if (role == Qt::AccessibleTextRole) {
    return section == 0 ? tr("moment or figure") : tr("record %1").arg(names_.value(section - 1));
  }
  if (role == Qt::TextAlignmentRole) {
    return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | Qt::AlignVCenter));
  }
  return {};
}

Qt::ItemFlags BesideTable::flags(const QModelIndex& index) const {
  return isHeading(index.row()) ? Qt::ItemIsEnabled : QAbstractTableModel::flags(index);
}

} // namespace afterbeat::window
