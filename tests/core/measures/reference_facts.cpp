#include "tests/core/measures/reference_facts.h"

#include <algorithm>
#include <stdexcept>

namespace afterbeat::reference {

namespace {

template <typename T>
std::vector<Found> complete(const Facts& f) {
  std::vector<Found> found;
  for (std::size_t i = 0; i < f.record.entries.size(); ++i) {
    const Entry& e = f.record.entries[i];
    if (e.hasTime && !e.incomplete && std::holds_alternative<T>(e.data)) {
      const int from = f.grid.at(e.t);
      found.push_back({from, e.end ? f.grid.at(*e.end) : from, i});
    }
  }
  return found;
}

/// The compressions of one source in one part.
struct Stream {
  Source source;
  int part;
  std::vector<Found> all;
};

int rank(Source source) {
  switch (source) {
  case Source::device:
    return 0;
  case Source::derived:
    return 1;
  case Source::observer:
    return 2;
  }
  throw std::logic_error("unknown source");
}

bool better(const Stream& a, const Stream& b) {
  if (rank(a.source) != rank(b.source)) {
    return rank(a.source) < rank(b.source);
  }
  if (a.all.size() != b.all.size()) {
    return a.all.size() > b.all.size();
  }
  return a.all.front().entry < b.all.front().entry;
}

std::vector<Stream> streams(const Facts& f) {
  std::vector<Stream> found;
  for (const Found& c : complete<entry::Compression>(f)) {
    const Entry& e = f.record.entries[c.entry];
    Stream* home = nullptr;
    for (Stream& s : found) {
      if (s.source == e.source && s.part == e.part) {
        home = &s;
      }
    }
    if (home == nullptr) {
      found.push_back({e.source, e.part, {}});
      home = &found.back();
    }
    home->all.push_back(c);
  }
  return found;
}

bool insideABetterSpan(const Found& c, const Stream& own, const std::vector<Stream>& all) {
  for (const Stream& other : all) {
    if (better(other, own) && c.from >= other.all.front().from && c.from <= other.all.back().from) {
      return true;
    }
  }
  return false;
}

void keepCompressions(Facts& f) {
  const std::vector<Stream> all = streams(f);
  std::vector<bool> used(f.record.entries.size(), false);
  for (const Stream& s : all) {
    for (const Found& c : s.all) {
      used[c.entry] = !insideABetterSpan(c, s, all);
    }
  }
  for (const Found& c : complete<entry::Compression>(f)) {
    if (!used[c.entry]) {
      continue;
    }
    if (!f.kept.empty() &&
        f.grid.length(c.from - f.kept.back().from) <= std::chrono::milliseconds{200}) {
      ++f.droppedTwice;
    } else {
      f.kept.push_back(c);
    }
  }
}

void findHandsOn(Facts& f) {
  for (const Found& stretch : complete<entry::Cpr>(f)) {
    bool holdsKept = false;
    for (const Found& c : f.kept) {
      holdsKept = holdsKept || (c.from >= stretch.from && c.from <= stretch.to);
    }
    if (!holdsKept) {
      f.cpr.push_back(stretch);
      f.handsOn.put(stretch.from, stretch.to);
    }
  }
  for (const Found& c : f.kept) {
    f.handsOn.putPoint(c.from);
  }
}

void findShocks(Facts& f) {
  for (const Found& s : complete<entry::Shock>(f)) {
    if (f.data<entry::Shock>(s).delivered.value_or(false)) {
      DeliveredShock shock;
      shock.at = s.from;
      shock.entry = s.entry;
      f.delivered.push_back(shock);
    }
  }
}

/// The last analysis that ended at or before the shock, if it advised one and none used it yet.
void findAdvice(Facts& f) {
  std::vector<bool> usedUp(f.record.entries.size(), false);
  for (DeliveredShock& shock : f.delivered) {
    const Found* last = nullptr;
    for (const Found& a : f.analyses) {
      if (a.to <= shock.at && (last == nullptr || a.to >= last->to)) {
        last = &a;
      }
    }
    if (last != nullptr && f.data<entry::Analysis>(*last).advice == Advice::shock &&
        !usedUp[last->entry]) {
      usedUp[last->entry] = true;
      shock.analysisEnd = last->to;
    }
  }
}

void takeEarlier(std::optional<int>& best, int candidate) {
  best = best && *best <= candidate ? *best : candidate;
}
/// When nothing happened both are empty.
void findWindow(Facts& f) {
  std::vector<int> begins, ends;
  for (const Found& e : complete<entry::Electrodes>(f)) {
    if (f.data<entry::Electrodes>(e).state == ElectrodeState::attached) {
      begins.push_back(e.from);
    }
  }
  for (const Found& a : f.analyses) {
    begins.push_back(a.from);
    ends.push_back(a.to);
  }
  for (const DeliveredShock& s : f.delivered) {
    begins.push_back(s.at);
    ends.push_back(s.at);
  }
  for (int i = 0; i < f.grid.points(); ++i) {
    if (f.handsOn.point(i)) {
      begins.push_back(i);
      ends.push_back(i);
    }
  }
  if (begins.empty()) {
    return;
  }
  if (f.settings.windowEnd == WindowEnd::recordEnd) {
    ends.clear();
    for (const Entry& e : f.record.entries) {
      if (e.hasTime && !e.incomplete && !outsideRecordEnd(e)) {
        ends.push_back(f.grid.at(e.end ? *e.end : e.t));
      }
    }
    for (const Channel& channel : f.record.channels) {
      for (const SampleBlock& block : channel.blocks) {
        ends.push_back(f.grid.at(block.t));
      }
      if (channel.firstLine && channel.lastLine) {
        ends.push_back(f.grid.at(*channel.lastLine));
      }
    }
  }
  f.windowBegin = *std::min_element(begins.begin(), begins.end());
  f.windowEnd = ends.empty() ? f.windowBegin : *std::max_element(ends.begin(), ends.end());
}

void findCirculation(Facts& f) {
  const std::vector<Found> all = complete<entry::Circulation>(f);
  for (const Found& r : all) {
    if (f.data<entry::Circulation>(r).state != CirculationState::returned) {
      continue;
    }
    std::optional<int> end;
    const auto tryEnd = [&](int candidate) {
      if (candidate > r.from) {
        takeEarlier(end, candidate);
      }
    };
    for (const Found& other : all) {
      if (f.data<entry::Circulation>(other).state == CirculationState::lost) {
        tryEnd(other.from);
      }
    }
    for (const Found& c : f.kept) {
      tryEnd(c.from);
    }
    for (const Found& c : f.cpr) {
      tryEnd(c.from);
    }
    for (const DeliveredShock& s : f.delivered) {
      tryEnd(s.at);
    }
    if (f.windowEnd) {
      tryEnd(*f.windowEnd);
    }
    if (end) {
      f.circulation.emplace_back(r.from, *end);
    }
  }
}

void findArrest(Facts& f) {
  if (!f.windowBegin) {
    return;
  }
  f.arrest.put(*f.windowBegin, *f.windowEnd);
  GridSet holes(f.grid.points());
  for (const auto& [from, to] : f.circulation) {
    holes.put(from, to);
  }
  for (const Found& e : complete<entry::Excluded>(f)) {
    holes.put(e.from, e.to);
  }
  for (const auto& [from, to] : holes.runs()) {
    for (int i = from + 1; i < to; ++i) {
      f.arrest.dropPoint(i);
    }
    for (int i = from; i < to; ++i) {
      f.arrest.dropCell(i);
    }
  }
  int number = 0;
  for (const auto& [from, to] : f.arrest.runs()) {
    for (int i = from; i <= to; ++i) {
      f.arrestNumber[static_cast<std::size_t>(i)] = number;
    }
    ++number;
  }
}

/// Maximal stretches of an arrest interval without hands on, that are longer than the threshold.
void findGaps(Facts& f) {
  if (!f.evidence()) {
    return;
  }
  std::vector<std::pair<int, int>> all;
  for (int i = 0; i + 1 < f.grid.points(); ++i) {
    if (!f.arrest.cell(i) || f.handsOn.cell(i)) {
      continue;
    }
    const bool goesOn =
        !all.empty() && all.back().second == i && !f.handsOn.point(i) && f.arrest.cell(i - 1);
    if (goesOn) {
      all.back().second = i + 1;
    } else {
      all.emplace_back(i, i + 1);
    }
  }
  for (const auto& [from, to] : all) {
    if (f.grid.length(to - from) > f.settings.pauseThreshold) {
      f.gaps.emplace_back(from, to);
      for (int i = from; i < to; ++i) {
        f.countedGaps.putCell(i);
      }
    }
  }
}

void findBeats(Facts& f) {
  for (std::size_t i = 1; i < f.kept.size(); ++i) {
    const int first = f.kept[i - 1].from, second = f.kept[i].from;
    if (f.arrestAt(first) >= 0 && f.arrestAt(first) == f.arrestAt(second) &&
        f.grid.length(second - first) <= f.settings.pauseThreshold) {
      f.beats.push_back({first, second});
    }
  }
}

/// The latest hands on at or before the shock and the earliest at or after it.
void findPausesAroundShocks(Facts& f) {
  for (std::size_t n = 0; n < f.delivered.size(); ++n) {
    DeliveredShock& shock = f.delivered[n];
    const int s = shock.at;
    const int home = f.arrestAt(s);
    if (home < 0) {
      continue;
    }
    const int earliest = n > 0 ? f.delivered[n - 1].at : 0;
    const int latest = n + 1 < f.delivered.size() ? f.delivered[n + 1].at : f.grid.points() - 1;
    const bool handsOnBefore = s > 0 && f.handsOn.cell(s - 1), handsOnAfter = f.handsOn.cell(s);
    for (int i = s; i >= earliest && f.arrestAt(i) == home && !shock.pre; --i) {
      // A stretch that begins at the shock's moment is not hands on before it.
      if (f.handsOn.point(i) && (i < s || !handsOnAfter)) {
        shock.pre = s - i;
      }
    }
    for (int i = s; i <= latest && f.arrestAt(i) == home && !shock.post; ++i) {
      // One that ends there is not hands on after it.
      if (f.handsOn.point(i) && (i > s || !handsOnBefore)) {
        shock.post = i - s;
      }
    }
    if (handsOnBefore) {
      shock.pre = 0;
    }
    if (handsOnAfter) {
      shock.post = 0;
    }
  }
}

} // namespace

bool outsideRecordEnd(const Entry& entry) {
  return std::holds_alternative<entry::Milestone>(entry.data) ||
         std::holds_alternative<entry::Mark>(entry.data) ||
         std::holds_alternative<entry::Pads>(entry.data) ||
         std::holds_alternative<entry::SelfTest>(entry.data) ||
         std::holds_alternative<entry::Battery>(entry.data) ||
         std::holds_alternative<entry::Unreadable>(entry.data);
}

Facts findFacts(const Record& record, const FigureSettings& settings) {
  Facts f(record, settings);
  keepCompressions(f);
  findHandsOn(f);
  f.analyses = complete<entry::Analysis>(f);
  f.ventilations = complete<entry::Ventilation>(f);
  findShocks(f);
  findAdvice(f);
  findWindow(f);
  findCirculation(f);
  findArrest(f);
  findGaps(f);
  findBeats(f);
  findPausesAroundShocks(f);
  return f;
}

} // namespace afterbeat::reference
