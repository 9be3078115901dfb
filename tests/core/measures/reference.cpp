#include "tests/core/measures/reference.h"

#include "tests/core/measures/reference_facts.h"

#include <algorithm>
#include <functional>
#include <string>

namespace afterbeat::reference {

namespace {

double secondsOf(Duration d) {
  return static_cast<double>(d.count()) / 1e6;
}

Interval stretch(const Facts& f, int from, int to) {
  return {f.grid.time(from), f.grid.time(to)};
}

Duration cells(const Facts& f, int from, int to, const std::function<bool(int)>& in) {
  std::int64_t n = 0;
  for (int i = from; i < to; ++i) {
    n += in(i) ? 1 : 0;
  }
  return f.grid.length(n);
}

Duration arrestTime(const Facts& f) {
  return cells(f, 0, f.grid.points() - 1, [&](int i) { return f.arrest.cell(i); });
}

Duration handsOffTime(const Facts& f) {
  return cells(f, 0, f.grid.points() - 1, [&](int i) { return f.countedGaps.cell(i); });
}

/// Everything the three states of a measure need.
class Sheet {
public:
  explicit Sheet(Figures& figures) : figures_(figures) {
    for (int i = 0; i < static_cast<int>(MeasureId::count_); ++i) {
      Measure m;
      m.id = static_cast<MeasureId>(i);
      figures_.measures.push_back(m);
    }
  }
  void notRecorded(MeasureId id) { at(id).status = Status::notRecorded; }
  void notApplicable(MeasureId id) { at(id).status = Status::notApplicable; }
  void value(MeasureId id, double v) {
    at(id).status = Status::ok;
    at(id).value = v;
  }
  void ratio(MeasureId id, double numerator, double denominator, double factor = 1) {
    value(id, factor * numerator / denominator);
    at(id).numerator = numerator;
    at(id).denominator = denominator;
  }

private:
  Measure& at(MeasureId id) { return figures_.measures[static_cast<std::size_t>(id)]; }
  Figures& figures_;
};

// ---- hands off

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

// ---- rates

/// What part of the record a rate is asked for.
struct Slice {
  /// Whether an interval with this second compression belongs to it.
  std::function<bool(int)> hasSecond;
  /// Stretches are clipped to this.
  int from, to;
};

struct Rate {
  std::optional<double> rate, inRange;
  double numerator = 0, denominator = 0, inRangeNumerator = 0, inRangeDenominator = 0;
};

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

bool anyRatedStretch(const Facts& f) {
  for (const Found& c : f.cpr) {
    if (f.data<entry::Cpr>(c).ratePerMin) {
      return true;
    }
  }
  return false;
}

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

// ---- single compressions and breaths

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

std::vector<Found> insideArrest(const Facts& f, const std::vector<Found>& all) {
  std::vector<Found> inside;
  for (const Found& one : all) {
    if (f.arrestAt(one.from) >= 0) {
      inside.push_back(one);
    }
  }
  return inside;
}

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
    sheet.value(MeasureId::compressionDepth, sum / n);
  } else {
    sheet.notApplicable(MeasureId::compressionDepth);
  }
  if (withRange > 0) {
    sheet.ratio(MeasureId::compressionDepthInRange, inRange, withRange);
  } else {
    sheet.notApplicable(MeasureId::compressionDepthInRange);
  }
}

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

// ---- tables

/// The figures that a minute and a cycle share.
std::optional<Duration> handsOffIn(const Facts& f, int from, int to) {
  if (!f.evidence()) {
    return std::nullopt;
  }
  return cells(f, from, to, [&](int i) { return f.countedGaps.cell(i); });
}

std::optional<double> meanDepth(const Facts& f, const std::function<bool(int)>& has) {
  double sum = 0;
  int n = 0;
  for (const Found& c : insideArrest(f, f.kept)) {
    const std::optional<double> depth = f.data<entry::Compression>(c).depthMm;
    if (depth && has(c.from)) {
      sum += *depth;
      ++n;
    }
  }
  return n > 0 ? std::optional<double>{sum / n} : std::nullopt;
}

int countIn(const std::vector<Found>& all, const std::function<bool(int)>& has) {
  int n = 0;
  for (const Found& one : all) {
    n += has(one.from) ? 1 : 0;
  }
  return n;
}

MinuteRow minute(const Facts& f, int from, int to, bool last) {
  const auto has = [=](int i) { return i >= from && (i < to || (last && i == to)); };
  MinuteRow row;
  row.epoch = stretch(f, from, to);
  row.arrest = cells(f, from, to, [&](int i) { return f.arrest.cell(i); });
  row.handsOff = handsOffIn(f, from, to);
  if (!f.kept.empty()) {
    row.compressions = countIn(insideArrest(f, f.kept), has);
  }
  if (!f.ventilations.empty()) {
    row.ventilations = countIn(insideArrest(f, f.ventilations), has);
  }
  const Rate r = rateIn(f, {has, from, to});
  row.rate = r.rate;
  row.rateInRange = r.inRange;
  row.depth = meanDepth(f, has);
  for (const DeliveredShock& s : f.delivered) {
    row.shocks += has(s.at) ? 1 : 0;
  }
  return row;
}

void minutes(const Facts& f, Figures& figures) {
  if (!f.windowBegin) {
    return;
  }
  for (int from = *f.windowBegin; true; from += f.grid.minute()) {
    const bool last = from + f.grid.minute() >= *f.windowEnd;
    const int to = last ? *f.windowEnd : from + f.grid.minute();
    figures.minutes.push_back(minute(f, from, to, last));
    if (last) {
      return;
    }
  }
}

void cycles(const Facts& f, Figures& figures) {
  if (!f.windowBegin) {
    return;
  }
  GridSet analysed(f.grid.points());
  for (const Found& a : f.analyses) {
    analysed.put(a.from, a.to);
  }
  const std::vector<std::pair<int, int>> analyses = analysed.runs();
  struct Row {
    int from, to;
    bool open;
  };
  std::vector<Row> rows;
  int from = *f.windowBegin;
  for (std::size_t n = 0; n <= analyses.size(); ++n) {
    const bool lastRow = n == analyses.size();
    const int to = lastRow ? *f.windowEnd : analyses[n].first;
    for (const DeliveredShock& s : f.delivered) {
      if (n > 0 && (lastRow || s.at < to) && s.at > from) {
        from = s.at;
      }
    }
    rows.push_back({from, to, n == 0 || lastRow});
    from = lastRow ? to : analyses[n].second;
  }
  for (std::size_t n = 0; n < rows.size(); ++n) {
    const Row& row = rows[n];
    // A moment that two rows share belongs to the later.
    const bool shared = n + 1 < rows.size() && rows[n + 1].from == row.to;
    const auto has = [&](int i) { return i >= row.from && (shared ? i < row.to : i <= row.to); };
    CycleRow cycle;
    cycle.stretch = stretch(f, row.from, row.to);
    cycle.open = row.open;
    cycle.handsOff = handsOffIn(f, row.from, row.to);
    cycle.rate = rateIn(f, {has, row.from, row.to}).rate;
    figures.cycles.push_back(cycle);
  }
}

// ---- shocks

void medianAndWorst(Sheet& sheet, MeasureId median, MeasureId worst, std::vector<double> values) {
  if (values.empty()) {
    sheet.notApplicable(median);
    sheet.notApplicable(worst);
    return;
  }
  std::sort(values.begin(), values.end());
  const std::size_t n = values.size();
  sheet.value(median, n % 2 == 1 ? values[n / 2] : (values[n / 2 - 1] + values[n / 2]) / 2);
  sheet.value(worst, values.back());
}

void listShocks(const Facts& f, Figures& figures) {
  int number = 0;
  for (std::size_t i = 0; i < f.record.entries.size(); ++i) {
    const Entry& e = f.record.entries[i];
    const auto* shock = std::get_if<entry::Shock>(&e.data);
    if (shock == nullptr || !e.hasTime || (e.incomplete && shock->delivered)) {
      continue;
    }
    ShockFigures row;
    row.t = e.t;
    row.delivered = shock->delivered;
    row.energyJ = shock->energyJ;
    for (const DeliveredShock& s : f.delivered) {
      if (s.entry != i) {
        continue;
      }
      row.number = ++number;
      const auto length = [&](int n) { return f.grid.length(n); };
      if (s.pre) {
        row.pre = length(*s.pre);
      }
      if (s.post) {
        row.post = length(*s.post);
      }
      if (s.pre && s.post) {
        row.peri = length(*s.pre + *s.post);
      }
      if (s.analysisEnd) {
        row.adviceToShock = length(s.at - *s.analysisEnd);
      }
    }
    figures.shocks.push_back(row);
  }
}

void shockPauses(const Facts& f, const Figures& figures, Sheet& sheet) {
  std::vector<double> pre, post, peri, advice;
  for (const ShockFigures& s : figures.shocks) {
    const auto add = [](std::vector<double>& list, const std::optional<Duration>& d) {
      if (d) {
        list.push_back(secondsOf(*d));
      }
    };
    add(pre, s.pre);
    add(post, s.post);
    add(peri, s.peri);
    add(advice, s.adviceToShock);
  }
  medianAndWorst(sheet, MeasureId::adviceToShockMedian, MeasureId::adviceToShockWorst, advice);
  if (!f.evidence()) {
    return;
  }
  medianAndWorst(sheet, MeasureId::preShockPauseMedian, MeasureId::preShockPauseWorst, pre);
  medianAndWorst(sheet, MeasureId::postShockPauseMedian, MeasureId::postShockPauseWorst, post);
  medianAndWorst(sheet, MeasureId::periShockPauseMedian, MeasureId::periShockPauseWorst, peri);
}

bool showsADefibrillator(const Entry& e) {
  const auto* shock = std::get_if<entry::Shock>(&e.data);
  if (shock != nullptr && e.hasTime && (!e.incomplete || !shock->delivered)) {
    return true;
  }
  return !e.incomplete && (std::holds_alternative<entry::PowerOn>(e.data) ||
                           std::holds_alternative<entry::PowerOff>(e.data) ||
                           std::holds_alternative<entry::Electrodes>(e.data) ||
                           std::holds_alternative<entry::PatientMode>(e.data) ||
                           std::holds_alternative<entry::Analysis>(e.data) ||
                           std::holds_alternative<entry::Charge>(e.data));
}

void deviceCounts(const Facts& f, const Figures& figures, Sheet& sheet) {
  int delivered = 0, withheld = 0, unknown = 0, withEnergy = 0, advising = 0;
  double energy = 0;
  for (const ShockFigures& s : figures.shocks) {
    delivered += s.delivered == true ? 1 : 0;
    withheld += s.delivered == false ? 1 : 0;
    withEnergy += s.delivered == true && s.energyJ ? 1 : 0;
    energy += s.delivered == true ? s.energyJ.value_or(0) : 0;
  }
  for (const Entry& e : f.record.entries) {
    const auto* shock = std::get_if<entry::Shock>(&e.data);
    unknown += shock != nullptr && e.hasTime && !shock->delivered ? 1 : 0;
  }
  for (const Found& a : f.analyses) {
    advising += f.data<entry::Analysis>(a).advice == Advice::shock ? 1 : 0;
  }
  if (delivered == 0) {
    sheet.notApplicable(MeasureId::energyTotal);
  } else if (withEnergy == delivered) {
    sheet.value(MeasureId::energyTotal, energy);
  }
  if (std::any_of(f.record.entries.begin(), f.record.entries.end(), showsADefibrillator)) {
    sheet.value(MeasureId::shocksDelivered, delivered);
    sheet.value(MeasureId::shocksWithheld, withheld);
    sheet.value(MeasureId::shocksUnknown, unknown);
    sheet.value(MeasureId::analyses, static_cast<double>(f.analyses.size()));
    sheet.value(MeasureId::analysesAdvisingShock, advising);
  }
}

// ---- between events

std::optional<Time> first(const Facts& f, const std::function<bool(const Entry&)>& is) {
  for (const Entry& e : f.record.entries) {
    if (e.hasTime && !e.incomplete && is(e)) {
      return e.t;
    }
  }
  return std::nullopt;
}

std::optional<Time> firstMilestone(const Facts& f, const std::string& what) {
  return first(f, [&](const Entry& e) {
    const auto* m = std::get_if<entry::Milestone>(&e.data);
    return m != nullptr && m->what == what;
  });
}

void betweenEvents(const Facts& f, Sheet& sheet) {
  const auto powerOn =
      first(f, [](const Entry& e) { return std::holds_alternative<entry::PowerOn>(e.data); });
  const auto electrodes = first(f, [](const Entry& e) {
    const auto* x = std::get_if<entry::Electrodes>(&e.data);
    return x != nullptr && x->state == ElectrodeState::attached;
  });
  const auto analysis =
      first(f, [](const Entry& e) { return std::holds_alternative<entry::Analysis>(e.data); });
  const auto shock = first(f, [](const Entry& e) {
    const auto* x = std::get_if<entry::Shock>(&e.data);
    return x != nullptr && x->delivered == true;
  });
  const auto returned = first(f, [](const Entry& e) {
    const auto* x = std::get_if<entry::Circulation>(&e.data);
    return x != nullptr && x->state == CirculationState::returned;
  });
  const auto collapse = firstMilestone(f, "collapse"), call = firstMilestone(f, "call_received");
  const auto arrived = firstMilestone(f, "device_arrived");
  std::optional<Time> handsOn;
  for (int i = f.grid.points() - 1; i >= 0; --i) {
    if (f.handsOn.point(i)) {
      handsOn = f.grid.time(i);
    }
  }
  const auto between = [&](MeasureId id, std::optional<Time> a, std::optional<Time> b) {
    if (a && b) {
      sheet.value(id, secondsOf(*b - *a));
    }
  };
  between(MeasureId::powerOnToFirstShock, powerOn, shock);
  between(MeasureId::electrodesToFirstShock, electrodes, shock);
  between(MeasureId::collapseToFirstShock, collapse, shock);
  between(MeasureId::callToFirstShock, call, shock);
  between(MeasureId::firstHandsOnToFirstShock, handsOn, shock);
  between(MeasureId::powerOnToElectrodes, powerOn, electrodes);
  between(MeasureId::powerOnToFirstHandsOn, powerOn, handsOn);
  between(MeasureId::electrodesToFirstAnalysis, electrodes, analysis);
  between(MeasureId::collapseToFirstHandsOn, collapse, handsOn);
  between(MeasureId::callToFirstHandsOn, call, handsOn);
  between(MeasureId::callToDeviceArrived, call, arrived);
  between(MeasureId::collapseToCirculationReturned, collapse, returned);
}

void circulation(const Facts& f, Figures& figures, Sheet& sheet) {
  bool returned = false;
  for (const Entry& e : f.record.entries) {
    const auto* c = std::get_if<entry::Circulation>(&e.data);
    returned = returned || (c != nullptr && !e.incomplete && e.hasTime &&
                            c->state == CirculationState::returned);
  }
  GridSet all(f.grid.points());
  Duration longest{};
  for (const auto& [from, to] : f.circulation) {
    figures.circulation.push_back(stretch(f, from, to));
    all.put(from, to);
    longest = f.grid.length(to - from) > longest ? f.grid.length(to - from) : longest;
  }
  if (!returned) {
    return;
  }
  if (f.circulation.empty()) {
    sheet.notApplicable(MeasureId::circulationTime);
    sheet.notApplicable(MeasureId::longestCirculation);
    return;
  }
  const auto in = [&](int i) { return all.cell(i); };
  sheet.value(MeasureId::circulationTime, secondsOf(cells(f, 0, f.grid.points() - 1, in)));
  sheet.value(MeasureId::longestCirculation, secondsOf(longest));
}

/// The latest time of the record's entries, those left out that `skip` names.
std::optional<Time> latest(const Facts& f, const std::function<bool(const Entry&)>& skip) {
  std::optional<Time> found;
  const auto take = [&](Time t) { found = found && *found >= t ? *found : t; };
  for (const Entry& e : f.record.entries) {
    if (e.hasTime && !e.incomplete && !skip(e)) {
      take(e.end ? *e.end : e.t);
    }
  }
  for (const Channel& channel : f.record.channels) {
    for (const SampleBlock& block : channel.blocks) {
      take(block.t);
    }
    take(channel.lastLine.value_or(f.grid.time(0)));
  }
  return found;
}

void timeOn(const Facts& f, Sheet& sheet) {
  std::optional<Time> onSince;
  bool everOn = false;
  double sum = 0;
  for (const Entry& e : f.record.entries) {
    if (!e.hasTime || e.incomplete) {
      continue;
    }
    if (std::holds_alternative<entry::PowerOn>(e.data)) {
      everOn = true;
      onSince = onSince ? onSince : std::optional<Time>{e.t};
    }
    if (std::holds_alternative<entry::PowerOff>(e.data) && onSince) {
      sum += secondsOf(e.t - *onSince);
      onSince.reset();
    }
  }
  if (onSince) {
    const auto end = latest(f, [](const Entry& e) {
      return std::holds_alternative<entry::Mark>(e.data) ||
             std::holds_alternative<entry::Milestone>(e.data);
    });
    sum += secondsOf(*end - *onSince);
  }
  if (everOn) {
    sheet.value(MeasureId::timeOn, sum);
  }
}

// ---- everything else of the figures

void notCounted(const Facts& f, Figures& figures) {
  if (f.windowBegin) {
    const Time begin = f.grid.time(*f.windowBegin), end = f.grid.time(*f.windowEnd);
    std::optional<Time> earliest;
    const auto take = [&](Time t) { earliest = earliest && *earliest <= t ? *earliest : t; };
    for (const Entry& e : f.record.entries) {
      if (e.hasTime && !e.incomplete && !outsideRecordEnd(e)) {
        take(e.t);
      }
    }
    for (const Channel& channel : f.record.channels) {
      for (const SampleBlock& block : channel.blocks) {
        take(block.t);
      }
    }
    const auto last = latest(f, outsideRecordEnd);
    if (earliest && *earliest < begin) {
      figures.notCounted.push_back({{*earliest, begin}, NotCountedReason::beforeWindow});
    }
    if (last && *last > end) {
      figures.notCounted.push_back({{end, *last}, NotCountedReason::afterWindow});
    }
    for (const Entry& e : f.record.entries) {
      const auto* excluded = std::get_if<entry::Excluded>(&e.data);
      if (excluded == nullptr || e.incomplete || !e.hasTime) {
        continue;
      }
      const Time from = e.t > begin ? e.t : begin, to = *e.end < end ? *e.end : end;
      if (from < to) {
        const auto why =
            *excluded->why == ExclusionReason::notRescue
                ? NotCountedReason::notRescue
                : (*excluded->why == ExclusionReason::notTrusted ? NotCountedReason::notTrusted
                                                                 : NotCountedReason::notObserved);
        figures.notCounted.push_back({{from, to}, why});
      }
    }
    for (const Interval& c : figures.circulation) {
      const Time from = c.begin > begin ? c.begin : begin, to = c.end < end ? c.end : end;
      if (from < to) {
        figures.notCounted.push_back({{from, to}, NotCountedReason::circulationReturned});
      }
    }
  }
}

void excludedLength(const Facts& f, Figures& figures) {
  if (!f.windowBegin) {
    return;
  }
  GridSet excluded(f.grid.points());
  for (const Entry& e : f.record.entries) {
    if (std::holds_alternative<entry::Excluded>(e.data) && !e.incomplete && e.hasTime) {
      excluded.put(f.grid.at(e.t), f.grid.at(*e.end));
    }
  }
  figures.excludedLength =
      cells(f, *f.windowBegin, *f.windowEnd, [&](int i) { return excluded.cell(i); });
}

void notices(const Facts& f, Figures& figures) {
  if (f.droppedTwice > 0) {
    Problem p;
    p.kind = ProblemKind::doubleDetection;
    p.args = {std::to_string(f.droppedTwice)};
    figures.notices.push_back(p);
  }
  for (const Entry& e : f.record.entries) {
    const auto* mode = std::get_if<entry::PatientMode>(&e.data);
    if (mode != nullptr && !e.incomplete && e.hasTime &&
        f.record.header.patient != PatientCategory::unknown &&
        mode->category != PatientCategory::unknown && mode->category != f.record.header.patient) {
      Problem p;
      p.kind = ProblemKind::categoryDiffers;
      figures.notices.push_back(p);
      return;
    }
  }
}

void frame(const Facts& f, Figures& figures) {
  figures.evidence = f.kept.empty() ? (f.cpr.empty() ? Evidence::none : Evidence::segments)
                                    : (f.cpr.empty() ? Evidence::compressions : Evidence::both);
  if (f.windowBegin) {
    figures.window = stretch(f, *f.windowBegin, *f.windowEnd);
  }
  const auto active = [&](int point) {
    const Time t = f.grid.time(point);
    figures.lastActivity =
        figures.lastActivity && *figures.lastActivity > t ? *figures.lastActivity : t;
  };
  for (const Found& a : f.analyses) {
    active(a.to);
  }
  for (const DeliveredShock& s : f.delivered) {
    active(s.at);
  }
  for (const Found& c : f.kept) {
    figures.compressions.push_back(f.grid.time(c.from));
    figures.compressionEntries.push_back(c.entry);
  }
  for (const Found& c : f.cpr) {
    figures.cprEntries.push_back(c.entry);
  }
  for (const auto& [from, to] : f.handsOn.runs()) {
    figures.handsOn.push_back(stretch(f, from, to));
    active(to);
  }
  for (const auto& [from, to] : f.arrest.runs()) {
    figures.arrest.push_back(stretch(f, from, to));
  }
}

} // namespace

Figures computeFigures(const Record& record, const FigureSettings& settings) {
  const Facts f = findFacts(record, settings);
  Figures figures;
  figures.settings = settings;
  Sheet sheet(figures);
  frame(f, figures);
  handsOff(f, sheet);
  pauses(f, figures, sheet);
  rates(f, sheet);
  depths(f, sheet);
  release(f, sheet);
  counts(f, sheet);
  listShocks(f, figures);
  shockPauses(f, figures, sheet);
  deviceCounts(f, figures, sheet);
  betweenEvents(f, sheet);
  circulation(f, figures, sheet);
  timeOn(f, sheet);
  minutes(f, figures);
  cycles(f, figures);
  notCounted(f, figures);
  excludedLength(f, figures);
  notices(f, figures);
  return figures;
}

} // namespace afterbeat::reference
