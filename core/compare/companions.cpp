#include "core/compare/companions.h"

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

const ReferenceBand* referenceBand(MeasureId id) {
  for (const KnownBand& known : kBands) {
    if (known.measure == id) {
      return &known.band;
    }
  }
  return nullptr;
}

} // namespace afterbeat
