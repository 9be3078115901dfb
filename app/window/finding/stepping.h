/// Steps through a record by keys: from pause to pause, shock to shock, analysis to analysis,
/// problem to problem, and to the longest pause.
#pragma once

#include "app/window/session/selection.h"

#include <QList>
#include <QObject>

#include <vector>

class QAction;

namespace afterbeat::window {

class Session;

/// What can be stepped through.
enum class StepKind : std::uint8_t { pause, shock, analysis, problem };

/// A place to stop at, and the words for it.
struct Stop {
  Interval stretch;
  QString what;
};

/// Where a problem of the file lies in time: the moment of the entry of its line. Problems of lines
/// without an entry have none.
[[nodiscard]] std::optional<Interval> stretchOf(const Record& record, const Problem& problem);

/// All stops of a kind, sorted by their middle; the first of those that share it.
[[nodiscard]] std::vector<Stop> stopsOf(const Session& session, StepKind kind);

class Stepping final : public QObject {
  Q_OBJECT

public:
  Stepping(Session& session, Selection& selection, QObject* parent = nullptr);
  /// Next and previous of each kind in the order of `StepKind`, then the longest pause.
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }
  /// Goes to the next stop after what is selected, or the one before it; stays where there is none.
  void step(StepKind kind, bool forward);
  /// Goes to the longest pause, the first of equals.
  void goToLongestPause();

signals:
  /// What was stepped to.
  void stepped(const afterbeat::Interval& stretch);
  /// There was nothing to go to; a sentence.
  void nowhere(const QString& sentence);

private:
  void add(const QString& text, const QKeySequence& key, StepKind kind, bool forward);

  Session& session_;
  Selection& selection_;
  QList<QAction*> actions_;
};

} // namespace afterbeat::window
