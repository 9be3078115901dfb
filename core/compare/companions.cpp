#include "core/compare/companions.h"

#include "core/compare/kinds.h"
#include "core/statistics/quantile.h"

#include <array>

namespace afterbeat {
namespace {

constexpr std::string_view kBand = "Cheskes et al., Resuscitation 2014;85:336-342";

struct KnownBand {
  MeasureId measure;
  ReferenceBand band;
};

constexpr std::array<KnownBand, 3> kBands{{
    {MeasureId::preShockPauseMedian, {8, 15, 22, kBand, SourceMark::read}},
    {MeasureId::postShockPauseMedian, {4, 6, 9, kBand, SourceMark::read}},
    {MeasureId::periShockPauseMedian, {14, 22, 31, kBand, SourceMark::read}},
}};

} // namespace

std::vector<MeasureId> neverAlone(MeasureId id) {
  if (id == MeasureId::chestCompressionFraction || id == MeasureId::handsOffFraction) {
    return {MeasureId::arrestTime, MeasureId::shocksDelivered};
  }
  return {};
}

std::vector<Beside> besideOf(MeasureId measure, const Season& season, const Chosen& records) {
  std::vector<Beside> all;
  for (const MeasureId id : neverAlone(measure)) {
    const FigureColumn& column = season.column(id);
    std::vector<double> values;
    for (const std::uint32_t place : records) {
      if (column[place].ok()) {
        values.push_back(column[place].value);
      }
    }
    const std::size_t count = values.size();
    all.push_back(
        {id, count, count >= kLeastForSummary ? medianOf(std::move(values)) : std::nullopt});
  }
  return all;
}

const ReferenceBand* referenceBand(MeasureId id) {
  for (const KnownBand& known : kBands) {
    if (known.measure == id) {
      return &known.band;
    }
  }
  return nullptr;
}

} // namespace afterbeat
