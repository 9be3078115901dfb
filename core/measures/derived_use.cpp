#include "core/measures/derived_use.h"

namespace afterbeat {

namespace {

/// Counts entries and means the quality of the derived ones.
class Counter {
public:
  void add(const Entry& entry) {
    ++share_.of;
    if (entry.source == Source::derived) {
      ++share_.derived;
      if (entry.quality) {
        sum_ += *entry.quality;
        ++told_;
      }
    }
  }
  [[nodiscard]] DerivedShare share() const {
    DerivedShare result = share_;
    if (told_ > 0) {
      result.quality = sum_ / static_cast<double>(told_);
    }
    return result;
  }

private:
  DerivedShare share_;
  double sum_ = 0;
  std::size_t told_ = 0;
};

} // namespace

DerivedUse derivedUse(const Record& record, const Figures& figures) {
  Counter compressions, ventilations;
  for (const std::size_t index : figures.compressionEntries) {
    compressions.add(record.entries[index]);
  }
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::Ventilation>() && indexHolding(figures.arrest, entry.t) >= 0) {
      ventilations.add(entry);
    }
  }
  return {compressions.share(), ventilations.share()};
}

bool restsOnHands(MeasureId id) {
  using enum MeasureId;
  switch (id) {
  case arrestTime:
  case handsOffTime:
  case handsOffFraction:
  case chestCompressionFraction:
  case adjustedHandsOffTime:
  case MeasureId::compressions:
  case compressionsPerMinute:
  case compressionRate:
  case compressionRateInRange:
  case compressionDepth:
  case compressionDepthInRange:
  case fullRelease:
  case longestPause:
  case pausesOverLimit:
  case preShockPauseMedian:
  case preShockPauseWorst:
  case postShockPauseMedian:
  case postShockPauseWorst:
  case periShockPauseMedian:
  case periShockPauseWorst:
  case firstHandsOnToFirstShock:
  case powerOnToFirstHandsOn:
  case collapseToFirstHandsOn:
  case callToFirstHandsOn:
    return true;
  default:
    return false;
  }
}

bool restsOnDerived(MeasureId id, const DerivedUse& use) {
  const bool breaths = id == MeasureId::ventilations || id == MeasureId::ventilationsPerMinute;
  return breaths ? use.ventilations.any() : restsOnHands(id) && use.compressions.any();
}

} // namespace afterbeat
