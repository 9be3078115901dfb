#include "samples/samples.h"
#include "samples/waves.h"

#include <array>

namespace afterbeat::samples {

namespace {

/// How well a drill goes.
struct Skill {
  const char* begin;
  double handsOn, pads, analysis;
  Hands hands;
  double gapLow, gapHigh;
  /// From the analysis' end to the shock, and from the shock to hands on.
  double toShock, toHands;
};

constexpr std::array<Skill, 4> kEvening{{
    {"2026-04-17T19:05:00+02:00", 14, 52, 58, {128, 134, 42, 38, 4, 0.07, 4}, 7.5, 12, 16, 9},
    {"2026-04-17T19:27:00+02:00", 10, 44, 49, {121, 125, 46, 43, 3, 0.05, 3}, 6, 9, 11.5, 6.5},
    {"2026-04-17T19:48:00+02:00", 8, 39, 43, {115, 118, 50, 49, 2, 0.035, 2.5}, 4.8, 6.4, 8, 4},
    {"2026-04-17T20:10:00+02:00", 6, 33, 36.5, {110, 112, 54, 54, 1, 0.02, 2}, 3.8, 4.8, 5.5, 2.4},
}};

void head(Header& h, const Skill& skill) {
  h.recorded = parseWallTime(skill.begin);
  h.kind = RecordKind::drill;
  h.patient = PatientCategory::adult;
  h.device = {"Manikin 2", "",    "training manikin with a training defibrillator",
              "M-0002",    "1.1", "Boathouse, training cupboard"};
  h.clock = {ClockState::set, Duration{0}, parseWallTime("2026-04-17T18:55:00+02:00"),
             "class-room clock"};
  h.site = "South boathouse, class room";
  h.team = "Lifeboat class, evening group";
  h.caseNumber = "2026-04-17-drills";
}

} // namespace

Sample drill(std::uint64_t seed, int number) {
  using namespace entry;
  const Skill& skill = kEvening.at(static_cast<std::size_t>(number - 1));
  const std::string name = "drill-evening-" + std::to_string(number);
  Sample sample{name, Story(name, seed + static_cast<std::uint64_t>(number)), {}};
  Story& story = sample.story;
  head(story.record.header, skill);
  constexpr double kSecondAnalysis = 190, kEnd = 240;
  const double advice = skill.analysis + 7, shock = advice + skill.toShock;
  story.happens(-12, Milestone{"collapse"}, Source::observer);
  story.happens(0, PowerOn{});
  story.happens(0.5, PatientMode{PatientCategory::adult});
  story.compress(skill.handsOn, skill.analysis - 1.6, skill.hands);
  story.happens(skill.pads, Electrodes{ElectrodeState::attached, {}});
  story.pauseBecause("shock");
  story.analyse(skill.analysis, advice, Advice::shock);
  story.lasts(advice, advice + 4, Charge{150});
  story.shock(shock, true, 150, skill.toShock);
  story.happens(shock + 1, Airway{AirwayDevice::mask});
  story.withBreaths(shock + skill.toHands, kSecondAnalysis - 2, skill.hands, 30, skill.gapLow,
                    skill.gapHigh);
  story.pauseBecause("analysis");
  story.analyse(kSecondAnalysis, kSecondAnalysis + 7, Advice::noShock);
  story.happens(kSecondAnalysis + 7.5, RescuerChange{{}});
  story.compress(kSecondAnalysis + 7 + skill.toHands, kEnd - 6, skill.hands);
  story.happens(kEnd - 4, Milestone{"handover"}, Source::observer);
  story.happens(kEnd, PowerOff{});
  const Time end = story.truth.compressions.back().t;
  story.truth.between = {{"power_on_to_first_shock", at(shock) - at(0)},
                         {"collapse_to_first_shock", at(shock) - at(-12)},
                         {"collapse_to_first_hands_on", at(skill.handsOn) - at(-12)},
                         {"power_on_to_electrodes", at(skill.pads) - at(0)},
                         {"time_on", at(kEnd) - at(0)}};
  story.finish(skill.handsOn, seconds(end));
  addWaves(story, 0, kEnd, {0, 0, 50, 0}, {}, {{kSecondAnalysis, body::Stroke::thrust}});
  return sample;
}

} // namespace afterbeat::samples
