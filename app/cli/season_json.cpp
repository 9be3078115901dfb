#include "app/cli/season_json.h"

#include "core/compare/companions.h"
#include "core/compare/facts.h"
#include "core/compare/stand_out.h"

#include <cmath>

namespace afterbeat::cli {
namespace {

using Json = nlohmann::ordered_json;

Json number(double value) {
  if (std::fabs(value) < 1e15 && value == std::floor(value)) {
    return static_cast<std::int64_t>(value);
  }
  return value;
}

Json textOrNull(const std::string& text) {
  return text.empty() ? Json(nullptr) : Json(text);
}

Json kindJson(StatedKind kind) {
  return kind ? Json(name(*kind)) : Json(nullptr);
}

Json recordJson(const RecordFacts& record, std::uint32_t place, const Season& season) {
  Json figures = record.hasFigures ? Json::object() : Json(nullptr);
  for (std::size_t i = 0; record.hasFigures && i < static_cast<std::size_t>(MeasureId::count_);
       ++i) {
    const auto id = static_cast<MeasureId>(i);
    const FigureCell& cell = season.column(id)[place];
    figures[std::string(measureInfo(id).name)] = {
        {"value", cell.ok() ? number(cell.value) : Json(nullptr)}, {"status", name(cell.status)}};
  }
  return {{"id", textOrNull(record.id)},
          {"file", textOrNull(record.file)},
          {"day", textOrNull(isoDay(record))},
          {"kind", kindJson(record.kind)},
          {"site", textOrNull(record.site)},
          {"team", textOrNull(record.team)},
          {"device", textOrNull(record.device)},
          {"evidence", record.hasFigures ? Json(name(record.evidence)) : Json(nullptr)},
          {"had_shock", record.hadShock ? Json(*record.hadShock) : Json(nullptr)},
          {"longest_pause_cause",
           record.longestPauseCause ? Json(name(*record.longestPauseCause)) : Json(nullptr)},
          {"synthetic", record.synthetic},
          {"version", record.version},
          {"figures", std::move(figures)}};
}

Json groupJson(const SpreadGroup& group) {
  Json json{{"records", group.points.size()},
            {"too_few", group.tooFew},
            {"median", nullptr},
            {"median_low", nullptr},
            {"median_high", nullptr},
            {"quartile_low", nullptr},
            {"quartile_high", nullptr},
            {"not_recorded", group.missing.notRecorded},
            {"not_applicable", group.missing.notApplicable}};
  if (group.quartiles && group.interval) {
    json["median"] = number(group.quartiles->median);
    json["median_low"] = number(group.interval->low);
    json["median_high"] = number(group.interval->high);
    json["quartile_low"] = number(group.quartiles->low);
    json["quartile_high"] = number(group.quartiles->high);
  }
  return json;
}

Json siteJson(const SpreadGroup& group) {
  Json json{{"site", textOrNull(group.name)}};
  json.update(groupJson(group));
  json["elsewhere"] = group.against ? Json{{"records", group.against->others},
                                           {"median", number(group.against->medianOthers)},
                                           {"chance", number(group.against->chance)},
                                           {"clear", group.against->clear}}
                                    : Json(nullptr);
  return json;
}

Json figureJson(const Season& season, const Chosen& chosen, MeasureId measure) {
  const auto all = spread(season, chosen, measure, GroupBy::nothing);
  SpreadSettings asked;
  asked.figuresAsked = papers::reportMeasures().size();
  const auto bySite = spread(season, chosen, measure, GroupBy::site, asked);
  Json json{{"id", measureInfo(measure).name}, {"unit", measureInfo(measure).unit}};
  Json beside = Json::array();
  for (const MeasureId id : neverAlone(measure)) {
    beside.push_back(measureInfo(id).name);
  }
  json["read_beside"] = std::move(beside);
  // One kind, asked for as one: never refused.
  json.update(groupJson(all.value().groups.front()));
  Json sites = Json::array();
  for (const SpreadGroup& group : bySite.value().groups) {
    sites.push_back(siteJson(group));
  }
  json["by_site"] = std::move(sites);
  return json;
}

Json stagesJson(const Stages& stages) {
  Json list = Json::array();
  const auto add = [&](const MedianStage& stage) {
    list.push_back({{"from", name(stage.from)},
                    {"to", name(stage.to)},
                    {"records", stage.records},
                    {"median_s", stage.median ? number(*stage.median) : Json(nullptr)},
                    {"quartile_low_s", stage.low ? number(*stage.low) : Json(nullptr)},
                    {"quartile_high_s", stage.high ? number(*stage.high) : Json(nullptr)},
                    {"share", stage.share ? number(*stage.share) : Json(nullptr)}});
  };
  for (const MedianStage& stage : stages.median) {
    add(stage);
  }
  add(stages.total);
  return {
      {"left_open", stages.leftOpen},
      {"undivided_share", stages.undividedShare ? number(*stages.undividedShare) : Json(nullptr)},
      {"stages", std::move(list)}};
}

/// Records are named by their place in the list of records, from 0.
Json worthALookJson(const Season& season, const Chosen& chosen, const Chosen& listed,
                    const Profile& profile) {
  Json list = Json::array();
  std::vector<std::size_t> placeInList(season.records.size());
  for (std::size_t i = 0; i < listed.size(); ++i) {
    placeInList[listed[i]] = i;
  }
  for (const StandOut& found : worthALook(season, chosen, profile)) {
    Json reasons = Json::array();
    for (const StandOutReason& reason : found.reasons) {
      reasons.push_back(inEnglish(reason.saying));
    }
    list.push_back({{"record", placeInList[found.place]}, {"reasons", std::move(reasons)}});
  }
  return list;
}

/// Of one kind.
Json usualJson(const Season& season, const Chosen& chosen, const Profile& profile) {
  Json list = Json::array();
  const auto usual = usualHere(season, chosen, profile);
  for (const Saying& saying : usual.value()) {
    list.push_back(inEnglish(saying));
  }
  return list;
}

Json stepsJson(const papers::ReportSettings& settings) {
  Json list = Json::array();
  RecordFacts day; // writes a day as those of records are written
  day.monthOnly = settings.withoutIdentity;
  for (const MarkedStep& step : settings.steps) {
    day.day = step.day;
    list.push_back({{"day", isoDay(day)}, {"words", textOrNull(step.words)}});
  }
  return list;
}

/// One for each step, in their order.
Json changesJson(const OverTime& chart) {
  Json list = Json::array();
  for (std::size_t i = 0; i < chart.settings.steps.size(); ++i) {
    list.push_back({{"step", i},
                    {"compared", false},
                    {"before", nullptr},
                    {"after", nullptr},
                    {"chance", nullptr},
                    {"clear", nullptr}});
  }
  for (const StepChange& change : chart.changes) {
    list[change.step].update({{"compared", true},
                              {"before", number(change.before)},
                              {"after", number(change.after)},
                              {"chance", number(change.chance)},
                              {"clear", change.clear}});
  }
  return list;
}

std::string_view word(SignalRule rule) {
  switch (rule) {
  case SignalRule::beyondLimits:
    break;
  case SignalRule::longRun:
    return "long_run";
  case SignalRule::fewCrossings:
    return "few_crossings";
  case SignalRule::twoOfThree:
    return "two_of_three";
  case SignalRule::fourOfFive:
    return "four_of_five";
  case SignalRule::eightInARow:
    return "eight_in_a_row";
  }
  return "beyond_limits";
}

/// What a chart is of: the measure's name and unit; for counts, what each is counted for.
struct SubjectJson {
  static Json of(MeasureId id, std::string_view unit) {
    return {{"figure", measureInfo(id).name}, {"unit", unit}};
  }
  Json operator()(const ValueOf& value) const {
    return of(value.measure, measureInfo(value.measure).unit);
  }
  Json operator()(const CountedShare& share) const { return of(share.measure, "1"); }
  Json operator()(const RecordsWith& with) const { return of(with.measure, "1"); }
  Json operator()(const CountedFor& counted) const {
    Json json = of(counted.count, "1");
    json["for_every"] = {{"figure", measureInfo(counted.exposure).name},
                         {"value", number(counted.per)},
                         {"unit", measureInfo(counted.exposure).unit}};
    return json;
  }
  Json operator()(const RecordsWithShock&) const {
    return {{"figure", "records_with_a_shock"}, {"unit", "1"}};
  }
};

Json valueOrNull(const std::optional<double>& value) {
  return value ? number(*value) : Json(nullptr);
}

Json pointsJson(const OverTime& chart, const papers::ReportSettings& settings) {
  Json list = Json::array();
  RecordFacts day; // writes a day as those of records are written
  day.monthOnly = settings.withoutIdentity;
  for (const TimePoint& point : chart.points) {
    day.day = point.firstDay;
    list.push_back({{"day", isoDay(day)},
                    {"records", point.recordCount},
                    {"value", number(point.value)},
                    {"lower", valueOrNull(point.lower)},
                    {"upper", valueOrNull(point.upper)}});
  }
  return list;
}

Json stretchesJson(const OverTime& chart) {
  Json list = Json::array();
  for (const ChartSegment& segment : chart.segments) {
    list.push_back({{"first", segment.firstPoint},
                    {"last", segment.lastPoint},
                    {"step", segment.step ? Json(*segment.step) : Json(nullptr)},
                    {"centre", number(segment.centre)},
                    {"too_few", segment.tooFew},
                    {"widened", number(segment.widened)}});
  }
  return list;
}

Json signalsJson(const OverTime& chart) {
  Json list = Json::array();
  for (const ChartSignal& signal : chart.signals) {
    list.push_back({{"rule", word(signal.hit.rule)},
                    {"first", signal.hit.first},
                    {"last", signal.hit.last},
                    {"words", inEnglish(signal.saying)}});
  }
  return list;
}

/// A chart each. One whose counts no record gives is left out.
Json overTimeJson(const Season& season, const Chosen& chosen,
                  const papers::ReportSettings& settings) {
  Json charts = Json::array();
  for (const OverTimeSettings& one : papers::chartsOverTime(settings)) {
    const auto chart = overTime(season, chosen, one);
    if (!chart) {
      continue;
    }
    Json json = std::visit(SubjectJson{}, chart->settings.subject);
    json["chart"] = name(chart->chart);
    json["point"] = chart->settings.period == Period::month ? "month" : "record";
    json["points"] = pointsJson(*chart, settings);
    json["stretches"] = stretchesJson(*chart);
    json["signals"] = signalsJson(*chart);
    json["changes"] = changesJson(*chart);
    json["not_recorded"] = chart->missing.notRecorded;
    json["not_applicable"] = chart->missing.notApplicable;
    json["without_day"] = chart->withoutDay;
    Json sentences = Json::array();
    for (const Saying& saying : words(*chart)) {
      sentences.push_back(inEnglish(saying));
    }
    json["words"] = std::move(sentences);
    charts.push_back(std::move(json));
  }
  return charts;
}

} // namespace

nlohmann::ordered_json seasonJson(const Season& season, const Chosen& chosen,
                                  const papers::ReportSettings& settings) {
  Json records = Json::array();
  for (const std::uint32_t place : chosen) {
    records.push_back(recordJson(season.records[place], place, season));
  }
  Json kinds = Json::array();
  for (const KindCount& count : kindsOf(season, chosen)) {
    const Chosen one = ofKind(season, chosen, count.kind);
    Json figures = Json::array();
    for (const MeasureId measure : papers::reportMeasures()) {
      figures.push_back(figureJson(season, one, measure));
    }
    kinds.push_back(
        {{"kind", kindJson(count.kind)},
         {"records", count.records},
         {"figures", std::move(figures)},
         {"over_time", overTimeJson(season, one, settings)},
         {"from_call", stagesJson(stages(season, one, StagesFrom::call).value())},
         {"from_power_on", stagesJson(stages(season, one, StagesFrom::powerOn).value())},
         {"worth_a_look", worthALookJson(season, one, chosen, settings.figures.profile)},
         {"usual", usualJson(season, one, settings.figures.profile)}});
  }
  return {{"settings",
           {{"profile", settings.figures.profile.id},
            {"pause_threshold_s", number(seconds(settings.figures.pauseThreshold))},
            {"window_end", name(settings.figures.windowEnd)},
            {"without_identity", settings.withoutIdentity}}},
          {"not_read", settings.notRead},
          {"steps", stepsJson(settings)},
          {"without_figures", withoutFigures(season, chosen)},
          {"kinds", std::move(kinds)},
          {"records", std::move(records)}};
}

} // namespace afterbeat::cli
