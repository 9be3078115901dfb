#include "tests/core/measures/reference_parts.h"

#include <utility>

namespace afterbeat::reference {

namespace {

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
  if (!f.delivered.empty() || holdsADefibrillatorsRecording(f)) {
    row.shocks = 0;
    for (const DeliveredShock& s : f.delivered) {
      *row.shocks += has(s.at) ? 1 : 0;
    }
  }
  return row;
}

} // namespace

void minutes(const Facts& f, Figures& figures) {
  if (!f.windowBegin || *f.windowBegin == *f.windowEnd) {
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
  if (analyses.empty()) {
    return;
  }
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
    const bool open = n == 0 || lastRow;
    if (!open || from < to) {
      rows.push_back({from, to, open});
    }
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

} // namespace afterbeat::reference
