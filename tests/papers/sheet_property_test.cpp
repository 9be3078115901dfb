/// What holds for the sheet of any record.
#include "tests/core/measures/random_record.h"
#include "tests/papers/sheet_faults.h"
#include "tests/papers/sheet_variants.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cstdlib>

namespace afterbeat::papers {
namespace {

/// RapidCheck reads its settings when the first property is checked.
const bool kSeeded = [] {
  setenv("RC_PARAMS", "seed=20260314 max_success=400", 0);
  return true;
}();

/// Words as people, devices and accidents write them: none, usual ones, very long ones, without any
/// space, in capitals, from right to left.
std::string someText() {
  const auto length = static_cast<std::size_t>(*rc::gen::inRange(1, 40));
  switch (*rc::gen::inRange(0, 7)) {
  case 0:
    return {};
  case 1:
    return "North boathouse";
  case 2:
    return std::string(length * 6, 'W');
  case 3:
    return "line\nbreak\tand a bell\a";
  case 4:
    return "\u05DE\u05D6\u05D7 \u05E6\u05E4\u05D5\u05DF 12";
  case 5: {
    std::string words;
    for (std::size_t i = 0; i < length; ++i) {
      words += "Übergangsweise gelagert · ";
    }
    return words;
  }
  default:
    return "supercalibratedunbreakable-name_of_a_device/with.everything";
  }
}

template <std::size_t n>
auto oneOf(const std::array<const char*, n>& words) {
  return std::string(words[static_cast<std::size_t>(*rc::gen::inRange<int>(0, n))]);
}

void fillHeader(Header& header) {
  header.site = someText();
  header.device.label = someText();
  header.device.maker = someText();
  header.device.serial = someText();
  header.device.returnTo = someText();
  header.sex = *rc::gen::inRange(0, 2) == 0 ? "female" : someText();
  header.event.cause = someText();
  header.event.witnessed = oneOf(std::array{"", "bystander", "crew", "no"});
  header.event.bystanderCpr = oneOf(std::array{"", "true", "no"});
  header.clock.state =
      *rc::gen::element(ClockState::set, ClockState::unset, ClockState::zoneUnknown);
  header.recorded = parseWallTime("2026-03-14T09:12:30+01:00");
  header.synthetic = *rc::gen::arbitrary<bool>();
  header.kind = *rc::gen::element(RecordKind::rescue, RecordKind::drill, RecordKind::test);
  if (*rc::gen::arbitrary<bool>()) {
    header.clock.offset = Duration{-57'000'000};
    header.clock.checked = header.recorded;
    header.clock.against = someText();
  }
}

/// Adds what people wrote down, slows everything down, and damages the file.
Record dressed(Record record) {
  fillHeader(record.header);
  const int times = *rc::gen::element(1, 10, 60, 300);
  for (Entry& entry : record.entries) {
    entry.t = Time{entry.t.time_since_epoch() * times};
    if (entry.end) {
      entry.end = Time{entry.end->time_since_epoch() * times};
    }
    entry.line = 2;
    if (auto* medication = std::get_if<entry::Medication>(&entry.data)) {
      medication->text = someText();
    }
  }
  if (record.lastTime) {
    record.lastTime = Time{record.lastTime->time_since_epoch() * times};
  }
  const Time end = record.lastTime.value_or(Time{});
  const auto add = [&](EntryData data) {
    Entry entry;
    entry.t = end;
    entry.source = *rc::gen::element(Source::device, Source::observer);
    entry.data = std::move(data);
    record.entries.push_back(std::move(entry));
  };
  const int faults = *rc::gen::inRange(0, 4);
  for (int i = 0; i < faults; ++i) {
    add(entry::Fault{someText(), "E1"});
  }
  for (const char* what : {"efforts_ended", "handover", "crew_arrived", "collapse"}) {
    if (*rc::gen::arbitrary<bool>()) {
      add(entry::Milestone{what});
    }
  }
  record.seal.present = *rc::gen::arbitrary<bool>();
  record.seal.matches = *rc::gen::arbitrary<bool>();
  record.lostLines = *rc::gen::inRange(0, 3);
  record.otherRecordsInFile = *rc::gen::inRange(0, 2);
  return record;
}

RC_GTEST_PROP(SheetProperty, NothingLiesOnAnythingElseWhateverTheRecord, ()) {
  const auto scenario = *reference::scenarios();
  const Record record = dressed(reference::recordOf(scenario));
  const Figures figures = computeFigures(record, reference::settingsOf(scenario));
  SheetOptions options;
  options.language = *rc::gen::element<QString>("en", "de");
  options.paper = *rc::gen::element(QPageSize::A4, QPageSize::Letter);
  options.fileName = QString::fromStdString(someText());
  options.fileSha256 = QString(64, 'c');
  const HandoverSheet sheet = layOutHandoverSheet(record, figures, options);
  const QStringList faults = test::faultsOf(sheet.page);
  RC_LOG() << faults.join('\n').toStdString() << '\n' << sheet.page.asText().toStdString();
  RC_ASSERT(faults.isEmpty());
  RC_ASSERT(!sheet.page.rowsFit || sheet.page.rows.height() >= 60);
}

/// No shock is "0" only where the record covers the time the device was on; and never is anything
/// that was not recorded a number.
RC_GTEST_PROP(SheetProperty, NoComfortWithoutGround, ()) {
  const auto scenario = *reference::scenarios();
  const Record record = dressed(reference::recordOf(scenario));
  const Figures figures = computeFigures(record, reference::settingsOf(scenario));
  const Words say = Words::inLanguage("en");
  const SheetContent content = makeSheetContent(record, figures, {}, say);
  const bool whole = record.seal.present && record.lostLines == 0 && record.otherRecordsInFile == 0;
  const auto ends = [&](auto isOne) {
    return std::any_of(record.entries.begin(), record.entries.end(), isOne);
  };
  const bool off =
      ends([](const Entry& entry) { return entry.complete<entry::PowerOff>() != nullptr; });
  if (content.figures[1].value == "0") {
    RC_ASSERT(whole || off);
    RC_ASSERT(record.lostLines == 0 && record.otherRecordsInFile == 0);
  }
  RC_ASSERT(content.figures[4].value.isEmpty() ==
            !figures[MeasureId::handsOffFraction].value.has_value());
  const bool judged = ends([](const Entry& entry) {
    const auto* circulation = entry.complete<entry::Circulation>();
    return circulation != nullptr && circulation->state && entry.hasTime;
  });
  RC_ASSERT(content.figures[5].value.isEmpty() == !judged);
}

} // namespace
} // namespace afterbeat::papers
