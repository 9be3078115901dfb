#include "core/resuslog/write_log.h"

#include "core/bytes/digest.h"
#include "core/resuslog/json_text.h"
#include "core/resuslog/sample_store.h"
#include "core/resuslog/sealed_output.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <unordered_set>

#include <fmt/format.h>

namespace afterbeat {

namespace {

/// One line to be: an entry, or a stretch of a channel's samples.
struct Planned {
  Time writtenAt{};
  /// Null for samples.
  const Entry* entry = nullptr;
  const Channel* channel = nullptr;
  SampleBlock block;
};

/// Writing order: by `end` where there is one, else by `t`; an entry without a time stays behind
/// the one before it.
void planEntries(const Record& record, std::vector<Planned>& lines) {
  Time before{};
  for (const Entry& entry : record.entries) {
    if (entry.hasTime) {
      before = entry.neverClosed ? entry.t : entry.lastTime();
    }
    lines.push_back({before, &entry, nullptr, {}});
  }
}

/// Samples before the recording's zero cannot be written.
SampleBlock fromZero(const Channel& channel, SampleBlock block) {
  if (block.t < Time{}) {
    const double early = -seconds(block.t) * channel.rateHz;
    const auto skipped = std::min(block.count, static_cast<std::size_t>(std::ceil(early)));
    block = {channel.timeOf(block, skipped), block.first + skipped, block.count - skipped};
    block.t = std::max(block.t, Time{});
  }
  return block;
}

/// A reader takes lines as continuous if they follow each other within half a sample. Where two
/// blocks are less than that apart on paper but drifted against each other, the last line of the
/// first one moves half the way, which is within what a reader lets pass on both sides.
Duration driftTo(const Channel& channel, const SampleBlock& block, const SampleBlock* next) {
  if (next == nullptr) {
    return {};
  }
  const Duration apart = next->t - channel.timeOf(block, block.count);
  const double samples = static_cast<double>(apart.count()) * channel.rateHz / 1e6;
  return std::fabs(samples) > 0.5 && std::fabs(samples) <= 1 ? apart / 2 : Duration{};
}

/// The sample a channel's last line began with, if this block can be cut there: the line's time is
/// a time of the record.
std::size_t lastCut(const Channel& channel, const SampleBlock& block, std::size_t longest) {
  if (!channel.lastLine || *channel.lastLine <= block.t) {
    return block.count;
  }
  const double at = seconds(*channel.lastLine - block.t) * channel.rateHz;
  const double sample = std::round(at);
  const bool fits = sample > 0 && sample < static_cast<double>(block.count) &&
                    static_cast<double>(block.count) - sample <= static_cast<double>(longest);
  return fits ? static_cast<std::size_t>(sample) : block.count;
}

void planBlock(const Channel& channel, const SampleBlock& block, Duration drift,
               std::vector<Planned>& lines) {
  auto longest = static_cast<std::size_t>(
      std::max(1.0, std::floor(seconds(kLongestBlock) * channel.rateHz + 1e-9)));
  if (drift != Duration{} && block.count <= longest) {
    longest = std::max<std::size_t>(1, (block.count + 1) / 2); // so that there is a line to move
  }
  const std::size_t cut = lastCut(channel, block, longest);
  for (std::size_t done = 0, count = 0; done < block.count; done += count) {
    count = std::min(longest, (done < cut ? cut : block.count) - done);
    const bool moves = done > 0 && done + count == block.count;
    Time t = channel.timeOf(block, done) + (moves ? drift : Duration{});
    if (done == cut) {
      t = *channel.lastLine;
    }
    lines.push_back({t, nullptr, &channel, {t, block.first + done, count}});
  }
}

void planSamples(const Record& record, std::vector<Planned>& lines) {
  for (const Channel& channel : record.channels) {
    if (!channel.drawable || !(channel.rateHz > 0)) {
      continue;
    }
    for (std::size_t i = 0; i < channel.blocks.size(); ++i) {
      const SampleBlock& block = channel.blocks[i];
      if (block.first + block.count > channel.samples.size()) {
        continue; // read without keeping values
      }
      const SampleBlock* next = i + 1 < channel.blocks.size() ? &channel.blocks[i + 1] : nullptr;
      planBlock(channel, fromZero(channel, block), driftTo(channel, block, next), lines);
    }
  }
}

std::string samplesLine(const Channel& channel, const SampleBlock& block) {
  ObjectText line({});
  line.raw("t", secondsText(block.t.time_since_epoch()));
  line.text("type", "samples");
  line.text("channel", channel.id);
  line.raw("count", std::to_string(block.count));
  line.raw("data",
           '"' + base64FromInt16({channel.samples.data() + block.first, block.count}) + '"');
  return line.close();
}

/// Tells entries apart that would be written as the same line: a reader takes a line that repeats
/// an earlier one for a buffer flushed twice, and drops it.
class DistinctLines {
public:
  std::string operator()(std::string line) {
    const std::string as = line;
    for (int n = 2; !written_.insert(line).second; ++n) {
      line = as.substr(0, as.size() - 1) + fmt::format(R"(,"repetition":{}}})", n);
    }
    return line;
  }

private:
  std::unordered_set<std::string> written_;
};

} // namespace

bool writeRecord(const Record& record, const ByteSink& sink) {
  std::vector<Planned> lines;
  planSamples(record, lines);
  planEntries(record, lines);
  std::stable_sort(lines.begin(), lines.end(),
                   [](const Planned& a, const Planned& b) { return a.writtenAt < b.writtenAt; });
  SealedOutput out(sink);
  DistinctLines distinct;
  out.line(headerLine(record.header, record.channels));
  for (const Planned& line : lines) {
    out.entry(line.entry != nullptr ? distinct(entryLine(*line.entry, record.header))
                                    : samplesLine(*line.channel, line.block));
    if (!out.good()) {
      return false;
    }
  }
  const Time last = lines.empty() ? Time{} : lines.back().writtenAt;
  const Time latest = closingTime(record).value_or(last);
  const bool open = std::any_of(record.entries.begin(), record.entries.end(),
                                [](const Entry& entry) { return entry.neverClosed; });
  out.close(open ? latest : std::max(latest, last));
  return out.good();
}

} // namespace afterbeat
