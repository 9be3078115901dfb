#include "samples/samples.h"

namespace afterbeat::samples {

Sample lakeSteamer(std::uint64_t seed) {
  using namespace entry;
  // The power goes while compression 300 (counted from 0) is being written.
  Sample sample{"lake-steamer-power-lost", Story("lake-steamer-power-lost", seed), 300};
  Story& story = sample.story;
  Header& h = story.record.header;
  h.recorded = parseWallTime("2026-09-05T16:20:44+02:00");
  h.kind = RecordKind::rescue;
  h.patient = PatientCategory::adult;
  h.device = {"LS-07", "", "ship's defibrillator", "0298-5510", "1.7", "Steamer landing, cashier"};
  h.clock.state = ClockState::set;
  h.site = "Lake steamer, upper deck";
  h.team = "Steamer crew";
  story.happens(0, PowerOn{});
  story.happens(0.5, PatientMode{PatientCategory::adult});
  story.happens(0.8, Battery{9, {}, {}});
  story.happens(0.9, Fault{"Battery low", "B2"});
  story.happens(24.5, Electrodes{ElectrodeState::attached, 91});
  story.compress(26, 38, {116, 116, 52, 52});
  story.pauseBecause("shock");
  story.analyse(40, 48, Advice::shock);
  story.lasts(48, 57, Charge{150});
  story.shock(59.5, true, 150, 11.5);
  story.withBreaths(63.2, 178, {114, 120, 52, 49}, 30, 4.5, 6.5);
  story.pauseBecause("analysis");
  story.analyse(180, 188, Advice::noShock);
  story.withBreaths(191, 306, {112, 118, 53, 50}, 30, 4.5, 6.5);
  story.truth.between = {{"power_on_to_first_shock", at(59.5) - at(0)},
                         {"electrodes_to_first_shock", at(59.5) - at(24.5)},
                         {"power_on_to_electrodes", at(24.5) - at(0)}};
  story.finish(24.5, seconds(story.truth.compressions.back().t));
  return sample;
}

} // namespace afterbeat::samples
