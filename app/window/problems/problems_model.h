/// What was wrong with a file: problems folded by what they mean, each with how bad, line and time.
#pragma once

#include "core/measures/interval.h"
#include "core/record/problem.h"

#include <QAbstractItemModel>
#include <QIcon>

#include <optional>

namespace afterbeat {
struct Record;
}

namespace afterbeat::window {

/// Role of the second, fainter line of a row: how bad, which lines, when.
inline constexpr int kProblemPlaceRole = Qt::UserRole + 1;
/// Role of the severity as a number, for its shape.
inline constexpr int kProblemSeverityRole = Qt::UserRole + 2;

/// A problem alone of its heading stands at the top; where several share one, the heading does,
/// and they are its children. Worst first, then by line.
class ProblemsModel final : public QAbstractItemModel {
  Q_OBJECT

public:
  /// Only the first is shown; all are copied.
  enum Column {
    sentenceColumn,
    severityColumn,
    lineColumn,
    timeColumn,
    meaningColumn,
    columnCount_
  };

  using QAbstractItemModel::QAbstractItemModel;

  /// Problems that are shown already leave everything as it is.
  void show(const Record& record, std::vector<Problem> problems);
  [[nodiscard]] int count(Severity severity) const;
  /// Of all severities.
  [[nodiscard]] int total() const;
  /// "2 errors, 1 warning"; "no problems found".
  [[nodiscard]] QString summary() const;
  /// The problem of a row; nothing for the heading of several.
  [[nodiscard]] const Problem* problemAt(const QModelIndex& index) const;
  /// When the problem of a row was, where that is known.
  [[nodiscard]] std::optional<Interval> stretchAt(const QModelIndex& index) const;
  /// Heading, whole sentence, place and meaning of a row, as rich text.
  [[nodiscard]] QString detailsAt(const QModelIndex& index) const;
  /// Whether any heading has children.
  [[nodiscard]] bool folds() const;

  [[nodiscard]] QModelIndex index(int row, int column,
                                  const QModelIndex& parent = {}) const override;
  [[nodiscard]] QModelIndex parent(const QModelIndex& child) const override;
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

private:
  struct Found {
    Problem problem;
    std::optional<Interval> stretch;
    /// "09:15:02"; empty where unknown.
    QString when;
    bool operator==(const Found& other) const;
  };
  struct Group {
    QString heading, meaning;
    std::vector<Found> found;
    bool operator==(const Group& other) const;
  };

  [[nodiscard]] const Group& groupAt(const QModelIndex& index) const;
  [[nodiscard]] const Found* foundAt(const QModelIndex& index) const;
  [[nodiscard]] QString cell(const QModelIndex& index) const;
  [[nodiscard]] static QString severities(const std::vector<Found>& found);
  [[nodiscard]] static QString lines(const std::vector<Found>& found);

  std::vector<Group> groups_;
};

/// "error", "warning", "information" in the window's language.
[[nodiscard]] QString severityWord(Severity severity);

/// A shape of its own for each: a cross in an octagon, a triangle, a circle with an i.
[[nodiscard]] QIcon severityIcon(Severity severity, const QColor& ink, int size);

} // namespace afterbeat::window
