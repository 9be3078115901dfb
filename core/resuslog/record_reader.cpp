#include "core/resuslog/record_reader.h"

#include "core/resuslog/json_text.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include <fmt/format.h>

namespace afterbeat {

namespace {

constexpr Duration kToleratedDisorder = std::chrono::seconds{1};
/// More samples than any line can hold.
constexpr double kLargestCount = 1e8;

void raise(std::optional<Time>& latest, std::optional<Time> t) {
  if (t && (!latest || *t > *latest)) {
    latest = t;
  }
}

std::string lower(std::string_view text) {
  std::string copy(text);
  std::transform(copy.begin(), copy.end(), copy.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return copy;
}

} // namespace

bool isEndLine(FlatObject& object) {
  const JsonMember* type = object.find("type");
  return type != nullptr && type->kind == JsonKind::string && type->text == "end";
}

std::optional<EndLine> readEndLine(FlatObject& object) {
  const JsonMember* entries = object.find("entries");
  const JsonMember* sha = object.find("sha256");
  if (entries == nullptr || entries->kind != JsonKind::number || sha == nullptr ||
      sha->kind != JsonKind::string) {
    return std::nullopt;
  }
  return EndLine{entries->number, lower(sha->text)};
}

RecordReader::RecordReader(HeaderRead header, std::uint64_t bytesToCome, bool keepSamples,
                           std::vector<Problem>& problems)
    : problems_(problems), uses_(std::move(header.uses)) {
  out_.record.header = std::move(header.header);
  out_.record.channels = std::move(header.channels);
  problems_.insert(problems_.end(), header.problems.begin(), header.problems.end());
  makeStores(bytesToCome, keepSamples);
}

void RecordReader::makeStores(std::uint64_t bytesToCome, bool keepSamples) {
  double rates = 0;
  for (const Channel& channel : out_.record.channels) {
    rates += channel.drawable ? channel.rateHz : 0;
  }
  // Eight letters of base64 hold three samples. Channels of one recording run side by side, so that
  // their rates tell each one's share; some slack for what the other lines take less.
  const double mostSamples = static_cast<double>(bytesToCome) / 8 * 3;
  for (Channel& channel : out_.record.channels) {
    const double share = channel.drawable && rates > 0 ? channel.rateHz / rates : 0;
    stores_.emplace_back(channel, static_cast<std::size_t>(mostSamples * share), keepSamples);
  }
}

void RecordReader::span(const Line& line, LineFate fate) {
  out_.lines.push_back({line.offset, line.length, fate, lastWritten_.value_or(Time{})});
  lastLine_ = line.number;
}

void RecordReader::note(const Line& line, LineFate fate) {
  const bool counts = fate == LineFate::broken || fate == LineFate::repeated;
  entryLines_ += counts ? 1 : 0;
  span(line, fate);
}

void RecordReader::place(std::optional<Time> t, std::optional<Time> end, bool complete,
                         const Line& line) {
  raise(out_.record.lastTime, t);
  raise(out_.record.lastTime, end);
  if (complete) {
    raise(lastComplete_, t);
    raise(lastComplete_, end);
  }
  if (t) {
    lastT_ = *t;
  }
  const std::optional<Time> written = end ? end : t;
  if (!written) {
    return;
  }
  if (lastWritten_ && *lastWritten_ - *written > kToleratedDisorder) {
    problems_.push_back({line.number,
                         Severity::info,
                         ProblemKind::outOfOrder,
                         {secondsText(*lastWritten_ - *written)}});
  }
  lastWritten_ = written;
}

void RecordReader::entry(FlatObject& object, const Line& line) {
  ++entryLines_;
  EntryRead read = readEntry(object, out_.record.header, line.number);
  if (isEndLine(object)) { // a complete one does not come here
    read.entry.incomplete = true;
    for (const auto key : {"entries", "sha256"}) {
      const JsonMember* member = object.find(key);
      const auto kind = std::string_view(key) == "entries" ? JsonKind::number : JsonKind::string;
      if (member == nullptr || member->kind != kind) {
        read.problems.push_back(
            {line.number, Severity::error, ProblemKind::missingKey, {"end", key}});
      }
    }
  }
  const bool samples = std::holds_alternative<entry::LostSamples>(read.entry.data);
  const bool taken = samples && takeSamples(object, read);
  const auto t = read.entry.hasTime ? std::optional{read.entry.t} : std::nullopt;
  if (!t) {
    read.entry.t = lastT_;
  }
  // An unreadable line's time is that of the line above it, which may count in no figure.
  const bool knowsItsTime = !std::holds_alternative<entry::Unreadable>(read.entry.data);
  place(t, read.entry.end, !read.entry.incomplete && knowsItsTime, line);
  if (taken) {
    problems_.insert(problems_.end(), read.problems.begin(), read.problems.end());
  } else {
    keep(std::move(read));
  }
  span(line, LineFate::entry);
}

bool RecordReader::lose(EntryRead& read, ProblemKind kind, std::vector<std::string> args) {
  read.entry.incomplete = true;
  read.problems.push_back({read.entry.line, Severity::error, kind, std::move(args)});
  return false;
}

/// Gives the block to its channel; false if it stays an entry, lost or not understood.
bool RecordReader::takeSamples(FlatObject& object, EntryRead& read) {
  Entry& entry = read.entry;
  const std::string id = std::get<entry::LostSamples>(entry.data).channel;
  const JsonMember* count = object.find("count");
  const JsonMember* data = object.find("data");
  for (const auto key : {"channel", "count", "data"}) {
    if (object.find(key) == nullptr) {
      static_cast<void>(lose(read, ProblemKind::missingKey, {"samples", key}));
    }
  }
  const auto& channels = out_.record.channels;
  const auto channel = std::find_if(channels.begin(), channels.end(),
                                    [&](const Channel& each) { return each.id == id; });
  const auto stays = [&] {
    entry.otherKeys = object.rest();
    return false;
  };
  if (entry.incomplete || object.find("channel")->kind != JsonKind::string) {
    entry.incomplete = true;
    return stays();
  }
  if (channel == channels.end()) {
    static_cast<void>(lose(read, ProblemKind::unknownChannel, {id}));
    return stays();
  }
  const auto at = static_cast<std::size_t>(channel - channels.begin());
  if (uses_[at] == ChannelUse::notDrawn) {
    object.find("channel")->taken = false;
    entry.data = entry::Other{"samples"};
    return stays();
  }
  if (uses_[at] == ChannelUse::unusable) {
    entry.incomplete = true; // the header's problem has said so already
    return stays();
  }
  Phrase why;
  if (entry.t < Time{}) {
    why = phrase(inEnglish("Importers", "they begin before the recording does"));
  } else if (count->kind != JsonKind::number || !(count->number >= 1) ||
             count->number > kLargestCount || count->number != std::floor(count->number)) {
    why = phrase(inEnglish("Importers", "their number is not usable"));
  } else if (data->kind != JsonKind::string) {
    why = phrase(inEnglish("Importers", "their data is not a text"));
  } else if (!stores_[at].add(entry.t, static_cast<std::size_t>(count->number), data->text,
                              entry.line)) {
    why = phrase(inEnglish("Importers", "the data does not hold exactly %1 samples in base64"),
                 count->number);
  }
  if (!why.parts.empty()) {
    why.parts.insert(why.parts.begin(), id);
    static_cast<void>(lose(read, ProblemKind::badBlock, std::move(why.parts)));
    return stays();
  }
  const double length = count->number / channel->rateHz;
  if (count->number > 1 && length * 1e6 > static_cast<double>(kLongestBlock.count())) {
    read.problems.push_back(
        {entry.line, Severity::warning, ProblemKind::longBlock, {id, numberText(length)}});
  }
  return true;
}

void RecordReader::keep(EntryRead read) {
  const Entry& entry = read.entry;
  const std::size_t index = out_.record.entries.size();
  const bool stretch = isStretch(entry.data) && entry.hasTime && (entry.end || read.open);
  const StretchKey key{entry.data.index(), entry.t, entry.source, entry.part};
  if (stretch && !open_.empty()) {
    if (const auto earlier = open_.find(key); earlier != open_.end()) {
      replaced_.push_back(earlier->second.index);
      open_.erase(earlier);
    }
  }
  if (read.open) {
    // What it lacks may stand in the line that closes it; it is said only if none does.
    OpenStretch waiting{index, {}};
    const auto lacks = std::stable_partition(
        read.problems.begin(), read.problems.end(),
        [](const Problem& problem) { return problem.kind != ProblemKind::missingKey; });
    waiting.problems.assign(lacks, read.problems.end());
    read.problems.erase(lacks, read.problems.end());
    if (entry.hasTime) {
      open_.emplace(key, std::move(waiting));
    } else {
      openForEver_.push_back(std::move(waiting));
    }
  }
  problems_.insert(problems_.end(), read.problems.begin(), read.problems.end());
  out_.record.entries.push_back(std::move(read.entry));
}

void RecordReader::seal(FlatObject& object, const EndLine& end,
                        const std::vector<std::string>& actual, const Line& line) {
  EntryRead read = readEntry(object, out_.record.header, line.number);
  std::copy_if(read.problems.begin(), read.problems.end(), std::back_inserter(problems_),
               // The seal holds without a time.
               [](const Problem& p) { return p.kind != ProblemKind::missingKey; });
  place(read.entry.hasTime ? std::optional{read.entry.t} : std::nullopt, std::nullopt, true, line);
  if (end.entries != static_cast<double>(entryLines_)) {
    problems_.push_back({line.number,
                         Severity::warning,
                         ProblemKind::countDiffers,
                         {numberText(end.entries), std::to_string(entryLines_)}});
  }
  const auto match = std::find(actual.begin(), actual.end(), end.sha256);
  Seal& seal = out_.record.seal;
  seal.present = true;
  seal.matches = match != actual.end();
  seal.sha256 = seal.matches ? *match : actual.front();
  if (!seal.matches) {
    problems_.push_back({line.number, Severity::error, ProblemKind::checksumDiffers, {}});
  }
  span(line, LineFate::seal);
}

void RecordReader::closeOpenOnes() {
  for (auto& [key, waiting] : open_) {
    openForEver_.push_back(std::move(waiting));
  }
  open_.clear();
  for (const OpenStretch& waiting : openForEver_) {
    const Entry& entry = out_.record.entries[waiting.index];
    raise(lastComplete_, entry.hasTime ? std::optional{entry.t} : std::nullopt);
  }
  for (OpenStretch& waiting : openForEver_) {
    Entry& entry = out_.record.entries[waiting.index];
    entry.neverClosed = true;
    entry.end = lastComplete_;
    problems_.insert(problems_.end(), waiting.problems.begin(), waiting.problems.end());
    problems_.push_back({entry.line,
                         Severity::warning,
                         ProblemKind::neverClosedStretch,
                         {std::string(typeName(entry.data))}});
  }
}

void RecordReader::dropReplaced() {
  if (replaced_.empty()) {
    return;
  }
  std::sort(replaced_.begin(), replaced_.end());
  auto& entries = out_.record.entries;
  std::size_t filled = replaced_.front();
  std::size_t next = 0;
  for (std::size_t i = filled; i < entries.size(); ++i) {
    if (next < replaced_.size() && replaced_[next] == i) {
      ++next;
    } else {
      entries[filled++] = std::move(entries[i]);
    }
  }
  entries.resize(filled);
}

LogRecord RecordReader::finish(std::uint64_t end) {
  for (SampleStore& store : stores_) {
    store.finish(problems_);
  }
  closeOpenOnes();
  dropReplaced();
  auto& entries = out_.record.entries;
  const auto earlier = [](const Entry& a, const Entry& b) { return a.t < b.t; };
  if (!std::is_sorted(entries.begin(), entries.end(), earlier)) {
    std::stable_sort(entries.begin(), entries.end(), earlier);
  }
  if (!sealed()) {
    problems_.push_back({lastLine_, Severity::warning, ProblemKind::notClosed, {}});
  }
  out_.end = end;
  return std::move(out_);
}

} // namespace afterbeat
