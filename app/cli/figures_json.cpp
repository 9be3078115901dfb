#include "app/cli/figures_json.h"

#include "core/measures/derived_use.h"

#include <cmath>

#include <fmt/format.h>

namespace afterbeat::cli {
namespace {

using Json = nlohmann::ordered_json;

/// Whole numbers without a fraction, so that a count reads as one.
Json number(double value) {
  if (std::fabs(value) < 1e15 && value == std::floor(value)) {
    return static_cast<std::int64_t>(value);
  }
  return value;
}

Json number(std::optional<double> value) {
  return value ? number(*value) : Json(nullptr);
}
Json number(std::optional<int> value) {
  return value ? Json(*value) : Json(nullptr);
}
Json number(Duration length) {
  return number(seconds(length));
}
Json number(Time t) {
  return number(seconds(t));
}
Json number(std::optional<Duration> length) {
  return length ? number(*length) : Json(nullptr);
}

Json recordJson(const Opened& opened) {
  const Header& header = opened.record.header;
  return {{"file", opened.file},
          {"id", header.id.empty() ? Json(nullptr) : Json(header.id)},
          {"kind", header.kind ? Json(name(*header.kind)) : Json(nullptr)},
          {"synthetic", header.synthetic}};
}

Json settingsJson(const FigureSettings& settings) {
  return {{"profile", settings.profile.id},
          {"pause_threshold_s", number(settings.pauseThreshold)},
          {"window_end", name(settings.windowEnd)}};
}

Json windowJson(const Figures& figures) {
  Json notCounted = Json::array();
  for (const NotCounted& stretch : figures.notCounted) {
    notCounted.push_back({{"from_s", number(stretch.stretch.begin)},
                          {"to_s", number(stretch.stretch.end)},
                          {"why", name(stretch.why)}});
  }
  const auto& window = figures.window;
  return {{"begin_s", window ? number(window->begin) : Json(nullptr)},
          {"end_s", window ? number(window->end) : Json(nullptr)},
          {"arrest_time_s", number(figures[MeasureId::arrestTime].value)},
          {"not_counted", std::move(notCounted)}};
}

Json measureJson(const Measure& measure) {
  const MeasureInfo& info = measureInfo(measure.id);
  Json working = Json::array();
  for (const WorkingPart& part : measure.working) {
    working.push_back(
        {{"from_s", number(part.from)}, {"to_s", number(part.to)}, {"label", label(part)}});
  }
  return {{"id", info.name},
          {"value", number(measure.value)},
          {"unit", info.unit},
          {"status", name(measure.status)},
          {"numerator", number(measure.numerator)},
          {"denominator", number(measure.denominator)},
          {"definition", info.definition},
          {"source", fmt::format("{} ({})", info.source, markWords(info.mark))},
          {"working", std::move(working)}};
}

/// Figures from derived entries say so.
void markDerived(Json& measures, const DerivedUse& use) {
  for (Json& measure : measures) {
    const MeasureInfo* info = measureInfo(measure["id"].get<std::string>());
    if (info != nullptr && !measure["value"].is_null() && restsOnDerived(info->id, use)) {
      measure["derived"] = true;
    }
  }
}

Json shockJson(const ShockFigures& shock) {
  return {{"t_s", number(shock.t)},
          {"delivered", shock.delivered ? Json(*shock.delivered) : Json(nullptr)},
          {"energy_j", number(shock.energyJ)},
          {"pre_s", number(shock.pre)},
          {"post_s", number(shock.post)},
          {"peri_s", number(shock.peri)},
          {"advice_to_shock_s", number(shock.adviceToShock)}};
}

Json minuteJson(const MinuteRow& row) {
  return {{"from_s", number(row.epoch.begin)},        {"to_s", number(row.epoch.end)},
          {"arrest_s", number(row.arrest)},           {"hands_off_s", number(row.handsOff)},
          {"compressions", number(row.compressions)}, {"rate", number(row.rate)},
          {"rate_in_range", number(row.rateInRange)}, {"depth", number(row.depth)},
          {"ventilations", number(row.ventilations)}, {"shocks", number(row.shocks)}};
}

Json cycleJson(const CycleRow& row) {
  return {{"from_s", number(row.stretch.begin)},
          {"to_s", number(row.stretch.end)},
          {"open", row.open},
          {"hands_off_s", number(row.handsOff)},
          {"rate", number(row.rate)}};
}

Json pauseJson(const Pause& pause) {
  return {{"from_s", number(pause.stretch.begin)},
          {"to_s", number(pause.stretch.end)},
          {"length_s", number(pause.stretch.length())},
          {"cause", name(pause.cause)}};
}

Json problemJson(const Problem& problem) {
  return {{"line", problem.line},
          {"severity", severityName(problem.severity)},
          {"text", sentence(problem)}};
}

template <typename T>
Json listOf(const std::vector<T>& items, Json (*toJson)(const T&)) {
  Json list = Json::array();
  for (const T& item : items) {
    list.push_back(toJson(item));
  }
  return list;
}

} // namespace

nlohmann::ordered_json figuresJson(const OpenedAndDerived& read, const Figures& figures) {
  const Opened& opened = read.opened;
  Json problems = listOf(opened.problems, problemJson);
  for (const Problem& notice : figures.notices) {
    problems.push_back(problemJson(notice));
  }
  Json json{{"record", recordJson(opened)},
            {"settings", settingsJson(figures.settings)},
            {"evidence", name(figures.evidence)},
            {"window", windowJson(figures)},
            {"measures", listOf(figures.measures, measureJson)},
            {"shocks", listOf(figures.shocks, shockJson)},
            {"pauses", listOf(figures.pauses, pauseJson)},
            {"minutes", listOf(figures.minutes, minuteJson)},
            {"cycles", listOf(figures.cycles, cycleJson)},
            {"problems", std::move(problems)}};
  if (Json derived = derivedJson(read, figures); !derived.is_null()) {
    json["derived"] = std::move(derived);
  }
  markDerived(json["measures"], derivedUse(opened.record, figures));
  return json;
}

} // namespace afterbeat::cli
