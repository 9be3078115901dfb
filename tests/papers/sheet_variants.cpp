#include "tests/papers/sheet_variants.h"

#include "tests/papers/example_records.h"

#include <algorithm>
#include <stdexcept>

namespace afterbeat::test {

namespace {

Record headerOnly() {
  RecordBuilder b;
  b.record.header = Header{};
  b.record.header.id = "urn:uuid:00000000-0000-4000-8000-000000000001";
  b.record.header.kind = RecordKind::rescue;
  return b.done();
}

/// The device wrote down shocks and analyses; hands and breaths were read off its waveforms.
Record fromSignals() {
  Record record = fullRescue();
  for (Entry& entry : record.entries) {
    if (entry.complete<entry::Compression>() || entry.complete<entry::Ventilation>()) {
      entry.source = Source::derived;
      entry.quality = 0.87;
    }
  }
  return record;
}

/// As much as a sheet can be asked to hold, and nearly every notice at once.
Record fullest() {
  RecordBuilder b;
  b.record = overfull();
  Header& header = b.record.header;
  header.patient = PatientCategory::child;
  header.ageYears = 11;
  header.sex = "female";
  header.event.cause = "presumed_cardiac";
  header.clock.offset = Duration{-57'000'000};
  header.clock.checked = parseWallTime("2026-03-14T12:00:00+01:00");
  header.clock.against = "the time signal of the harbour office at noon of the same day";
  header.derivedFrom = DerivedFrom{"urn:uuid:x", "", 14};
  b.record.otherRecordsInFile = 2;
  b.record.lostLines = 5;
  b.at(-240, entry::Milestone{"collapse"}).at(-200, entry::Milestone{"call_received"});
  b.at(0.5, entry::PatientMode{PatientCategory::child});
  b.at(400, entry::PatientMode{PatientCategory::adult});
  for (int i = 0; i < 12; ++i) {
    b.remark(100 + i * 140, "helper changed sides because the floor beside the wall was wet");
  }
  b.at(900, entry::Fault{"battery of the spare unit is nearly empty and has to be changed", "E4"});
  b.at(960, entry::Fault{"speaker not found", "E7"}).at(970, entry::Fault{"", "E9"});
  b.at(1500, entry::Milestone{"crew_arrived"});
  b.at(1990, entry::Milestone{"efforts_ended"}).at(1995, entry::Milestone{"handover"});
  return b.done();
}

Record infant() {
  RecordBuilder b;
  b.record.header.patient = PatientCategory::infant;
  b.record.header.ageYears = 0.4;
  b.at(0, entry::PowerOn{}).at(1, entry::PatientMode{PatientCategory::infant});
  b.at(22, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  b.analysis(28, 36, Advice::noShock).thirtyToTwo(40, 150, 116, 4);
  b.analysis(156, 163, Advice::noShock).thirtyToTwo(168, 280, 114, 4);
  return b.at(300, entry::PowerOff{}).done();
}

Record noShock() {
  RecordBuilder b;
  b.at(0, entry::PowerOn{}).at(1, entry::PatientMode{PatientCategory::adult});
  b.at(26, entry::Electrodes{ElectrodeState::attached, 81.0});
  for (int i = 0; i < 4; ++i) {
    b.analysis(32 + i * 126, 40 + i * 126, Advice::noShock);
    b.thirtyToTwo(44 + i * 126, 152 + i * 126, 109, 5);
  }
  return b.at(545, entry::PowerOff{}).done();
}

/// Returned, lost, and returned again, the device in place to the end.
Record circulationTwice() {
  Record record = fullRescue();
  RecordBuilder b;
  b.record = record;
  b.at(600, entry::Circulation{CirculationState::lost}).compressions(603, 640, 112);
  b.at(645, entry::Circulation{CirculationState::returned});
  return b.done();
}

Record lostAgain() {
  RecordBuilder b;
  b.record = fullRescue();
  b.at(600, entry::Circulation{CirculationState::lost}).compressions(603, 655, 112);
  return b.done();
}

Record effortsEnded() {
  RecordBuilder b;
  b.record = noShock();
  b.at(520, entry::Milestone{"efforts_ended"});
  b.record.entries.back().source = Source::observer;
  b.at(300, entry::Fault{"a lead came off", "E2"}).at(2, entry::SelfTest{false, ""});
  return b.done();
}

Record unsetClock() {
  Record record = fullRescue();
  record.header.clock.state = ClockState::unset;
  return record;
}

Record linesLost() {
  Record record = fullRescue();
  record.lostLines = 4;
  record.seal.matches = false;
  return record;
}

Record several() {
  Record record = fullRescue();
  record.otherRecordsInFile = 2;
  return record;
}

SheetVariant told(const std::string& name, const papers::ToldFigures& figures, RecordKind kind,
                  const std::string& site) {
  RecordBuilder b;
  b.record.header = Header{};
  b.record.header.kind = kind;
  b.record.header.site = site;
  return {name, b.done(), figures};
}

} // namespace

std::vector<SheetVariant> sheetVariants() {
  return {
      {"rescue", fullRescue()},
      {"fullest", fullest()},
      {"header-only", headerOnly()},
      {"switched-on-only", emptyRecord()},
      {"drill", drill()},
      {"child", childWithoutShock()},
      {"infant", infant()},
      {"no-shock", noShock()},
      {"circulation-returned-twice", circulationTwice()},
      {"circulation-lost-again", lostAgain()},
      {"cut-off", cutOff()},
      {"clock-not-set", unsetClock()},
      {"notes-only", notesOnly()},
      {"lines-lost", linesLost()},
      {"several-records", several()},
      {"efforts-ended", effortsEnded()},
      {"three-hours", longRescue(3)},
      {"from-signals", fromSignals()},
      told("told", {22, 4, "09:23", PatientCategory::adult}, RecordKind::rescue,
           "Ferry terminal, east pier"),
      told("told-drill-without-shock", {8, 0, {}, PatientCategory::child}, RecordKind::drill, {}),
      told("told-nothing", {}, RecordKind::rescue, {}),
  };
}

SheetVariant sheetVariant(const std::string& name) {
  const std::vector<SheetVariant> all = sheetVariants();
  const auto found = std::find_if(all.begin(), all.end(),
                                  [&](const SheetVariant& one) { return one.name == name; });
  if (found == all.end()) {
    throw std::invalid_argument(name);
  }
  return *found;
}

papers::SheetOptions sheetOptions(const SheetVariant& variant, const QString& language) {
  papers::SheetOptions options;
  options.language = language;
  options.printedAt = "2026-03-14 09:57";
  options.told = variant.told;
  if (!variant.told) {
    options.fileName = "ferry.resuslog";
    options.fileSha256 = QString(64, 'c');
  }
  return options;
}

papers::HandoverSheet sheetOf(const SheetVariant& variant, const QString& language,
                              QPageSize::PageSizeId paper) {
  papers::SheetOptions options = sheetOptions(variant, language);
  options.paper = paper;
  return papers::layOutHandoverSheet(variant.record, computeFigures(variant.record), options);
}

} // namespace afterbeat::test
