// What intact lines are read as.
#include "log_text.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using test::readText;
using test::sealedLog;

Record recordOf(const std::vector<std::string>& entries,
                std::string_view header = test::kPlainHeader) {
  const auto file = readText(sealedLog(entries, header));
  EXPECT_TRUE(file);
  EXPECT_EQ(file->problems.size(), 0U)
      << (file->problems.empty() ? "" : sentence(file->problems[0]));
  return file->records.front().record;
}

template <typename T>
T only(const std::string& line) {
  const Record record = recordOf({line});
  EXPECT_EQ(record.entries.size(), 1U);
  const T* data = record.entries.front().complete<T>();
  EXPECT_NE(data, nullptr) << line;
  EXPECT_TRUE(record.entries.front().otherKeys.empty()) << record.entries.front().otherKeys;
  return data != nullptr ? *data : T{};
}

TEST(ReadEntry, everyTypeWithAllItsKeys) {
  only<entry::PowerOn>(R"({"t":1,"type":"power_on"})");
  only<entry::PowerOff>(R"({"t":1,"type":"power_off"})");
  EXPECT_EQ(
      only<entry::ClockSet>(R"({"t":1,"type":"clock_set","wall":"2026-03-14T09:12:30Z"})").wall,
      "2026-03-14T09:12:30Z");
  const auto electrodes = only<entry::Electrodes>(
      R"({"t":1,"type":"electrodes","state":"poor_contact","impedance_ohm":81.5})");
  EXPECT_EQ(electrodes.state, ElectrodeState::poorContact);
  EXPECT_EQ(electrodes.impedanceOhm, 81.5);
  EXPECT_EQ(
      only<entry::PatientMode>(R"({"t":1,"type":"patient_mode","category":"infant"})").category,
      PatientCategory::infant);
  EXPECT_EQ(
      only<entry::Analysis>(R"({"t":1,"end":5,"type":"analysis","advice":"no_shock"})").advice,
      Advice::noShock);
  EXPECT_EQ(only<entry::Charge>(R"({"t":1,"end":5,"type":"charge","energy_j":200})").energyJ, 200);
  const auto shock = only<entry::Shock>(
      R"({"t":1,"type":"shock","delivered":false,"energy_j":150,"impedance_ohm":70,"reason":"cancelled"})");
  EXPECT_EQ(shock.delivered, false);
  EXPECT_EQ(shock.energyJ, 150);
  EXPECT_EQ(shock.impedanceOhm, 70);
  EXPECT_EQ(shock.reason, "cancelled");
  EXPECT_EQ(only<entry::Cpr>(R"({"t":1,"end":5,"type":"cpr","rate_per_min":110})").ratePerMin, 110);
  const auto compression = only<entry::Compression>(
      R"({"t":1,"type":"compression","depth_mm":52.25,"leaning_mm":0,"full_release":true})");
  EXPECT_EQ(compression.depthMm, 52.25);
  EXPECT_EQ(compression.leaningMm, 0);
  EXPECT_EQ(compression.fullRelease, true);
  EXPECT_EQ(only<entry::Ventilation>(R"({"t":1,"type":"ventilation","volume_ml":500})").volumeMl,
            500);
  EXPECT_EQ(only<entry::Airway>(R"({"t":1,"type":"airway","device":"supraglottic"})").device,
            AirwayDevice::supraglottic);
  const auto rhythm = only<entry::Rhythm>(
      R"({"t":1,"end":2,"type":"rhythm","is":"organised","rate_per_min":40,"reason":"narrow"})");
  EXPECT_EQ(rhythm.is, RhythmKind::organised);
  EXPECT_EQ(rhythm.ratePerMin, 40);
  EXPECT_EQ(rhythm.reason, "narrow");
  EXPECT_EQ(only<entry::Circulation>(R"({"t":1,"type":"circulation","state":"lost"})").state,
            CirculationState::lost);
  EXPECT_EQ(only<entry::RescuerChange>(R"({"t":1,"type":"rescuer_change","text":"B"})").text, "B");
  EXPECT_EQ(only<entry::Medication>(R"({"t":1,"type":"medication","text":"1 mg"})").text, "1 mg");
  EXPECT_EQ(only<entry::Milestone>(R"({"t":-60,"type":"milestone","what":"collapse"})").what,
            "collapse");
  EXPECT_EQ(only<entry::Milestone>(R"({"t":1,"type":"milestone","what":"ferry_landed"})").what,
            "ferry_landed");
  EXPECT_EQ(only<entry::Excluded>(R"({"t":1,"end":5,"type":"excluded","why":"not_observed"})").why,
            ExclusionReason::notObserved);
  const auto prompt =
      only<entry::Prompt>(R"({"t":1,"type":"prompt","text":"Stand clear","code":"7"})");
  EXPECT_EQ(prompt.text, "Stand clear");
  EXPECT_EQ(prompt.code, "7");
  EXPECT_EQ(only<entry::Battery>(R"({"t":1,"type":"battery","percent":100})").percent, 100);
  const auto bars = only<entry::Battery>(R"({"t":1,"type":"battery","bars":2,"bars_full":4})");
  EXPECT_EQ(bars.bars, 2);
  EXPECT_EQ(bars.barsFull, 4);
  EXPECT_EQ(only<entry::Pads>(R"({"t":1,"type":"pads","expires":"2027-05"})").expires, "2027-05");
  EXPECT_EQ(only<entry::Pads>(R"({"t":1,"type":"pads","expires":"2027-05-31"})").expires,
            "2027-05-31");
  const auto test =
      only<entry::SelfTest>(R"({"t":1,"type":"self_test","result":"failed","detail":"x"})");
  EXPECT_EQ(test.passed, false);
  EXPECT_EQ(test.detail, "x");
  EXPECT_EQ(only<entry::Fault>(R"({"t":1,"type":"fault","text":"x","code":"E4"})").code, "E4");
  EXPECT_EQ(only<entry::Mark>(R"({"t":1,"type":"mark","text":"x","author":"A"})").author, "A");
  EXPECT_EQ(only<entry::Unreadable>(R"({"t":1,"type":"unreadable","base64":"Zg=="})").base64,
            "Zg==");
}

TEST(ReadEntry, timesAreWholeMicroseconds) {
  const Record record =
      recordOf({R"({"t":-0.6,"type":"power_on"})", R"({"t":1e-7,"type":"power_on"})",
                R"({"t":0.1234565,"type":"power_on"})", R"({"t":12.000001,"type":"power_on"})",
                R"({"t":99.9999996,"type":"power_on"})"});
  std::vector<std::int64_t> micros;
  for (const Entry& e : record.entries) {
    micros.push_back(e.t.time_since_epoch().count());
  }
  EXPECT_EQ(micros, (std::vector<std::int64_t>{-600000, 0, std::llround(0.1234565 * 1e6), 12000001,
                                               100000000}));
}

TEST(ReadEntry, theLargestTimesAreRead) {
  const auto file = readText(test::closed(
      std::string(test::kPlainHeader) +
          "\n{\"t\":-1000000,\"type\":\"power_on\"}\n{\"t\":1000000,\"type\":\"power_off\"}\n",
      2, 1e6));
  ASSERT_TRUE(file);
  EXPECT_TRUE(file->problems.empty());
  EXPECT_EQ(file->records.front().record.lastTime, timeFromSeconds(1e6));
}

TEST(ReadEntry, whatAnyEntryMayCarry) {
  const Record record = recordOf(
      {R"({"t":1,"type":"mark","text":"x","source":"observer","part":"b","quality":0.5,"note":"n"})"},
      R"({"resuslog":"1.0","id":"urn:uuid:123e4567-e89b-42d3-a456-426614174000",)"
      R"("recorded":"2026-03-14T09:12:30Z","kind":"drill","parts":[{"id":"a"},{"id":"b"}]})");
  const Entry& entry = record.entries.front();
  EXPECT_EQ(entry.source, Source::observer);
  EXPECT_EQ(entry.part, 1);
  EXPECT_EQ(entry.quality, 0.5);
  EXPECT_EQ(entry.note, "n");
  EXPECT_EQ(entry.line, 2);
  EXPECT_TRUE(entry.otherKeys.empty());
}

TEST(ReadEntry, unknownTypesAndKeysAreKeptAsSpelled) {
  const Record record = recordOf({R"({"t":1,"type":"x_ray","film":[1, 2],"end":4.50})",
                                  R"({"t":4,"type":"power_on","end":7,"open":true,"a b":1.50})"});
  const auto* other = record.entries[0].complete<entry::Other>();
  ASSERT_NE(other, nullptr);
  EXPECT_EQ(other->type, "x_ray");
  EXPECT_EQ(record.entries[0].end, timeFromSeconds(4.5));
  EXPECT_EQ(record.entries[0].otherKeys, R"("film":[1, 2])");
  EXPECT_FALSE(record.entries[1].end);
  EXPECT_EQ(record.entries[1].otherKeys, R"("end":7,"open":true,"a b":1.50)");
}

TEST(ReadEntry, entriesAreSortedByTimeTiesAsFound) {
  const auto file = readText(
      sealedLog({R"({"t":5,"type":"mark","text":"c"})", R"({"t":1,"type":"mark","text":"a"})",
                 R"({"type":"mark","text":"b"})", R"({"t":5,"type":"mark","text":"d"})",
                 R"({"t":-2,"type":"mark","text":"first"})"}));
  ASSERT_TRUE(file);
  std::string order;
  for (const Entry& e : file->records.front().record.entries) {
    order += std::get<entry::Mark>(e.data).text + " ";
  }
  EXPECT_EQ(order, "first a b c d ");
}

struct OpenCase {
  const char* name;
  std::vector<std::string> lines;
  /// Of the first stretch found.
  std::optional<double> end;
  bool neverClosed;
  bool incomplete;
  std::size_t entries;
  std::vector<ProblemKind> problems;
};

class OpenStretches : public testing::TestWithParam<OpenCase> {};

TEST_P(OpenStretches, areClosedByALaterLine) {
  const OpenCase& c = GetParam();
  const auto file = readText(sealedLog(c.lines));
  ASSERT_TRUE(file);
  const Record& record = file->records.front().record;
  std::vector<ProblemKind> kinds;
  for (const Problem& problem : file->problems) {
    kinds.push_back(problem.kind);
  }
  EXPECT_EQ(kinds, c.problems);
  ASSERT_EQ(record.entries.size(), c.entries);
  for (const Entry& entry : record.entries) {
    if (isStretch(entry.data)) {
      EXPECT_EQ(entry.end, c.end ? timeFromSeconds(*c.end) : std::nullopt);
      EXPECT_EQ(entry.neverClosed, c.neverClosed);
      EXPECT_EQ(entry.incomplete, c.incomplete);
      return;
    }
  }
  FAIL() << "no stretch";
}

// The closing line that `sealedLog` adds is written at 100 s.
INSTANTIATE_TEST_SUITE_P(
    All, OpenStretches,
    testing::Values(
        OpenCase{"replaced",
                 {R"({"t":1,"type":"cpr","open":true})", R"({"t":1,"end":9,"type":"cpr"})"},
                 9,
                 false,
                 false,
                 1,
                 {}},
        OpenCase{"adviceComesLater",
                 {R"({"t":1,"type":"analysis","open":true})",
                  R"({"t":1,"end":9,"type":"analysis","advice":"shock"})"},
                 9,
                 false,
                 false,
                 1,
                 {}},
        OpenCase{"writtenOpenTwice",
                 {R"({"t":1,"type":"cpr","open":true})",
                  R"({"t":1,"type":"cpr","open":true,"rate_per_min":100})",
                  R"({"t":1,"end":9,"type":"cpr"})"},
                 9,
                 false,
                 false,
                 1,
                 {}},
        OpenCase{"openWithAnEndIsClosed",
                 {R"({"t":1,"end":4,"type":"cpr","open":true})"},
                 4,
                 false,
                 false,
                 1,
                 {}},
        OpenCase{"neverClosed",
                 {R"({"t":1,"type":"cpr","open":true})", R"({"t":20,"type":"power_off"})"},
                 100,
                 true,
                 false,
                 2,
                 {ProblemKind::neverClosedStretch}},
        OpenCase{"neverClosedNorAdvised",
                 {R"({"t":1,"type":"analysis","open":true})"},
                 100,
                 true,
                 true,
                 1,
                 {ProblemKind::missingKey, ProblemKind::neverClosedStretch}},
        OpenCase{"anotherTimeClosesNothing",
                 {R"({"t":1,"type":"cpr","open":true})", R"({"t":1.000001,"end":9,"type":"cpr"})"},
                 100,
                 true,
                 false,
                 2,
                 {ProblemKind::neverClosedStretch}},
        OpenCase{"anotherSourceClosesNothing",
                 {R"({"t":1,"type":"cpr","open":true})",
                  R"({"t":1,"end":9,"type":"cpr","source":"observer"})"},
                 100,
                 true,
                 false,
                 2,
                 {ProblemKind::neverClosedStretch}},
        OpenCase{"anotherTypeClosesNothing",
                 {R"({"t":1,"type":"cpr","open":true})", R"({"t":1,"end":9,"type":"charge"})"},
                 100,
                 true,
                 false,
                 2,
                 {ProblemKind::neverClosedStretch}}),
    [](const auto& test) { return test.param.name; });

TEST(ReadEntry, withoutAnEndLineAnOpenStretchLastsToTheLastCompleteEntry) {
  const auto file = readText(
      std::string(test::kPlainHeader) + "\n" +
      test::joined({R"({"t":1,"type":"cpr","open":true})", R"({"t":2,"end":30,"type":"charge"})",
                    R"({"t":3,"type":"power_off"})", R"({"t":50,"type":"shock"})"}));
  ASSERT_TRUE(file);
  const Record& record = file->records.front().record;
  EXPECT_EQ(record.entries.front().end, timeFromSeconds(30));
  EXPECT_EQ(record.lastTime, timeFromSeconds(50));
}

TEST(ReadEntry, theReplacingLineTakesItsOwnPlaceAmongTies) {
  const Record record =
      recordOf({R"({"t":1,"type":"cpr","open":true})", R"({"t":1,"type":"power_on"})",
                R"({"t":1,"end":9,"type":"cpr"})"});
  ASSERT_EQ(record.entries.size(), 2U);
  EXPECT_NE(record.entries[0].complete<entry::PowerOn>(), nullptr);
  EXPECT_EQ(record.entries[1].line, 4);
}

TEST(ReadHeader, everyKey) {
  const Record record = recordOf(
      {},
      R"({"resuslog":"1.3","id":"urn:uuid:123E4567-e89b-42d3-a456-426614174000",)"
      R"("recorded":"2026-03-14T09:12:30-00:00","kind":"test",)"
      R"("patient":{"category":"child","age_years":7.5,"sex":"f","w":1},)"
      R"("device":{"label":"boathouse 2","maker":"m","model":"o","serial":"s","software":"2.1","return_to":"r"},)"
      R"("clock":{"state":"zone_unknown","offset_s":-2.5,"checked":"2026-03-15T00:00:00Z","against":"phone"},)"
      R"("event":{"witnessed":"crew","bystander_cpr":true,"location":"l","cause":"c"},)"
      R"("site":"ferry terminal","team":"t","case":"17",)"
      R"("channels":[{"id":"e","quantity":"ecg","unit":"mV","rate_hz":250.5,"scale":2,"offset":-1,"label":"II","x":[]}],)"
      R"("parts":[{"id":"p","sha256":"ab","offset_s":3,"label":"q","y":0}],)"
      R"("derived_from":{"id":"i","sha256":"cd","problems":3},"made_by":"b","synthetic":true,"z":{"z":1}})");
  const Header& h = record.header;
  EXPECT_EQ(h.version, "1.3");
  EXPECT_EQ(h.id, "urn:uuid:123E4567-e89b-42d3-a456-426614174000");
  ASSERT_TRUE(h.recorded);
  EXPECT_FALSE(h.recorded->zoneKnown);
  EXPECT_EQ(h.kind, RecordKind::test);
  EXPECT_EQ(h.patient, PatientCategory::child);
  EXPECT_EQ(h.ageYears, 7.5);
  EXPECT_EQ(h.sex, "f");
  EXPECT_EQ(h.device.label + h.device.maker + h.device.model + h.device.serial + h.device.software +
                h.device.returnTo,
            "boathouse 2mos2.1r");
  EXPECT_EQ(h.clock.state, ClockState::zoneUnknown);
  EXPECT_EQ(h.clock.offset, Duration{-2500000});
  EXPECT_EQ(formatWallTime(h.clock.checked.value()), "2026-03-15T00:00:00Z");
  EXPECT_EQ(h.clock.against, "phone");
  EXPECT_EQ(h.event.witnessed + h.event.bystanderCpr + h.event.location + h.event.cause,
            "crewtruelc");
  EXPECT_EQ(h.site + "," + h.team + "," + h.caseNumber, "ferry terminal,t,17");
  ASSERT_EQ(record.channels.size(), 1U);
  const Channel& c = record.channels.front();
  EXPECT_EQ(c.id + c.quantity + c.unit + c.label + c.encoding, "eecgmVIIint16le");
  EXPECT_EQ(c.rateHz, 250.5);
  EXPECT_EQ(c.scale, 2);
  EXPECT_EQ(c.offset, -1);
  EXPECT_TRUE(c.drawable);
  EXPECT_EQ(c.otherKeys, "\"x\":[]");
  ASSERT_EQ(h.parts.size(), 1U);
  EXPECT_EQ(h.parts[0].id + h.parts[0].sha256 + h.parts[0].label, "pabq");
  EXPECT_EQ(h.parts[0].offset, Duration{3000000});
  EXPECT_EQ(h.parts[0].otherKeys, "\"y\":0");
  ASSERT_TRUE(h.derivedFrom);
  EXPECT_EQ(h.derivedFrom->id + h.derivedFrom->sha256, "icd");
  EXPECT_EQ(h.derivedFrom->problems, 3);
  EXPECT_EQ(h.madeBy, "b");
  EXPECT_TRUE(h.synthetic);
  EXPECT_EQ(h.otherKeys, R"("z":{"z":1},"patient":{"w":1})");
}

struct HeaderCase {
  const char* name;
  /// What stands in the header instead of, or beside, the good keys.
  std::string keys;
  Severity severity;
  ProblemKind kind;
  std::string firstArgument;
};

class BadHeaders : public testing::TestWithParam<HeaderCase> {};

TEST_P(BadHeaders, areStillRead) {
  const HeaderCase& c = GetParam();
  std::string line = R"({"resuslog":"1.0",)" + c.keys;
  for (const auto& [key, value] :
       {std::pair{"id", "urn:uuid:123e4567-e89b-42d3-a456-426614174000"},
        std::pair{"recorded", "2026-03-14T09:12:30Z"}, std::pair{"kind", "drill"}}) {
    const bool leftOut = c.kind == ProblemKind::missingHeaderKey && c.firstArgument == key;
    if (c.keys.find("\"" + std::string(key) + "\":") != 0 && !leftOut) {
      line += std::string(line.back() == ',' ? "" : ",") + "\"" + key + "\":\"" + value + "\"";
    }
  }
  const auto file = readText(sealedLog({}, line + "}"));
  ASSERT_TRUE(file) << line;
  ASSERT_EQ(file->problems.size(), 1U) << line;
  const Problem& problem = file->problems.front();
  EXPECT_EQ(problem.line, 1);
  EXPECT_EQ(problem.severity, c.severity);
  EXPECT_EQ(problem.kind, c.kind);
  EXPECT_EQ(problem.args.at(0), c.firstArgument);
}

INSTANTIATE_TEST_SUITE_P(
    All, BadHeaders,
    testing::Values(
        HeaderCase{"noId", "", Severity::error, ProblemKind::missingHeaderKey, "id"},
        HeaderCase{"noRecorded", "", Severity::error, ProblemKind::missingHeaderKey, "recorded"},
        HeaderCase{"noKind", "", Severity::error, ProblemKind::missingHeaderKey, "kind"},
        HeaderCase{"badId", R"("id":"urn:uuid:123")", Severity::error,
                   ProblemKind::wrongHeaderValue, "id"},
        HeaderCase{"idIsNumber", R"("id":5)", Severity::error, ProblemKind::wrongHeaderValue, "id"},
        HeaderCase{"badRecorded", R"("recorded":"yesterday")", Severity::error,
                   ProblemKind::wrongHeaderValue, "recorded"},
        HeaderCase{"badKind", R"("kind":"exercise")", Severity::error,
                   ProblemKind::wrongHeaderValue, "kind"},
        HeaderCase{"badSite", R"("site":5)", Severity::warning, ProblemKind::wrongHeaderValue,
                   "site"},
        HeaderCase{"badPatient", R"("patient":"adult")", Severity::warning,
                   ProblemKind::wrongHeaderValue, "patient"},
        HeaderCase{"badCategory", R"("patient":{"category":"teen"})", Severity::warning,
                   ProblemKind::wrongHeaderValue, "patient.category"},
        HeaderCase{"badWitnessed", R"("event":{"witnessed":"maybe"})", Severity::warning,
                   ProblemKind::wrongHeaderValue, "event.witnessed"},
        HeaderCase{"badOffset", R"("clock":{"offset_s":"1"})", Severity::warning,
                   ProblemKind::wrongHeaderValue, "clock.offset_s"},
        HeaderCase{"badPart", R"("parts":[5])", Severity::warning, ProblemKind::wrongHeaderValue,
                   "parts"},
        HeaderCase{"badChannels", R"("channels":{})", Severity::warning,
                   ProblemKind::wrongHeaderValue, "channels"},
        HeaderCase{"noRate", R"("channels":[{"id":"e","quantity":"ecg"}])", Severity::error,
                   ProblemKind::wrongChannel, "e"},
        HeaderCase{"rateZero", R"("channels":[{"id":"e","quantity":"ecg","rate_hz":0}])",
                   Severity::error, ProblemKind::wrongChannel, "e"},
        HeaderCase{"noQuantity", R"("channels":[{"id":"e","rate_hz":1}])", Severity::error,
                   ProblemKind::wrongChannel, "e"},
        HeaderCase{"noChannelId", R"("channels":[{"quantity":"ecg","rate_hz":1}])", Severity::error,
                   ProblemKind::wrongChannel, ""},
        HeaderCase{"scaleIsText",
                   R"("channels":[{"id":"e","quantity":"ecg","rate_hz":1,"scale":"2"}])",
                   Severity::error, ProblemKind::wrongChannel, "e"},
        HeaderCase{"twins",
                   R"("channels":[{"id":"e","quantity":"ecg","rate_hz":1},)"
                   R"({"id":"e","quantity":"ecg","rate_hz":2}])",
                   Severity::error, ProblemKind::wrongChannel, "e"},
        HeaderCase{"notDrawn",
                   R"("channels":[{"id":"e","quantity":"ecg","rate_hz":1,"encoding":"f32"}])",
                   Severity::warning, ProblemKind::channelNotDrawn, "e"}),
    [](const auto& test) { return test.param.name; });

} // namespace
} // namespace afterbeat
