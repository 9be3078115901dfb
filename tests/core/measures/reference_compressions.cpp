#include "tests/core/measures/reference_parts.h"

namespace afterbeat::reference {

namespace {

Duration adjustedHandsOff(const Facts& f) {
  GridSet forgiven(f.grid.points());
  for (const Found& a : f.analyses) {
    forgiven.put(a.from, a.to);
  }
  for (const DeliveredShock& s : f.delivered) {
    if (s.analysisEnd) {
      forgiven.put(*s.analysisEnd, s.at);
    }
  }
  return cells(f, 0, f.grid.points() - 1,
               [&](int i) { return f.countedGaps.cell(i) && !forgiven.cell(i); });
}

} // namespace

void handsOff(const Facts& f, Sheet& sheet) {
  if (!f.windowBegin) {
    return;
  }
  const double arrest = secondsOf(arrestTime(f)), off = secondsOf(handsOffTime(f));
  sheet.value(MeasureId::arrestTime, arrest);
  if (!f.evidence()) {
    return;
  }
  sheet.value(MeasureId::handsOffTime, off);
  sheet.value(MeasureId::adjustedHandsOffTime, secondsOf(adjustedHandsOff(f)));
  if (arrest > 0) {
    sheet.ratio(MeasureId::handsOffFraction, off, arrest);
    sheet.ratio(MeasureId::chestCompressionFraction, arrest - off, arrest);
  } else {
    sheet.notApplicable(MeasureId::handsOffFraction);
    sheet.notApplicable(MeasureId::chestCompressionFraction);
  }
}

namespace {

PauseCause causeOf(const Facts& f, int from, int to) {
  for (const DeliveredShock& s : f.delivered) {
    if (s.at >= from && s.at <= to) {
      return PauseCause::shock;
    }
  }
  for (const Found& a : f.analyses) {
    if (a.from <= to && a.to >= from) {
      return PauseCause::analysis;
    }
  }
  bool before = false, after = false;
  for (int i = 0; i < f.grid.points(); ++i) {
    before = before || (f.handsOn.point(i) && i <= from);
    after = after || (f.handsOn.point(i) && i >= to);
  }
  if (!before) {
    return PauseCause::beforeFirst;
  }
  if (!after) {
    return PauseCause::afterLast;
  }
  for (const Found& v : f.ventilations) {
    if (v.from >= from && v.from <= to) {
      const auto& limit = f.settings.profile.breathPauseLimit;
      const bool tooLong = limit && secondsOf(f.grid.length(to - from)) > limit->value;
      return tooLong ? PauseCause::breathsLong : PauseCause::breaths;
    }
  }
  return PauseCause::noReasonRecorded;
}

} // namespace

void pauses(const Facts& f, Figures& figures, Sheet& sheet) {
  double longest = 0;
  int overLimit = 0;
  const auto& limit = f.settings.profile.pauseLimit;
  for (const auto& [from, to] : f.gaps) {
    figures.pauses.push_back({stretch(f, from, to), causeOf(f, from, to)});
    const double length = secondsOf(f.grid.length(to - from));
    longest = length > longest ? length : longest;
    overLimit += limit && length > limit->value ? 1 : 0;
  }
  if (!f.evidence()) {
    return;
  }
  sheet.value(MeasureId::longestPause, longest);
  if (limit) {
    sheet.value(MeasureId::pausesOverLimit, overLimit);
  } else {
    sheet.notApplicable(MeasureId::pausesOverLimit);
  }
}

namespace {

Rate rateOfBeats(const Facts& f, const Slice& slice) {
  Rate r;
  const auto& range = f.settings.profile.ratePerMin;
  for (const Beat& b : f.beats) {
    if (!slice.hasSecond(b.second)) {
      continue;
    }
    const Duration d = f.grid.length(b.second - b.first);
    const double perMinute = 60e6 / static_cast<double>(d.count());
    r.numerator += 1;
    r.denominator += secondsOf(d);
    r.inRangeDenominator += 1;
    if (range && perMinute >= range->value.low && perMinute <= range->value.high) {
      r.inRangeNumerator += 1;
    }
  }
  return r;
}

Rate rateOfStretches(const Facts& f, const Slice& slice) {
  Rate r;
  const auto& range = f.settings.profile.ratePerMin;
  for (const Found& c : f.cpr) {
    const std::optional<double> rate = f.data<entry::Cpr>(c).ratePerMin;
    if (!rate) {
      continue;
    }
    const int from = c.from > slice.from ? c.from : slice.from;
    const int to = c.to < slice.to ? c.to : slice.to;
    const double length = secondsOf(cells(f, from, to, [&](int i) { return f.arrest.cell(i); }));
    r.numerator += *rate * length / 60;
    r.denominator += length;
    r.inRangeDenominator += length;
    if (range && *rate >= range->value.low && *rate <= range->value.high) {
      r.inRangeNumerator += length;
    }
  }
  return r;
}

} // namespace

Rate rateIn(const Facts& f, const Slice& slice) {
  Rate r = f.kept.empty() ? rateOfStretches(f, slice) : rateOfBeats(f, slice);
  if (r.denominator > 0) {
    r.rate = 60 * r.numerator / r.denominator;
    if (f.settings.profile.ratePerMin) {
      r.inRange = r.inRangeNumerator / r.inRangeDenominator;
    }
  }
  return r;
}

namespace {

bool anyRatedStretch(const Facts& f) {
  for (const Found& c : f.cpr) {
    if (f.data<entry::Cpr>(c).ratePerMin) {
      return true;
    }
  }
  return false;
}

} // namespace

void rates(const Facts& f, Sheet& sheet) {
  if (!f.evidence() || (f.kept.empty() && !anyRatedStretch(f))) {
    return;
  }
  const Rate r = rateIn(f, {[](int) { return true; }, 0, f.grid.points() - 1});
  if (r.rate) {
    sheet.ratio(MeasureId::compressionRate, r.numerator, r.denominator, 60);
  } else {
    sheet.notApplicable(MeasureId::compressionRate);
  }
  if (r.inRange) {
    sheet.ratio(MeasureId::compressionRateInRange, r.inRangeNumerator, r.inRangeDenominator);
  } else {
    sheet.notApplicable(MeasureId::compressionRateInRange);
  }
}

namespace {

PatientCategory categoryAt(const Facts& f, Time t) {
  PatientCategory category = f.record.header.patient;
  if (category != PatientCategory::unknown) {
    return category;
  }
  for (const Entry& e : f.record.entries) {
    const auto* mode = std::get_if<entry::PatientMode>(&e.data);
    if (mode != nullptr && !e.incomplete && e.hasTime && e.t <= t && mode->category) {
      category = *mode->category;
    }
  }
  return category;
}

} // namespace

void depths(const Facts& f, Sheet& sheet) {
  bool anywhere = false;
  for (const Found& c : f.kept) {
    anywhere = anywhere || f.data<entry::Compression>(c).depthMm;
  }
  if (!anywhere) {
    return;
  }
  double sum = 0;
  int n = 0, withRange = 0, inRange = 0;
  for (const Found& c : insideArrest(f, f.kept)) {
    const std::optional<double> depth = f.data<entry::Compression>(c).depthMm;
    if (!depth) {
      continue;
    }
    sum += *depth;
    ++n;
    for (const auto& [category, target] : f.settings.profile.depth) {
      if (category == categoryAt(f, f.grid.time(c.from)) && target.value.range) {
        ++withRange;
        const Range range = *target.value.range;
        inRange += *depth >= range.low && *depth <= range.high ? 1 : 0;
      }
    }
  }
  if (n > 0) {
    sheet.ratio(MeasureId::compressionDepth, sum, n);
  } else {
    sheet.notApplicable(MeasureId::compressionDepth);
  }
  if (withRange > 0) {
    sheet.ratio(MeasureId::compressionDepthInRange, inRange, withRange);
  } else {
    sheet.notApplicable(MeasureId::compressionDepthInRange);
  }
}

namespace {

std::optional<bool> released(const Facts& f, const Found& compression) {
  const auto& c = f.data<entry::Compression>(compression);
  if (c.fullRelease) {
    return *c.fullRelease;
  }
  const auto& limit = f.settings.profile.leaningLimitMm;
  if (c.leaningMm && limit) {
    return *c.leaningMm <= limit->value;
  }
  return std::nullopt;
}

} // namespace

void release(const Facts& f, Sheet& sheet) {
  bool anywhere = false;
  for (const Found& c : f.kept) {
    anywhere = anywhere || released(f, c);
  }
  if (!anywhere) {
    return;
  }
  int known = 0, full = 0;
  for (const Found& c : insideArrest(f, f.kept)) {
    const std::optional<bool> r = released(f, c);
    known += r ? 1 : 0;
    full += r.value_or(false) ? 1 : 0;
  }
  if (known > 0) {
    sheet.ratio(MeasureId::fullRelease, full, known);
  } else {
    sheet.notApplicable(MeasureId::fullRelease);
  }
}

void counts(const Facts& f, Sheet& sheet) {
  const double arrest = secondsOf(arrestTime(f));
  if (!f.kept.empty()) {
    const auto n = static_cast<double>(insideArrest(f, f.kept).size());
    sheet.value(MeasureId::compressions, n);
    if (f.cpr.empty() && arrest > 0) {
      sheet.ratio(MeasureId::compressionsPerMinute, n, arrest, 60);
    } else if (f.cpr.empty()) {
      sheet.notApplicable(MeasureId::compressionsPerMinute);
    }
  }
  if (!f.ventilations.empty() && f.windowBegin) {
    const auto n = static_cast<double>(insideArrest(f, f.ventilations).size());
    sheet.value(MeasureId::ventilations, n);
    if (arrest > 0) {
      sheet.ratio(MeasureId::ventilationsPerMinute, n, arrest, 60);
    } else {
      sheet.notApplicable(MeasureId::ventilationsPerMinute);
    }
  }
}

} // namespace afterbeat::reference
