#include "tests/outside/hands_score.h"

#include "core/measures/figures.h"
#include "core/signal/hands/hands.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace afterbeat::hands_score {

namespace {

using samples::body::Scene;

constexpr Duration kCompressionTolerance{250'000}, kBreathTolerance{1'500'000};
constexpr double kNothing = std::numeric_limits<double>::quiet_NaN();

/// What a detector found, taken apart.
struct Found {
  std::vector<Time> moments;
  std::vector<entry::Compression> compressions;
  std::vector<Interval> excluded;
};

template <typename What>
Found foundIn(const Findings& findings) {
  Found found;
  for (const auto& e : findings.entries) {
    if (std::holds_alternative<What>(e.data)) {
      found.moments.push_back(e.t);
      if constexpr (std::is_same_v<What, entry::Compression>) {
        found.compressions.push_back(std::get<What>(e.data));
      }
    } else if (std::holds_alternative<entry::Excluded>(e.data)) {
      found.excluded.push_back({e.t, e.lastTime()});
    }
  }
  found.excluded = merged(std::move(found.excluded));
  return found;
}

std::vector<Time> outside(const std::vector<Time>& moments, const std::vector<Interval>& off) {
  std::vector<Time> kept;
  for (const Time t : moments) {
    if (indexHolding(off, t) < 0) {
      kept.push_back(t);
    }
  }
  return kept;
}

/// The hands-off fraction as the figures give it for a record that holds just this.
std::optional<double> handsOff(const std::vector<Time>& compressions, const Interval& window,
                               const std::vector<Interval>& excluded) {
  Record record;
  const auto put = [&](Time t, std::optional<Time> end, EntryData data) {
    Entry e;
    e.t = t;
    e.end = end;
    e.data = std::move(data);
    e.source = Source::derived;
    record.entries.push_back(std::move(e));
  };
  put(window.begin, {}, entry::Electrodes{ElectrodeState::attached, {}});
  put(window.end, window.end, entry::Analysis{Advice::noShock});
  for (const Time t : compressions) {
    put(t, {}, entry::Compression{});
  }
  for (const auto& e : excluded) {
    put(e.begin, e.end, entry::Excluded{ExclusionReason::notObserved});
  }
  std::stable_sort(record.entries.begin(), record.entries.end(),
                   [](const Entry& a, const Entry& b) { return a.t < b.t; });
  record.lastTime = window.end;
  return computeFigures(record)[MeasureId::handsOffFraction].value;
}

/// Rates over five intervals in a row, true against found.
void addRates(const std::vector<Time>& truths, const std::vector<Time>& found,
              const std::vector<int>& foundFor, std::vector<double>& errors) {
  constexpr std::size_t kIntervals = 5;
  const Duration longest{std::llround(samples::body::kLongestBeat * 1e6)};
  for (std::size_t i = 0; i + kIntervals < truths.size(); ++i) {
    bool whole = foundFor[i] >= 0;
    for (std::size_t k = i + 1; whole && k <= i + kIntervals; ++k) {
      whole = truths[k] - truths[k - 1] <= longest && foundFor[k] == foundFor[k - 1] + 1;
    }
    if (!whole) {
      continue;
    }
    const auto at = [&](std::size_t k) { return found[static_cast<std::size_t>(foundFor[k])]; };
    const double rate = 300 / seconds(truths[i + kIntervals] - truths[i]);
    if (rate >= 80 && rate <= 140) {
      errors.push_back(std::fabs(300 / seconds(at(i + kIntervals) - at(i)) - rate));
    }
  }
}

/// What the channel could know of each compression.
struct Knowable {
  /// mm; empty: nothing.
  std::vector<double> depth;
  bool leaning = false;
  std::vector<Interval> off;
};

void addCompressions(const Scene& scene, const Findings& findings, const Knowable& knowable,
                     CompressionScore& score) {
  const Found found = foundIn<entry::Compression>(findings);
  std::vector<Time> truths;
  std::vector<std::size_t> index;
  for (std::size_t i = 0; i < scene.truth.compressions.size(); ++i) {
    const Time t = scene.truth.compressions[i].t;
    if (indexHolding(knowable.off, t) < 0) {
      truths.push_back(t);
      index.push_back(i);
    }
  }
  const Matching m = match(truths, found.moments, kCompressionTolerance);
  score.counts.add(m);
  for (std::size_t i = 0; i < truths.size(); ++i) {
    if (m.foundFor[i] < 0) {
      continue;
    }
    const auto k = static_cast<std::size_t>(m.foundFor[i]);
    const auto& c = found.compressions[k];
    score.time.push_back(std::fabs(seconds(found.moments[k] - truths[i])));
    if (!knowable.depth.empty() && c.depthMm) {
      score.depth.push_back(std::fabs(*c.depthMm - knowable.depth[index[i]]));
    }
    if (knowable.leaning && c.leaningMm) {
      const auto& told = std::get<entry::Compression>(scene.truth.compressions[index[i]].data);
      score.leaning.push_back(std::fabs(*c.leaningMm - *told.leaningMm));
    }
  }
  addRates(truths, found.moments, m.foundFor, score.rate);
  const auto truly = handsOff(truths, scene.window, knowable.off);
  std::vector<Interval> excluded = found.excluded;
  excluded.insert(excluded.end(), knowable.off.begin(), knowable.off.end());
  const auto measured = handsOff(found.moments, scene.window, merged(std::move(excluded)));
  if (truly) {
    score.handsOff.push_back(measured ? *measured - *truly : 1);
  }
  score.judged += seconds(findings.judged);
  score.length += seconds(findings.length);
}

template <typename T>
void append(const std::vector<T>& from, std::vector<T>& into) {
  into.insert(into.end(), from.begin(), from.end());
}

void add(const CompressionScore& from, CompressionScore& into) {
  into.counts.truths += from.counts.truths;
  into.counts.found += from.counts.found;
  into.counts.matched += from.counts.matched;
  append(from.time, into.time);
  append(from.depth, into.depth);
  append(from.rate, into.rate);
  append(from.leaning, into.leaning);
  append(from.handsOff, into.handsOff);
  into.judged += from.judged;
  into.length += from.length;
}

} // namespace

Matching match(const std::vector<Time>& truths, const std::vector<Time>& found,
               Duration tolerance) {
  struct Pair {
    Duration apart;
    std::size_t truth, found;
  };
  std::vector<Pair> pairs;
  std::size_t first = 0;
  for (std::size_t i = 0; i < truths.size(); ++i) {
    while (first < found.size() && truths[i] - found[first] > tolerance) {
      ++first;
    }
    for (std::size_t k = first; k < found.size() && found[k] - truths[i] <= tolerance; ++k) {
      const Duration apart = found[k] - truths[i];
      pairs.push_back({apart < Duration{} ? -apart : apart, i, k});
    }
  }
  std::stable_sort(pairs.begin(), pairs.end(),
                   [](const Pair& a, const Pair& b) { return a.apart < b.apart; });
  Matching m;
  m.truths = static_cast<int>(truths.size());
  m.found = static_cast<int>(found.size());
  m.foundFor.assign(truths.size(), -1);
  std::vector<bool> taken(found.size());
  for (const Pair& p : pairs) {
    if (m.foundFor[p.truth] < 0 && !taken[p.found]) {
      m.foundFor[p.truth] = static_cast<int>(p.found);
      taken[p.found] = true;
      ++m.matched;
    }
  }
  return m;
}

void addScene(const Scene& scene, Score& score) {
  const std::vector<double> chestAlone = samples::body::travelOf(scene.body.presses);
  addCompressions(scene, compressionsFromAcceleration(scene.acceleration),
                  {scene.travel, false, {}}, score.acceleration);
  addCompressions(scene, compressionsFromDepth(scene.depth), {chestAlone, true, {}}, score.depth);
  addCompressions(scene, compressionsFromForce(scene.force), {}, score.force);
  const Findings pads = compressionsFromImpedance(scene.impedance);
  addCompressions(scene, pads, {{}, false, scene.padsOff}, score.impedance);
  Record record;
  record.channels = {scene.acceleration, scene.impedance};
  addCompressions(scene, handsFrom(record), {scene.travel, false, {}}, score.both);
  const auto hands = foundIn<entry::Compression>(pads).moments;
  const auto breaths =
      foundIn<entry::Ventilation>(breathsFromImpedance(scene.impedance, hands)).moments;
  std::vector<Time> middles;
  for (const auto& b : scene.body.breaths) {
    middles.push_back(*timeFromSeconds(b.s + b.inflation / 2));
  }
  middles = outside(middles, scene.padsOff);
  const Matching m = match(middles, breaths, kBreathTolerance);
  score.breaths.add(m);
  for (std::size_t i = 0; i < middles.size(); ++i) {
    if (m.foundFor[i] >= 0) {
      score.breathTime.push_back(
          seconds(breaths[static_cast<std::size_t>(m.foundFor[i])] - middles[i]));
    }
  }
}

void add(const Score& from, Score& into) {
  add(from.acceleration, into.acceleration);
  add(from.depth, into.depth);
  add(from.force, into.force);
  add(from.impedance, into.impedance);
  add(from.both, into.both);
  into.breaths.truths += from.breaths.truths;
  into.breaths.found += from.breaths.found;
  into.breaths.matched += from.breaths.matched;
  append(from.breathTime, into.breathTime);
}

double quantile(std::vector<double> values, double share) {
  if (values.empty()) {
    return kNothing;
  }
  std::sort(values.begin(), values.end());
  const double at = share * static_cast<double>(values.size() - 1);
  const auto low = static_cast<std::size_t>(at);
  const std::size_t high = std::min(low + 1, values.size() - 1);
  return values[low] + (at - static_cast<double>(low)) * (values[high] - values[low]);
}

double mean(const std::vector<double>& values) {
  return values.empty() ? kNothing
                        : std::accumulate(values.begin(), values.end(), 0.0) /
                              static_cast<double>(values.size());
}

double shareWithin(const std::vector<double>& values, double limit) {
  if (values.empty()) {
    return kNothing;
  }
  const auto n = std::count_if(values.begin(), values.end(),
                               [limit](double v) { return std::fabs(v) <= limit; });
  return static_cast<double>(n) / static_cast<double>(values.size());
}

std::vector<Goal> goalsOf(const Score& s) {
  return {
      {"acceleration: F1", 0.99, s.acceleration.counts.f1()},
      {"acceleration: median time error, s", 0.030, quantile(s.acceleration.time, 0.5), false},
      {"acceleration: median depth error, mm", 2, quantile(s.acceleration.depth, 0.5), false},
      {"acceleration: mean rate error 80-140/min", 1.5, mean(s.acceleration.rate), false},
      {"acceleration: hands-off within 0.02", 0.95, shareWithin(s.acceleration.handsOff, 0.02)},
      {"impedance: F1", 0.97, s.impedance.counts.f1()},
      {"impedance: hands-off within 0.02", 0.95, shareWithin(s.impedance.handsOff, 0.02)},
      {"acceleration and impedance: F1", 0.99, s.both.counts.f1()},
      {"acceleration and impedance: hands-off within 0.02", 0.95,
       shareWithin(s.both.handsOff, 0.02)},
      {"breaths: sensitivity", 0.93, s.breaths.sensitivity()},
      {"breaths: predictivity", 0.93, s.breaths.predictivity()},
  };
}

} // namespace afterbeat::hands_score
