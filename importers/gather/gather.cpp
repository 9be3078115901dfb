#include "importers/gather/gather.h"

#include "core/bytes/digest.h"
#include "core/resuslog/json_line.h"
#include "core/resuslog/json_text.h"
#include "importers/gather/gathered_header.h"
#include "importers/gather/source_clocks.h"

#include <algorithm>
#include <set>

#include <fmt/format.h>

namespace afterbeat {
namespace {

constexpr Duration kLargest{1'000'000'000'000};

bool fits(Time t) {
  return t >= Time{-kLargest} && t <= Time{kLargest};
}

/// Members of an entry that are kept as spelled and hold a time or a channel: moved along too, so
/// that what was not understood before is not understood otherwise after.
std::string movedKeys(const std::string& keys, Duration offset, const std::string& prefix) {
  if (keys.find("\"end\"") == std::string::npos && keys.find("\"channel\"") == std::string::npos) {
    return keys;
  }
  const auto object = "{" + keys + "}";
  std::string moved;
  for (const auto& [key, value] : splitObject(object)) {
    std::string text{value};
    if (key == "\"end\"") {
      ObjectParser parser;
      const auto parsed = parser.parse(fmt::format("{{\"end\":{}}}", value));
      const auto* end = parsed ? (*parsed)->find("end") : nullptr;
      if (end && end->kind == JsonKind::number) {
        const auto t = timeFromSeconds(end->number);
        text = t ? secondsText(t->time_since_epoch() + offset) : text;
      }
    } else if (key == "\"channel\"" && text.size() > 1 && text.front() == '"') {
      text = "\"" + prefix + text.substr(1);
    }
    moved += (moved.empty() ? "" : ",") + std::string{key} + ":" + text;
  }
  return moved;
}

/// Puts sources together on one axis.
class Gatherer {
public:
  explicit Gatherer(std::vector<GatherSource> sources) : sources_(std::move(sources)) {}

  Imported gathered() {
    auto& record = result_.record;
    record.header = gatheredFacts(sources_, result_.problems);
    placement_ = place(sources_, result_.problems);
    moveZero();
    setGatheredClock(record.header, sources_, placement_, result_.problems);
    record.header.madeBy = "Afterbeat";
    nameRecord();
    for (std::size_t i = 0; i < sources_.size(); ++i) {
      addSource(i);
    }
    sortEntries();
    return std::move(result_);
  }

private:
  template <typename... Values>
  void say(Severity severity, EnglishText said, const Values&... values) {
    result_.problems.push_back(importNote(0, severity, said, values...));
  }

  /// Samples cannot lie before zero: if some would, the zero moves to the first of them.
  void moveZero() {
    Time first{};
    for (std::size_t i = 0; i < sources_.size(); ++i) {
      for (const auto& channel : sources_[i].imported.record.channels) {
        for (const auto& block : channel.blocks) {
          first = std::min(first, block.t + placement_.offsets[i]);
        }
      }
    }
    if (first == Time{}) {
      return;
    }
    const Duration earlier = Time{} - first;
    for (auto& offset : placement_.offsets) {
      offset += earlier;
    }
    say(Severity::info,
        inEnglish(
            "Importers",
            "The zero of the times was moved %1 s earlier, to the begin of the first waveform."),
        secondsText(earlier));
  }

  void nameRecord() {
    std::string seed = "gather";
    for (std::size_t i = 0; i < sources_.size(); ++i) {
      seed += fmt::format(" {} {} {}", sources_[i].imported.record.header.id, sources_[i].sha256,
                          placement_.offsets[i].count());
    }
    result_.record.header.id = uuidFrom(seed);
  }

  void addSource(std::size_t index) {
    auto& source = sources_[index];
    const auto ownPart = static_cast<int>(result_.record.header.parts.size());
    addParts(index);
    const auto offset = placement_.offsets[index];
    const auto prefix = fmt::format("{}-", index + 1);
    addChannels(source, offset, prefix);
    addEntries(index, offset, prefix, ownPart);
    if (const auto last = source.imported.record.lastTime; last && fits(*last + offset)) {
      auto& all = result_.record.lastTime;
      all = std::max(all.value_or(*last + offset), *last + offset);
    }
  }

  /// The source itself, and the parts it was gathered from.
  void addParts(std::size_t index) {
    const auto& source = sources_[index];
    const auto& header = source.imported.record.header;
    const auto offset = placement_.offsets[index];
    const auto own =
        header.id.empty() ? uuidFrom("part " + source.sha256 + source.label) : header.id;
    addPart({own, source.sha256, source.label, offset}, index);
    for (auto part : header.parts) {
      part.offset += offset;
      part.label = part.label.empty() ? source.label : source.label + ": " + part.label;
      addPart(std::move(part), index);
    }
  }

  /// Entries name their part by its id, so that no two may have the same.
  void addPart(PartFacts part, std::size_t index) {
    auto id = part.id;
    for (int again = 1; !partIds_.insert(id).second || id.empty(); ++again) {
      id = again == 1 ? fmt::format("{}/{}", index + 1, part.id)
                      : fmt::format("{}/{}/{}", index + 1, again, part.id);
    }
    part.id = id;
    result_.record.header.parts.push_back(std::move(part));
  }

  void addChannels(GatherSource& source, Duration offset, const std::string& prefix) {
    std::size_t lost = 0;
    for (auto& channel : source.imported.record.channels) {
      channel.id = prefix + channel.id;
      std::vector<SampleBlock> kept;
      for (auto block : channel.blocks) {
        block.t += offset;
        if (fits(block.t) && fits(channel.timeOf(block, block.count))) {
          kept.push_back(block);
        } else {
          ++lost;
        }
      }
      channel.blocks = std::move(kept);
      if (channel.firstLine && channel.lastLine) {
        *channel.firstLine += offset;
        *channel.lastLine += offset;
      }
      result_.record.channels.push_back(std::move(channel));
    }
    if (lost > 0) {
      say(Severity::error,
          inEnglish(
              "Importers",
              "%1 stretches of waveform of %2 lie more than 1000000 s from the zero and are lost."),
          lost, source.label);
    }
  }

  void addEntries(std::size_t index, Duration offset, const std::string& prefix, int ownPart) {
    auto& source = sources_[index];
    std::size_t lost = 0;
    for (auto& entry : source.imported.record.entries) {
      move(entry, offset, prefix);
      if (entry.hasTime && (!fits(entry.t) || !fits(entry.lastTime()))) {
        ++lost;
        continue;
      }
      entry.part = entry.part < 0 ? ownPart : ownPart + 1 + entry.part;
      if (std::holds_alternative<entry::ClockSet>(entry.data) && placement_.clockSource != index) {
        keepAsRemark(entry, source.label);
      }
      result_.record.entries.push_back(std::move(entry));
    }
    if (lost > 0) {
      say(Severity::error,
          inEnglish("Importers",
                    "%1 entries of %2 lie more than 1000000 s from the zero and are lost."),
          lost, source.label);
    }
  }

  static void move(Entry& entry, Duration offset, const std::string& prefix) {
    entry.t += offset;
    if (entry.end) {
      *entry.end += offset;
    }
    // Its source ended there; the gathered record may go on.
    entry.neverClosed = false;
    entry.line = 0;
    entry.otherKeys = movedKeys(entry.otherKeys, offset, prefix);
    if (auto* samples = std::get_if<entry::LostSamples>(&entry.data)) {
      samples->channel = samples->channel.empty() ? std::string{} : prefix + samples->channel;
    }
  }

  /// A record has one clock; that another device's clock was set must not move it.
  void keepAsRemark(Entry& entry, const std::string& label) {
    const auto wall = std::get<entry::ClockSet>(entry.data).wall;
    entry.data = entry::Mark{wall.empty() ? "Device clock set" : "Device clock set to " + wall, {}};
    say(Severity::info,
        inEnglish("Importers", "The clock of %1 was set at %2 s; kept as a remark, as the gathered "
                               "record follows another clock."),
        label, secondsText(entry.t.time_since_epoch()));
  }

  /// By time, ties as found; an entry without a time stays behind the one before it.
  void sortEntries() {
    auto& entries = result_.record.entries;
    std::vector<std::pair<Time, std::size_t>> order;
    order.reserve(entries.size());
    Time before{};
    for (std::size_t i = 0; i < entries.size(); ++i) {
      before = entries[i].hasTime ? entries[i].t : before;
      order.emplace_back(before, i);
    }
    std::stable_sort(order.begin(), order.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Entry> sorted;
    sorted.reserve(entries.size());
    for (const auto& [t, i] : order) {
      sorted.push_back(std::move(entries[i]));
    }
    entries = std::move(sorted);
  }

  std::vector<GatherSource> sources_;
  Placement placement_;
  std::set<std::string> partIds_;
  Imported result_;
};

} // namespace

Imported gather(std::vector<GatherSource> sources) {
  return Gatherer{std::move(sources)}.gathered();
}

} // namespace afterbeat
