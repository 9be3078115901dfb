// What is written in canonical form reads back as what it was.
#include "log_text.h"

#include "core/resuslog/entry_fields.h"

#include <algorithm>

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace afterbeat {
namespace {

using test::readText;
using test::written;

// Random values come through these few functions alone: every further kind of generator costs the
// compiler much.

/// From `least` to below `most`.
std::int64_t between(std::int64_t least, std::int64_t most) {
  return *rc::gen::inRange<std::int64_t>(least, most);
}

std::size_t below(std::size_t size) {
  return static_cast<std::size_t>(between(0, static_cast<std::int64_t>(size)));
}

bool coin() {
  return between(0, 2) == 1;
}

template <typename T>
T oneOf(const std::vector<T>& list) {
  return list[below(list.size())];
}

/// A text with what JSON must escape, and letters of more than one byte.
std::string someText() {
  static const std::vector<std::string> kPieces = {
      "a", "B", " ", "\"", "\\", "/", "\n", "\t", std::string(1, '\0'), "\x7f", "é", "心", "😀"};
  std::string text;
  for (auto n = between(0, 5); n > 0; --n) {
    text += oneOf(kPieces);
  }
  return text;
}

double someNumber() {
  static const std::vector<double> kOdd = {0.1 + 0.2, 1e-7, 1e9, 5e-324};
  return coin() ? static_cast<double>(between(0, 1001)) / 10 : oneOf(kOdd);
}

/// Fills a payload with random values; required ones always.
class RandomFields {
public:
  void number(std::string_view key, std::optional<double>& value, Need need, Range range) {
    const bool given = need == Need::required || coin() || key == "percent";
    if (given) {
      value = std::min(someNumber(), range.most);
    }
  }
  void flag(std::string_view /*key*/, std::optional<bool>& value, Need need) {
    if (need == Need::required || coin()) {
      value = coin();
    }
  }
  template <typename E>
  void word(std::string_view /*key*/, std::optional<E>& value, Need /*need*/) {
    const auto& list = Words<E>::list;
    value = list[below(list.size())].second;
  }
  void text(std::string_view /*key*/, std::string& value, Need /*need*/, TextRule rule) {
    switch (rule) {
    case TextRule::wallTime:
      value = "2026-03-14T09:12:30.5-00:00";
      break;
    case TextRule::expiry:
      value = oneOf<std::string>({"2027-05", "2027-05-31"});
      break;
    case TextRule::base64:
      value = base64Encode(someText());
      break;
    case TextRule::any:
      value = someText();
      break;
    }
  }
};

EntryData randomData() {
  constexpr std::size_t kTypes = std::variant_size_v<EntryData>;
  static const auto kAll = []<std::size_t... I>(std::index_sequence<I...> /*all*/) {
    std::vector<EntryData> all;
    (all.emplace_back(std::in_place_index<I>), ...);
    return all;
  }
  (std::make_index_sequence<kTypes>());
  EntryData data = kAll[below(kTypes)];
  if (std::holds_alternative<entry::LostSamples>(data)) {
    data = entry::PowerOn{};
  }
  if (auto* other = std::get_if<entry::Other>(&data)) {
    other->type = oneOf<std::string>({"x_ray", "", "heart", "\"q\""});
  }
  RandomFields fields;
  std::visit([&](auto& each) { visitFields(each, fields); }, data);
  return data;
}

Entry randomEntry(Time t, std::size_t parts) {
  Entry entry;
  entry.t = t;
  entry.data = randomData();
  if (isStretch(entry.data)) {
    entry.end = t + Duration{between(0, 20000000)};
  }
  if (const auto* other = std::get_if<entry::Other>(&entry.data)) {
    entry.incomplete = other->type.empty();
  }
  entry.source = oneOf(std::vector{Source::device, Source::observer, Source::derived});
  if (parts > 0 && coin()) {
    entry.part = static_cast<int>(below(parts));
  }
  if (coin()) {
    entry.quality = static_cast<double>(between(0, 11)) / 10;
  }
  entry.note = someText();
  entry.otherKeys =
      oneOf<std::string>({"", "\"zz\":[1, {\"t\":2}]", "\"a\\u0062\":1.50,\"zz\":null"});
  if (std::holds_alternative<entry::Other>(entry.data) && entry.otherKeys.empty()) {
    entry.otherKeys = "\"film\":3";
  }
  return entry;
}

std::optional<WallTime> randomWall() {
  if (coin()) {
    return std::nullopt;
  }
  WallTime wall;
  wall.utc += Duration{between(0, 4000000000000000)};
  wall.zoneKnown = coin();
  wall.zone = std::chrono::minutes{wall.zoneKnown ? between(-800, 800) : 0};
  return wall;
}

Header randomHeader() {
  Header h;
  h.version = oneOf<std::string>({"1.0", "1.12"});
  h.id = uuidFrom(someText());
  h.recorded = randomWall();
  h.kind = oneOf(std::vector{RecordKind::rescue, RecordKind::drill, RecordKind::test});
  h.patient = oneOf(std::vector{PatientCategory::unknown, PatientCategory::adult,
                                PatientCategory::child, PatientCategory::infant});
  h.sex = someText();
  h.device = {someText(), someText(), someText(), someText(), someText(), someText()};
  h.clock.state = oneOf(std::vector{ClockState::notStated, ClockState::set, ClockState::unset,
                                    ClockState::zoneUnknown});
  if (coin()) {
    h.clock.offset = Duration{between(-1900000000000000, 1900000000000000)};
    h.ageYears = someNumber();
  }
  h.clock.checked = randomWall();
  h.clock.against = someText();
  h.event.witnessed = oneOf<std::string>({"", "bystander", "crew", "no", "unknown"});
  h.event.bystanderCpr = oneOf<std::string>({"", "true", "false", "yes", "unknown"});
  h.event.location = someText();
  h.site = someText();
  h.team = someText();
  h.caseNumber = someText();
  for (auto i = between(0, 3); i > 0; --i) {
    h.parts.push_back({std::to_string(i), someText(), someText(),
                       Duration{between(-5000000, 5000000)}, oneOf<std::string>({"", "\"x\":1"})});
  }
  if (coin()) {
    h.derivedFrom = DerivedFrom{someText(), someText(), 3.0};
  }
  h.madeBy = someText();
  h.synthetic = coin();
  h.otherKeys = oneOf<std::string>(
      {"", "\"zz\":{\"id\":[ ]}", "\"patient\":{\"w\":1e2}", "\"clock\":{\"drift\":[1, 2]}"});
  return h;
}

/// Blocks with gaps between them, in samples of the given rate.
Channel randomChannel(const std::string& id) {
  Channel channel;
  channel.id = id;
  channel.quantity = oneOf<std::string>({"ecg", "impedance", "pleth"});
  channel.unit = oneOf<std::string>({"", "mV", "mm[Hg]"});
  channel.rateHz = oneOf(std::vector{0.1, 1.0, 4.0, 62.5, 250.0, 333.3});
  channel.scale = someNumber();
  channel.offset = someNumber();
  channel.label = someText();
  channel.otherKeys = oneOf<std::string>({"", "\"x\":{}"});
  Time t{Duration{between(0, 3000000)}};
  for (auto i = between(0, 4); i > 0; --i) {
    std::vector<std::int16_t> values;
    for (auto n = between(1, 30); n > 0; --n) {
      values.push_back(static_cast<std::int16_t>(between(-32768, 32768)));
    }
    const std::size_t repeat = oneOf<std::size_t>({1, 1, 40});
    SampleBlock block{t, channel.samples.size(), values.size() * repeat};
    for (std::size_t k = 0; k < repeat; ++k) {
      channel.samples.insert(channel.samples.end(), values.begin(), values.end());
    }
    channel.blocks.push_back(block);
    t = channel.timeOf(block, block.count) +
        Duration{static_cast<std::int64_t>(2e6 / channel.rateHz)} + Duration{between(0, 9000000)};
  }
  return channel;
}

/// A record as a reader would give it: entries by time, those of one time by when they were
/// written.
Record randomRecord() {
  Record record;
  record.header = randomHeader();
  for (auto n = between(0, 30); n > 0; --n) {
    const Time t{Duration{coin() ? between(-10, 60) * 1000000 : between(-10000000, 60000000)}};
    record.entries.push_back(randomEntry(t, record.header.parts.size()));
  }
  std::stable_sort(record.entries.begin(), record.entries.end(),
                   [](const Entry& a, const Entry& b) {
                     return std::pair{a.t, a.lastTime()} < std::pair{b.t, b.lastTime()};
                   });
  for (auto i = between(0, 3); i > 0; --i) {
    record.channels.push_back(randomChannel("c" + std::to_string(i)));
  }
  return record;
}

/// One assertion for all comparisons.
void same(bool equal, const char* what) {
  if (!equal) {
    RC_FAIL(what);
  }
}

void expectSameEntry(const Entry& a, const Entry& b) {
  same(a.t == b.t, "a.t == b.t");
  same(a.end == b.end, "a.end == b.end");
  same(a.data.index() == b.data.index(), "a.data.index() == b.data.index()");
  same(typeName(a.data) == typeName(b.data), "typeName(a.data) == typeName(b.data)");
  same(a.part == b.part, "a.part == b.part");
  same(a.source == b.source, "a.source == b.source");
  same(a.hasTime == b.hasTime, "a.hasTime == b.hasTime");
  same(a.incomplete == b.incomplete, "a.incomplete == b.incomplete");
  same(a.neverClosed == b.neverClosed, "a.neverClosed == b.neverClosed");
  same(a.quality == b.quality, "a.quality == b.quality");
  same(a.note == b.note, "a.note == b.note");
  same(a.otherKeys == b.otherKeys, "a.otherKeys == b.otherKeys");
}

/// Collects a payload's values, to be compared.
class Values {
public:
  void number(std::string_view /*key*/, const std::optional<double>& value, Need /*need*/,
              const Range& /*range*/) {
    numbers.push_back(value);
  }
  void flag(std::string_view /*key*/, const std::optional<bool>& value, Need /*need*/) {
    numbers.push_back(value ? std::optional<double>(*value ? 1 : 0) : std::nullopt);
  }
  template <typename E>
  void word(std::string_view /*key*/, const std::optional<E>& value, Need /*need*/) {
    numbers.push_back(value ? std::optional<double>(static_cast<double>(*value)) : std::nullopt);
  }
  void text(std::string_view /*key*/, const std::string& value, Need /*need*/, TextRule /*rule*/) {
    texts.push_back(value);
  }
  std::vector<std::optional<double>> numbers;
  std::vector<std::string> texts;
};

Values valuesOf(EntryData data) {
  Values values;
  std::visit([&](auto& each) { visitFields(each, values); }, data);
  return values;
}

void expectSameChannel(const Channel& a, const Channel& b) {
  same(a.id == b.id, "a.id == b.id");
  same(a.quantity == b.quantity, "a.quantity == b.quantity");
  same(a.unit == b.unit, "a.unit == b.unit");
  same(a.rateHz == b.rateHz, "a.rateHz == b.rateHz");
  same(a.scale == b.scale, "a.scale == b.scale");
  same(a.offset == b.offset, "a.offset == b.offset");
  same(a.label == b.label, "a.label == b.label");
  same(a.encoding == b.encoding, "a.encoding == b.encoding");
  same(a.drawable == b.drawable, "a.drawable == b.drawable");
  same(a.otherKeys == b.otherKeys, "a.otherKeys == b.otherKeys");
  same(a.samples == b.samples, "a.samples == b.samples");
  same(a.blocks.size() == b.blocks.size(), "a.blocks.size() == b.blocks.size()");
  for (std::size_t i = 0; i < a.blocks.size(); ++i) {
    same(a.blocks[i].t == b.blocks[i].t, "a.blocks[i].t == b.blocks[i].t");
    same(a.blocks[i].first == b.blocks[i].first, "a.blocks[i].first == b.blocks[i].first");
    same(a.blocks[i].count == b.blocks[i].count, "a.blocks[i].count == b.blocks[i].count");
  }
}

void expectSameHeader(const Header& a, const Header& b) {
  same(a.version == b.version, "a.version == b.version");
  same(a.id == b.id, "a.id == b.id");
  same(a.recorded == b.recorded, "a.recorded == b.recorded");
  same(a.kind == b.kind, "a.kind == b.kind");
  same(a.patient == b.patient, "a.patient == b.patient");
  same(a.ageYears == b.ageYears, "a.ageYears == b.ageYears");
  same(a.sex == b.sex, "a.sex == b.sex");
  const auto device = [](const DeviceFacts& d) {
    return std::vector{d.label, d.maker, d.model, d.serial, d.software, d.returnTo};
  };
  same(device(a.device) == device(b.device), "device(a.device) == device(b.device)");
  same(a.clock.state == b.clock.state, "a.clock.state == b.clock.state");
  same(a.clock.offset == b.clock.offset, "a.clock.offset == b.clock.offset");
  same(a.clock.checked == b.clock.checked, "a.clock.checked == b.clock.checked");
  same(a.clock.against == b.clock.against, "a.clock.against == b.clock.against");
  same(a.event.witnessed == b.event.witnessed, "a.event.witnessed == b.event.witnessed");
  same(a.event.bystanderCpr == b.event.bystanderCpr,
       "a.event.bystanderCpr == b.event.bystanderCpr");
  same(a.event.location == b.event.location, "a.event.location == b.event.location");
  same(a.event.cause == b.event.cause, "a.event.cause == b.event.cause");
  same(a.site == b.site, "a.site == b.site");
  same(a.team == b.team, "a.team == b.team");
  same(a.caseNumber == b.caseNumber, "a.caseNumber == b.caseNumber");
  same(a.parts.size() == b.parts.size(), "a.parts.size() == b.parts.size()");
  for (std::size_t i = 0; i < a.parts.size(); ++i) {
    same(a.parts[i].id == b.parts[i].id, "a.parts[i].id == b.parts[i].id");
    same(a.parts[i].sha256 == b.parts[i].sha256, "a.parts[i].sha256 == b.parts[i].sha256");
    same(a.parts[i].label == b.parts[i].label, "a.parts[i].label == b.parts[i].label");
    same(a.parts[i].offset == b.parts[i].offset, "a.parts[i].offset == b.parts[i].offset");
    same(a.parts[i].otherKeys == b.parts[i].otherKeys,
         "a.parts[i].otherKeys == b.parts[i].otherKeys");
  }
  same(a.derivedFrom.has_value() == b.derivedFrom.has_value(),
       "a.derivedFrom.has_value() == b.derivedFrom.has_value()");
  if (a.derivedFrom) {
    same(a.derivedFrom->id == b.derivedFrom->id, "a.derivedFrom->id == b.derivedFrom->id");
    same(a.derivedFrom->sha256 == b.derivedFrom->sha256,
         "a.derivedFrom->sha256 == b.derivedFrom->sha256");
    same(a.derivedFrom->problems == b.derivedFrom->problems,
         "a.derivedFrom->problems == b.derivedFrom->problems");
  }
  same(a.madeBy == b.madeBy, "a.madeBy == b.madeBy");
  same(a.synthetic == b.synthetic, "a.synthetic == b.synthetic");
  same(a.otherKeys == b.otherKeys, "a.otherKeys == b.otherKeys");
}

void expectSameRecord(const Record& a, const Record& b) {
  expectSameHeader(a.header, b.header);
  same(a.entries.size() == b.entries.size(), "a.entries.size() == b.entries.size()");
  for (std::size_t i = 0; i < a.entries.size(); ++i) {
    expectSameEntry(a.entries[i], b.entries[i]);
    const Values x = valuesOf(a.entries[i].data);
    const Values y = valuesOf(b.entries[i].data);
    same(x.numbers == y.numbers, "x.numbers == y.numbers");
    same(x.texts == y.texts, "x.texts == y.texts");
  }
  same(a.channels.size() == b.channels.size(), "a.channels.size() == b.channels.size()");
  for (std::size_t i = 0; i < a.channels.size(); ++i) {
    expectSameChannel(a.channels[i], b.channels[i]);
  }
}

bool hasTwins(const Record& record) {
  std::vector<std::string> lines;
  for (const Entry& entry : record.entries) {
    lines.push_back(entryLine(entry, record.header));
  }
  std::sort(lines.begin(), lines.end());
  return std::adjacent_find(lines.begin(), lines.end()) != lines.end();
}

TEST(RoundTrip, whatIsWrittenReadsBackTheSame) {
  EXPECT_TRUE(rc::check([] {
    const Record record = randomRecord();
    RC_PRE(!hasTwins(record)); // equal lines are taken for a buffer flushed twice
    const std::string text = written(record);
    const auto file = readText(text);
    RC_ASSERT(file.has_value());
    RC_ASSERT(file->records.size() == 1U);
    const Record& back = file->records.front().record;
    RC_ASSERT(back.seal.matches);
    expectSameRecord(record, back);
    for (const Problem& problem : file->problems) {
      RC_LOG() << sentence(problem) << "\n";
      // Gaps are meant, and the header may lack its date, an entry its type.
      RC_ASSERT(problem.kind == ProblemKind::gapInChannel ||
                problem.kind == ProblemKind::missingHeaderKey ||
                problem.kind == ProblemKind::missingKey);
    }
    // Canonical form is canonical: the same bytes again, and as rewritten.
    RC_ASSERT(written(back) == text);
    RC_ASSERT(test::rewritten(text) == text);
  }));
}

/// Lines as devices write them, good and bad; what a reader makes of them survives writing.
std::string randomLine(int t) {
  const std::string at = "{\"t\":" + std::to_string(t) + ",\"type\":";
  const auto value = std::to_string(between(0, 9));
  switch (below(12)) {
  case 0:
    return at + R"("cpr","open":true,"x":)" + value + "}";
  case 1:
    return at + R"("analysis","open":true})";
  case 2:
    return at + R"("analysis","end":)" + std::to_string(t + 2) + R"(,"advice":"shock"})";
  case 3:
    return R"({"type":"mark","text":")" + value + "\"}";
  case 4:
    return at + R"("shock","energy_j":)" + value + "}";
  case 5:
    return at + R"("cpr","end":)" + std::to_string(t - 1) + "}";
  case 6:
    return at + R"("compression","depth_mm":"deep","quality":)" + value + "}";
  case 7:
    return test::samples(t, {1, 2, static_cast<std::int16_t>(t)}, "nowhere");
  case 8:
    return test::samples(t, std::vector<std::int16_t>(7, static_cast<std::int16_t>(t)), "odd");
  case 9:
    return R"({"t":1e9,"end":2,"type":"rhythm","is":"asystole","n":)" + value + "}";
  default:
    // 4 a second, each line a little late: drifting blocks, gaps and overlaps.
    return test::samples(t + static_cast<double>(between(0, 25)) / 100,
                         std::vector<std::int16_t>(1 + below(8), static_cast<std::int16_t>(t)));
  }
}

TEST(RoundTrip, whatIsReadFromAnyFileSurvivesWriting) {
  EXPECT_TRUE(rc::check([] {
    std::string text = std::string(test::kHeader) + "\n";
    const int lines = static_cast<int>(below(25));
    for (int t = 0; t < lines; ++t) {
      text += randomLine(t) + "\n";
    }
    const auto file = readText(text);
    RC_ASSERT(file.has_value());
    const Record& first = file->records.front().record;
    const std::string once = written(first);
    RC_LOG() << text << "\n" << once;
    const auto again = readText(once);
    RC_ASSERT(again.has_value());
    const Record& second = again->records.front().record;
    // Lines that were alike but for what is dropped (such as `open`) may have become repetitions.
    RC_PRE(!hasTwins(first));
    RC_ASSERT(second.seal.matches);
    expectSameHeader(first.header, second.header);
    RC_ASSERT(first.entries.size() == second.entries.size());
    for (std::size_t i = 0; i < first.channels.size(); ++i) {
      expectSameChannel(first.channels[i], second.channels[i]);
      RC_ASSERT(first.channels[i].lastLine == second.channels[i].lastLine);
    }
    // A closing line has a time even where no other line has one.
    RC_ASSERT(second.lastTime == first.lastTime.value_or(Time{}));
    RC_ASSERT(written(second) == once);
  }));
}

TEST(Canonical, keysComeInTheOrderOfTheFormat) {
  Entry entry;
  entry.t = *timeFromSeconds(12.345);
  entry.data = entry::Shock{true, 150.0, 70.5, "r"};
  entry.source = Source::observer;
  entry.quality = 0.5;
  entry.note = "n";
  entry.otherKeys = "\"x\":1.0";
  EXPECT_EQ(entryLine(entry, {}),
            R"({"t":12.345,"type":"shock","delivered":true,"energy_j":150,"impedance_ohm":70.5,)"
            R"("reason":"r","source":"observer","quality":0.5,"note":"n","x":1.0})");
  entry.data = entry::Cpr{};
  entry.end = *timeFromSeconds(1000000);
  entry.t = *timeFromSeconds(-0.000001);
  entry.source = Source::device;
  entry.quality.reset();
  entry.note.clear();
  entry.otherKeys.clear();
  EXPECT_EQ(entryLine(entry, {}), R"({"t":-0.000001,"type":"cpr","end":1000000})");
  entry.neverClosed = true;
  EXPECT_EQ(entryLine(entry, {}), R"({"t":-0.000001,"type":"cpr","open":true})");
}

TEST(Canonical, aKeyIsNeverWrittenTwice) {
  Entry entry;
  entry.t = *timeFromSeconds(1);
  entry.data = entry::Mark{"new", ""};
  entry.otherKeys = R"("text":5,"t":"x","y":1)";
  EXPECT_EQ(entryLine(entry, {}), R"({"t":1,"type":"mark","text":"new","y":1})");
}

TEST(Canonical, linesAreInWritingOrderAndBlocksAtMost5Seconds) {
  Record record;
  Channel channel;
  channel.id = "e";
  channel.quantity = "ecg";
  channel.rateHz = 4;
  channel.samples.assign(45, 1);
  channel.blocks = {{*timeFromSeconds(1), 0, 45}};
  record.channels.push_back(channel);
  Entry stretch;
  stretch.t = *timeFromSeconds(0);
  stretch.end = *timeFromSeconds(8);
  stretch.data = entry::Cpr{};
  Entry moment;
  moment.t = *timeFromSeconds(2);
  moment.data = entry::PowerOff{};
  record.entries = {stretch, moment};
  const auto file = readText(written(record));
  ASSERT_TRUE(file);
  std::vector<double> order;
  for (const LineSpan& span : file->records.front().lines) {
    order.push_back(seconds(span.writtenAt));
  }
  EXPECT_EQ(order, (std::vector<double>{0, 1, 2, 6, 8, 11, 11}));
  for (const Problem& problem : file->problems) {
    EXPECT_EQ(problem.kind, ProblemKind::missingHeaderKey) << sentence(problem);
  }
}

TEST(Canonical, samplesBeforeZeroAreLeftOut) {
  Record record;
  Channel channel;
  channel.id = "e";
  channel.quantity = "ecg";
  channel.rateHz = 4;
  channel.samples = {1, 2, 3, 4};
  channel.blocks = {{*timeFromSeconds(-0.5), 0, 4}};
  record.channels.push_back(channel);
  const auto file = readText(written(record));
  ASSERT_TRUE(file);
  EXPECT_EQ(file->records.front().record.channels.front().samples,
            (std::vector<std::int16_t>{3, 4}));
  EXPECT_EQ(file->records.front().record.channels.front().blocks.front().t, Time{});
}

} // namespace
} // namespace afterbeat
