#include "tests/core/measures/reference.h"

#include "tests/core/measures/reference_parts.h"

#include <string>

namespace afterbeat::reference {

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

std::vector<Found> insideArrest(const Facts& f, const std::vector<Found>& all) {
  std::vector<Found> inside;
  for (const Found& one : all) {
    if (f.arrestAt(one.from) >= 0) {
      inside.push_back(one);
    }
  }
  return inside;
}

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

namespace {

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
  shockPauses(figures, sheet);
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
