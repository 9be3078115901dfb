#include "samples/samples.h"

namespace afterbeat::samples {

namespace {

void head(Header& h) {
  h.recorded = parseWallTime("2000-01-01T00:04:11-00:00");
  h.kind = RecordKind::rescue;
  h.patient = PatientCategory::adult;
  h.device = {"BH-01",     "",    "public defibrillator",
              "0311-0078", "1.9", "Boathouse keeper, North shore 12"};
  h.clock.state = ClockState::unset;
  h.event = {"unknown", "unknown", "slipway", ""};
  h.site = "North boathouse";
}

} // namespace

Sample boathouse(std::uint64_t seed) {
  using namespace entry;
  Sample sample{"boathouse", Story("boathouse", seed), {}};
  Story& story = sample.story;
  head(story.record.header);
  story.happens(0, PowerOn{});
  story.happens(0.5, PatientMode{PatientCategory::adult});
  story.happens(0.9, Battery{{}, 2, 4});
  story.happens(1.0, Pads{"2026-09"});
  story.happens(22, Electrodes{ElectrodeState::attached, 104});
  story.pauseBecause("analysis");
  story.analyse(27, 35.5, Advice::shock);
  story.lasts(35.5, 43, Charge{150});
  story.shock(46, false, 150, {}, "patient moved");
  story.keepGoing(52, 118, 104);
  story.keepGoing(131, 170, {});
  story.pauseBecause("shock");
  story.analyse(172, 180, Advice::shock);
  story.lasts(180, 187, Charge{150});
  story.shock(188.5, true, 150, 8.5);
  story.keepGoing(196, 304, 117);
  story.pauseBecause("analysis");
  story.analyse(306, 313, Advice::noShock);
  story.keepGoing(319, 398, 124);
  story.happens(405, Milestone{"crew_arrived"}, Source::observer);
  story.happens(431, Electrodes{ElectrodeState::detached, {}});
  story.happens(450, Battery{{}, 1, 4});
  story.happens(452, PowerOff{});
  story.truth.between = {{"power_on_to_first_shock", at(188.5) - at(0)},
                         {"electrodes_to_first_shock", at(188.5) - at(22)},
                         {"first_hands_on_to_first_shock", at(188.5) - at(52)},
                         {"electrodes_to_first_analysis", at(27) - at(22)},
                         {"time_on", at(452) - at(0)}};
  story.finish(22, 398);
  return sample;
}

} // namespace afterbeat::samples
