#include "core/compare/facts.h"

#include "core/compare/saying.h"
#include "core/record/wall_clock.h"

#include <algorithm>

namespace afterbeat {

namespace {

std::string deviceOf(const DeviceFacts& device) {
  if (!device.label.empty()) {
    return device.label;
  }
  return device.model.empty() ? device.serial : device.model;
}

} // namespace

void addFigureFacts(const Figures& figures, RecordFacts& facts) {
  facts.evidence = figures.evidence;
  if (const Measure& shocks = figures[MeasureId::shocksDelivered]; shocks.value) {
    facts.hadShock = *shocks.value > 0;
  }
  const auto longest = std::max_element(
      figures.pauses.begin(), figures.pauses.end(),
      [](const Pause& a, const Pause& b) { return a.stretch.length() < b.stretch.length(); });
  if (longest != figures.pauses.end()) {
    facts.longestPauseCause = longest->cause;
  }
  facts.settingDiffers =
      std::any_of(figures.notices.begin(), figures.notices.end(), [](const Problem& problem) {
        return problem.kind == ProblemKind::categoryDiffers;
      });
}

RecordFacts factsOf(const Record& record, const Figures& figures) {
  const Header& header = record.header;
  RecordFacts facts;
  facts.id = header.id;
  facts.kind = header.kind;
  facts.site = header.site;
  facts.team = header.team;
  facts.device = deviceOf(header.device);
  if (const auto wall = wallTimeAt(record, Time{})) {
    facts.day = std::chrono::floor<std::chrono::days>(wall->local());
  }
  facts.synthetic = header.synthetic;
  addFigureFacts(figures, facts);
  return facts;
}

std::string isoDay(const RecordFacts& record) {
  constexpr std::size_t kMonth = 7; // of "2026-04-17"
  if (!record.day) {
    return {};
  }
  const std::string day = isoDay(*record.day);
  return record.monthOnly ? day.substr(0, kMonth) : day;
}

FigureCell cellOf(const Measure& measure) {
  FigureCell cell;
  cell.status = measure.status;
  if (measure.status != Status::ok || !measure.value) {
    return cell;
  }
  cell.value = *measure.value;
  if (measureInfo(measure.id).unit == "1" && measure.denominator) {
    cell.of = static_cast<float>(*measure.denominator);
  }
  return cell;
}

} // namespace afterbeat
