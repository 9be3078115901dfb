#include "app/papers/debrief_parts.h"
#include "core/measures/compression_quality.h"

#include <algorithm>
#include <cmath>

namespace afterbeat::papers::debrief {

void rankByShare(Finding& finding, double inRange) {
  if (finding.within) {
    finding.away = (inRange - kPraiseLeast) / (1 - kPraiseLeast);
  }
}

namespace {

/// The whole minute whose mean lies furthest on one side, or nearest to the middle of the range.
Interval minuteByMean(const Figures& figures, std::optional<double> MinuteRow::*mean,
                      const Finding& finding) {
  const double middle = (finding.target.low + finding.target.high) / 2;
  const auto telling = [&](const MinuteRow& row) {
    const double off = *(row.*mean) - middle;
    if (finding.within) {
      return -std::fabs(off);
    }
    return finding.value > finding.target.high ? off : -off;
  };
  const MinuteRow* found = nullptr;
  for (const MinuteRow* row : wholeMinutes(figures)) {
    if (row->*mean && (found == nullptr || telling(*row) > telling(*found))) {
      found = row;
    }
  }
  return found != nullptr ? found->epoch : *figures.window;
}

/// Enough intervals between compressions, or a minute of stretches with a rate.
bool rateKnown(const Figures& figures) {
  const Measure& share = figures[MeasureId::compressionRateInRange];
  const double least =
      figures.evidence == Evidence::segments ? seconds(kLeastArrest) : kLeastCompressions;
  return share.status == Status::ok && share.denominator.value_or(0) >= least;
}

/// The mean rate where most compressions agree with it; where the mean lies in the range and most
/// compressions do not, how few do.
void addRate(const Figures& figures, std::vector<Finding>& all) {
  const auto& target = figures.settings.profile.ratePerMin;
  const Measure& mean = figures[MeasureId::compressionRate];
  if (!target || mean.status != Status::ok || !rateKnown(figures)) {
    return;
  }
  const double inRange = *figures[MeasureId::compressionRateInRange].value;
  if (target->value.holds(*mean.value) && inRange < kSteadyLeast) {
    Finding finding = begin(DebriefRule::rateSteady, inRange, Aim::atLeast, {kSteadyLeast, 1});
    const MinuteRow* least = nullptr;
    for (const MinuteRow* row : wholeMinutes(figures)) {
      if (row->rateInRange && (least == nullptr || *row->rateInRange < *least->rateInRange)) {
        least = row;
      }
    }
    finding.moment = least != nullptr ? least->epoch : *figures.window;
    finding.beside = *mean.value;
    add(all, finding);
    return;
  }
  // Between the two shares a mean within its range is neither praise nor a thing to practise.
  if (target->value.holds(*mean.value) && inRange < kPraiseLeast) {
    return;
  }
  Finding finding = begin(DebriefRule::rate, *mean.value, Aim::inRange, target->value);
  finding.source = target->source;
  finding.beside = inRange;
  if (Finding* added = add(all, finding)) {
    rankByShare(*added, inRange);
    added->moment = minuteByMean(figures, &MinuteRow::rate, *added);
  }
}

/// The one depth range that held for all compressions; null where there was none or another.
const Range* depthRange(const CompressionQuality& quality) {
  const Range* range = nullptr;
  for (const CountedCompression& compression : quality.compressions) {
    if (!compression.depthMm) {
      continue;
    }
    if (compression.depthRange == nullptr ||
        (range != nullptr && range != compression.depthRange)) {
      return nullptr;
    }
    range = compression.depthRange;
  }
  return range;
}

void addDepth(const Figures& figures, const CompressionQuality& quality,
              std::vector<Finding>& all) {
  const Measure& mean = figures[MeasureId::compressionDepth];
  const Measure& share = figures[MeasureId::compressionDepthInRange];
  const Range* range = depthRange(quality);
  if (range == nullptr || mean.status != Status::ok || share.status != Status::ok ||
      share.denominator.value_or(0) < kLeastCompressions) {
    return;
  }
  // A mean that most compressions do not agree with is neither praise nor a thing to practise.
  if (range->holds(*mean.value) && *share.value < kPraiseLeast) {
    return;
  }
  Finding finding = begin(DebriefRule::depth, *mean.value, Aim::inRange, *range);
  for (const auto& [category, target] : figures.settings.profile.depth) {
    if (target.value.range && &*target.value.range == range) {
      finding.source = target.source;
    }
  }
  finding.beside = *share.value;
  if (Finding* added = add(all, finding)) {
    rankByShare(*added, *share.value);
    added->moment = minuteByMean(figures, &MinuteRow::depth, *added);
  }
}

/// The whole minute with the most (or fewest) compressions without full release.
Interval minuteByRelease(const Figures& figures, const CompressionQuality& quality, bool most) {
  const MinuteRow* found = nullptr;
  int foundCount = 0;
  for (const MinuteRow* row : wholeMinutes(figures)) {
    int known = 0, leaning = 0;
    for (const CountedCompression& compression : quality.compressions) {
      if (compression.fullRelease && row->epoch.holds(compression.t)) {
        ++known;
        leaning += *compression.fullRelease ? 0 : 1;
      }
    }
    if (known > 0 && (found == nullptr || (most ? leaning > foundCount : leaning < foundCount))) {
      found = row;
      foundCount = leaning;
    }
  }
  return found != nullptr ? found->epoch : *figures.window;
}

void addRelease(const Figures& figures, const CompressionQuality& quality,
                std::vector<Finding>& all) {
  const Measure& share = figures[MeasureId::fullRelease];
  if (share.status != Status::ok || share.denominator.value_or(0) < kLeastCompressions) {
    return;
  }
  Finding finding = begin(DebriefRule::release, *share.value, Aim::atLeast, {kReleaseLeast, 1});
  if (Finding* added = add(all, finding)) {
    added->moment = minuteByRelease(figures, quality, !added->within);
  }
}

} // namespace

void addQualityFindings(const Record& record, const Figures& figures, std::vector<Finding>& all) {
  if (!figures.window || figures.evidence == Evidence::none) {
    return;
  }
  const CompressionQuality quality = compressionQuality(record, figures);
  addRate(figures, all);
  addDepth(figures, quality, all);
  addRelease(figures, quality, all);
}

} // namespace afterbeat::papers::debrief
