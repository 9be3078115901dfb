#include "app/papers/sheet_content.h"
#include "tests/papers/example_records.h"

#include <gtest/gtest.h>

namespace afterbeat::papers {
namespace {

SheetOptions options(const QString& language = "en") {
  SheetOptions made;
  made.language = language;
  made.fileName = "ferry.resuslog";
  made.fileSha256 = QString(64, 'b');
  return made;
}

SheetContent content(const Record& record, const SheetOptions& chosen = options()) {
  return makeSheetContent(record, computeFigures(record), chosen,
                          Words::inLanguage(chosen.language));
}

/// Everything the sheet says, one text a line.
QString all(const SheetContent& sheet) {
  QStringList lines{sheet.title, sheet.subtitle, sheet.date, sheet.site, sheet.recordLine};
  lines << sheet.bands << sheet.notices << sheet.notes << sheet.caution << sheet.made
        << sheet.checksum;
  for (const SheetFigure& figure : sheet.figures) {
    lines << figure.title << figure.value << figure.unknown << figure.notes;
  }
  std::vector<SheetSection> sections = sheet.sections;
  sections.push_back(sheet.device);
  for (const SheetSection& section : sections) {
    lines << section.title;
    for (const SheetLine& line : section.lines) {
      lines << line.text << line.blanks;
    }
  }
  return lines.join('\n');
}

/// Texts that must and must not stand on a sheet.
void expectTexts(const SheetContent& sheet, const QStringList& there, const QStringList& absent) {
  const QString text = all(sheet);
  for (const QString& words : there) {
    EXPECT_TRUE(text.contains(words)) << words.toStdString() << "\nin\n" << text.toStdString();
  }
  for (const QString& words : absent) {
    EXPECT_FALSE(text.contains(words)) << words.toStdString() << "\nin\n" << text.toStdString();
  }
}

TEST(SheetContent, TheFullestRescue) {
  const SheetContent sheet = content(test::fullRescue());
  EXPECT_EQ(sheet.title, "Handover");
  EXPECT_EQ(sheet.date, "Saturday 14 March 2026");
  EXPECT_EQ(sheet.recordLine, QStringLiteral("record 7f3a21c9 · device FT-02"));
  EXPECT_EQ(sheet.figures[0].value, "11 min");
  EXPECT_EQ(sheet.figures[0].notes, QStringList{"on 09:12:30, off 09:23:32"});
  EXPECT_EQ(sheet.figures[1].value, "3");
  EXPECT_EQ(sheet.figures[1].notes, QStringList{"150 J, 200 J, 200 J"});
  EXPECT_EQ(sheet.figures[2].value, "09:19:57");
  EXPECT_EQ(sheet.figures[2].notes, QStringList{"3 min 35 s before the record ends"});
  EXPECT_EQ(sheet.figures[3].value, "Adult");
  EXPECT_EQ(sheet.figures[3].notes, QStringList{"not changed"});
  EXPECT_EQ(sheet.figures[4].value, "47 %");
  EXPECT_EQ(sheet.figures[5].value, "returned 09:22:08");
  expectTexts(sheet,
              {"Adult, 58 years, female",
               "Collapse 09:10:00",
               "first shock 09:13:23 (after 53 s)",
               "From collapse: to first recorded compression 3 min 29 s",
               "to first shock 3 min 23 s",
               "to return of circulation 12 min 8 s",
               "Five analyses: shock advised, shock advised, no shock, shock advised, no shock",
               "4 min 15 s of the 9 min 4 s counted",
               "Longest pause 45 s, around shock 2",
               "no loss recorded after it; the record ends 09:23:32",
               "from 09:13:01 (electrodes on)",
               "553 chest compressions, hands on the chest for 4 min 49 s",
               "32 breaths",
               "Shocks: 09:13:23, 09:15:38, 09:19:57",
               "adrenaline 1 mg 09:21:10",
               "supraglottic airway",
               "serial number A1-0042",
               "Return to: Harbour office",
               "pauses longer than 1.5 s count in full",
               "Corrections: none.",
               "urn:uuid:7f3a21c9-5b1e-4c7d-9a0f-2d6c81d3e04b",
               "file ferry.resuslog",
               "does not replace your own assessment",
               QString(64, 'b')},
              {"ago", "before printing", "DRILL"});
  EXPECT_TRUE(sheet.notices.isEmpty());
}

TEST(SheetContent, TheSectionsAreInTheOrderCrewsAreTrainedToHear) {
  const SheetContent sheet = content(test::fullRescue());
  QStringList titles;
  for (const SheetSection& section : sheet.sections) {
    titles << section.title;
  }
  EXPECT_EQ(titles, (QStringList{"Patient", "Time", "What happened", "Findings", "Treatment",
                                 "Handed over"}));
}

TEST(SheetContent, WhatIsNotRecordedIsNeverANumber) {
  for (const Record& record : {test::emptyRecord(), test::notesOnly()}) {
    const SheetContent sheet = content(record);
    for (std::size_t i = 0; i < 4; ++i) {
      EXPECT_TRUE(sheet.figures[i].value.isEmpty()) << sheet.figures[i].title.toStdString();
    }
  }
  expectTexts(content(test::emptyRecord()),
              {"return not recorded", "Chest compressions from", "Breaths, airway",
               "What the device advised", "Name", "Age", "Sex", "Collapse at", "Call received at",
               "Seen by", "First help by", "Serial number", "Return to",
               "The device clock was not set"},
              {"0 %", "100 %", "0 shocks", "at 0 a minute", "Findings"});
  EXPECT_TRUE(content(test::emptyRecord()).date.isEmpty());
  EXPECT_TRUE(content(test::emptyRecord()).site.isEmpty());
}

TEST(SheetContent, NoShockIsZeroOnlyWhereTheWholeTimeOnIsCovered) {
  const SheetContent child = content(test::childWithoutShock());
  EXPECT_EQ(child.figures[1].value, "0");
  EXPECT_EQ(child.figures[2].value, "none");
  Record open = test::childWithoutShock();
  std::erase_if(open.entries,
                [](const Entry& entry) { return entry.complete<entry::PowerOff>() != nullptr; });
  EXPECT_EQ(content(open).figures[1].value, "0");
  open.seal = {};
  const SheetContent broken = content(open);
  EXPECT_TRUE(broken.figures[1].value.isEmpty());
  EXPECT_EQ(broken.figures[1].notes, QStringList{"none until recording broke off"});
  EXPECT_TRUE(broken.figures[2].value.isEmpty());
}

TEST(SheetContent, AChangedSettingSaysWhen) {
  const SheetContent sheet = content(test::childWithoutShock());
  EXPECT_EQ(sheet.figures[3].value, "Child");
  EXPECT_EQ(sheet.figures[3].notes, (QStringList{"changed 09:12:54", "before: adult"}));
  EXPECT_TRUE(sheet.notices.isEmpty());
}

TEST(SheetContent, AWrongSettingIsANotice) {
  Record record = test::fullRescue();
  record.header.patient = PatientCategory::child;
  const SheetContent sheet = content(record);
  EXPECT_EQ(sheet.figures[3].value, "Adult");
  EXPECT_EQ(sheet.figures[3].notes.first(), "patient recorded as child");
  ASSERT_EQ(sheet.notices.size(), 1);
  EXPECT_EQ(sheet.notices[0],
            QStringLiteral("The device was set to “adult”; the patient is recorded as “child”."));
}

TEST(SheetContent, ADrillSaysSo) {
  const SheetContent sheet = content(test::drill());
  EXPECT_EQ(sheet.bands, (QStringList{QStringLiteral("DRILL – not a real patient"),
                                      QStringLiteral("SYNTHETIC – invented data")}));
  EXPECT_EQ(sheet.figures[1].notes, QStringList{"energy not recorded"});
  Record real = test::fullRescue();
  real.header.synthetic = false;
  EXPECT_TRUE(content(real).bands.isEmpty());
}

TEST(SheetContent, ARecordingThatBrokeOffSaysSo) {
  const SheetContent sheet = content(test::cutOff());
  EXPECT_EQ(
      sheet.notices,
      QStringList{"The recording stopped without being closed; what came after is not known."});
  EXPECT_EQ(sheet.figures[1].value, "1");
  EXPECT_EQ(sheet.figures[0].doubt, "at least");
  EXPECT_EQ(sheet.figures[1].doubt, "at least");
  EXPECT_EQ(sheet.figures[1].notes, (QStringList{"200 J", "1 more: delivery not recorded"}));
  EXPECT_EQ(sheet.figures[2].doubt, "after power-on");
  EXPECT_EQ(sheet.figures[4].doubt, "of what was recorded");
  EXPECT_EQ(sheet.figures[2].value, "46 s");
  EXPECT_EQ(sheet.figures[2].notes.first(), "the last recorded");
  expectTexts(sheet, {"clock times not known"}, {"09:1"});
}

TEST(SheetContent, AWholeRecordIsNotDoubted) {
  for (const Record& record : {test::fullRescue(), test::childWithoutShock(), test::drill()}) {
    for (const SheetFigure& figure : content(record).figures) {
      EXPECT_TRUE(figure.doubt.isEmpty()) << figure.title.toStdString();
    }
  }
}

TEST(SheetContent, AReturnAfterWhichPeoplePressedOnIsNotTheLoudestWord) {
  test::RecordBuilder b;
  b.at(0, entry::PowerOn{}).at(10, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  b.compressions(20, 100, 110).at(80, entry::Circulation{CirculationState::returned});
  const SheetContent sheet = content(b.at(120, entry::PowerOff{}).done());
  EXPECT_EQ(sheet.figures[5].value, "unclear");
  EXPECT_EQ(sheet.figures[5].notes.value(0), "returned 09:13:50");
  EXPECT_TRUE(sheet.figures[5].notes.value(1).startsWith("compressions went on until 09:14:"));
  expectTexts(sheet, {}, {"no loss recorded"});
}

TEST(SheetContent, EqualDosesAreFoldedAndTheLastIsKept) {
  test::RecordBuilder b;
  b.record = test::fullRescue();
  for (int i = 0; i < 12; ++i) {
    b.at(70 + 40 * i, entry::Medication{"Adrenaline 1 mg"});
  }
  expectTexts(content(b.done()),
              {QStringLiteral("13 × Adrenaline 1 mg: first 09:13:40, last 09:21:10")}, {"more"});
}

TEST(SheetContent, EveryNotedMomentStandsOnTheSheetWithItsTime) {
  test::RecordBuilder b;
  b.record = test::fullRescue();
  b.at(-120, entry::Milestone{"cpr_started"}).at(-170, entry::Milestone{"pulled_from_water"});
  b.at(-5, entry::Milestone{"device_arrived"});
  expectTexts(
      content(b.done()),
      {"Pulled from water 09:09:40", "compressions started 09:10:30", "device arrived 09:12:25"},
      {});
}

TEST(SheetContent, LengthsFollowFromThePrintedClockTimes) {
  test::RecordBuilder b;
  b.at(-0.3, entry::PowerOn{}).at(10, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  b.compressions(20, 50, 110).shock(58.7, true, 200).compressions(64, 100, 110);
  expectTexts(content(b.at(159.6, entry::PowerOff{}).done()),
              {"on 09:12:29, off 09:15:09", "2 min 40 s", "first shock 09:13:28 (after 59 s)"}, {});
}

TEST(SheetContent, WhatGoesOnAfterSwitchingOffIsSaid) {
  test::RecordBuilder b;
  b.at(0, entry::PowerOn{}).compressions(20, 50, 110).at(40, entry::PowerOff{});
  EXPECT_EQ(content(b.done()).notices,
            QStringList{"The record goes on for 10 s after the device was switched off."});
}

TEST(SheetContent, AFileThatDoesNotSayWhatItWasIsTicked) {
  Record record = test::fullRescue();
  EXPECT_TRUE(content(record).ticks.isEmpty());
  record.header.kind.reset();
  EXPECT_EQ(content(record).ticks, (QStringList{"rescue", "drill", "test"}));
}

TEST(SheetContent, ADamagedFileSaysSo) {
  Record record = test::fullRescue();
  record.seal.matches = false;
  EXPECT_EQ(content(record).notices.size(), 1);
  record = test::fullRescue();
  record.header.derivedFrom = DerivedFrom{"urn:uuid:x", "", 3};
  EXPECT_EQ(content(record).notices,
            QStringList{"This record was salvaged from a damaged file (3 problems)."});
}

TEST(SheetContent, BeforePrintingOnlyWithACheckedClock) {
  SheetOptions printed = options();
  printed.printedAt = "2026-03-14 09:31";
  EXPECT_EQ(content(test::fullRescue(), printed).figures[2].notes.size(), 1);
  Record record = test::fullRescue();
  record.header.clock.offset = Duration{-57'000'000};
  record.header.clock.checked = parseWallTime("2026-03-14T12:00:00+01:00");
  ASSERT_EQ(clockTrust(record), ClockTrust::checked);
  const SheetContent checked = content(record, printed);
  EXPECT_EQ(checked.figures[2].value, "09:19:00");
  EXPECT_EQ(checked.figures[2].notes.last(), "12 min before printing");
  EXPECT_EQ(content(record).figures[2].notes.size(), 1);
}

TEST(SheetContent, MuchIsSummarised) {
  const SheetContent sheet = content(test::overfull());
  EXPECT_EQ(sheet.figures[1].value, "11");
  EXPECT_EQ(sheet.figures[1].notes,
            (QStringList{QStringLiteral("11 × 200 J"), "1 more: delivery not recorded",
                         "1 prepared, not given"}));
  expectTexts(sheet,
              {QStringLiteral("30 analyses: 10 × shock advised, 10 × no shock, 10 × inconclusive"),
               "and 5 more", "Left out of the figures: 30 s", QStringLiteral("30 × "),
               "lost 09:43:20"},
              {"no loss recorded after it"});
}

TEST(SheetContent, WhatTheFiguresWereMadeWithIsPrinted) {
  FigureSettings settings;
  settings.pauseThreshold = Duration{2'500'000};
  settings.windowEnd = WindowEnd::recordEnd;
  const Record record = test::fullRescue();
  const Words say = Words::inLanguage("en");
  expectTexts(makeSheetContent(record, computeFigures(record, settings), options(), say),
              {"pauses longer than 2.5 s count in full",
               "Counted from 09:13:01 (electrodes on) to 09:23:32 (end of the record).",
               "Target 100 to 120 a minute: European guidelines 2021"},
              {"last compression, shock or analysis"});
  settings.profile.ratePerMin.reset();
  expectTexts(makeSheetContent(record, computeFigures(record, settings), options(), say),
              {"Targets: European guidelines 2021."}, {"Target 100"});
}

TEST(SheetContent, FaultsOfTheDeviceAndTheEndOfEffortsAreSaid) {
  Record record = test::fullRescue();
  const auto add = [&](double t, EntryData data) {
    Entry entry;
    entry.t = *timeFromSeconds(t);
    entry.data = std::move(data);
    record.entries.push_back(std::move(entry));
  };
  add(100, entry::Fault{"a lead came off", "E2"});
  add(600, entry::Milestone{"efforts_ended"});
  const SheetContent sheet = content(record);
  EXPECT_EQ(sheet.notices, QStringList{"The device reported a fault: a lead came off (09:14:10)"});
  EXPECT_EQ(sheet.figures[5].notes.last(), "efforts ended 09:22:30");
  expectTexts(sheet, {"Efforts ended 09:22:30"}, {});
}

TEST(SheetContent, WhatWasToldIsMarkedAndTheRestIsLeftToThePen) {
  SheetOptions told = options();
  told.told = ToldFigures{22, std::nullopt, "09:31", PatientCategory::unknown};
  Record record;
  record.header.kind = RecordKind::rescue;
  const SheetContent sheet = content(record, told);
  EXPECT_EQ(sheet.figures[0].value, "22 min");
  EXPECT_EQ(sheet.figures[0].notes, QStringList{"as told"});
  EXPECT_TRUE(sheet.figures[1].value.isEmpty());
  EXPECT_TRUE(sheet.figures[1].notes.isEmpty());
  EXPECT_EQ(sheet.figures[2].value, "09:31");
  EXPECT_TRUE(sheet.figures[3].value.isEmpty());
  EXPECT_FALSE(sheet.hasRows);
  const QStringList pen = leftToPen(sheet);
  for (const char* label :
       {"Date", "Place", "Shocks given", "Circulation", "Told by: Name, role"}) {
    EXPECT_TRUE(pen.contains(label)) << label;
  }
  EXPECT_FALSE(pen.contains("Last shock"));
}

TEST(SheetContent, GermanIsGerman) {
  const SheetContent sheet = content(test::fullRescue(), options("de"));
  EXPECT_EQ(sheet.title, QStringLiteral("Übergabeblatt"));
  expectTexts(sheet,
              {QStringLiteral("Samstag, 14. März 2026"), "Abgegebene Schocks", "Letzter Schock",
               "Erwachsene", "3 min 35 s vor Ende der Aufzeichnung",
               QStringLiteral("Fünf Analysen: Schock empfohlen"),
               "4 min 15 s von 9 min 4 s gewerteter Zeit",
               QStringLiteral("Pausen über 1,5 s zählen in voller Länge"), "Korrekturen: keine.",
               "ersetzt nicht die eigene Beurteilung"},
              {"shock", "hands off", "Handover", "not recorded", "1.5"});
}

TEST(SheetContent, NeverAPrognosis) {
  for (const char* language : {"en", "de"}) {
    for (const Record& record : {test::fullRescue(), test::overfull(), test::drill()}) {
      expectTexts(content(record, options(language)), {},
                  {"surviv", "prognos", "Prognos", "chance", "outcome", QStringLiteral("Überleb")});
    }
  }
}

} // namespace
} // namespace afterbeat::papers
