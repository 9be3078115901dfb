#include "core/compare/stages.h"

#include "core/statistics/quantile.h"

#include <algorithm>

namespace afterbeat {
namespace {

/// Moments that measured times lead from or to; the first ones are those of the stages.
enum Node : std::size_t { call, device, powerOn, electrodes, analysis, shock, collapse, handsOn };
constexpr std::size_t kNodes = 8;

struct Link {
  MeasureId measure;
  Node from, to;
};

constexpr std::array<Link, 11> kLinks{{
    {MeasureId::callToDeviceArrived, call, device},
    {MeasureId::callToFirstShock, call, shock},
    {MeasureId::callToFirstHandsOn, call, handsOn},
    {MeasureId::powerOnToFirstShock, powerOn, shock},
    {MeasureId::powerOnToElectrodes, powerOn, electrodes},
    {MeasureId::powerOnToFirstHandsOn, powerOn, handsOn},
    {MeasureId::electrodesToFirstShock, electrodes, shock},
    {MeasureId::electrodesToFirstAnalysis, electrodes, analysis},
    {MeasureId::collapseToFirstShock, collapse, shock},
    {MeasureId::collapseToFirstHandsOn, collapse, handsOn},
    {MeasureId::firstHandsOnToFirstShock, handsOn, shock},
}};

using Columns = std::array<const FigureColumn*, kLinks.size()>;

Columns columnsOf(const Season& season) {
  Columns columns{};
  for (std::size_t i = 0; i < kLinks.size(); ++i) {
    columns[i] = &season.column(kLinks[i].measure);
  }
  return columns;
}

MomentTimes timesOf(const Columns& columns, std::uint32_t place, StagesFrom from) {
  std::array<std::optional<double>, kNodes> known{};
  known[from == StagesFrom::call ? call : powerOn] = 0;
  for (bool more = true; more;) {
    more = false;
    for (std::size_t i = 0; i < kLinks.size(); ++i) {
      const FigureCell& cell = (*columns[i])[place];
      auto& begin = known[kLinks[i].from];
      auto& end = known[kLinks[i].to];
      if (cell.ok() && begin.has_value() != end.has_value()) {
        (begin ? end : begin) = begin ? *begin + cell.value : *end - cell.value;
        more = true;
      }
    }
  }
  MomentTimes times;
  for (std::size_t i = 0; i < kStageMoments; ++i) {
    const bool beforeBegin = from == StagesFrom::powerOn && i < powerOn;
    times[i] = beforeBegin ? std::nullopt : known[i];
  }
  return times;
}

RecordStages recordStages(std::uint32_t place, const MomentTimes& times, StagesFrom from) {
  RecordStages one;
  one.place = place;
  one.times = times;
  std::size_t last = from == StagesFrom::call ? call : powerOn;
  for (std::size_t i = last + 1; i < kStageMoments; ++i) {
    if (times[i]) {
      one.stages.push_back(
          {static_cast<StageMoment>(last), static_cast<StageMoment>(i), *times[i] - *times[last]});
      last = i;
    }
  }
  one.total = times[shock];
  return one;
}

void summarise(std::vector<double> values, MedianStage& stage) {
  stage.records = values.size();
  if (values.size() < kLeastForSummary) {
    return;
  }
  const Quartiles q = *quartiles(std::move(values));
  stage.median = q.median;
  stage.low = q.low;
  stage.high = q.high;
}

MedianStage medianStage(const std::vector<RecordStages>& records, std::size_t from,
                        std::size_t to) {
  MedianStage stage;
  stage.from = static_cast<StageMoment>(from);
  stage.to = static_cast<StageMoment>(to);
  std::vector<double> values;
  for (const RecordStages& one : records) {
    if (one.times[from] && one.times[to]) {
      values.push_back(*one.times[to] - *one.times[from]);
    }
  }
  summarise(std::move(values), stage);
  return stage;
}

void addShares(Stages& stages) {
  double whole = 0;
  std::array<double, kStageMoments> parts{}; // by the moment they begin with
  for (const RecordStages& one : stages.records) {
    if (!one.total || std::any_of(one.stages.begin(), one.stages.end(),
                                  [](const Stage& stage) { return stage.seconds < 0; })) {
      continue;
    }
    ++stages.shareRecords;
    whole += *one.total;
    for (const Stage& stage : one.stages) {
      parts[static_cast<std::size_t>(stage.from)] += stage.divided() ? stage.seconds : 0;
    }
  }
  if (stages.shareRecords < kLeastForSummary || whole <= 0) {
    return;
  }
  stages.undividedShare = 1;
  for (MedianStage& stage : stages.median) {
    stage.share = parts[static_cast<std::size_t>(stage.from)] / whole;
    *stages.undividedShare -= *stage.share;
  }
  if (*stages.undividedShare < 0.0005) { // what adding up leaves
    stages.undividedShare = 0;
  }
}

/// The one of which `of` gives the largest; none where it gives nothing of any.
template <typename Of>
const MedianStage* largest(const Stages& stages, const Of& of) {
  const MedianStage* found = nullptr;
  for (const MedianStage& stage : stages.median) {
    if (of(stage) && (found == nullptr || *of(stage) > *of(*found))) {
      found = &stage;
    }
  }
  return found;
}

Amount count(std::size_t n) {
  return {static_cast<double>(n), AmountKind::count};
}

void addWhereMostGoes(const Stages& stages, std::vector<Saying>& all) {
  const MedianStage* most = largest(stages, [](const MedianStage& one) { return one.share; });
  const MedianStage* longest = largest(stages, [](const MedianStage& one) { return one.median; });
  if (most != nullptr) {
    all.push_back({"The largest part of the time to the first shock lies between %1 and %2: %3, "
                   "added up over %4 records.",
                   {Term{name(most->from)}, Term{name(most->to)},
                    Amount{*most->share, AmountKind::share}, count(stages.shareRecords)}});
    if (stages.undividedShare > 0) {
      all.push_back({"%1 of it cannot be divided, as moments are not recorded.",
                     {Amount{*stages.undividedShare, AmountKind::share}}});
    }
    if (most->to == StageMoment::firstShock && most->from == StageMoment::firstAnalysis) {
      all.push_back({"That holds records whose first analysis advised no shock: such time is not "
                     "lost.",
                     {}});
    }
  }
  if (longest == nullptr) {
    return;
  }
  const std::vector<SayingPart> parts{Term{name(longest->from)}, Term{name(longest->to)},
                                      Amount{*longest->median, AmountKind::seconds},
                                      count(longest->records)};
  if (most == nullptr || most == longest) {
    all.push_back(
        {"Typically the longest stage is from %1 to %2: %3 in the middle of %4 records.", parts});
  } else {
    all.push_back({"Typically another stage is the longest, from %1 to %2: %3 in the middle of %4 "
                   "records. Single records in which the first took very long make the "
                   "difference.",
                   parts});
  }
}

} // namespace

std::string_view name(StageMoment moment) {
  switch (moment) {
  case StageMoment::call:
    return "call";
  case StageMoment::deviceArrived:
    return "device arrived";
  case StageMoment::powerOn:
    return "device on";
  case StageMoment::electrodes:
    return "electrodes attached";
  case StageMoment::firstAnalysis:
    return "first analysis";
  case StageMoment::firstShock:
    return "first shock";
  }
  return "";
}

MomentTimes momentTimes(const Season& season, std::uint32_t place, StagesFrom from) {
  return timesOf(columnsOf(season), place, from);
}

tl::expected<Stages, SeasonRefusal> stages(const Season& season, const Chosen& chosen,
                                           StagesFrom from) {
  const auto kind = oneKind(season, chosen);
  if (!kind) {
    return tl::unexpected(kind.error());
  }
  Stages result;
  result.from = from;
  result.kind = *kind;
  const Columns columns = columnsOf(season);
  for (const std::uint32_t place : chosen) {
    auto one = recordStages(place, timesOf(columns, place, from), from);
    if (one.stages.empty()) {
      ++result.leftOpen;
    } else {
      result.records.push_back(std::move(one));
    }
  }
  const std::size_t begin = from == StagesFrom::call ? call : powerOn;
  for (std::size_t i = begin; i + 1 < kStageMoments; ++i) {
    result.median.push_back(medianStage(result.records, i, i + 1));
  }
  result.total = medianStage(result.records, begin, shock);
  addShares(result);
  return result;
}

std::vector<Saying> words(const Stages& stages) {
  std::vector<Saying> all;
  addWhereMostGoes(stages, all);
  if (stages.total.median) {
    all.push_back(
        {"The whole takes %1 in the middle of %2 records.",
         {Amount{*stages.total.median, AmountKind::seconds}, count(stages.total.records)}});
  }
  all.push_back(stages.from == StagesFrom::call
                    ? Saying{"From the call to the first shock, stage by stage. A stage whose ends "
                             "are not recorded is left open.",
                             {}}
                    : Saying{"From device on to the first shock, stage by stage. A stage whose "
                             "ends are not recorded is left open.",
                             {}});
  if (stages.leftOpen > 0) {
    all.push_back({"Records that give no such moment: %1.", {count(stages.leftOpen)}});
  }
  return all;
}

} // namespace afterbeat
