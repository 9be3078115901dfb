#include "core/signal/rhythm/hints.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace afterbeat {

namespace {

using namespace std::chrono_literals;

constexpr Duration kWindowLength = 8s;
constexpr Duration kStepLength = 2s;
/// From the begin of a window to the stretch it decides about.
constexpr Duration kBeforeMiddle = 3s;
/// How much of a window may be missing or clipped before it cannot be judged, be noise or among
/// needles before that is doubtful, and hold compressions; ours.
constexpr Duration kMostLost = 1600ms;
constexpr Duration kMostNoise = 2s;
constexpr Duration kMostSpikes = 1s;
constexpr Duration kMostCpr = 500ms;
constexpr std::ptrdiff_t kMostCompressions = 1;
/// From this rate on a wide rhythm is also fast; common practice, no source.
constexpr double kFastPerMin = 100;

/// Faults and compressions of a window.
class Obstacles {
public:
  explicit Obstacles(const RhythmInput& input) : input_(input) {}

  void look(RhythmWindow& w) {
    const auto& where = w.where;
    passFaultsBefore(where.begin);
    Duration missing{}, saturated{}, noise{}, spikes{};
    for (auto i = first_; i < input_.faults.size(); ++i) {
      const auto& fault = input_.faults[i];
      if (fault.where.begin >= where.end) {
        break;
      }
      auto& sum = fault.fault == SignalFault::saturated ? saturated
                  : fault.fault == SignalFault::noise   ? noise
                  : fault.fault == SignalFault::spikes  ? spikes
                                                        : missing;
      sum += shared(fault.where, where);
    }
    w.doubt = noise > kMostNoise     ? RhythmReason::noise
              : spikes > kMostSpikes ? RhythmReason::pacingSpikes
                                     : RhythmReason::none;
    w.obstacle = hasCompressions(where) ? RhythmReason::compressions
                 : missing + saturated > kMostLost
                     ? (missing > saturated ? RhythmReason::electrodes : RhythmReason::saturation)
                     : RhythmReason::none;
  }

private:
  /// Windows come in order within a run: faults that end before one are not looked at again, as
  /// long as no longer one before them is still going on.
  void passFaultsBefore(Time begin) {
    if (begin < lookedAt_) {
      first_ = 0;
    }
    lookedAt_ = begin;
    while (first_ < input_.faults.size() && input_.faults[first_].where.end <= begin) {
      ++first_;
    }
  }

  static Duration shared(const Interval& a, const Interval& b) {
    return std::max(Duration{}, std::min(a.end, b.end) - std::max(a.begin, b.begin));
  }

  [[nodiscard]] bool hasCompressions(const Interval& where) const {
    const auto& all = input_.compressions;
    const auto from = std::lower_bound(all.begin(), all.end(), where.begin);
    const auto to = std::upper_bound(from, all.end(), where.end);
    if (to - from > kMostCompressions) {
      return true;
    }
    Duration cpr{};
    for (const auto& stretch : input_.cpr) {
      cpr += shared(stretch, where);
    }
    return cpr > kMostCpr;
  }

  const RhythmInput& input_;
  std::size_t first_ = 0;
  Time lookedAt_ = Time::min();
};

bool isUsable(double rateHz) {
  return rateHz >= kLowestRhythmRateHz && rateHz <= kHighestRhythmRateHz;
}

Interval whole(const SignalView& run) {
  return {run.begin, run.timeAt(static_cast<double>(run.values.size()))};
}

/// Windows with more than `kMostLost` missing samples that no fault speaks of.
void lookForMissing(const SignalView& run, std::span<RhythmWindow> windows) {
  const auto most = static_cast<std::size_t>(seconds(kMostLost) * run.rateHz);
  std::vector<std::uint32_t> missingBefore{0};
  const auto step = seconds(kStepLength) * run.rateHz;
  std::size_t at = 0;
  std::uint32_t missing = 0;
  for (std::size_t k = 1; at < run.values.size(); ++k) {
    const auto end = std::min(
        run.values.size(), static_cast<std::size_t>(std::llround(step * static_cast<double>(k))));
    for (; at < end; ++at) {
      missing += isMeasured(run.values[at]) ? 0U : 1U;
    }
    missingBefore.push_back(missing);
  }
  for (std::size_t k = 0; k < windows.size(); ++k) {
    const auto end = std::min(k + 4, missingBefore.size() - 1);
    if (missingBefore[end] - missingBefore[k] > most && windows[k].obstacle == RhythmReason::none) {
      windows[k].obstacle = RhythmReason::electrodes;
    }
  }
}

std::vector<RhythmWindow> windowsOf(const SignalView& run, const RhythmInput& input) {
  std::vector<RhythmWindow> windows;
  if (!isUsable(run.rateHz)) {
    return windows;
  }
  const auto measured = measureWindows(atRhythmRate(run));
  windows.reserve(measured.size());
  Obstacles obstacles(input);
  for (std::size_t k = 0; k < measured.size(); ++k) {
    const auto begin = run.begin + static_cast<std::int64_t>(k) * kStepLength;
    windows.push_back({.where = {begin, begin + kWindowLength}, .measures = measured[k]});
    obstacles.look(windows.back());
  }
  lookForMissing(run, windows);
  return windows;
}

/// The rate that beats make in a stretch; 0 for fewer than three.
double rateOfBeats(std::span<const Time> beats, const Interval& where) {
  const auto from = std::lower_bound(beats.begin(), beats.end(), where.begin);
  const auto to = std::upper_bound(from, beats.end(), where.end);
  if (to - from < 3) {
    return 0;
  }
  std::vector<double> apart;
  for (auto beat = from + 1; beat != to; ++beat) {
    apart.push_back(seconds(*beat - *(beat - 1)));
  }
  const auto middle = apart.begin() + static_cast<std::ptrdiff_t>(apart.size() / 2);
  std::nth_element(apart.begin(), middle, apart.end());
  return *middle > 0 ? 60 / *middle : 0;
}

double medianRate(std::span<const RhythmWindow> windows, double (*rate)(const RhythmWindow&)) {
  std::vector<double> rates;
  for (const auto& w : windows) {
    if (const double r = rate(w); r > 0) {
      rates.push_back(r);
    }
  }
  if (rates.empty()) {
    return 0;
  }
  const auto middle = rates.begin() + static_cast<std::ptrdiff_t>(rates.size() / 2);
  std::nth_element(rates.begin(), middle, rates.end());
  return *middle;
}

/// The rate of wide rhythms, by their repetition; none where their waves follow each other so much
/// faster that it is several waves that repeat.
double repeatRate(const RhythmWindow& w) {
  const auto& m = w.measures;
  return isRegular(m) && m.repeat.ratePerMin >= 0.6 * 60 * m.crossingHz ? m.repeat.ratePerMin : 0;
}

double ownRate(const RhythmWindow& w) {
  return organisedRate(w.measures);
}

bool isMostlyRegular(std::span<const RhythmWindow> windows) {
  const auto regular = std::count_if(windows.begin(), windows.end(),
                                     [](const auto& w) { return isRegular(w.measures); });
  return 2 * static_cast<std::size_t>(regular) > windows.size();
}

/// How sure the windows are: 0 at even odds, 1 beyond doubt; an asystole the surer the flatter.
double qualityOf(std::span<const RhythmWindow> windows) {
  double sum = 0;
  for (const auto& w : windows) {
    if (w.is == RhythmKind::asystole) {
      sum += 1 - 0.5 * w.measures.amplitudeMv / rhythm_limits::kAsystoleMv;
    } else if (w.is != RhythmKind::unclear) {
      sum += std::fabs(std::tanh(w.smoothedLogOdds / 2));
    }
  }
  return sum / static_cast<double>(windows.size());
}

/// Rate and words of a rhythm; `windows` all say the same.
entry::Rhythm rhythmOf(std::span<const RhythmWindow> windows, const Interval& where,
                       std::span<const Time> beats) {
  const auto& first = windows.front();
  entry::Rhythm rhythm{
      .is = first.is, .ratePerMin = {}, .reason = std::string(wordsOf(first.reason))};
  const bool wide =
      first.is == RhythmKind::shockable || (first.is == RhythmKind::organised && first.wideAndFast);
  double rate = 0;
  if (wide && isMostlyRegular(windows)) {
    rate = medianRate(windows, repeatRate);
  } else if (first.is == RhythmKind::organised) {
    rate = rateOfBeats(beats, where);
    rate = rate > 0 ? rate : medianRate(windows, ownRate);
  }
  if (rate > 0) {
    rhythm.ratePerMin = std::round(rate);
  }
  if (wide && rate >= kFastPerMin) {
    rhythm.reason = "wide and fast, " + std::to_string(std::lround(rate)) + " per minute";
  }
  return rhythm;
}

Entry entryOf(std::span<const RhythmWindow> windows, const Interval& where,
              std::span<const Time> beats) {
  Entry entry;
  entry.t = where.begin;
  entry.end = where.end;
  entry.data = rhythmOf(windows, where, beats);
  entry.source = Source::derived;
  entry.hasTime = true;
  entry.quality = std::round(qualityOf(windows) * 1000) / 1000;
  entry.note = kHintCaution;
  return entry;
}

Entry unclear(const Interval& where, RhythmReason reason) {
  RhythmWindow w;
  w.reason = reason;
  return entryOf({&w, 1}, where, {});
}

bool saysTheSame(const RhythmWindow& a, const RhythmWindow& b) {
  return a.is == b.is && a.reason == b.reason &&
         (a.is != RhythmKind::organised || a.wideAndFast == b.wideAndFast);
}

} // namespace

std::vector<RhythmWindow> measuredWindows(const RhythmInput& input) {
  std::vector<RhythmWindow> windows;
  for (const auto& run : input.runs) {
    auto more = windowsOf(run, input);
    windows.insert(windows.end(), more.begin(), more.end());
  }
  return windows;
}

std::vector<Entry> rhythmEntries(std::span<const RhythmWindow> windows, const Interval& run,
                                 std::span<const Time> beats) {
  std::vector<Entry> entries;
  auto begin = run.begin;
  for (std::size_t first = 0, next = 0; first < windows.size(); first = next) {
    while (next < windows.size() && saysTheSame(windows[first], windows[next])) {
      ++next;
    }
    const auto end = next < windows.size() ? windows[next].where.begin + kBeforeMiddle : run.end;
    entries.push_back(entryOf(windows.subspan(first, next - first), {begin, end}, beats));
    begin = end;
  }
  return entries;
}

RhythmHints hintRhythm(const RhythmInput& input, const RhythmModel& model) {
  RhythmHints hints;
  for (const auto& run : input.runs) {
    if (run.values.empty()) {
      continue;
    }
    addRun(hints, windowsOf(run, input), {whole(run), run.rateHz}, input.beats, model);
  }
  return hints;
}

void addRun(RhythmHints& hints, std::vector<RhythmWindow> windows, const EcgRun& run,
            std::span<const Time> beats, const RhythmModel& model) {
  if (windows.empty()) {
    hints.entries.push_back(unclear(run.where, isUsable(run.rateHz) ? RhythmReason::tooShort
                                                                    : RhythmReason::samplingRate));
    return;
  }
  judgeWindows(windows, model);
  auto entries = rhythmEntries(windows, run.where, beats);
  std::move(entries.begin(), entries.end(), std::back_inserter(hints.entries));
  std::move(windows.begin(), windows.end(), std::back_inserter(hints.windows));
}

} // namespace afterbeat
