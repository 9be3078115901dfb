// Cutting a record in two by time and gathering the halves must give the same figures.

#include "log_text.h"

#include "core/measures/figures.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace afterbeat {
namespace {

/// The half of a record before or from `cut`, each with a zero of its own.
GatherSource half(const Record& whole, Time cut, bool second) {
  GatherSource source;
  source.label = second ? "second half" : "first half";
  source.sha256 = std::string(64, second ? '2' : '1');
  auto& record = source.imported.record;
  record.header = whole.header;
  const Duration shift = second ? cut.time_since_epoch() : Duration{};
  record.header.recorded->utc += shift;
  for (auto entry : whole.entries) {
    if ((entry.t >= cut) != second) {
      continue;
    }
    entry.t -= shift;
    if (entry.end) {
      *entry.end -= shift;
    }
    record.entries.push_back(std::move(entry));
  }
  return source;
}

bool cutsNoStretch(const Record& record, Time cut) {
  return std::none_of(record.entries.begin(), record.entries.end(),
                      [&](const Entry& entry) { return entry.t < cut && entry.lastTime() >= cut; });
}

/// Everything that is printed of the figures, as text.
std::string shown(const Figures& figures) {
  std::string text{name(figures.evidence)};
  const auto add = [&](auto... parts) { ((text += " " + std::to_string(parts)), ...); };
  if (figures.window) {
    add(seconds(figures.window->begin), seconds(figures.window->end));
  }
  for (const auto& measure : figures.measures) {
    text +=
        "\n" + std::string{measureInfo(measure.id).name} + " " + std::string{name(measure.status)};
    add(measure.value.value_or(-1), measure.numerator.value_or(-1),
        measure.denominator.value_or(-1));
    for (const auto& part : measure.working) {
      add(seconds(part.from), seconds(part.to));
    }
  }
  for (const auto& pause : figures.pauses) {
    text += "\n" + std::string{name(pause.cause)};
    add(seconds(pause.stretch.begin), seconds(pause.stretch.end));
  }
  return text;
}

TEST(CutAndGather, theSampleRescueAtManyMoments) {
  const auto file =
      std::filesystem::path{AFTERBEAT_SOURCE_DIR} / "samples" / "ferry-terminal.resuslog";
  auto whole = readAnySource(file);
  ASSERT_TRUE(whole) << whole.error().sentence();
  whole->record.channels.clear();
  const auto wanted = shown(computeFigures(whole->record));
  EXPECT_THAT(wanted, testing::HasSubstr("shocks_delivered ok"));
  int cuts = 0;
  for (double at = 5; at < 1300; at += 61.37) {
    const auto cut = *timeFromSeconds(at);
    if (!cutsNoStretch(whole->record, cut)) {
      continue;
    }
    ++cuts;
    const auto merged =
        gather(together(half(whole->record, cut, false), half(whole->record, cut, true)));
    EXPECT_EQ(merged.record.header.parts.at(1).offset, cut.time_since_epoch());
    EXPECT_EQ(shown(computeFigures(merged.record)), wanted) << at;
  }
  EXPECT_GT(cuts, 5);
}

TEST(CutAndGather, randomRecords) {
  EXPECT_TRUE(rc::check([](bool) {
    Record whole;
    whole.header.id = "urn:uuid:x";
    whole.header.kind = RecordKind::drill;
    whole.header.recorded = parseWallTime("2026-03-14T14:05:00-00:00");
    const auto count = *rc::gen::inRange(1, 60);
    for (int i = 0; i < count; ++i) {
      Entry entry;
      entry.t = Time{Duration{*rc::gen::inRange<std::int64_t>(0, 600) * 100'000}};
      switch (*rc::gen::inRange(0, 8)) {
      case 0:
        entry.data = entry::Shock{true, 150, {}, {}};
        break;
      case 1:
        entry.data = entry::Analysis{Advice::shock};
        entry.end = entry.t + Duration{*rc::gen::inRange(0, 50) * 100'000};
        break;
      case 2:
        entry.data = entry::Circulation{
            *rc::gen::element(CirculationState::returned, CirculationState::lost)};
        break;
      case 3:
        entry.data = entry::Cpr{100};
        entry.end = entry.t + Duration{*rc::gen::inRange(0, 50) * 100'000};
        break;
      default:
        entry.data = entry::Compression{};
      }
      whole.entries.push_back(entry);
    }
    std::stable_sort(whole.entries.begin(), whole.entries.end(),
                     [](const Entry& a, const Entry& b) { return a.t < b.t; });
    const Time cut{Duration{*rc::gen::inRange<std::int64_t>(0, 600) * 100'000}};
    RC_PRE(cutsNoStretch(whole, cut));
    const auto merged = gather(together(half(whole, cut, false), half(whole, cut, true)));
    RC_ASSERT(shown(computeFigures(merged.record)) == shown(computeFigures(whole)));
  }));
}

} // namespace
} // namespace afterbeat
