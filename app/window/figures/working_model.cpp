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
  const Pause* pause = pauseAround(figures, {part.from, part.to});
  const auto limit =
      pause ? papers::limitFor(figures.settings.profile, pause->cause) : std::nullopt;
  return limit && seconds(pause->stretch.length()) > *limit;
}

} // namespace

void WorkingModel::show(const Record& record, std::shared_ptr<const Figures> figures,
                        MeasureId measure) {
  beginResetModel();
  moments_.emplace(record);
  rows_ = (*figures)[measure].working;
  figures_ = std::move(figures);
  endResetModel();
}

void WorkingModel::clear() {
  beginResetModel();
  rows_.clear();
  endResetModel();
}

QString WorkingModel::what(int row) const {
  return partWords(part(row), *figures_);
}

QString WorkingModel::from(const WorkingPart& part) const {
  return moments_->words(part.from);
}

QString WorkingModel::length(const WorkingPart& part) const {
  return part.from == part.to ? QString() : lengthWords(part.to - part.from) + kRoom;
}

int WorkingModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int WorkingModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : columnCount_;
}

QVariant WorkingModel::data(const QModelIndex& index, int role) const {
  const WorkingPart& row = part(index.row());
  if (role == Qt::DisplayRole || role == Qt::ToolTipRole) {
    switch (index.column()) {
    case fromColumn:
      return from(row);
    case lengthColumn:
      return length(row);
    case whatColumn:
      return partWords(row, *figures_);
    default:
      return {};
    }
  }
  if (role == Qt::AccessibleTextRole) {
    return QStringLiteral("%1, %2, %3")
        .arg(from(row), length(row).trimmed(), partWords(row, *figures_));
  }
  if (role == Qt::TextAlignmentRole && index.column() == lengthColumn) {
    return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
  }
  if (role == Qt::FontRole && beyondLimit(row, *figures_)) {
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
