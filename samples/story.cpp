#include "samples/story.h"

#include "core/bytes/digest.h"

#include <algorithm>
#include <cassert>

namespace afterbeat::samples {

namespace {

/// Longest time between compressions of one run, and the shortest pause told: the pause threshold
/// of the figures may be set anywhere between without a change of the truth.
constexpr double kLongestInterval = 0.95;
constexpr Duration kThreshold{1'500'000};

/// One decimal, as a device would write it.
double tenths(double value) {
  return static_cast<double>(std::llround(value * 10)) / 10;
}

double along(double first, double last, double share) {
  return first + (last - first) * share;
}

} // namespace

Time at(double s) {
  return Time{Duration{std::llround(s * 1000) * 1000}};
}

Story::Story(std::string name, std::uint64_t seed) : dice(seed) {
  record.header.id = uuidFrom("afterbeat sample " + name + " " + std::to_string(seed));
  record.header.madeBy = "afterbeat-samples";
  record.header.synthetic = true;
}

void Story::happens(double s, EntryData what, Source source) {
  Entry entry;
  entry.t = at(s);
  entry.data = std::move(what);
  entry.source = source;
  record.entries.push_back(std::move(entry));
}

void Story::lasts(double from, double to, EntryData what, Source source) {
  happens(from, std::move(what), source);
  record.entries.back().end = at(to);
}

void Story::handsOnAt(Time t) {
  if (handsOff_ && t - *handsOff_ > kThreshold) {
    truth.pauses.push_back({*handsOff_, t, cause_});
  } else if (!handsOff_) {
    truth.pauses.push_back({Time::min(), t, cause_}); // from the window's begin
  }
  cause_ = "no_reason_recorded";
}

double Story::compress(double from, double until, const Hands& hands, int most) {
  Time t = at(from);
  handsOnAt(t);
  const Time last = at(until);
  const double length = std::max(until - from, 1e-3);
  for (int n = 0; n < most && t <= last; ++n) {
    const double share = std::clamp((seconds(t) - from) / length, 0.0, 1.0);
    entry::Compression c;
    if (hands.depth > 0) {
      c.depthMm =
          tenths(along(hands.depth, hands.depthEnd, share) + hands.depthSpread * dice.normal());
    }
    if (hands.leaning >= 0) {
      c.leaningMm = tenths(std::max(0.0, hands.leaning * (1 + 0.8 * dice.normal())));
    }
    happens(seconds(t), c);
    truth.compressions.push_back(record.entries.back());
    if (n > 0) {
      truth.intervals.push_back(t - *handsOff_);
    }
    handsOff_ = t;
    const double rate = along(hands.rate, hands.rateEnd, share);
    t = at(seconds(t) +
           std::clamp(60 / rate * (1 + hands.unsteady * dice.normal()), 0.3, kLongestInterval));
  }
  return seconds(*handsOff_);
}

double Story::withBreaths(double from, double until, const Hands& hands, int ratio, double gapLow,
                          double gapHigh) {
  double start = from;
  for (;;) {
    const double share = (start - from) / (until - from);
    Hands now = hands;
    now.rate = now.rateEnd = along(hands.rate, hands.rateEnd, share);
    now.depth = now.depthEnd = along(hands.depth, hands.depthEnd, share);
    const double gap = dice.between(gapLow, gapHigh);
    // Too late for another pair of breaths: this run goes on to the end.
    const bool isLast = start + 60.0 / now.rate * ratio + gap + 3 > until;
    const double last = compress(start, until, now, isLast ? 1'000'000 : ratio);
    if (isLast) {
      return last;
    }
    for (const double part : {0.32, 0.68}) {
      happens(last + gap * part, entry::Ventilation{});
      truth.breaths.push_back(record.entries.back().t);
    }
    start = last + gap;
    pauseBecause(at(start) - at(last) > Duration{10'000'000} ? "breaths_long" : "breaths");
  }
}

void Story::breathe(double from, double until, double every) {
  for (double s = from; s <= until; s += every * (1 + 0.08 * dice.normal())) {
    happens(s, entry::Ventilation{});
    truth.breaths.push_back(record.entries.back().t);
  }
}

void Story::keepGoing(double from, double to, std::optional<double> rate) {
  handsOnAt(at(from));
  lasts(from, to, entry::Cpr{rate});
  truth.stretches.emplace_back(at(from), at(to));
  truth.stretchRates.push_back(rate.value_or(0));
  handsOff_ = at(to);
}

void Story::analyse(double from, double to, Advice advice) {
  lasts(from, to, entry::Analysis{advice});
  ++truth.analyses;
  truth.advisingShock += advice == Advice::shock ? 1 : 0;
}

void Story::shock(double s, bool delivered, std::optional<double> energyJ,
                  std::optional<double> afterAdvice, std::string reason) {
  happens(s, entry::Shock{delivered, energyJ, std::nullopt, std::move(reason)});
  TrueShock shock;
  shock.t = at(s);
  shock.delivered = delivered;
  shock.energyJ = energyJ;
  if (delivered) {
    if (handsOff_) {
      shock.pre = shock.t - *handsOff_;
    }
    if (afterAdvice) {
      shock.adviceToShock = shock.t - at(s - *afterAdvice);
    }
  }
  truth.shocks.push_back(shock);
}

void Story::heart(double from, RhythmKind is, double rate, double amplitude, bool wide) {
  if (!truth.rhythm.empty()) {
    truth.rhythm.back().to = at(from);
  }
  truth.rhythm.push_back({at(from), at(from), is, rate, amplitude, wide});
}

void Story::finish(double windowBegin, double windowEnd, std::optional<double> circulation) {
  truth.windowBegin = at(windowBegin);
  truth.windowEnd = at(windowEnd);
  const Time arrestEnd = circulation ? at(*circulation) : truth.windowEnd;
  if (circulation) {
    truth.circulation = arrestEnd;
  }
  handsOnAt(arrestEnd);
  for (auto& pause : truth.pauses) {
    pause.from = std::max(pause.from, truth.windowBegin);
  }
  std::erase_if(truth.pauses, [](const TruePause& p) { return p.to - p.from <= kThreshold; });
  for (auto& shock : truth.shocks) {
    // Hands are off at a delivered shock: the pause it lies in ends with the next hands on.
    for (const auto& pause : truth.pauses) {
      if (shock.delivered && pause.from <= shock.t && shock.t <= pause.to &&
          pause.to != arrestEnd) {
        shock.post = pause.to - shock.t;
      }
    }
  }
  std::stable_sort(record.entries.begin(), record.entries.end(),
                   [](const Entry& a, const Entry& b) { return a.t < b.t; });
  Time last = Time::min();
  for (const auto& entry : record.entries) {
    last = std::max(last, entry.lastTime());
  }
  record.lastTime = last;
  if (!truth.rhythm.empty()) {
    truth.rhythm.back().to = last;
  }
}

} // namespace afterbeat::samples
