#include "core/compare/moments.h"

#include "core/measures/first_events.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

std::optional<double> secondsOf(std::optional<Duration> length) {
  return length ? std::optional<double>(seconds(*length)) : std::nullopt;
}

std::optional<double> valueOf(const Figures& figures, MeasureId id) {
  return figures[id].status == Status::ok ? figures[id].value : std::nullopt;
}

/// Sets least and most; false: fewer than two records have it, or it is the same in all.
bool findExtremes(DiffersMost& one) {
  std::optional<std::size_t> least, most;
  for (std::size_t i = 0; i < one.seconds.size(); ++i) {
    if (!one.seconds[i]) {
      continue;
    }
    least = !least || *one.seconds[i] < *one.seconds[*least] ? i : *least;
    most = !most || *one.seconds[i] > *one.seconds[*most] ? i : *most;
  }
  if (!least || *one.seconds[*least] == *one.seconds[*most]) {
    return false;
  }
  one.least = *least;
  one.most = *most;
  return true;
}

/// Times from each moment to the next that all records share; where fewer than all have a moment
/// it divides nothing, so that like is held against like.
std::vector<DiffersMost> sharedStages(const std::vector<KeyTimes>& times,
                                      const std::vector<KeyMoment>& common) {
  std::vector<DiffersMost> stages;
  for (std::size_t m = 1; m < common.size(); ++m) {
    DiffersMost stage;
    stage.from = common[m - 1];
    stage.to = common[m];
    for (const KeyTimes& one : times) {
      stage.seconds.push_back(seconds(*one[static_cast<std::size_t>(stage.to)] -
                                      *one[static_cast<std::size_t>(stage.from)]));
    }
    stages.push_back(std::move(stage));
  }
  return stages;
}

void addPauses(const std::vector<RecordAndFigures>& records, std::vector<DiffersMost>& all) {
  DiffersMost before, after, longest;
  before.what = DiffersMost::What::preShockPause;
  after.what = DiffersMost::What::postShockPause;
  longest.what = DiffersMost::What::longestPause;
  for (const RecordAndFigures& one : records) {
    const auto& shocks = one.figures->shocks;
    const auto first = std::find_if(shocks.begin(), shocks.end(),
                                    [](const ShockFigures& s) { return s.number == 1; });
    before.seconds.push_back(first == shocks.end() ? std::nullopt : secondsOf(first->pre));
    after.seconds.push_back(first == shocks.end() ? std::nullopt : secondsOf(first->post));
    longest.seconds.push_back(valueOf(*one.figures, MeasureId::longestPause));
  }
  all.push_back(std::move(before));
  all.push_back(std::move(after));
  all.push_back(std::move(longest));
}

std::optional<DiffersMost> findDiffersMost(const std::vector<RecordAndFigures>& records,
                                           const std::vector<KeyTimes>& times) {
  auto candidates = sharedStages(times, commonMoments(records));
  addPauses(records, candidates);
  std::optional<DiffersMost> most;
  for (DiffersMost& one : candidates) {
    if (findExtremes(one) && (!most || one.difference() > most->difference())) {
      most = std::move(one);
    }
  }
  return most;
}

std::vector<FigureRow> figureRows(const std::vector<RecordAndFigures>& records) {
  std::vector<FigureRow> rows;
  for (std::size_t i = 0; i < static_cast<std::size_t>(MeasureId::count_); ++i) {
    FigureRow row;
    row.measure = static_cast<MeasureId>(i);
    std::optional<double> first;
    for (const RecordAndFigures& one : records) {
      const Measure& measure = (*one.figures)[row.measure];
      FigureCell cell{measure.value.value_or(0), measure.status};
      const bool compared = cell.ok() && first;
      row.differences.push_back(compared ? std::optional<double>(cell.value - *first)
                                         : std::nullopt);
      first = cell.ok() && !first ? cell.value : first;
      row.cells.push_back(cell);
    }
    if (first) {
      rows.push_back(std::move(row));
    }
  }
  return rows;
}

} // namespace

std::string_view name(KeyMoment moment) {
  switch (moment) {
  case KeyMoment::collapse:
    return "collapse";
  case KeyMoment::call:
    return "call";
  case KeyMoment::deviceArrived:
    return "device arrived";
  case KeyMoment::powerOn:
    return "device on";
  case KeyMoment::firstHandsOn:
    return "first compressions";
  case KeyMoment::electrodes:
    return "electrodes attached";
  case KeyMoment::firstAnalysis:
    return "first analysis";
  case KeyMoment::firstShock:
    return "first shock";
  case KeyMoment::circulationReturned:
    return "circulation returned";
  }
  return "";
}

KeyTimes keyTimes(const RecordAndFigures& one) {
  const FirstEvents first = firstEvents(*one.record, *one.figures);
  return {first.collapse, first.call,    first.deviceArrived,
          first.powerOn,  first.handsOn, first.electrodes,
          first.analysis, first.shock,   first.circulationReturned};
}

std::vector<KeyMoment> commonMoments(const std::vector<RecordAndFigures>& records) {
  std::array<std::size_t, kKeyMoments> have{};
  for (const RecordAndFigures& one : records) {
    const KeyTimes times = keyTimes(one);
    for (std::size_t m = 0; m < kKeyMoments; ++m) {
      have[m] += times[m] ? 1U : 0U;
    }
  }
  std::vector<KeyMoment> common;
  for (std::size_t m = 0; m < kKeyMoments; ++m) {
    if (!records.empty() && have[m] == records.size()) {
      common.push_back(static_cast<KeyMoment>(m));
    }
  }
  return common;
}

SideBySide sideBySide(const std::vector<RecordAndFigures>& records, KeyMoment at) {
  SideBySide result;
  result.alignedAt = at;
  std::vector<KeyTimes> times;
  for (const RecordAndFigures& one : records) {
    times.push_back(keyTimes(one));
    const auto& zero = times.back()[static_cast<std::size_t>(at)];
    result.offsets.push_back(zero ? std::optional<Duration>(zero->time_since_epoch())
                                  : std::nullopt);
    result.mixedKinds =
        result.mixedKinds || one.record->header.kind != records.front().record->header.kind;
  }
  for (std::size_t m = 0; m < kKeyMoments; ++m) {
    MomentRow row;
    row.moment = static_cast<KeyMoment>(m);
    for (std::size_t r = 0; r < records.size(); ++r) {
      const auto& t = times[r][m];
      row.seconds.push_back(t && result.offsets[r]
                                ? secondsOf(t->time_since_epoch() - *result.offsets[r])
                                : std::nullopt);
    }
    if (std::any_of(row.seconds.begin(), row.seconds.end(),
                    [](auto& s) { return s.has_value(); })) {
      result.moments.push_back(std::move(row));
    }
  }
  result.figures = figureRows(records);
  result.differsMost = findDiffersMost(records, times);
  return result;
}

Saying words(const DiffersMost& most, const std::vector<std::string>& names) {
  const double least = *most.seconds[most.least], largest = *most.seconds[most.most];
  // What came first in one record may have come second in another; "before" says it, not a sign.
  std::vector<SayingPart> parts{names[most.least], Amount{std::fabs(least), AmountKind::seconds},
                                names[most.most], Amount{std::fabs(largest), AmountKind::seconds},
                                Amount{most.difference(), AmountKind::seconds}};
  switch (most.what) {
  case DiffersMost::What::preShockPause:
    return {"The pause before the first shock differs most: %2 in %1, %4 in %3, %5 apart.", parts};
  case DiffersMost::What::postShockPause:
    return {"The pause after the first shock differs most: %2 in %1, %4 in %3, %5 apart.", parts};
  case DiffersMost::What::longestPause:
    return {"The longest pause differs most: %2 in %1, %4 in %3, %5 apart.", parts};
  case DiffersMost::What::stage:
    break;
  }
  parts.emplace_back(Term{name(most.from)});
  parts.emplace_back(Term{name(most.to)});
  if (largest < 0) {
    return {"Largest difference: from %7 to %6. It took %2 in %1 and %4 in %3, %5 apart.", parts};
  }
  if (least < 0) {
    return {"Largest difference: %6 and %7. In %1, “%7” came %2 before “%6”; in %3, %4 after it.",
            parts};
  }
  return {"The time from %6 to %7 differs most: %2 in %1, %4 in %3, %5 apart.", parts};
}

} // namespace afterbeat
