#include "samples/season/made_season.h"

#include "core/compare/facts.h"
#include "samples/season/script.h"

#include <algorithm>
#include <cmath>

namespace afterbeat::samples {
namespace {

using Cells = std::array<FigureCell, static_cast<std::size_t>(MeasureId::count_)>;

FigureCell& cell(Cells& cells, MeasureId id) {
  return cells[static_cast<std::size_t>(id)];
}

/// Share of a normal distribution between two limits.
double shareBetween(double mean, double deviation, const Range& range) {
  const auto below = [&](double limit) {
    return 0.5 * std::erfc((mean - limit) / deviation / std::sqrt(2.0));
  };
  return below(range.high) - below(range.low);
}

/// What single compressions would give, from how the hands of the script work.
void addCompressions(const Script& script, const Figures& figures, Cells& cells) {
  double length = 0;
  for (const Interval& stretch : figures.handsOn) {
    length += seconds(stretch.length());
  }
  const double rate = script.hands.rate, n = std::round(length * rate / 60);
  const auto of = static_cast<float>(n);
  const Profile& profile = figures.settings.profile;
  const double minutes = cell(cells, MeasureId::arrestTime).value / 60;
  cell(cells, MeasureId::compressions) = {n, Status::ok, 0};
  cell(cells, MeasureId::compressionsPerMinute) = {n / minutes, Status::ok, 0};
  if (profile.ratePerMin) {
    const double spread = script.hands.unsteady * rate;
    cell(cells, MeasureId::compressionRateInRange) = {
        shareBetween(rate, spread, profile.ratePerMin->value), Status::ok, of};
  }
  if (script.hands.depth > 0) {
    cell(cells, MeasureId::compressionDepth) = {script.hands.depth, Status::ok, 0};
    const auto target = profile.depth.find(script.patient);
    if (target != profile.depth.end() && target->second.value.range) {
      cell(cells, MeasureId::compressionDepthInRange) = {
          shareBetween(script.hands.depth, script.hands.depthSpread, *target->second.value.range),
          Status::ok, of};
    }
  }
}

} // namespace

MadeSeason::MadeSeason(const SeasonPlan& plan, const std::vector<MeasureId>& measures) {
  const FigureSettings settings;
  std::vector<bool> kept(columns_.size(), measures.empty());
  for (const MeasureId id : measures) {
    kept[static_cast<std::size_t>(id)] = true;
  }
  records_.reserve(plan.records);
  for (std::size_t m = 0; m < columns_.size(); ++m) {
    columns_[m].reserve(kept[m] ? plan.records : 0);
  }
  for (std::size_t i = 0; i < plan.records; ++i) {
    Script one = script(plan, i);
    const Figures figures = computeFigures(outline(one), settings);
    Cells cells;
    for (const Measure& measure : figures.measures) {
      cell(cells, measure.id) = cellOf(measure);
    }
    if (one.showsCompressions) {
      addCompressions(one, figures, cells);
    }
    addFigureFacts(figures, one.facts);
    if (one.showsCompressions) {
      one.facts.evidence = Evidence::compressions;
    }
    records_.push_back(std::move(one.facts));
    for (std::size_t m = 0; m < columns_.size(); ++m) {
      if (kept[m]) {
        columns_[m].push_back(cells[m]);
      }
    }
  }
}

Season MadeSeason::season() const {
  return {records_, [this](MeasureId id) -> const FigureColumn& {
            return columns_[static_cast<std::size_t>(id)];
          }};
}

} // namespace afterbeat::samples
