#include "core/measures/measure_values.h"

#include <algorithm>

namespace afterbeat {
namespace {

/// The compressions for which `wanted` holds, as stretches with their number: neighbours of one
/// arrest interval with no pause and no unwanted compression between them are one stretch.
template <typename Wanted>
std::vector<WorkingPart> runsOf(const CompressionQuality& quality, Duration threshold,
                                Wanted wanted) {
  std::vector<WorkingPart> runs;
  const CountedCompression* before{};
  for (const CountedCompression& now : quality.compressions) {
    if (!wanted(now)) {
      before = nullptr;
      continue;
    }
    if (before != nullptr && before->arrest == now.arrest && now.t - before->t <= threshold) {
      runs.back().to = now.t;
      *runs.back().n += 1;
    } else {
      runs.push_back({now.t, now.t, WorkingKind::compressionRun, 1});
    }
    before = &now;
  }
  return runs;
}

std::vector<WorkingPart> compressionRuns(const CompressionQuality& quality, Duration threshold) {
  return runsOf(quality, threshold, [](const CountedCompression&) { return true; });
}

std::vector<WorkingPart> ratedParts(const CompressionQuality& quality) {
  std::vector<WorkingPart> parts;
  for (const RatedStretch& stretch : quality.stretches) {
    if (stretch.ratePerMin) {
      parts.push_back({stretch.stretch.begin, stretch.stretch.end, WorkingKind::cprStretch,
                       stretch.ratePerMin});
    }
  }
  return parts;
}

/// Stretches of neighbouring intervals that lie in the profile's range.
std::vector<WorkingPart> inRangeRuns(const CompressionQuality& quality, const Profile& profile) {
  std::vector<WorkingPart> runs;
  for (const CompressionInterval& interval : quality.intervals) {
    if (!rateInRange(profile, interval.ratePerMin())) {
      continue;
    }
    if (!runs.empty() && runs.back().to == interval.first) {
      runs.back().to = interval.second;
      *runs.back().n += 1;
    } else {
      runs.push_back({interval.first, interval.second, WorkingKind::compressionRun, 2});
    }
  }
  return runs;
}

std::vector<Measure> ratesFromStretches(const Figures& figures, const CompressionQuality& quality) {
  double length = 0;
  double weighted = 0;
  double inRange = 0;
  for (const RatedStretch& stretch : quality.stretches) {
    if (stretch.ratePerMin) {
      const double s = seconds(stretch.stretch.length());
      length += s;
      weighted += s * *stretch.ratePerMin;
      inRange += rateInRange(figures.settings.profile, *stretch.ratePerMin) ? s : 0;
    }
  }
  const std::vector<WorkingPart> parts = ratedParts(quality);
  if (!quality.stretchRateRecorded) {
    return {notRecorded(MeasureId::compressionRate),
            notRecorded(MeasureId::compressionRateInRange)};
  }
  return {ratio(MeasureId::compressionRate, weighted / 60, length, parts, 60),
          figures.settings.profile.ratePerMin
              ? ratio(MeasureId::compressionRateInRange, inRange, length, parts)
              : notApplicable(MeasureId::compressionRateInRange)};
}

std::vector<Measure> ratesFromIntervals(const Figures& figures, const CompressionQuality& quality) {
  const Profile& profile = figures.settings.profile;
  Duration sum{};
  double inRange = 0;
  for (const CompressionInterval& interval : quality.intervals) {
    sum += interval.length();
    inRange += rateInRange(profile, interval.ratePerMin()) ? 1 : 0;
  }
  const auto n = static_cast<double>(quality.intervals.size());
  return {ratio(MeasureId::compressionRate, n, seconds(sum),
                compressionRuns(quality, figures.settings.pauseThreshold), 60),
          profile.ratePerMin
              ? ratio(MeasureId::compressionRateInRange, inRange, n, inRangeRuns(quality, profile))
              : notApplicable(MeasureId::compressionRateInRange)};
}

std::vector<Measure> rates(const Figures& figures, const CompressionQuality& quality) {
  switch (figures.evidence) {
  case Evidence::none:
    break;
  case Evidence::segments:
    return ratesFromStretches(figures, quality);
  case Evidence::compressions:
  case Evidence::both:
    return ratesFromIntervals(figures, quality);
  }
  return {notRecorded(MeasureId::compressionRate), notRecorded(MeasureId::compressionRateInRange)};
}

std::vector<Measure> depths(const CompressionQuality& quality, Duration threshold) {
  double sum = 0;
  double known = 0;
  double inRange = 0;
  double withRange = 0;
  for (const CountedCompression& compression : quality.compressions) {
    if (!compression.depthMm) {
      continue;
    }
    sum += *compression.depthMm;
    known += 1;
    if (compression.depthRange != nullptr) {
      withRange += 1;
      inRange += compression.depthRange->holds(*compression.depthMm) ? 1 : 0;
    }
  }
  if (!quality.depthRecorded) {
    return {notRecorded(MeasureId::compressionDepth),
            notRecorded(MeasureId::compressionDepthInRange)};
  }
  const auto hasDepth = [](const CountedCompression& c) { return c.depthMm.has_value(); };
  const auto isInRange = [](const CountedCompression& c) {
    return c.depthMm && c.depthRange != nullptr && c.depthRange->holds(*c.depthMm);
  };
  return {ratio(MeasureId::compressionDepth, sum, known, runsOf(quality, threshold, hasDepth)),
          ratio(MeasureId::compressionDepthInRange, inRange, withRange,
                runsOf(quality, threshold, isInRange))};
}

Measure release(const CompressionQuality& quality, Duration threshold) {
  double full = 0;
  double known = 0;
  for (const CountedCompression& compression : quality.compressions) {
    if (compression.fullRelease) {
      known += 1;
      full += *compression.fullRelease ? 1 : 0;
    }
  }
  if (!quality.releaseRecorded) {
    return notRecorded(MeasureId::fullRelease);
  }
  return ratio(MeasureId::fullRelease, full, known,
               runsOf(quality, threshold,
                      [](const CountedCompression& c) { return c.fullRelease.value_or(false); }));
}

} // namespace

std::vector<Measure> compressionMeasures(const Figures& figures,
                                         const CompressionQuality& quality) {
  std::vector<Measure> result;
  const auto n = static_cast<double>(quality.compressions.size());
  const auto runs = compressionRuns(quality, figures.settings.pauseThreshold);
  result.push_back(figures.compressions.empty() ? notRecorded(MeasureId::compressions)
                                                : recorded(MeasureId::compressions, n, runs));
  result.push_back(
      figures.evidence == Evidence::compressions
          ? ratio(MeasureId::compressionsPerMinute, n, seconds(total(figures.arrest)), runs, 60)
          : notRecorded(MeasureId::compressionsPerMinute));
  for (auto& measure : rates(figures, quality)) {
    result.push_back(std::move(measure));
  }
  for (auto& measure : depths(quality, figures.settings.pauseThreshold)) {
    result.push_back(std::move(measure));
  }
  result.push_back(release(quality, figures.settings.pauseThreshold));
  return result;
}

std::vector<Measure> ventilationMeasures(const Record& record, const Figures& figures) {
  std::vector<WorkingPart> breaths;
  bool any = false;
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::Ventilation>() != nullptr) {
      any = true;
      if (indexHolding(figures.arrest, entry.t) >= 0) {
        breaths.push_back({entry.t, entry.t, WorkingKind::ventilation, {}});
      }
    }
  }
  if (!any || !figures.window) {
    return {notRecorded(MeasureId::ventilations), notRecorded(MeasureId::ventilationsPerMinute)};
  }
  const auto n = static_cast<double>(breaths.size());
  return {recorded(MeasureId::ventilations, n, breaths),
          ratio(MeasureId::ventilationsPerMinute, n, seconds(total(figures.arrest)), breaths, 60)};
}

} // namespace afterbeat
