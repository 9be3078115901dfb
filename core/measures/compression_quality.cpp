#include "core/measures/compression_quality.h"

#include "core/measures/evidence.h"

#include <algorithm>

namespace afterbeat {
namespace {

const Range* depthRangeFor(const Profile& profile, PatientCategory category) {
  const auto it = profile.depth.find(category);
  return it != profile.depth.end() && it->second.value.range ? &*it->second.value.range : nullptr;
}

std::optional<bool> released(const entry::Compression& compression, const Profile& profile) {
  if (compression.fullRelease) {
    return compression.fullRelease;
  }
  if (compression.leaningMm && profile.leaningLimitMm) {
    return *compression.leaningMm <= profile.leaningLimitMm->value;
  }
  return std::nullopt;
}

/// Follows the device's adult or child setting along the record.
class CategoryCursor {
public:
  explicit CategoryCursor(const Record& record) : record_(record), now_(record.header.patient) {}
  /// Moments must be asked for in time order.
  PatientCategory at(Time t) {
    if (record_.header.patient != PatientCategory::unknown) {
      return record_.header.patient;
    }
    for (; next_ < record_.entries.size() && record_.entries[next_].t <= t; ++next_) {
      if (const auto* mode = record_.entries[next_].complete<entry::PatientMode>()) {
        now_ = *mode->category;
      }
    }
    return now_;
  }

private:
  const Record& record_;
  std::size_t next_ = 0;
  PatientCategory now_;
};

void countCompressions(const Record& record, const Figures& figures, CompressionQuality& quality) {
  CategoryCursor category(record);
  for (const std::size_t i : figures.compressionEntries) {
    const Entry& entry = record.entries[i];
    const auto& data = std::get<entry::Compression>(entry.data);
    const PatientCategory now = category.at(entry.t);
    const int arrest = indexHolding(figures.arrest, entry.t);
    const auto release = released(data, figures.settings.profile);
    quality.depthRecorded = quality.depthRecorded || data.depthMm.has_value();
    quality.releaseRecorded = quality.releaseRecorded || release.has_value();
    if (arrest >= 0) {
      quality.compressions.push_back(
          {entry.t, arrest, data.depthMm, depthRangeFor(figures.settings.profile, now), release});
    }
  }
}

std::vector<CompressionInterval> intervalsOf(const std::vector<CountedCompression>& compressions,
                                             Duration threshold) {
  std::vector<CompressionInterval> result;
  for (std::size_t i = 1; i < compressions.size(); ++i) {
    const auto& a = compressions[i - 1];
    const auto& b = compressions[i];
    if (a.arrest == b.arrest && b.t - a.t <= threshold) {
      result.push_back({a.t, b.t});
    }
  }
  return result;
}

void collectStretches(const Record& record, const Figures& figures, CompressionQuality& quality) {
  for (const std::size_t i : figures.cprEntries) {
    const Entry& entry = record.entries[i];
    const Interval span = spanOf(entry);
    const auto rate = std::get<entry::Cpr>(entry.data).ratePerMin;
    quality.stretchRateRecorded = quality.stretchRateRecorded || rate.has_value();
    for (const Interval& arrest : figures.arrest) {
      if (arrest.touches(span)) {
        quality.stretches.push_back(
            {{std::max(span.begin, arrest.begin), std::min(span.end, arrest.end)}, rate});
      }
    }
  }
}

} // namespace

CompressionQuality compressionQuality(const Record& record, const Figures& figures) {
  CompressionQuality quality;
  countCompressions(record, figures, quality);
  quality.intervals = intervalsOf(quality.compressions, figures.settings.pauseThreshold);
  collectStretches(record, figures, quality);
  return quality;
}

PatientCategory categoryAt(const Record& record, Time t) {
  return CategoryCursor(record).at(t);
}

bool rateInRange(const Profile& profile, double ratePerMin) {
  return profile.ratePerMin && profile.ratePerMin->value.holds(ratePerMin);
}

std::optional<double> meanRate(const std::vector<CompressionInterval>& intervals, std::size_t from,
                               std::size_t to) {
  if (from >= to) {
    return std::nullopt;
  }
  Duration sum{};
  for (std::size_t i = from; i < to; ++i) {
    sum += intervals[i].length();
  }
  return 60.0 * static_cast<double>(to - from) / seconds(sum);
}

} // namespace afterbeat
