#include "app/window/finding/happenings_model.h"

#include "app/window/finding/happening_delegate.h"
#include "app/window/finding/list_text.h"

#include <algorithm>

namespace afterbeat::window {

namespace {

/// How far the middles of two stretches are apart; what was centred is within a rounding.
Duration apart(const Interval& a, const Interval& b) {
  const Duration length = std::chrono::abs((a.begin + a.length() / 2) - (b.begin + b.length() / 2));
  return length <= Duration{2} ? Duration::zero() : length;
}

} // namespace

void HappeningsModel::show(const Record& record, std::vector<Happening> all) {
  beginResetModel();
  moments_.emplace(record);
  all_ = std::move(all);
  endResetModel();
}

bool HappeningsModel::matches(int row, const QStringList& typed) const {
  return std::all_of(typed.begin(), typed.end(), [&](const QString& word) {
    if (at(row).kind.contains(word, Qt::CaseInsensitive)) {
      return true;
    }
    for (int column = columnCount_ - 1; column >= 0; --column) {
      if (text(row, column).contains(word, Qt::CaseInsensitive)) {
        return true;
      }
    }
    return false;
  });
}

int HappeningsModel::nearest(const Interval& stretch, const QString& what) const {
  const auto rank = [&](const Happening& one) {
    return std::pair(apart(one.stretch, stretch), one.what != what);
  };
  const auto it =
      std::min_element(all_.begin(), all_.end(),
                       [&](const Happening& a, const Happening& b) { return rank(a) < rank(b); });
  return it == all_.end() ? -1 : static_cast<int>(it - all_.begin());
}

int HappeningsModel::lastBegun(Time t) const {
  const auto later =
      std::upper_bound(all_.begin(), all_.end(), t, [](Time moment, const Happening& one) {
        return moment < one.stretch.begin;
      });
  return static_cast<int>(later - all_.begin()) - 1;
}

int HappeningsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(all_.size());
}

int HappeningsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : columnCount_;
}

QString HappeningsModel::text(int row, int column) const {
  const Happening& one = at(row);
  switch (column) {
  case clockColumn:
    return moments_->clock(one.stretch.begin);
  case sinceColumn:
    return Moments::onRecord(one.stretch.begin);
  case whatColumn:
    return one.what;
  case originColumn:
    return originWords(one.origin);
  default:
    return {};
  }
}

QVariant HappeningsModel::data(const QModelIndex& index, int role) const {
  switch (role) {
  case Qt::DisplayRole:
    return text(index.row(), index.column());
  case kSecondLineRole:
    if (index.column() == clockColumn || index.column() == whatColumn) {
      return text(index.row(), index.column() == clockColumn ? sinceColumn : originColumn);
    }
    return {};
  case Qt::AccessibleTextRole:
    return QStringLiteral("%1, %2, %3, %4")
        .arg(text(index.row(), whatColumn), text(index.row(), clockColumn),
             text(index.row(), sinceColumn), text(index.row(), originColumn));
  case Qt::ToolTipRole: {
    const Happening& one = at(index.row());
    return one.stretch.length() > Duration::zero()
               ? tr("%1, lasts %2").arg(one.what, lengthWords(one.stretch.length()))
               : one.what;
  }
  case Qt::TextAlignmentRole:
    return QVariant::fromValue(Qt::Alignment(
        (index.column() == sinceColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
  default:
    return {};
  }
}

QVariant HappeningsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) {
    return {};
  }
  if (role == Qt::TextAlignmentRole) {
    return QVariant::fromValue(Qt::Alignment(
        (section == sinceColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
  }
  if (role == kCopyRole) {
    return true; // all are copied, also those that are painted as a second line
  }
  if (role != Qt::DisplayRole) {
    return {};
  }
  switch (section) {
  case clockColumn:
    return tr("clock");
  case sinceColumn:
    return tr("since start");
  case whatColumn:
    return tr("what");
  case originColumn:
    return tr("from");
  default:
    return {};
  }
}

void HappeningsFilter::setTyped(const QString& text) {
  typed_ = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  invalidateFilter();
}

bool HappeningsFilter::filterAcceptsRow(int row, const QModelIndex&) const {
  return static_cast<const HappeningsModel*>(sourceModel())->matches(row, typed_);
}

} // namespace afterbeat::window
