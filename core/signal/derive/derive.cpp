#include "core/signal/derive/derive.h"

#include "core/bytes/digest.h"
#include "core/signal/derive/ecg_of_record.h"
#include "core/signal/derive/hands_on.h"

#include <algorithm>

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

/// The ECG up to each shock is judged by itself: faults are found by the second, and the shock's
/// own artefact would spoil the second before it.
std::vector<ShockRhythm> aroundShocks(const Record& record, const EcgChannel& ecg,
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
    constexpr Duration kEnough{12'000'000};
    const EcgPart part = ecgBetween(record, ecg, shocks[i] - kEnough, shocks[i]);
    const std::vector<FaultyStretch> faults = ecgFaults(part.view(), ecg.rails);
    judged.push_back(judgeShock(shocks[i], next, hints, part.view(), faults, moved));
  }
  return judged;
}

void deriveRhythm(const Record& record, Derived& derived) {
  const auto ecg = bestEcg(record);
  if (!ecg) {
    return;
  }
  const HandsKnown hands = handsKnown(record, derived);
  RhythmHints hints = hintsOf(record, *ecg, hands.compressions, hands.cpr);
  derived.ecg = ecg->index;
  derived.ecgFaults = ecg->faults;
  derived.windows = std::move(hints.windows);
  derived.shocks = aroundShocks(record, *ecg, hints.entries, movedStretches(hands));
  const Channel& channel = record.channels[ecg->index];
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

std::string_view name(DeriveMode mode) {
  switch (mode) {
  case DeriveMode::never:
    return "never";
  case DeriveMode::always:
    return "always";
  case DeriveMode::automatic:
    break;
  }
  return "auto";
}

DeriveMode deriveModeFrom(std::string_view word) {
  return word == "never"    ? DeriveMode::never
         : word == "always" ? DeriveMode::always
                            : DeriveMode::automatic;
}

DeriveWhat whatSignalsMightTell(const Record& record, DeriveWhat what) {
  const auto any = [&record](std::initializer_list<std::string_view> quantities) {
    return std::any_of(record.channels.begin(), record.channels.end(),
                       [&quantities](const Channel& channel) {
                         return channel.drawable && factorToUsual(channel.quantity, channel.unit) &&
                                std::find(quantities.begin(), quantities.end(), channel.quantity) !=
                                    quantities.end();
                       });
  };
  what.compressions = what.compressions && any({"depth", "acceleration", "force", "impedance"});
  what.ventilations = what.ventilations && any({"impedance"});
  what.rhythm = what.rhythm && any({"ecg"});
  return what;
}

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
