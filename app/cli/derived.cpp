#include "app/cli/derived.h"

#include "core/measures/derived_use.h"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace afterbeat::cli {

namespace {

using Json = nlohmann::ordered_json;

std::string_view word(RhythmKind kind) {
  switch (kind) {
  case RhythmKind::shockable:
    return "shockable";
  case RhythmKind::organised:
    return "organised";
  case RhythmKind::asystole:
    return "asystole";
  case RhythmKind::unclear:
    break;
  }
  return "unclear";
}

std::string_view word(AfterShock after) {
  switch (after) {
  case AfterShock::ended:
    return "ended";
  case AfterShock::wentOn:
    return "went_on";
  case AfterShock::notKnown:
    break;
  }
  return "not_known";
}

std::string_view word(EcgObstacle why) {
  switch (why) {
  case EcgObstacle::notRecorded:
    return "not recorded";
  case EcgObstacle::rateTooLow:
    return "too few samples a second";
  case EcgObstacle::missingSamples:
    return "missing samples";
  case EcgObstacle::saturated:
    return "saturated";
  case EcgObstacle::electrodesOff:
    return "electrodes off";
  case EcgObstacle::spikes:
    return "spikes";
  case EcgObstacle::noise:
    return "noise";
  case EcgObstacle::compressions:
    return "chest compressions";
  case EcgObstacle::notFibrillation:
    return "no fibrillation";
  case EcgObstacle::rhythmUnclear:
    break;
  }
  return "rhythm unclear";
}

Json rounded(double value, int decimals) {
  const double scale = std::pow(10.0, decimals);
  return std::round(value * scale) / scale;
}

Json coverageJson(const std::optional<SignalCoverage>& coverage, const DerivedShare* share) {
  if (!coverage) {
    return nullptr;
  }
  Json json{{"channels", coverage->channels},
            {"length_s", seconds(coverage->length)},
            {"judged_s", seconds(coverage->judged)},
            {"coverage", rounded(coverage->share(), 4)}};
  if (share != nullptr) {
    json["used"] = share->derived;
    json["of"] = share->of;
    json["quality"] = share->quality ? rounded(*share->quality, 3) : Json(nullptr);
  }
  return json;
}

Json hintJson(const Entry& entry, const entry::Rhythm& rhythm) {
  return {{"from_s", seconds(entry.t)},
          {"to_s", seconds(entry.lastTime())},
          {"is", word(*rhythm.is)},
          {"rate_per_min", rhythm.ratePerMin ? rounded(*rhythm.ratePerMin, 1) : Json(nullptr)},
          {"reason", rhythm.reason},
          {"quality", entry.quality ? rounded(*entry.quality, 3) : Json(nullptr)}};
}

Json shockJson(const ShockRhythm& shock) {
  Json before;
  if (shock.before) {
    before = {{"amsa_mv_hz", rounded(shock.before->amsaMvHz, 3)},
              {"amplitude_mv", rounded(shock.before->amplitudeMv, 3)},
              {"dominant_hz", rounded(shock.before->dominantHz, 2)},
              {"fibrillation", shock.before->coarse() ? "coarse" : "fine"}};
  } else {
    before = {{"not_told_because", word(shock.before.error())}};
  }
  return {{"t_s", seconds(shock.shock)},
          {"before", std::move(before)},
          {"fibrillation_within_5_s", word(shock.after)},
          {"followed_by", shock.followed ? Json(word(*shock.followed)) : Json(nullptr)},
          {"followed_rate_per_min",
           shock.followedRatePerMin ? rounded(*shock.followedRatePerMin, 1) : Json(nullptr)},
          {"returned_s", shock.returned ? Json(seconds(*shock.returned)) : Json(nullptr)}};
}

void addShare(std::string& out, const char* what, const std::optional<SignalCoverage>& coverage,
              const DerivedShare& share) {
  if (!coverage || share.of == 0) {
    return;
  }
  out += fmt::format("  {}: {} of {} derived from {}; {:.0f} % of the recording could be judged",
                     what, share.derived, share.of,
                     forTerminal(fmt::format("{}", fmt::join(coverage->channels, ", "))),
                     100 * coverage->share());
  out +=
      share.quality ? fmt::format("; quality {:.2f} of 1 in the mean.\n", *share.quality) : ".\n";
}

std::string beforeText(const ShockRhythm& shock) {
  return shock.before
             ? fmt::format("{} fibrillation, {:.2f} mV, {:.1f} Hz, AMSA {:.1f} mV Hz",
                           shock.before->coarse() ? "coarse" : "fine", shock.before->amplitudeMv,
                           shock.before->dominantHz, shock.before->amsaMvHz)
             : fmt::format("not told ({})", word(shock.before.error()));
}

std::string afterText(const ShockRhythm& shock) {
  switch (shock.after) {
  case AfterShock::ended:
    return shock.followed ? fmt::format("ended within 5 s, then {}", word(*shock.followed))
                          : "ended within 5 s";
  case AfterShock::wentOn:
    return "went on after 5 s";
  case AfterShock::notKnown:
    break;
  }
  return shock.reason.empty() ? "cannot be told" : fmt::format("cannot be told ({})", shock.reason);
}

} // namespace

tl::expected<OpenedAndDerived, std::string> openAndDerive(const std::string& file,
                                                          DeriveMode mode) {
  auto opened = open(file, false);
  if (!opened) {
    return tl::unexpected(opened.error());
  }
  DeriveWhat what = whatSignalsMightTell(opened->record, whatToDerive(opened->record, mode));
  what.rhythm = what.rhythm && mode == DeriveMode::always;
  if (!what.any()) {
    return OpenedAndDerived{std::move(*opened), {}};
  }
  opened->record = {}; // else everything but the samples is there twice
  opened = open(file, true);
  if (!opened) {
    return tl::unexpected(opened.error());
  }
  Derived derived = derive(opened->record, what);
  addDerived(opened->record, derived);
  return OpenedAndDerived{std::move(*opened), std::move(derived)};
}

nlohmann::ordered_json derivedJson(const OpenedAndDerived& from, const Figures& figures) {
  const Derived& derived = from.derived;
  if (!derived.what.any()) {
    return nullptr;
  }
  const DerivedUse use = derivedUse(from.opened.record, figures);
  Json json{{"caution", kHintCaution}};
  json["compressions"] = coverageJson(derived.compressions, &use.compressions);
  json["ventilations"] = coverageJson(derived.ventilations, &use.ventilations);
  json["rhythm"] = coverageJson(derived.rhythm, nullptr);
  if (derived.rhythm) {
    Json hints = Json::array(), shocks = Json::array();
    for (const Entry& entry : derived.entries) {
      if (const auto* rhythm = entry.complete<entry::Rhythm>()) {
        hints.push_back(hintJson(entry, *rhythm));
      }
    }
    for (const ShockRhythm& shock : derived.shocks) {
      shocks.push_back(shockJson(shock));
    }
    json["hints"] = std::move(hints);
    json["around_shocks"] = std::move(shocks);
  }
  return json;
}

std::string derivedText(const OpenedAndDerived& from, const Figures& figures) {
  const Derived& derived = from.derived;
  const Record& record = from.opened.record;
  const DerivedUse use = derivedUse(record, figures);
  std::string body;
  addShare(body, "Compressions", derived.compressions, use.compressions);
  addShare(body, "Breaths", derived.ventilations, use.ventilations);
  for (const Entry& entry : derived.entries) {
    if (const auto* rhythm = entry.complete<entry::Rhythm>()) {
      body += fmt::format(
          "  {:<12}{:>14}  {}{}{}\n", moment(record, entry.t),
          fmt::format("{:.0f} s", seconds(entry.lastTime() - entry.t)), word(*rhythm->is),
          rhythm->ratePerMin ? fmt::format(", {:.0f} a minute", *rhythm->ratePerMin) : "",
          rhythm->reason.empty() ? "" : ": " + forTerminal(rhythm->reason));
    }
  }
  for (const ShockRhythm& shock : derived.shocks) {
    body += fmt::format("  Shock at {}: before it {}; fibrillation {}.\n",
                        moment(record, shock.shock), beforeText(shock), afterText(shock));
  }
  return body.empty() ? "" : fmt::format("\nFrom the signals ({})\n{}", kHintCaution, body);
}

} // namespace afterbeat::cli
