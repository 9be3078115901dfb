// A real recording (MIT-BIH Malignant Ventricular Arrhythmia Database, record 424: Greenwald 1986,
// doi:10.13026/C22P44, by way of PhysioNet, Goldberger et al., Circulation 2000;101(23):e215-e220)
// with the notes of an invented observer.

#include "../reference_recordings.h"
#include "../scratch_folder.h"
#include "log_text.h"

#include "core/measures/figures.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

// Times are seconds of the recording; fibrillation begins at 1258.996 s. Compressions are noted as
// stretches with a pause of 14 s around analysis and shock.
const char* const kNotes = "Zeit;Was;Wert;Bemerkung\n"
                           "1262;Kollaps;;am F\u00e4hranleger\n"
                           "1270;HDM Beginn;;\n"
                           "1275;Notruf;;\n"
                           "1300;Elektroden geklebt;;\n"
                           "1330;HDM Ende;;\n"
                           "1336;Analyse;Schock empfohlen;\n"
                           "1342;Schock;150 J;\n"
                           "1344;HDM Beginn;;\n"
                           "1440;HDM Ende;;\n"
                           "1443,3;Kreislauf wieder da;;\n"
                           "1700;\u00dcbergabe;;\n";

TEST(RescueWithObserver, record424) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  auto ecg = readAnySource(referenceRecordings() / "ecg" / "vfdb" / "424.hea");
  ASSERT_TRUE(ecg) << ecg.error().sentence();
  const auto result = gather(together({std::move(*ecg), "424.hea", std::string(64, 'a'), {}},
                                      notesSource("notes.csv", kNotes, Duration{})));
  EXPECT_EQ(said(result, Severity::error), "");

  // It survives being written and read.
  const auto text = written(result.record);
  const auto back = readBack(text);
  EXPECT_EQ(said(back, Severity::error), "");
  EXPECT_EQ(said(back, Severity::warning), "");
  EXPECT_EQ(written(back.record), text);
  const auto& record = back.record;

  ASSERT_EQ(record.channels.size(), 2U);
  EXPECT_EQ(record.channels[0].id, "1-ecg1");
  EXPECT_EQ(record.channels[0].samples.size(), 525000U);
  EXPECT_EQ(record.channels[0].samples, result.record.channels[0].samples);
  ASSERT_EQ(record.channels[0].blocks.size(), 1U);

  // Rhythm strips as the database's own table has them (start_s,end_s,label).
  std::vector<std::string> rhythms;
  for (const auto& entry : record.entries) {
    if (const auto* rhythm = entry.complete<entry::Rhythm>()) {
      rhythms.push_back(
          fmt::format("{:.3f},{:.3f},{}", seconds(entry.t), seconds(*entry.end), rhythm->reason));
      EXPECT_EQ(entry.source, Source::observer);
      EXPECT_EQ(entry.part, 0);
    }
  }
  EXPECT_EQ(rhythms.size(), 14U);
  EXPECT_EQ(rhythms.at(1), "1258.996,1364.692,VFIB");
  EXPECT_EQ(rhythms.at(3), "1370.536,1383.152,ASYS");

  const auto figures = computeFigures(record);
  const auto value = [&](MeasureId id) { return figures[id].value.value_or(-1); };
  EXPECT_EQ(figures.evidence, Evidence::segments);
  // Window: first hands on to last hands on. Pauses by hand: 1330 to 1344, nothing else before the
  // circulation returns.
  EXPECT_EQ(figures.window->begin, *timeFromSeconds(1270));
  EXPECT_EQ(figures.window->end, *timeFromSeconds(1440));
  EXPECT_DOUBLE_EQ(value(MeasureId::handsOffTime), 14);
  EXPECT_DOUBLE_EQ(value(MeasureId::handsOffFraction), 14.0 / 170);
  EXPECT_DOUBLE_EQ(value(MeasureId::shocksDelivered), 1);
  EXPECT_DOUBLE_EQ(value(MeasureId::energyTotal), 150);
  EXPECT_DOUBLE_EQ(value(MeasureId::preShockPauseMedian), 12);
  EXPECT_DOUBLE_EQ(value(MeasureId::postShockPauseMedian), 2);
  EXPECT_DOUBLE_EQ(value(MeasureId::adviceToShockMedian), 6);
  EXPECT_DOUBLE_EQ(value(MeasureId::collapseToFirstShock), 80);
  EXPECT_DOUBLE_EQ(value(MeasureId::callToFirstHandsOn), -5);
  EXPECT_EQ(figures[MeasureId::compressions].status, Status::notRecorded);
}

} // namespace
} // namespace afterbeat
