#include "app/window/figures/working_model.h"

#include "app/papers/rows_model.h"
#include "app/window/look/figure_words.h"

#include <QFont>
#include <QGuiApplication>

namespace afterbeat::window {

namespace {

/// Keeps lengths, which stand on the right of their column, away from the next one.
const QString kRoom = QStringLiteral("\u2002");

bool beyondLimit(const WorkingPart& part, const Figures& figures) {
  if (part.kind != WorkingKind::pause) {
    return false;
  }
  for (const Pause& pause : figures.pauses) {
    if (pause.stretch.begin <= part.from && pause.stretch.end >= part.to) {
      const auto limit = papers::limitFor(figures.settings.profile, pause.cause);
      return limit && seconds(pause.stretch.length()) > *limit;
    }
  }
  return false;
}

} // namespace

void WorkingModel::show(const Record& record, std::shared_ptr<const Figures> figures,
                        MeasureId measure) {
  beginResetModel();
  rows_.clear();
  for (const WorkingPart& part : (*figures)[measure].working) {
    rows_.push_back({part, momentWords(record, part.from),
                     part.from == part.to ? QString() : lengthWords(part.to - part.from) + kRoom,
                     partWords(part, *figures), beyondLimit(part, *figures)});
  }
  endResetModel();
}

void WorkingModel::clear() {
  beginResetModel();
  rows_.clear();
  endResetModel();
}

int WorkingModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int WorkingModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : columnCount_;
}

QVariant WorkingModel::data(const QModelIndex& index, int role) const {
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  if (role == Qt::DisplayRole || role == Qt::ToolTipRole) {
    switch (index.column()) {
    case fromColumn:
      return row.from;
    case lengthColumn:
      return row.length;
    case whatColumn:
      return row.what;
    default:
      return {};
    }
  }
  if (role == Qt::AccessibleTextRole) {
    return QStringLiteral("%1, %2, %3").arg(row.from, row.length.trimmed(), row.what);
  }
  if (role == Qt::TextAlignmentRole && index.column() == lengthColumn) {
    return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
  }
  if (role == Qt::FontRole && row.beyondLimit) {
    QFont font = QGuiApplication::font();
    font.setBold(true);
    return font;
  }
  return {};
}

QVariant WorkingModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) {
    return {};
  }
  if (role == Qt::TextAlignmentRole) {
    return QVariant::fromValue(Qt::Alignment(
        (section == lengthColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
  }
  if (role != Qt::DisplayRole) {
    return {};
  }
  switch (section) {
  case fromColumn:
    return tr("from");
  case lengthColumn:
    return tr("length") + kRoom;
  case whatColumn:
    return tr("what was going on");
  default:
    return {};
  }
}

} // namespace afterbeat::window
