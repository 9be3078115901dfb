#include "samples/truth.h"

#include <algorithm>

#include <nlohmann/json.hpp>

namespace afterbeat::samples {

namespace {

using Json = nlohmann::ordered_json;

constexpr double kDepthLow = 50, kDepthHigh = 60, kLeaningLimit = 5;

Json orNull(const std::optional<Duration>& d) {
  return d ? Json(seconds(*d)) : Json();
}

void medianAndWorst(Json& figures, const std::string& name, std::vector<Duration> values) {
  if (values.empty()) {
    return;
  }
  std::sort(values.begin(), values.end());
  const std::size_t n = values.size();
  figures[name + "_median"] = (seconds(values[(n - 1) / 2]) + seconds(values[n / 2])) / 2;
  figures[name + "_worst"] = seconds(values.back());
}

void addHandsOff(Json& figures, const Truth& truth) {
  const Duration arrest = truth.circulation.value_or(truth.windowEnd) - truth.windowBegin;
  Duration off{}, longest{};
  int overLimit = 0;
  for (const auto& pause : truth.pauses) {
    const Duration length = pause.to - pause.from;
    off += length;
    longest = std::max(longest, length);
    overLimit += length > Duration{10'000'000} ? 1 : 0;
  }
  figures["arrest_time"] = seconds(arrest);
  figures["hands_off_time"] = seconds(off);
  figures["hands_off_fraction"] = seconds(off) / seconds(arrest);
  figures["chest_compression_fraction"] = 1 - seconds(off) / seconds(arrest);
  figures["longest_pause"] = seconds(longest);
  figures["pauses_over_limit"] = overLimit;
  if (truth.compressions.empty()) {
    return;
  }
  const auto n = truth.compressions.size();
  figures["compressions"] = n;
  figures["compressions_per_minute"] = 60 * static_cast<double>(n) / seconds(arrest);
}

void addRate(Json& figures, const Truth& truth) {
  if (truth.intervals.empty()) {
    return;
  }
  Duration sum{};
  int inRange = 0;
  for (const Duration d : truth.intervals) {
    sum += d;
    inRange += d >= Duration{500'000} && d <= Duration{600'000} ? 1 : 0; // 120 and 100 a minute
  }
  const auto n = static_cast<double>(truth.intervals.size());
  figures["compression_rate"] = 60 * n / seconds(sum);
  figures["compression_rate_in_range"] = inRange / n;
}

void addRateOfStretches(Json& figures, const Truth& truth) {
  double weighted = 0, length = 0, inRange = 0;
  for (std::size_t i = 0; i < truth.stretches.size(); ++i) {
    const double rate = truth.stretchRates[i];
    if (rate > 0) {
      const double s = seconds(truth.stretches[i].second - truth.stretches[i].first);
      weighted += rate * s;
      length += s;
      inRange += rate >= 100 && rate <= 120 ? s : 0;
    }
  }
  if (length > 0) {
    figures["compression_rate"] = weighted / length;
    figures["compression_rate_in_range"] = inRange / length;
  }
}

void addDepth(Json& figures, const Record& record, const Truth& truth) {
  double depth = 0;
  int deep = 0, inRange = 0, known = 0, full = 0;
  for (const auto& entry : truth.compressions) {
    const auto& c = std::get<entry::Compression>(entry.data);
    if (c.depthMm) {
      ++deep;
      depth += *c.depthMm;
      inRange += *c.depthMm >= kDepthLow && *c.depthMm <= kDepthHigh ? 1 : 0;
    }
    if (c.leaningMm) {
      ++known;
      full += *c.leaningMm <= kLeaningLimit ? 1 : 0;
    }
  }
  if (deep > 0) {
    figures["compression_depth"] = depth / deep;
    if (record.header.patient == PatientCategory::adult) {
      figures["compression_depth_in_range"] = static_cast<double>(inRange) / deep;
    }
  }
  if (known > 0) {
    figures["full_release"] = static_cast<double>(full) / known;
  }
}

void addShocks(Json& figures, const Truth& truth) {
  std::vector<Duration> pre, post, peri, advice;
  int delivered = 0;
  double energy = 0;
  bool allKnown = true;
  for (const auto& shock : truth.shocks) {
    if (!shock.delivered) {
      continue;
    }
    ++delivered;
    allKnown = allKnown && shock.energyJ;
    energy += shock.energyJ.value_or(0);
    if (shock.pre) {
      pre.push_back(*shock.pre);
    }
    if (shock.post) {
      post.push_back(*shock.post);
    }
    if (shock.pre && shock.post) {
      peri.push_back(*shock.pre + *shock.post);
    }
    if (shock.adviceToShock) {
      advice.push_back(*shock.adviceToShock);
    }
  }
  figures["shocks_delivered"] = delivered;
  figures["shocks_withheld"] = static_cast<int>(truth.shocks.size()) - delivered;
  figures["shocks_unknown"] = 0;
  if (delivered > 0 && allKnown) {
    figures["energy_total"] = energy;
  }
  figures["analyses"] = truth.analyses;
  figures["analyses_advising_shock"] = truth.advisingShock;
  medianAndWorst(figures, "pre_shock_pause", pre);
  medianAndWorst(figures, "post_shock_pause", post);
  medianAndWorst(figures, "peri_shock_pause", peri);
  medianAndWorst(figures, "advice_to_shock", advice);
}

Json figuresJson(const Record& record, const Truth& truth) {
  Json figures;
  addHandsOff(figures, truth);
  if (truth.stretches.empty()) {
    addRate(figures, truth);
  } else {
    addRateOfStretches(figures, truth);
  }
  addDepth(figures, record, truth);
  if (!truth.breaths.empty()) {
    const Time end = truth.circulation.value_or(truth.windowEnd);
    const auto n = std::count_if(truth.breaths.begin(), truth.breaths.end(),
                                 [&](Time t) { return t >= truth.windowBegin && t <= end; });
    figures["ventilations"] = n;
    figures["ventilations_per_minute"] =
        60 * static_cast<double>(n) / seconds(end - truth.windowBegin);
  }
  addShocks(figures, truth);
  if (truth.circulation) {
    figures["circulation_time"] = seconds(truth.windowEnd - *truth.circulation);
    figures["longest_circulation"] = seconds(truth.windowEnd - *truth.circulation);
  }
  for (const auto& [name, length] : truth.between) {
    figures[name] = seconds(length);
  }
  return figures;
}

Json pausesJson(const Truth& truth) {
  Json list = Json::array();
  for (const auto& pause : truth.pauses) {
    list.push_back({{"from_s", seconds(pause.from)},
                    {"to_s", seconds(pause.to)},
                    {"length_s", seconds(pause.to - pause.from)},
                    {"cause", pause.cause}});
  }
  return list;
}

Json shocksJson(const Truth& truth) {
  Json list = Json::array();
  for (const auto& shock : truth.shocks) {
    std::optional<Duration> peri;
    if (shock.pre && shock.post) {
      peri = *shock.pre + *shock.post;
    }
    list.push_back({{"t_s", seconds(shock.t)},
                    {"delivered", shock.delivered},
                    {"energy_j", shock.energyJ ? Json(*shock.energyJ) : Json()},
                    {"pre_s", orNull(shock.pre)},
                    {"post_s", orNull(shock.post)},
                    {"peri_s", orNull(peri)},
                    {"advice_to_shock_s", orNull(shock.adviceToShock)}});
  }
  return list;
}

Json rhythmJson(const Truth& truth) {
  static constexpr const char* kWords[] = {"shockable", "organised", "asystole", "unclear"};
  Json list = Json::array();
  for (const auto& r : truth.rhythm) {
    Json one{{"from_s", seconds(r.from)},
             {"to_s", seconds(r.to)},
             {"is", kWords[static_cast<std::size_t>(r.is)]}};
    if (r.rate > 0) {
      one["rate_per_min"] = r.rate;
    }
    list.push_back(one);
  }
  return list;
}

} // namespace

std::string truthJson(const Record& record, const Truth& truth) {
  Json compressions = Json::array(), breaths = Json::array();
  for (const auto& c : truth.compressions) {
    compressions.push_back(seconds(c.t));
  }
  for (const Time t : truth.breaths) {
    breaths.push_back(seconds(t));
  }
  const Json all{
      {"record", record.header.id},
      {"pause_threshold_s", 1.5},
      {"profile", "european-2021"},
      {"window", {{"begin_s", seconds(truth.windowBegin)}, {"end_s", seconds(truth.windowEnd)}}},
      {"circulation_returned_s", truth.circulation ? Json(seconds(*truth.circulation)) : Json()},
      {"figures", figuresJson(record, truth)},
      {"shocks", shocksJson(truth)},
      {"pauses", pausesJson(truth)},
      {"rhythm", rhythmJson(truth)},
      {"ventilations", breaths},
      {"compressions", compressions}};
  std::string text = "{";
  for (const auto& [key, value] : all.items()) {
    text += text.size() == 1 ? "\n" : ",\n";
    text += Json(key).dump() + ": " + value.dump();
  }
  return text + "\n}\n";
}

} // namespace afterbeat::samples
