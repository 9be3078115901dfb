#include "app/window/problems/problems_model.h"

#include "app/window/finding/list_text.h"
#include "app/window/look/figure_words.h"
#include "app/window/problems/problem_words.h"
#include "core/record/record.h"

#include <algorithm>
#include <array>

namespace afterbeat::window {

namespace {

/// Parents have this id; children that of their parent's row, plus one.
constexpr quintptr kTop = 0;

QString countWords(const std::array<int, 3>& counts) {
  const auto [notes, warnings, errors] = counts;
  QStringList parts;
  if (errors > 0) {
    parts << (errors == 1 ? ProblemsModel::tr("1 error")
                          : ProblemsModel::tr("%1 errors").arg(errors));
  }
  if (warnings > 0) {
    parts << (warnings == 1 ? ProblemsModel::tr("1 warning")
                            : ProblemsModel::tr("%1 warnings").arg(warnings));
  }
  if (notes > 0) {
    parts << (notes == 1 ? ProblemsModel::tr("1 note") : ProblemsModel::tr("%1 notes").arg(notes));
  }
  return parts.join(QStringLiteral(", "));
}

} // namespace

bool ProblemsModel::Found::operator==(const Found& other) const {
  const auto same = [](const Problem& a, const Problem& b) {
    return a.line == b.line && a.severity == b.severity && a.kind == b.kind && a.args == b.args;
  };
  return same(problem, other.problem) && stretch == other.stretch && when == other.when;
}

bool ProblemsModel::Group::operator==(const Group& other) const {
  return heading == other.heading && meaning == other.meaning && found == other.found;
}

void ProblemsModel::show(const Record& record, std::vector<Problem> problems) {
  std::stable_sort(problems.begin(), problems.end(), [](const Problem& a, const Problem& b) {
    return a.severity != b.severity ? a.severity > b.severity : a.line < b.line;
  });
  const auto times = timesOfProblems(record, problems);
  std::vector<Group> groups;
  for (Problem& problem : problems) {
    const ProblemKindWords kind = kindWords(problem.kind);
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const Group& g) { return g.heading == kind.heading; });
    if (group == groups.end()) {
      group = groups.insert(group, Group{kind.heading, kind.meaning, {}});
    }
    Found found{std::move(problem), {}, {}};
    if (const auto time = times.find(found.problem.line); time != times.end()) {
      found.stretch = Interval{time->second, time->second};
      found.when = momentWords(record, time->second);
    }
    group->found.push_back(std::move(found));
  }
  if (groups == groups_) {
    return;
  }
  beginResetModel();
  groups_ = std::move(groups);
  endResetModel();
}

int ProblemsModel::count(Severity severity) const {
  int all = 0;
  for (const Group& group : groups_) {
    all += static_cast<int>(
        std::count_if(group.found.begin(), group.found.end(), [severity](const Found& found) {
          return found.problem.severity == severity;
        }));
  }
  return all;
}

int ProblemsModel::total() const {
  int all = 0;
  for (const Group& group : groups_) {
    all += static_cast<int>(group.found.size());
  }
  return all;
}

QString ProblemsModel::summary() const {
  return groups_.empty() ? tr("no problems found")
                         : countWords({count(Severity::info), count(Severity::warning),
                                       count(Severity::error)});
}

QString ProblemsModel::severities(const std::vector<Found>& found) {
  std::array<int, 3> counts{};
  for (const Found& one : found) {
    counts.at(static_cast<std::size_t>(one.problem.severity)) += 1;
  }
  return countWords(counts);
}

QString ProblemsModel::lines(const std::vector<Found>& found) {
  int first = 0, last = 0;
  for (const Found& one : found) {
    const int line = one.problem.line;
    first = line > 0 && (first == 0 || line < first) ? line : first;
    last = std::max(last, line);
  }
  if (first == 0) {
    return tr("no line");
  }
  return first == last ? tr("line %1").arg(first) : tr("lines %1 to %2").arg(first).arg(last);
}

const ProblemsModel::Group& ProblemsModel::groupAt(const QModelIndex& index) const {
  const quintptr id = index.internalId();
  return groups_[id == kTop ? static_cast<std::size_t>(index.row()) : id - 1];
}

const ProblemsModel::Found* ProblemsModel::foundAt(const QModelIndex& index) const {
  if (!index.isValid()) {
    return nullptr;
  }
  const std::vector<Found>& found = groupAt(index).found;
  if (index.internalId() != kTop) {
    return &found[static_cast<std::size_t>(index.row())];
  }
  return found.size() == 1 ? &found.front() : nullptr;
}

const Problem* ProblemsModel::problemAt(const QModelIndex& index) const {
  const Found* found = foundAt(index);
  return found != nullptr ? &found->problem : nullptr;
}

std::optional<Interval> ProblemsModel::stretchAt(const QModelIndex& index) const {
  const Found* found = foundAt(index);
  return found != nullptr ? found->stretch : std::nullopt;
}

QString ProblemsModel::detailsAt(const QModelIndex& index) const {
  if (!index.isValid()) {
    return {};
  }
  const Group& group = groupAt(index);
  const auto paragraph = [](const QString& inner) {
    return inner.isEmpty() ? QString()
                           : QStringLiteral("<p style=\"margin: 0 0 4px 0\">%1</p>").arg(inner);
  };
  QString text = paragraph(QStringLiteral("<b>%1</b>").arg(group.heading.toHtmlEscaped()));
  if (const Found* found = foundAt(index)) {
    text += paragraph(problemWords(found->problem).toHtmlEscaped());
  }
  text += paragraph(group.meaning.toHtmlEscaped());
  const Found* found = foundAt(index);
  if (found == nullptr) {
    return text;
  }
  return text + paragraph(found->stretch ? tr("Enter or a click shows %1 in the rows and waves.")
                                               .arg(found->when.toHtmlEscaped())
                                         : tr("No time is known for it."));
}

bool ProblemsModel::folds() const {
  return std::any_of(groups_.begin(), groups_.end(),
                     [](const Group& group) { return group.found.size() > 1; });
}

QModelIndex ProblemsModel::index(int row, int column, const QModelIndex& parent) const {
  if (!hasIndex(row, column, parent)) {
    return {};
  }
  return createIndex(row, column,
                     parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : kTop);
}

QModelIndex ProblemsModel::parent(const QModelIndex& child) const {
  const quintptr id = child.isValid() ? child.internalId() : kTop;
  return id == kTop ? QModelIndex() : createIndex(static_cast<int>(id - 1), 0, kTop);
}

int ProblemsModel::rowCount(const QModelIndex& parent) const {
  if (!parent.isValid()) {
    return static_cast<int>(groups_.size());
  }
  const std::size_t found = groupAt(parent).found.size();
  const bool folded = parent.internalId() == kTop && parent.column() == 0 && found > 1;
  return folded ? static_cast<int>(found) : 0;
}

int ProblemsModel::columnCount(const QModelIndex&) const {
  return columnCount_;
}

QString ProblemsModel::cell(const QModelIndex& index) const {
  const Group& group = groupAt(index);
  const Found* one = foundAt(index);
  switch (index.column()) {
  case sentenceColumn:
    return one != nullptr ? problemWords(one->problem)
                          : tr("%1 × %2").arg(group.found.size()).arg(group.heading);
  case severityColumn:
    return one != nullptr ? severityWord(one->problem.severity) : severities(group.found);
  case lineColumn:
    return one != nullptr ? lines({*one}) : lines(group.found);
  case timeColumn:
    return one != nullptr ? one->when : QString();
  case meaningColumn:
    return index.internalId() == kTop ? group.meaning : QString();
  default:
    return {};
  }
}

QVariant ProblemsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) {
    return {};
  }
  const auto place = [&] {
    QStringList parts;
    for (const int column : {severityColumn, lineColumn, timeColumn}) {
      parts << cell(index.siblingAtColumn(column));
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
  };
  switch (role) {
  case Qt::DisplayRole:
    return cell(index);
  case Qt::ToolTipRole:
    return cell(index.siblingAtColumn(sentenceColumn));
  case Qt::AccessibleTextRole:
    return QStringLiteral("%1: %2").arg(place(), cell(index.siblingAtColumn(sentenceColumn)));
  case kProblemPlaceRole:
    return place();
  case kProblemSeverityRole:
    // The first of a group is its worst.
    return static_cast<int>(foundAt(index) != nullptr
                                ? foundAt(index)->problem.severity
                                : groupAt(index).found.front().problem.severity);
  default:
    return {};
  }
}

QVariant ProblemsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role == kCopyRole) {
    return true;
  }
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
    return {};
  }
  switch (section) {
  case sentenceColumn:
    return tr("what was found");
  case severityColumn:
    return tr("how bad");
  case lineColumn:
    return tr("where");
  case timeColumn:
    return tr("when");
  case meaningColumn:
    return tr("what it means");
  default:
    return {};
  }
}

} // namespace afterbeat::window
