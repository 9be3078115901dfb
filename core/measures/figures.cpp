#include "core/measures/figures.h"

#include "core/measures/evidence.h"
#include "core/measures/measure_values.h"
#include "core/measures/pauses.h"
#include "core/measures/shocks.h"
#include "core/measures/tables.h"
#include "core/measures/window.h"

#include <algorithm>

namespace afterbeat {
namespace {

const char* word(PatientCategory category) {
  switch (category) {
  case PatientCategory::unknown:
    return "unknown";
  case PatientCategory::adult:
    return "adult";
  case PatientCategory::child:
    return "child";
  case PatientCategory::infant:
    return "infant";
  }
  return "";
}

void fillEvidence(const Record& record, Figures& figures) {
  KeptCompressions kept = keptCompressions(record);
  figures.cprEntries = countedCpr(record, kept.times);
  figures.handsOn = handsOn(record, kept.times, figures.cprEntries);
  if (kept.doubleDetections > 0) {
    figures.notices.push_back(
        {0, Severity::info, ProblemKind::doubleDetection, {std::to_string(kept.doubleDetections)}});
  }
  const bool single = !kept.times.empty();
  const bool segments = !figures.cprEntries.empty();
  figures.evidence = single && segments ? Evidence::both
                     : single           ? Evidence::compressions
                     : segments         ? Evidence::segments
                                        : Evidence::none;
  figures.compressions = std::move(kept.times);
  figures.compressionEntries = std::move(kept.entries);
}

/// The record's category and the device's setting differ: just what a reviewer must find.
void noticeCategory(const Record& record, Figures& figures) {
  const PatientCategory stated = record.header.patient;
  if (stated == PatientCategory::unknown) {
    return;
  }
  for (const Entry& entry : record.entries) {
    const auto* mode = entry.complete<entry::PatientMode>();
    if (mode != nullptr && *mode->category != PatientCategory::unknown &&
        *mode->category != stated) {
      figures.notices.push_back({entry.line,
                                 Severity::warning,
                                 ProblemKind::categoryDiffers,
                                 {word(stated), word(*mode->category)}});
      return;
    }
  }
}

void fillMeasures(const Record& record, const CompressionQuality& quality, Figures& figures) {
  for (auto group : {handsOffMeasures(record, figures), compressionMeasures(figures, quality),
                     ventilationMeasures(record, figures), shockMeasures(record, figures),
                     betweenEvents(record, figures), circulationAndOnTime(record, figures)}) {
    for (Measure& measure : group) {
      figures.measures.push_back(std::move(measure));
    }
  }
  std::sort(figures.measures.begin(), figures.measures.end(),
            [](const Measure& a, const Measure& b) { return a.id < b.id; });
}

void fillCoverage(const CompressionQuality& quality, Figures& figures) {
  const auto all = static_cast<double>(quality.compressions.size());
  double depth = 0;
  double release = 0;
  for (const CountedCompression& compression : quality.compressions) {
    depth += compression.depthMm ? 1 : 0;
    release += compression.fullRelease ? 1 : 0;
  }
  figures.coverage.push_back({MeasureId::compressionDepth, depth, all});
  figures.coverage.push_back({MeasureId::fullRelease, release, all});
  if (figures.evidence == Evidence::segments) {
    std::vector<Interval> rated;
    std::vector<Interval> every;
    for (const RatedStretch& stretch : quality.stretches) {
      every.push_back(stretch.stretch);
      if (stretch.ratePerMin) {
        rated.push_back(stretch.stretch);
      }
    }
    figures.coverage.push_back(
        {MeasureId::compressionRate, seconds(total(merged(rated))), seconds(total(merged(every)))});
  }
}

} // namespace

Figures computeFigures(const Record& record, const FigureSettings& settings) {
  Figures figures;
  figures.settings = settings;
  fillEvidence(record, figures);
  fillWindow(record, figures);
  fillPauses(record, figures);
  fillShocks(record, figures);
  const CompressionQuality quality = compressionQuality(record, figures);
  fillMeasures(record, quality, figures);
  figures.minutes = minuteTable(record, figures, quality);
  figures.cycles = cycleTable(record, figures, quality);
  fillCoverage(quality, figures);
  noticeCategory(record, figures);
  return figures;
}

} // namespace afterbeat
