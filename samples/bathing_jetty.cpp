#include "samples/samples.h"
#include "samples/waves.h"

namespace afterbeat::samples {

namespace {

void head(Header& h) {
  h.recorded = parseWallTime("2026-07-19T15:41:07-00:00");
  h.kind = RecordKind::rescue;
  h.patient = PatientCategory::child;
  h.ageYears = 6;
  h.sex = "female";
  h.device = {"BJ-03",     "",    "beach defibrillator",
              "0417-2240", "2.4", "Bathing jetty, lifeguard hut"};
  h.clock.state = ClockState::zoneUnknown;
  h.event = {"no", "true", "shallow water beside the jetty", "drowning"};
  h.site = "Bathing jetty";
  h.team = "Lifeguards";
}

} // namespace

Sample bathingJetty(std::uint64_t seed) {
  using namespace entry;
  Sample sample{"bathing-jetty-child", Story("bathing-jetty-child", seed), {}};
  Story& story = sample.story;
  head(story.record.header);
  story.happens(-64, Milestone{"pulled_from_water"}, Source::observer);
  story.happens(-40, Milestone{"call_received"}, Source::observer);
  story.happens(0, PowerOn{});
  story.happens(0.4, PatientMode{PatientCategory::child});
  story.happens(0.9, Battery{96, {}, {}});
  story.happens(1.0, Pads{"2028-01-31"});
  story.happens(2.0, Prompt{"Child setting.", {}});
  story.happens(17, Electrodes{ElectrodeState::attached, 121});
  story.happens(17.5, Airway{AirwayDevice::mask});
  story.heart(0, RhythmKind::asystole);
  story.breathe(18.5, 27.5, 2.0); // after drowning, breaths come first
  story.withBreaths(29.2, 60, {112, 114, 46, 46}, 15, 3.2, 4.4);
  story.pauseBecause("analysis");
  story.analyse(62, 69, Advice::noShock);
  story.heart(66, RhythmKind::organised, 34, 0, true);
  story.withBreaths(71.5, 188, {110, 114, 47, 48}, 15, 3.0, 4.2);
  story.pauseBecause("analysis");
  story.analyse(190, 197, Advice::noShock);
  story.happens(197.5, RescuerChange{"second lifeguard"});
  story.heart(230, RhythmKind::organised, 52, 0, true);
  story.withBreaths(200, 314, {108, 112, 48, 47}, 15, 3.0, 4.4);
  story.pauseBecause("analysis");
  story.analyse(316, 323, Advice::noShock);
  story.heart(352, RhythmKind::organised, 108);
  story.compress(326, 362, {110, 110, 47, 47});
  story.pauseBecause("after_last");
  story.happens(371, Circulation{CirculationState::returned}, Source::observer);
  story.happens(380, Milestone{"crew_arrived"}, Source::observer);
  story.analyse(404, 411, Advice::noShock);
  story.happens(429, PowerOff{});
  story.truth.between = {{"power_on_to_electrodes", at(17) - at(0)},
                         {"power_on_to_first_hands_on", at(29.2) - at(0)},
                         {"electrodes_to_first_analysis", at(62) - at(17)},
                         {"call_to_first_hands_on", at(29.2) - at(-40)},
                         {"time_on", at(429) - at(0)}};
  story.finish(17, 411, 371);
  body::Circumstances how;
  how.joltsPerMinute = 1; // wet skin
  how.artefactMv = 0.5;
  addWaves(story, 17, 429, {125, 0, 0, 0}, how);
  return sample;
}

} // namespace afterbeat::samples
