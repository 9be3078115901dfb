#include "core/measures/tables.h"

#include "core/measures/evidence.h"

#include <algorithm>

namespace afterbeat {
namespace {

constexpr Duration kEpoch{60'000'000};

std::vector<Interval> pauseStretches(const Figures& figures) {
  std::vector<Interval> result;
  for (const Pause& pause : figures.pauses) {
    result.push_back(pause.stretch);
  }
  return result;
}

/// Length-weighted rate over the rated stretches inside `stretch`.
struct SegmentRate {
  double weight = 0, weighted = 0, inRange = 0;
};

SegmentRate segmentRate(const Figures& figures, const CompressionQuality& quality,
                        const Interval& stretch) {
  SegmentRate result;
  for (const RatedStretch& rated : quality.stretches) {
    if (!rated.ratePerMin) {
      continue;
    }
    const double length = seconds(overlap(rated.stretch, {stretch}));
    result.weight += length;
    result.weighted += length * *rated.ratePerMin;
    if (rateInRange(figures.settings.profile, *rated.ratePerMin)) {
      result.inRange += length;
    }
  }
  return result;
}

/// The index of the first interval whose second compression is at `t` or later (or later only).
std::size_t firstFrom(const std::vector<CompressionInterval>& intervals, Time t, bool strictly) {
  const auto it =
      strictly
          ? std::upper_bound(intervals.begin(), intervals.end(), t,
                             [](Time at, const CompressionInterval& i) { return at < i.second; })
          : std::lower_bound(intervals.begin(), intervals.end(), t,
                             [](const CompressionInterval& i, Time at) { return i.second < at; });
  return static_cast<std::size_t>(it - intervals.begin());
}

/// Lays epochs over a window that has a length.
class Epochs {
public:
  explicit Epochs(const Interval& window) : window_(window) {
    const auto n = (window.length() + kEpoch - Duration{1}) / kEpoch;
    count_ = static_cast<std::size_t>(n);
  }
  [[nodiscard]] std::size_t count() const { return count_; }
  [[nodiscard]] Interval operator[](std::size_t i) const {
    const Time begin = window_.begin + kEpoch * static_cast<std::int64_t>(i);
    return {begin, std::min(begin + kEpoch, window_.end)};
  }
  /// The epoch a moment belongs to; the window holds it.
  [[nodiscard]] std::size_t of(Time t) const {
    return std::min(static_cast<std::size_t>((t - window_.begin) / kEpoch), count_ - 1);
  }

private:
  Interval window_;
  std::size_t count_ = 1;
};

void countMoments(const Record& record, const Figures& figures, const Epochs& epochs,
                  std::vector<MinuteRow>& rows) {
  const bool breathsRecorded = figures[MeasureId::ventilations].status == Status::ok;
  const bool shocksRecorded = figures[MeasureId::shocksDelivered].status == Status::ok;
  for (MinuteRow& row : rows) {
    if (breathsRecorded) {
      row.ventilations = 0;
    }
    if (!figures.compressions.empty()) {
      row.compressions = 0;
    }
    if (shocksRecorded) {
      row.shocks = 0;
    }
  }
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::Ventilation>() != nullptr &&
        indexHolding(figures.arrest, entry.t) >= 0) {
      ++*rows[epochs.of(entry.t)].ventilations;
    }
  }
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.number > 0) {
      ++*rows[epochs.of(shock.t)].shocks;
    }
  }
}

void meanDepths(const CompressionQuality& quality, const Epochs& epochs,
                std::vector<MinuteRow>& rows) {
  std::vector<double> sums(rows.size(), 0.0);
  std::vector<int> counts(rows.size(), 0);
  for (const CountedCompression& compression : quality.compressions) {
    const std::size_t i = epochs.of(compression.t);
    ++*rows[i].compressions;
    if (compression.depthMm) {
      sums[i] += *compression.depthMm;
      ++counts[i];
    }
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (counts[i] > 0) {
      rows[i].depth = sums[i] / counts[i];
    }
  }
}

void minuteRates(const Figures& figures, const CompressionQuality& quality, const Epochs& epochs,
                 std::vector<MinuteRow>& rows) {
  if (figures.evidence == Evidence::segments) {
    for (MinuteRow& row : rows) {
      const SegmentRate rate = segmentRate(figures, quality, row.epoch);
      if (rate.weight > 0) {
        row.rate = rate.weighted / rate.weight;
        if (figures.settings.profile.ratePerMin) {
          row.rateInRange = rate.inRange / rate.weight;
        }
      }
    }
    return;
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const std::size_t from = firstFrom(quality.intervals, rows[i].epoch.begin, false);
    const bool last = i + 1 == epochs.count();
    const std::size_t to = firstFrom(quality.intervals, rows[i].epoch.end, last);
    rows[i].rate = meanRate(quality.intervals, from, to);
    if (rows[i].rate && figures.settings.profile.ratePerMin) {
      const auto inRange =
          std::count_if(quality.intervals.begin() + static_cast<std::ptrdiff_t>(from),
                        quality.intervals.begin() + static_cast<std::ptrdiff_t>(to),
                        [&](const CompressionInterval& interval) {
                          return rateInRange(figures.settings.profile, interval.ratePerMin());
                        });
      rows[i].rateInRange = static_cast<double>(inRange) / static_cast<double>(to - from);
    }
  }
}

/// Analyses that share a point as one, in time order.
std::vector<Interval> mergedAnalyses(const Record& record) {
  std::vector<Interval> analyses;
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::Analysis>() != nullptr) {
      analyses.push_back(spanOf(entry));
    }
  }
  return merged(std::move(analyses));
}

/// Begin of the cycle after an analysis: its end, or the latest delivered shock before `next`.
Time cycleBegin(const Figures& figures, Time analysisEnd, std::optional<Time> next) {
  Time begin = analysisEnd;
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.number > 0 && (!next || shock.t < *next)) {
      begin = std::max(begin, shock.t);
    }
  }
  return begin;
}

std::vector<CycleRow> cycleStretches(const Record& record, const Figures& figures) {
  const Interval& window = *figures.window;
  const std::vector<Interval> analyses = mergedAnalyses(record);
  std::vector<CycleRow> rows;
  const auto addOpen = [&rows](const Interval& stretch) {
    if (stretch.begin < stretch.end) {
      rows.push_back({stretch, true, {}, {}});
    }
  };
  if (analyses.empty()) {
    return rows;
  }
  addOpen({window.begin, analyses.front().begin});
  for (std::size_t i = 0; i + 1 < analyses.size(); ++i) {
    const Time next = analyses[i + 1].begin;
    rows.push_back({{cycleBegin(figures, analyses[i].end, next), next}, false, {}, {}});
  }
  addOpen({cycleBegin(figures, analyses.back().end, std::nullopt), window.end});
  return rows;
}

} // namespace

std::vector<MinuteRow> minuteTable(const Record& record, const Figures& figures,
                                   const CompressionQuality& quality) {
  if (!figures.window || figures.window->begin == figures.window->end) {
    return {};
  }
  const Epochs epochs(*figures.window);
  const std::vector<Interval> pauses = pauseStretches(figures);
  std::vector<MinuteRow> rows(epochs.count());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    rows[i].epoch = epochs[i];
    rows[i].arrest = overlap(rows[i].epoch, figures.arrest);
    if (figures.evidence != Evidence::none) {
      rows[i].handsOff = overlap(rows[i].epoch, pauses);
    }
  }
  countMoments(record, figures, epochs, rows);
  meanDepths(quality, epochs, rows);
  minuteRates(figures, quality, epochs, rows);
  return rows;
}

std::vector<CycleRow> cycleTable(const Record& record, const Figures& figures,
                                 const CompressionQuality& quality) {
  if (!figures.window) {
    return {};
  }
  const std::vector<Interval> pauses = pauseStretches(figures);
  std::vector<CycleRow> rows = cycleStretches(record, figures);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    CycleRow& row = rows[i];
    if (figures.evidence != Evidence::none) {
      row.handsOff = overlap(row.stretch, pauses);
    }
    if (figures.evidence == Evidence::segments) {
      const SegmentRate rate = segmentRate(figures, quality, row.stretch);
      if (rate.weight > 0) {
        row.rate = rate.weighted / rate.weight;
      }
    } else {
      const bool sharesEnd = i + 1 < rows.size() && rows[i + 1].stretch.begin == row.stretch.end;
      row.rate = meanRate(quality.intervals, firstFrom(quality.intervals, row.stretch.begin, false),
                          firstFrom(quality.intervals, row.stretch.end, !sharesEnd));
    }
  }
  return rows;
}

} // namespace afterbeat
