#include "app/window/finding/stepping.h"

#include "app/window/finding/entry_words.h"
#include "app/window/look/figure_words.h"
#include "app/window/problems/problem_words.h"
#include "app/window/session/session.h"

#include <QAction>

#include <algorithm>
#include <unordered_map>

namespace afterbeat::window {

namespace {

/// A stretch that was centred lies within a rounding of the middle.
constexpr Duration kSame{2};

Time centre(const Interval& stretch) {
  return stretch.begin + stretch.length() / 2;
}

/// The stop after (or before) the one that lies in the middle of `shown`.
const Stop* neighbour(const std::vector<Stop>& all, const Interval& shown, bool forward) {
  const Time middle = centre(shown);
  if (forward) {
    const auto it = std::find_if(all.begin(), all.end(), [&](const Stop& stop) {
      return centre(stop.stretch) > middle + kSame;
    });
    return it == all.end() ? nullptr : &*it;
  }
  const auto it = std::find_if(all.rbegin(), all.rend(), [&](const Stop& stop) {
    return centre(stop.stretch) < middle - kSame;
  });
  return it == all.rend() ? nullptr : &*it;
}

std::vector<Stop> pauseStops(const Figures& figures) {
  std::vector<Stop> all;
  for (const Pause& pause : figures.pauses) {
    all.push_back({pause.stretch, pointedAt(figures, centre(pause.stretch), Duration{-1}).what});
  }
  return all;
}

std::vector<Stop> shockStops(const Figures& figures) {
  std::vector<Stop> all;
  for (const ShockFigures& shock : figures.shocks) {
    all.push_back({{shock.t, shock.t}, pointedAt(figures, shock.t, Duration{0}).what});
  }
  return all;
}

std::vector<Stop> analysisStops(const Record& record) {
  std::vector<Stop> all;
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::Analysis>() != nullptr) {
      all.push_back({{entry.t, entry.lastTime()}, entryWords(entry)});
    }
  }
  return all;
}

std::vector<Stop> problemStops(const Session& session) {
  std::unordered_map<int, const Entry*> byLine;
  for (const Entry& entry : session.record().entries) {
    if (entry.hasTime && entry.line > 0) {
      byLine.emplace(entry.line, &entry);
    }
  }
  std::vector<Stop> all;
  const auto add = [&](const std::vector<Problem>& problems) {
    for (const Problem& problem : problems) {
      if (const auto it = byLine.find(problem.line); it != byLine.end()) {
        all.push_back({{it->second->t, it->second->t}, problemWords(problem)});
      }
    }
  };
  add(session.loaded().file->problems);
  add(session.figures().notices);
  return all;
}

} // namespace

std::optional<Interval> stretchOf(const Record& record, const Problem& problem) {
  for (const Entry& entry : record.entries) {
    if (problem.line > 0 && entry.line == problem.line && entry.hasTime) {
      return Interval{entry.t, entry.t};
    }
  }
  return std::nullopt;
}

std::vector<Stop> stopsOf(const Session& session, StepKind kind) {
  std::vector<Stop> all;
  switch (kind) {
  case StepKind::pause:
    all = pauseStops(session.figures());
    break;
  case StepKind::shock:
    all = shockStops(session.figures());
    break;
  case StepKind::analysis:
    all = analysisStops(session.record());
    break;
  case StepKind::problem:
    all = problemStops(session);
    break;
  }
  std::stable_sort(all.begin(), all.end(), [](const Stop& a, const Stop& b) {
    return centre(a.stretch) < centre(b.stretch);
  });
  // What lies at one moment is one stop: a step always moves.
  all.erase(std::unique(all.begin(), all.end(),
                        [](const Stop& a, const Stop& b) {
                          return centre(b.stretch) - centre(a.stretch) <= kSame;
                        }),
            all.end());
  return all;
}

Stepping::Stepping(Session& session, Selection& selection, QObject* parent)
    : QObject(parent), session_(session), selection_(selection) {
  add(tr("Next pause"), Qt::Key_Period, StepKind::pause, true);
  add(tr("Previous pause"), Qt::Key_Comma, StepKind::pause, false);
  add(tr("Next shock"), Qt::CTRL | Qt::Key_Period, StepKind::shock, true);
  add(tr("Previous shock"), Qt::CTRL | Qt::Key_Comma, StepKind::shock, false);
  add(tr("Next analysis"), Qt::ALT | Qt::Key_Period, StepKind::analysis, true);
  add(tr("Previous analysis"), Qt::ALT | Qt::Key_Comma, StepKind::analysis, false);
  add(tr("Next problem in the file"), Qt::CTRL | Qt::SHIFT | Qt::Key_Period, StepKind::problem,
      true);
  add(tr("Previous problem in the file"), Qt::CTRL | Qt::SHIFT | Qt::Key_Comma, StepKind::problem,
      false);
  auto* longest = new QAction(tr("Longest pause"), this);
  longest->setShortcut(Qt::Key_L);
  connect(longest, &QAction::triggered, this, &Stepping::goToLongestPause);
  actions_ << longest;
}

void Stepping::add(const QString& text, const QKeySequence& key, StepKind kind, bool forward) {
  auto* action = new QAction(text, this);
  action->setShortcut(key);
  connect(action, &QAction::triggered, this, [this, kind, forward] { step(kind, forward); });
  actions_ << action;
}

void Stepping::step(StepKind kind, bool forward) {
  if (!session_.hasRecord()) {
    return;
  }
  const auto all = stopsOf(session_, kind);
  if (const Stop* next = neighbour(all, selection_.stretch(), forward)) {
    selection_.lookAtAll(next->stretch, next->what);
    emit stepped(next->stretch);
    return;
  }
  const QString none[] = {tr("There is no pause in this record."),
                          tr("There is no shock in this record."),
                          tr("There is no analysis in this record."),
                          tr("No problem of the file lies at a known time.")};
  const QString last[] = {
      tr("There is no further pause this way."), tr("There is no further shock this way."),
      tr("There is no further analysis this way."), tr("There is no further problem this way.")};
  const auto index = static_cast<std::size_t>(kind);
  emit nowhere(all.empty() ? none[index] : last[index]);
}

void Stepping::goToLongestPause() {
  if (!session_.hasRecord()) {
    return;
  }
  const auto all = stopsOf(session_, StepKind::pause);
  const auto longest = std::max_element(all.begin(), all.end(), [](const Stop& a, const Stop& b) {
    return a.stretch.length() < b.stretch.length();
  });
  if (longest == all.end()) {
    emit nowhere(tr("There is no pause in this record."));
    return;
  }
  selection_.lookAtAll(longest->stretch, longest->what);
  emit stepped(longest->stretch);
}

} // namespace afterbeat::window
