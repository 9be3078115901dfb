#include "core/signal/derive/derive.h"

#include "core/bytes/digest.h"
#include "core/signal/derive/hands_on.h"
#include "core/signal/ecg/beats.h"
#include "core/signal/ecg/quality.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace afterbeat {

namespace {

template <typename T>
bool holds(const Record& record, bool derivedToo) {
  return std::any_of(record.entries.begin(), record.entries.end(), [derivedToo](const Entry& e) {
    return e.complete<T>() != nullptr &&
           (e.source == Source::device || (derivedToo && e.source == Source::derived));
  });
}

/// An ECG channel in the detectors' unit: its runs and what is wrong with them.
struct EcgRead {
  std::size_t channel = 0;
  std::vector<std::vector<double>> values;
  std::vector<SignalView> runs;
  Rails rails;
  std::vector<FaultyStretch> faults;
  Duration length{}, judged{};
};

std::optional<EcgRead> readEcg(const Record& record, std::size_t index) {
  const Channel& channel = record.channels[index];
  const auto factor = factorToUsual(channel.quantity, channel.unit);
  if (channel.quantity != "ecg" || !channel.drawable || channel.blocks.empty() || !factor) {
    return std::nullopt;
  }
  EcgRead read;
  read.channel = index;
  read.values.resize(channel.blocks.size());
  RailLearner learner(channel.rateHz);
  for (std::size_t i = 0; i < channel.blocks.size(); ++i) {
    const SampleBlock& block = channel.blocks[i];
    readValues(channel, block, 0, block.count, *factor, read.values[i]);
    learner.add(read.values[i]);
    learner.endRun();
    read.runs.push_back({block.t, channel.rateHz, read.values[i]});
  }
  read.rails = learner.rails();
  std::vector<Interval> bad;
  for (const SignalView& run : read.runs) {
    for (FaultyStretch& fault : ecgFaults(run, read.rails)) {
      bad.push_back(fault.where);
      read.faults.push_back(fault);
    }
  }
  const Time last = read.runs.back().timeAt(static_cast<double>(read.runs.back().values.size()));
  read.length = last - read.runs.front().begin;
  for (const SignalView& run : read.runs) {
    read.judged += run.timeAt(static_cast<double>(run.values.size())) - run.begin;
  }
  read.judged -= total(merged(std::move(bad)));
  return read;
}

/// The lead that can be judged longest; of equals the first.
std::optional<EcgRead> bestEcg(const Record& record) {
  std::optional<EcgRead> best;
  for (std::size_t i = 0; i < record.channels.size(); ++i) {
    if (auto read = readEcg(record, i); read && (!best || read->judged > best->judged)) {
      best = std::move(read);
    }
  }
  return best;
}

/// Derived before, of a kind that is derived anew.
bool isReplaced(const Entry& entry, const DeriveWhat& what) {
  if (entry.source != Source::derived) {
    return false;
  }
  return (what.compressions && (std::holds_alternative<entry::Compression>(entry.data) ||
                                std::holds_alternative<entry::Excluded>(entry.data))) ||
         (what.ventilations && std::holds_alternative<entry::Ventilation>(entry.data)) ||
         (what.rhythm && std::holds_alternative<entry::Rhythm>(entry.data));
}

/// Hands on the chest as the record and what was just derived tell: single moments and stretches.
struct HandsKnown {
  std::vector<Time> compressions;
  std::vector<Interval> cpr;
};

HandsKnown handsKnown(const Record& record, const Derived& derived) {
  HandsKnown known;
  const auto take = [&known](const Entry& entry) {
    if (entry.complete<entry::Compression>()) {
      known.compressions.push_back(entry.t);
    } else if (entry.complete<entry::Cpr>()) {
      known.cpr.push_back({entry.t, entry.lastTime()});
    }
  };
  for (const Entry& entry : record.entries) {
    if (!isReplaced(entry, derived.what)) {
      take(entry);
    }
  }
  std::for_each(derived.entries.begin(), derived.entries.end(), take);
  std::sort(known.compressions.begin(), known.compressions.end());
  known.cpr = merged(std::move(known.cpr));
  return known;
}

std::vector<Interval> movedStretches(const HandsKnown& hands) {
  std::vector<Interval> moved = movedByCompressions(hands.compressions);
  moved.insert(moved.end(), hands.cpr.begin(), hands.cpr.end());
  return merged(std::move(moved));
}

/// The run that holds a moment, else the last that begins before it.
const SignalView* runAt(const EcgRead& ecg, Time t) {
  const SignalView* found = nullptr;
  for (const SignalView& run : ecg.runs) {
    if (run.begin <= t) {
      found = &run;
    }
  }
  return found;
}

/// The part of a run that ends at the shock, for the fibrillation it was given for: judged by
/// itself, as faults are found by the second, and the shock's own artefact would spoil the second
/// before it.
SignalView before(const SignalView& run, Time shock) {
  constexpr Duration kEnough{12'000'000};
  const auto count = static_cast<double>(run.values.size());
  const auto index = [&](Time t) {
    return static_cast<std::size_t>(std::clamp(std::ceil(run.indexOf(t)), 0.0, count));
  };
  const std::size_t from = index(shock - kEnough), to = index(shock);
  return {run.timeAt(static_cast<double>(from)), run.rateHz, run.values.subspan(from, to - from)};
}

std::vector<ShockRhythm> aroundShocks(const Record& record, const EcgRead& ecg,
                                      const std::vector<Entry>& hints,
                                      const std::vector<Interval>& moved) {
  std::vector<Time> shocks;
  for (const Entry& entry : record.entries) {
    const auto* shock = entry.complete<entry::Shock>();
    if (shock != nullptr && shock->delivered == true) {
      shocks.push_back(entry.t);
    }
  }
  std::vector<ShockRhythm> judged;
  for (std::size_t i = 0; i < shocks.size(); ++i) {
    const auto next = i + 1 < shocks.size() ? std::optional{shocks[i + 1]} : std::nullopt;
    if (const SignalView* run = runAt(ecg, shocks[i])) {
      const SignalView part = before(*run, shocks[i]);
      const std::vector<FaultyStretch> faults = ecgFaults(part, ecg.rails);
      judged.push_back(judgeShock(shocks[i], next, hints, part, faults, moved));
    }
  }
  return judged;
}

void deriveRhythm(const Record& record, Derived& derived) {
  const auto ecg = bestEcg(record);
  if (!ecg) {
    return;
  }
  const HandsKnown hands = handsKnown(record, derived);
  std::vector<Time> beats;
  for (const SignalView& run : ecg->runs) {
    for (const Beat& beat : findBeats(run)) {
      beats.push_back(beat.at);
    }
  }
  RhythmHints hints = hintRhythm({ecg->runs, ecg->faults, hands.compressions, hands.cpr, beats});
  derived.ecg = ecg->channel;
  derived.ecgFaults = ecg->faults;
  derived.windows = std::move(hints.windows);
  derived.shocks = aroundShocks(record, *ecg, hints.entries, movedStretches(hands));
  const Channel& channel = record.channels[ecg->channel];
  SignalCoverage& coverage = derived.rhythm.emplace();
  coverage.channels = {channel.label.empty() ? channel.id : channel.label};
  coverage.length = ecg->length;
  for (const Entry& hint : hints.entries) {
    const auto* rhythm = hint.complete<entry::Rhythm>();
    if (rhythm != nullptr && rhythm->is != RhythmKind::unclear) {
      coverage.judged += hint.lastTime() - hint.t;
    }
  }
  std::move(hints.entries.begin(), hints.entries.end(), std::back_inserter(derived.entries));
}

void sortByTime(std::vector<Entry>& entries) {
  std::stable_sort(entries.begin(), entries.end(),
                   [](const Entry& a, const Entry& b) { return a.t < b.t; });
}

} // namespace

DeriveWhat whatToDerive(const Record& record, DeriveMode mode) {
  if (mode == DeriveMode::never) {
    return {};
  }
  if (mode == DeriveMode::always) {
    return DeriveWhat::all();
  }
  return {!holds<entry::Compression>(record, true) && !holds<entry::Cpr>(record, false),
          !holds<entry::Ventilation>(record, true), !holds<entry::Rhythm>(record, true)};
}

Derived derive(const Record& record, const DeriveWhat& what) {
  Derived derived;
  derived.what = what;
  if (what.compressions) {
    HandsFound found = compressionsOf(record);
    derived.compressions = found.coverage;
    if (found.coverage && !holds<entry::Compression>(record, false)) {
      std::vector<Entry> excluded = notObserved(record, found.entries, found.judged);
      std::move(excluded.begin(), excluded.end(), std::back_inserter(derived.entries));
    }
    std::move(found.entries.begin(), found.entries.end(), std::back_inserter(derived.entries));
  }
  if (what.ventilations) {
    HandsFound found = breathsOf(record, handsKnown(record, derived).compressions);
    derived.ventilations = found.coverage;
    std::move(found.entries.begin(), found.entries.end(), std::back_inserter(derived.entries));
  }
  if (what.rhythm) {
    deriveRhythm(record, derived);
  }
  sortByTime(derived.entries);
  return derived;
}

void addDerived(Record& record, const Derived& derived) {
  auto& entries = record.entries;
  entries.erase(std::remove_if(entries.begin(), entries.end(),
                               [&derived](const Entry& e) { return isReplaced(e, derived.what); }),
                entries.end());
  const auto before = static_cast<std::ptrdiff_t>(entries.size());
  entries.insert(entries.end(), derived.entries.begin(), derived.entries.end());
  // Entries without a time stay where they are: behind the one before them.
  Time last{};
  std::vector<std::pair<Time, std::size_t>> order;
  order.reserve(entries.size());
  for (std::size_t i = 0; i < entries.size(); ++i) {
    if (static_cast<std::ptrdiff_t>(i) == before) {
      last = Time{};
    }
    last = entries[i].hasTime ? entries[i].t : last;
    order.emplace_back(last, i);
  }
  std::sort(order.begin(), order.end());
  std::vector<Entry> sorted;
  sorted.reserve(entries.size());
  for (const auto& [t, i] : order) {
    sorted.push_back(std::move(entries[i]));
  }
  entries = std::move(sorted);
}

void makeDerivedLog(Record& record, const Derived& derived, const std::string& sha256,
                    std::size_t errors) {
  addDerived(record, derived);
  Header& header = record.header;
  const DeriveWhat& what = derived.what;
  const std::string seed = fmt::format("derive {} {} {}{}{}", header.id, sha256, what.compressions,
                                       what.ventilations, what.rhythm);
  header.derivedFrom = {header.id, sha256, static_cast<double>(errors)};
  header.id = uuidFrom(seed);
  header.madeBy = "Afterbeat";
}

} // namespace afterbeat
