#include "core/signal/hands/entries.h"
#include "core/signal/hands/hands.h"
#include "core/signal/hands/together.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace afterbeat {
namespace {

constexpr std::array<std::string_view, 4> kBestFirst{"depth", "acceleration", "force", "impedance"};
/// Two channels' moments of one compression lie this close.
constexpr Duration kSame{250'000};
/// Holes shorter than this hide no pause.
constexpr Duration kShortestHole{500'000};
constexpr Duration kNotInUse{30'000'000};
constexpr std::size_t kManyPresses = 10;
constexpr double kSure = 0.6, kSecondChoice = 0.8;

Interval spanOf(const Channel& channel) {
  const SampleBlock& last = channel.blocks.back();
  return {channel.blocks.front().t, channel.timeOf(last, last.count)};
}

/// The parts of a channel that it can judge.
std::vector<Interval> judgedBy(const Channel& channel, const std::vector<Interval>& unusable) {
  std::vector<Interval> result;
  for (const Interval& part : withoutInteriors(spanOf(channel), unusable)) {
    if (part.length() > Duration{}) {
      result.push_back(part);
    }
  }
  return result;
}

/// Stretches in which the device itself says that the electrodes do not hold.
void addElectrodeFaults(const Record& record, Time end, Findings& findings) {
  std::optional<FaultyStretch> open;
  const auto close = [&](Time t) {
    if (open) {
      open->where.end = std::max(t, open->where.begin);
      findings.unusable.push_back(*open);
      open.reset();
    }
  };
  for (const Entry& entry : record.entries) {
    const auto* electrodes = entry.complete<entry::Electrodes>();
    if (electrodes == nullptr || !entry.hasTime || entry.source == Source::derived) {
      continue;
    }
    close(entry.t);
    if (electrodes->state == ElectrodeState::detached) {
      open = FaultyStretch{{entry.t, entry.t}, SignalFault::off};
    } else if (electrodes->state == ElectrodeState::poorContact) {
      open = FaultyStretch{{entry.t, entry.t}, SignalFault::poorContact};
    }
  }
  close(end);
}

/// Stretches in which circulation is said to have returned.
std::vector<Interval> circulationOf(const Record& record) {
  std::vector<Interval> beating;
  bool open = false;
  for (const Entry& entry : record.entries) {
    const auto* circulation = entry.complete<entry::Circulation>();
    if (circulation == nullptr || !entry.hasTime || !circulation->state) {
      continue;
    }
    const bool returned = *circulation->state == CirculationState::returned;
    if (returned && !open) {
      beating.push_back({entry.t, Time::max()});
    } else if (!returned && open) {
      beating.back().end = std::max(entry.t, beating.back().begin);
    }
    open = returned;
  }
  return beating;
}

std::vector<Time> timesOf(const std::vector<Entry>& entries) {
  std::vector<Time> result;
  for (const Entry& entry : entries) {
    result.push_back(entry.t);
  }
  return result;
}

/// A channel and what it tells.
struct Told {
  const Channel* channel = nullptr;
  Findings findings;
};

/// What has been chosen so far, best channels first.
class Choice {
public:
  void add(const Channel& channel, const Findings& findings) {
    spans_.push_back(spanOf(channel));
    const std::vector<Interval> judged = judgedBy(channel, unusableStretches(findings));
    addUnused(findings);
    for (const Entry& entry : findings.entries) {
      if (indexHolding(covered_, entry.t) < 0 && indexHolding(judged, entry.t) >= 0) {
        take(entry);
      }
    }
    covered_.insert(covered_.end(), judged.begin(), judged.end());
    covered_ = merged(std::move(covered_));
    faults_.insert(faults_.end(), findings.unusable.begin(), findings.unusable.end());
    settle();
  }

  [[nodiscard]] bool empty() const { return spans_.empty(); }
  [[nodiscard]] std::vector<Time> times() const { return timesOf(entries_); }

  [[nodiscard]] Findings result() && {
    Findings findings;
    Interval whole = spans_.front();
    for (const Interval& span : spans_) {
      whole = {std::min(whole.begin, span.begin), std::max(whole.end, span.end)};
    }
    findings.length = whole.length();
    findings.judged = total(covered_);
    findings.entries = std::move(entries_);
    for (const Interval& hole : withoutInteriors(whole, covered_)) {
      if (hole.length() > Duration{}) {
        findings.unusable.push_back({hole, reasonFor(hole)});
      }
      if (hole.length() >= kShortestHole) {
        findings.entries.push_back(exclusion(hole));
      }
    }
    return findings;
  }

private:
  static Entry exclusion(const Interval& hole) {
    Entry entry;
    entry.t = hole.begin;
    entry.end = hole.end;
    entry.source = Source::derived;
    entry.quality = 1;
    entry.data = entry::Excluded{ExclusionReason::notObserved};
    return entry;
  }

  void take(const Entry& entry) {
    const auto next = std::lower_bound(entries_.begin(), entries_.end(), entry.t - kSame,
                                       [](const Entry& e, Time t) { return e.t < t; });
    if (next == entries_.end() || next->t > entry.t + kSame) {
      taken_.push_back(entry);
    }
  }

  void settle() {
    entries_.insert(entries_.end(), taken_.begin(), taken_.end());
    taken_.clear();
    std::stable_sort(entries_.begin(), entries_.end(),
                     [](const Entry& a, const Entry& b) { return a.t < b.t; });
  }

  /// Presses that a worse channel is sure of where the better ones' sensors are not in use.
  void addUnused(const Findings& findings) {
    if (covered_.empty()) {
      return;
    }
    std::vector<Time> edges{Time::min()};
    for (const Entry& entry : entries_) {
      edges.push_back(entry.t);
    }
    edges.push_back(Time::max());
    auto entry = findings.entries.begin();
    for (std::size_t i = 1; i < edges.size(); ++i) {
      std::vector<Entry> inside;
      double quality = 0;
      for (; entry != findings.entries.end() && entry->t < edges[i]; ++entry) {
        if (indexHolding(covered_, entry->t) >= 0) {
          inside.push_back(*entry);
          quality += entry->quality.value_or(0);
        }
      }
      const bool longEnough = edges[i - 1] == Time::min() || edges[i] == Time::max() ||
                              edges[i] - edges[i - 1] >= kNotInUse;
      if (!longEnough || inside.size() < kManyPresses ||
          quality < kSure * static_cast<double>(inside.size())) {
        continue;
      }
      for (Entry& one : inside) {
        one.quality = one.quality.value_or(0) * kSecondChoice;
        take(one);
      }
    }
  }

  /// The fault that takes most of the hole.
  [[nodiscard]] SignalFault reasonFor(const Interval& hole) const {
    SignalFault reason = SignalFault::missing;
    Duration most{};
    for (const FaultyStretch& fault : faults_) {
      const Duration shared =
          std::min(fault.where.end, hole.end) - std::max(fault.where.begin, hole.begin);
      if (shared > most) {
        most = shared;
        reason = fault.fault;
      }
    }
    return reason;
  }

  std::vector<Interval> spans_, covered_;
  std::vector<FaultyStretch> faults_;
  std::vector<Entry> entries_, taken_;
};

Findings compressionsFrom(const Channel& channel, std::span<const Time> known,
                          const std::vector<Interval>& beating) {
  if (channel.quantity == "depth") {
    return compressionsFromDepth(channel);
  }
  if (channel.quantity == "acceleration") {
    return compressionsFromAcceleration(channel);
  }
  if (channel.quantity == "force") {
    return compressionsFromForce(channel);
  }
  return compressionsFromImpedance(channel, known, beating);
}

} // namespace

Findings handsFrom(const Record& record) {
  Choice choice;
  const std::vector<Interval> beating = circulationOf(record);
  const Channel* breathing = nullptr;
  // Acceleration waits for impedance, so that the two can be settled together.
  std::optional<Told> waiting;
  const auto believeWaiting = [&] {
    if (waiting) {
      choice.add(*waiting->channel, waiting->findings);
      waiting.reset();
    }
  };
  for (const std::string_view quantity : kBestFirst) {
    for (const Channel& channel : record.channels) {
      if (channel.quantity != quantity) {
        continue;
      }
      std::vector<Time> known = choice.times();
      if (known.empty() && waiting) {
        known = timesOf(waiting->findings.entries);
      }
      Findings findings = compressionsFrom(channel, known, beating);
      if (findings.length <= Duration{}) {
        continue;
      }
      if (quantity == "acceleration" && choice.empty() && !waiting) {
        waiting = Told{&channel, std::move(findings)};
        continue;
      }
      if (quantity == "impedance") {
        addElectrodeFaults(record, spanOf(channel).end, findings);
        breathing = breathing == nullptr ? &channel : breathing;
        if (waiting) {
          settleTogether(*waiting->channel, waiting->findings, channel, findings);
        }
      }
      believeWaiting();
      choice.add(channel, findings);
    }
  }
  believeWaiting();
  if (choice.empty()) {
    return {};
  }
  const std::vector<Time> compressions = choice.times();
  Findings result = std::move(choice).result();
  if (breathing != nullptr) {
    Findings electrodes;
    addElectrodeFaults(record, spanOf(*breathing).end, electrodes);
    const std::vector<Interval> off = unusableStretches(electrodes);
    for (Entry& breath : breathsFromImpedance(*breathing, compressions).entries) {
      if (indexHolding(off, breath.t) < 0) {
        result.entries.push_back(std::move(breath));
      }
    }
  }
  putInOrder(result);
  return result;
}

} // namespace afterbeat
