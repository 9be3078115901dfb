// What a report, its pictures and its JSON ask.
#include "app/papers/season/season_report.h"

namespace afterbeat::papers {

const std::vector<MeasureId>& reportMeasures() {
  using enum MeasureId;
  static const std::vector<MeasureId> kMeasures{
      callToFirstShock,     powerOnToFirstShock, longestPause,     preShockPauseMedian,
      postShockPauseMedian, compressionRate,     compressionDepth, compressionRateInRange,
      handsOffFraction,     arrestTime,          shocksDelivered};
  return kMeasures;
}

OverTimeSettings reportOverTime(const ReportSettings& settings) {
  OverTimeSettings over;
  over.subject = ValueOf{MeasureId::longestPause};
  over.chart = ChartKind::run;
  // Days that are cut to months hold no order within them.
  over.period = settings.withoutIdentity ? Period::month : Period::record;
  over.steps = settings.steps;
  return over;
}

std::vector<OverTimeSettings> chartsOverTime(const ReportSettings& settings) {
  const OverTimeSettings asReported = reportOverTime(settings);
  std::vector<OverTimeSettings> all;
  const auto add = [&](OverTimeSettings one) {
    one.period = asReported.period;
    one.steps = asReported.steps;
    all.push_back(std::move(one));
  };
  for (const MeasureId measure : reportMeasures()) {
    OverTimeSettings run;
    run.subject = ValueOf{measure};
    add(std::move(run));
    add(chartWithLimits(measure));
  }
  add(chartWithLimits(MeasureId::pausesOverLimit));
  OverTimeSettings withShock;
  withShock.subject = RecordsWithShock{};
  withShock.chart = ChartKind::shares;
  add(std::move(withShock));
  return all;
}

} // namespace afterbeat::papers
