#include "core/signal/derive/hands_on.h"

#include "core/signal/hands/hands.h"

#include <algorithm>
#include <array>

namespace afterbeat {

namespace {

using Detector = Findings (*)(const Channel&);

struct Way {
  std::string_view quantity;
  Detector detect;
};

/// The better evidence first.
constexpr std::array<Way, 4> kWays{{{"depth", compressionsFromDepth},
                                    {"acceleration", compressionsFromAcceleration},
                                    {"force", compressionsFromForce},
                                    {"impedance", compressionsFromImpedance}}};

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

/// What of a channel its findings judged.
std::vector<Interval> judgedBy(const Channel& channel, const Findings& findings) {
  std::vector<Interval> holes;
  for (const FaultyStretch& fault : findings.unusable) {
    holes.push_back(fault.where);
  }
  return without(blocksOf(channel), std::move(holes));
}

/// Adds a channel's findings: its entries only where no better channel judged.
void fill(HandsFound& found, const Channel& channel, const Findings& findings) {
  if (findings.length <= Duration::zero()) {
    return;
  }
  const Duration before = total(found.judged);
  for (const Entry& entry : findings.entries) {
    if (indexHolding(found.judged, entry.t) < 0) {
      found.entries.push_back(entry);
    }
  }
  std::vector<Interval> judged = judgedBy(channel, findings);
  judged.insert(judged.end(), found.judged.begin(), found.judged.end());
  found.judged = merged(std::move(judged));
  if (!found.coverage) {
    found.coverage.emplace();
  }
  found.coverage->judged = total(found.judged);
  // What a channel adds at the edges of a better one is no reason to name it.
  constexpr Duration kWorthNaming{1'000'000};
  if (found.coverage->judged - before >= kWorthNaming) {
    found.coverage->channels.push_back(nameOf(channel));
  }
}

void sortByTime(std::vector<Entry>& entries) {
  std::stable_sort(entries.begin(), entries.end(),
                   [](const Entry& a, const Entry& b) { return a.t < b.t; });
}

/// From the first to the last channel that was read, gaps included.
void setLength(HandsFound& found, const std::vector<const Channel*>& read) {
  if (!found.coverage) {
    return;
  }
  std::optional<Interval> span;
  for (const Channel* channel : read) {
    for (const Interval& block : blocksOf(*channel)) {
      span = span ? Interval{std::min(span->begin, block.begin), std::max(span->end, block.end)}
                  : block;
    }
  }
  found.coverage->length = span ? span->length() : Duration::zero();
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
  std::vector<const Channel*> read;
  for (const Way& way : kWays) {
    for (const Channel& channel : record.channels) {
      if (channel.drawable && channel.quantity == way.quantity && !channel.blocks.empty()) {
        fill(found, channel, way.detect(channel));
        read.push_back(&channel);
      }
    }
  }
  setLength(found, read);
  sortByTime(found.entries);
  return found;
}

HandsFound breathsOf(const Record& record, std::span<const Time> compressions) {
  HandsFound found;
  std::vector<const Channel*> read;
  for (const Channel& channel : record.channels) {
    if (channel.drawable && channel.quantity == "impedance" && !channel.blocks.empty()) {
      fill(found, channel, breathsFromImpedance(channel, compressions));
      read.push_back(&channel);
    }
  }
  setLength(found, read);
  sortByTime(found.entries);
  return found;
}

std::vector<Entry> notObserved(const Record& record, const std::vector<Entry>& compressions,
                               const std::vector<Interval>& judged) {
  constexpr Duration kLeast{1'000'000};
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
