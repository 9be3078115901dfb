#include "core/signal/derive/hands_on.h"

#include "core/signal/hands/hands.h"
#include "core/signal/signal_view.h"

#include <algorithm>
#include <array>

namespace afterbeat {

namespace {

constexpr std::array<std::string_view, 4> kTellCompressions{"depth", "acceleration", "force",
                                                            "impedance"};

std::string nameOf(const Channel& channel) {
  return channel.label.empty() ? channel.id : channel.label;
}

std::vector<Interval> blocksOf(const Channel& channel) {
  std::vector<Interval> blocks;
  for (const SampleBlock& block : channel.blocks) {
    if (block.count > 0) {
      blocks.push_back({block.t, channel.timeOf(block, block.count - 1)});
    }
  }
  return merged(std::move(blocks));
}

/// The parts of `whole` (sorted, apart) outside `holes`.
std::vector<Interval> without(const std::vector<Interval>& whole, std::vector<Interval> holes) {
  holes = merged(std::move(holes));
  std::vector<Interval> parts;
  for (const Interval& one : whole) {
    for (const Interval& part : withoutInteriors(one, holes)) {
      if (part.length() > Duration::zero()) {
        parts.push_back(part);
      }
    }
  }
  return parts;
}

/// The channels that can tell, in the order of `quantities`.
template <typename Quantities>
std::vector<const Channel*> channelsOf(const Record& record, const Quantities& quantities) {
  std::vector<const Channel*> found;
  for (const std::string_view quantity : quantities) {
    for (const Channel& channel : record.channels) {
      if (channel.drawable && channel.quantity == quantity && !channel.blocks.empty() &&
          factorToUsual(channel.quantity, channel.unit)) {
        found.push_back(&channel);
      }
    }
  }
  return found;
}

/// From the first sample of these channels to the last, less what could not be judged.
void cover(HandsFound& found, const std::vector<const Channel*>& read,
           const std::vector<FaultyStretch>& unusable) {
  std::vector<Interval> recorded, holes;
  SignalCoverage& coverage = found.coverage.emplace();
  for (const Channel* channel : read) {
    const std::vector<Interval> blocks = blocksOf(*channel);
    recorded.insert(recorded.end(), blocks.begin(), blocks.end());
    coverage.channels.push_back(nameOf(*channel));
  }
  recorded = merged(std::move(recorded));
  for (const FaultyStretch& fault : unusable) {
    holes.push_back(fault.where);
  }
  found.judged = without(recorded, std::move(holes));
  coverage.length = recorded.empty() ? Duration{} : recorded.back().end - recorded.front().begin;
  coverage.judged = total(found.judged);
}

/// Moves the entries of one type out of findings.
template <typename T>
std::vector<Entry> only(Findings& findings) {
  std::vector<Entry> entries;
  for (Entry& entry : findings.entries) {
    if (entry.complete<T>()) {
      entries.push_back(std::move(entry));
    }
  }
  return entries;
}

/// A sign that the rescue was going on.
bool isSign(const Entry& entry) {
  if (const auto* electrodes = entry.complete<entry::Electrodes>()) {
    return electrodes->state == ElectrodeState::attached;
  }
  if (const auto* shock = entry.complete<entry::Shock>()) {
    return shock->delivered == true;
  }
  return entry.complete<entry::Analysis>() || entry.complete<entry::Compression>() ||
         entry.complete<entry::Cpr>();
}

void extend(std::optional<Interval>& span, const Entry& entry) {
  const Time end =
      std::holds_alternative<entry::Electrodes>(entry.data) ? entry.t : entry.lastTime();
  span = span ? Interval{std::min(span->begin, entry.t), std::max(span->end, end)}
              : Interval{entry.t, end};
}

} // namespace

HandsFound compressionsOf(const Record& record) {
  HandsFound found;
  const auto read = channelsOf(record, kTellCompressions);
  Findings findings = handsFrom(record);
  if (read.empty() || findings.length <= Duration::zero()) {
    return found;
  }
  cover(found, read, findings.unusable);
  found.entries = only<entry::Compression>(findings);
  return found;
}

HandsFound breathsOf(const Record& record, std::span<const Time> compressions) {
  HandsFound found;
  const auto read = channelsOf(record, std::array<std::string_view, 1>{"impedance"});
  if (read.empty()) {
    return found;
  }
  Findings findings = breathsFromImpedance(*read.front(), compressions);
  if (findings.length <= Duration::zero()) {
    return found;
  }
  cover(found, {read.front()}, findings.unusable);
  found.entries = only<entry::Ventilation>(findings);
  return found;
}

std::vector<Entry> notObserved(const Record& record, const std::vector<Entry>& compressions,
                               const std::vector<Interval>& judged) {
  constexpr Duration kLeast{500'000};
  std::optional<Interval> span;
  std::vector<Interval> seen = judged;
  for (const Entry& entry : record.entries) {
    if (!entry.hasTime || entry.source == Source::derived) {
      continue;
    }
    if (isSign(entry)) {
      extend(span, entry);
    }
    if (entry.complete<entry::Cpr>() || entry.complete<entry::Excluded>()) {
      seen.push_back({entry.t, entry.lastTime()});
    }
  }
  for (const Entry& entry : compressions) {
    extend(span, entry);
  }
  std::vector<Entry> excluded;
  if (!span) {
    return excluded;
  }
  for (const Interval& hole : without({*span}, seen)) {
    if (hole.length() >= kLeast) {
      Entry entry;
      entry.t = hole.begin;
      entry.end = hole.end;
      entry.data = entry::Excluded{ExclusionReason::notObserved};
      entry.source = Source::derived;
      entry.quality = 1;
      entry.note = "no signal that would show compressions";
      excluded.push_back(std::move(entry));
    }
  }
  return excluded;
}

} // namespace afterbeat
