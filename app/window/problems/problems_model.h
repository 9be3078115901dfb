/// What was wrong with a file, as a table: line, how bad, one sentence.
#pragma once

#include "core/record/problem.h"

#include <QAbstractTableModel>
#include <QIcon>

namespace afterbeat::window {

/// Worst first, then by line.
class ProblemsModel final : public QAbstractTableModel {
  Q_OBJECT

public:
  enum Column { severityColumn, lineColumn, sentenceColumn, columnCount_ };

  using QAbstractTableModel::QAbstractTableModel;

  void show(std::vector<Problem> problems);
  [[nodiscard]] int count(Severity severity) const;
  /// "2 errors, 1 warning"; "no problems found".
  [[nodiscard]] QString summary() const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

private:
  std::vector<Problem> problems_;
};

/// "error", "warning", "information" in the window's language.
[[nodiscard]] QString severityWord(Severity severity);

/// A shape of its own for each: a cross in an octagon, a triangle, a circle with an i.
[[nodiscard]] QIcon severityIcon(Severity severity, const QColor& ink, int size);

} // namespace afterbeat::window
