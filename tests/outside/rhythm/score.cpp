#include "score.h"

#include "fit.h"

#include <algorithm>
#include <map>
#include <random>

namespace afterbeat {

namespace {

void count(Score& score, RhythmKind is) {
  switch (is) {
  case RhythmKind::shockable:
    ++score.shockable;
    break;
  case RhythmKind::organised:
    ++score.organised;
    break;
  case RhythmKind::asystole:
    ++score.asystole;
    break;
  case RhythmKind::unclear:
    ++score.unclear;
    break;
  }
}

int right(const Score& score, bool shockable) {
  return shockable ? score.shockable : score.organised + score.asystole;
}

std::optional<double> percent(int part, int whole) {
  return whole > 0 ? std::optional<double>{100.0 * part / whole} : std::nullopt;
}

std::map<std::string, Score> byRecord(const std::vector<LabelledSignal>& signals,
                                      RhythmClass scored, const Selection& selection) {
  std::map<std::string, Score> scores;
  for (const auto& signal : signals) {
    if ((!selection.database.empty() && signal.database != selection.database) ||
        (signal.doubtful() && !selection.withDoubtful) ||
        (signal.signal > 0 && selection.firstSignalOnly)) {
      continue;
    }
    for (const auto& w : signal.windows) {
      if (w.scored == scored && (selection.withDisputed || !w.disputed)) {
        count(scores[signal.record], w.window.is);
      }
    }
  }
  return scores;
}

} // namespace

void Score::add(const Score& other) {
  shockable += other.shockable;
  organised += other.organised;
  asystole += other.asystole;
  unclear += other.unclear;
  records += other.records;
}

void crossValidate(std::vector<LabelledSignal>& signals, HeldOut heldOut) {
  std::map<std::string, RhythmModel> models;
  std::vector<RhythmWindow> windows;
  for (auto& signal : signals) {
    const auto& unseen = heldOut == HeldOut::record ? signal.record : signal.database;
    if (!models.contains(unseen)) {
      models[unseen] = fitModel(examplesOf(signals, unseen));
    }
    windows.clear();
    for (const auto& w : signal.windows) {
      windows.push_back(w.window);
    }
    judgeWindows(windows, models[unseen]);
    for (std::size_t i = 0; i < windows.size(); ++i) {
      signal.windows[i].window = windows[i];
    }
  }
}

bool oughtToBeShockable(RhythmClass scored) {
  return scored == RhythmClass::fibrillation || scored == RhythmClass::fineFibrillation ||
         scored == RhythmClass::fastTachycardia;
}

Score scoreOf(const std::vector<LabelledSignal>& signals, RhythmClass scored,
              const Selection& selection) {
  Score sum;
  for (const auto& [record, score] : byRecord(signals, scored, selection)) {
    sum.add(score);
    ++sum.records;
  }
  return sum;
}

std::optional<double> percentOfDecided(const Score& score, bool shockable) {
  return percent(right(score, shockable), score.decided());
}

std::optional<double> percentOfAll(const Score& score, bool shockable) {
  return percent(right(score, shockable), score.all());
}

double percentUnclear(const Score& score) {
  return percent(score.unclear, score.all()).value_or(0);
}

std::optional<Limits> limitsOf(const std::vector<LabelledSignal>& signals, RhythmClass scored,
                               const Selection& selection) {
  constexpr int kDraws = 2000;
  std::vector<Score> scores;
  for (const auto& [record, score] : byRecord(signals, scored, selection)) {
    scores.push_back(score);
  }
  if (scores.size() < 2) {
    return std::nullopt;
  }
  std::mt19937 dice{1997};
  std::vector<double> percents;
  for (int draw = 0; draw < kDraws; ++draw) {
    Score sum;
    for (std::size_t i = 0; i < scores.size(); ++i) {
      sum.add(scores[dice() % scores.size()]);
    }
    if (const auto value = percentOfDecided(sum, oughtToBeShockable(scored))) {
      percents.push_back(*value);
    }
  }
  if (percents.empty()) {
    return std::nullopt;
  }
  std::sort(percents.begin(), percents.end());
  return Limits{percents[percents.size() / 20],
                percents[percents.size() - 1 - percents.size() / 20]};
}

Score scoreOfFlat(const std::vector<LabelledSignal>& signals) {
  Score score;
  for (const auto& signal : signals) {
    for (const auto& w : signal.windows) {
      if (w.window.obstacle == RhythmReason::none && w.window.doubt == RhythmReason::none &&
          isFlat(w.window.measures)) {
        count(score, w.window.is);
      }
    }
  }
  return score;
}

} // namespace afterbeat
