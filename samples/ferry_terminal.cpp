#include "samples/samples.h"
#include "samples/waves.h"

namespace afterbeat::samples {

namespace {

void head(Header& h) {
  h.recorded = parseWallTime("2026-03-14T09:12:18+01:00");
  h.kind = RecordKind::rescue;
  h.patient = PatientCategory::adult;
  h.ageYears = 61;
  h.sex = "male";
  h.device = {"FT-02",     "",    "pier defibrillator",
              "0417-2231", "2.4", "Harbour office, Lindholm quay 4, phone 0000 000 000"};
  h.clock = {ClockState::set, Duration{12'000'000}, parseWallTime("2026-03-14T11:40:00+01:00"),
             "time signal at the harbour office"};
  h.event = {"bystander", "true", "waiting hall by the east pier", "presumed cardiac"};
  h.site = "Ferry terminal, east pier";
  h.team = "Ferry crew, early shift";
  h.caseNumber = "2026-03-14-A";
}

void says(Story& story, double s, const char* text) {
  story.happens(s, entry::Prompt{text, {}});
}

/// Power on to the first shock.
void beginning(Story& story) {
  using namespace entry;
  story.happens(-247, Milestone{"collapse"}, Source::observer);
  story.happens(-206, Milestone{"call_received"}, Source::observer);
  story.happens(-171, Milestone{"cpr_started"}, Source::observer);
  story.happens(-150, Milestone{"device_requested"}, Source::observer);
  story.happens(-14, Milestone{"device_arrived"}, Source::observer);
  story.happens(0, PowerOn{});
  story.happens(0.6, PatientMode{PatientCategory::adult});
  story.happens(1.2, SelfTest{true, {}});
  story.happens(1.3, Battery{78, {}, {}});
  story.happens(1.4, Pads{"2027-05"});
  says(story, 2.0, "Bare the chest and attach the pads.");
  story.happens(31.4, Electrodes{ElectrodeState::attached, 82});
  story.heart(0, RhythmKind::shockable, 0, 0.34);
  story.compress(32.6, 42.4, {108, 110, 51, 53});
  says(story, 42.6, "Do not touch the patient. Analysing.");
  story.pauseBecause("shock");
  story.analyse(43.6, 51.2, Advice::shock);
  says(story, 51.3, "Shock advised. Stand clear.");
  story.lasts(51.3, 56.8, Charge{150});
  story.shock(58.7, true, 150, 58.7 - 51.2);
  story.heart(58.7, RhythmKind::asystole);
  story.heart(66, RhythmKind::shockable, 0, 0.3);
  says(story, 60.0, "Start chest compressions.");
}

/// 30:2 by mask; a long wait before the second shock; the rate drifts up while one person tires.
void withMask(Story& story) {
  using namespace entry;
  story.happens(61, Airway{AirwayDevice::mask});
  story.withBreaths(63.1, 181.0, {109, 112, 54, 53}, 30, 4.2, 6.2);
  says(story, 181.6, "Do not touch the patient. Analysing.");
  story.pauseBecause("shock");
  story.analyse(183.0, 190.4, Advice::shock);
  says(story, 190.5, "Shock advised. Stand clear.");
  story.lasts(190.5, 196.2, Charge{200});
  says(story, 201.5, "Somebody is touching the patient. Stand clear.");
  story.happens(202.0, Mark{"Wet deck, people had to be moved away", "reviewer"}, Source::observer);
  story.shock(212.8, true, 200, 212.8 - 190.4);
  story.heart(212.8, RhythmKind::asystole);
  story.heart(221, RhythmKind::shockable, 0, 0.24);
  story.withBreaths(218.2, 336.0, {113, 138, 54, 43, 4}, 30, 4.8, 7.2);
  story.pauseBecause("shock");
  story.analyse(338.2, 345.4, Advice::shock);
  story.lasts(345.5, 351.0, Charge{200});
  story.happens(349.0, RescuerChange{"deckhand takes over"});
  story.shock(354.6, true, 200, 354.6 - 345.4);
  story.heart(354.6, RhythmKind::asystole);
  story.withBreaths(359.2, 424.0, {105, 107, 56, 54}, 30, 5.0, 7.0);
}

/// The airway costs 24 s; from then on compressions do not stop for breaths. The crew arrives.
void withAirway(Story& story) {
  using namespace entry;
  story.pauseBecause("no_reason_recorded");
  story.happens(446.6, Airway{AirwayDevice::supraglottic});
  story.compress(448.0, 479.4, {107, 107, 55, 54});
  story.pauseBecause("analysis");
  story.analyse(481.0, 488.3, Advice::noShock);
  says(story, 488.4, "No shock advised. Continue chest compressions.");
  story.lasts(481.0, 488.3, Rhythm{RhythmKind::asystole, {}, {}}, Source::observer);
  story.happens(489.0, RescuerChange{"purser takes over"});
  story.compress(492.1, 614.6, {109, 112, 55, 53});
  story.happens(511, Milestone{"crew_arrived"}, Source::observer);
  story.happens(556, Medication{"adrenaline 1 mg"}, Source::observer);
  story.heart(572, RhythmKind::shockable, 0, 0.27);
  story.pauseBecause("analysis");
  story.analyse(616.0, 623.4, Advice::shock);
  // The crew keeps its hands on the chest while the device charges.
  story.lasts(623.5, 629.0, Charge{200});
  story.compress(625.2, 630.9, {110, 110, 54, 54});
  story.pauseBecause("shock");
  story.shock(633.3, true, 200, 633.3 - 623.4);
  story.heart(633.3, RhythmKind::asystole);
  story.heart(641, RhythmKind::organised, 38, 0, true);
  story.happens(634.5, RescuerChange{"crew takes over"});
}

/// Two-minute cycles without a shock until circulation returns; then until the handover.
void towardsCirculation(Story& story) {
  using namespace entry;
  story.compress(636.0, 755.8, {112, 112, 56, 56});
  story.pauseBecause("analysis");
  story.analyse(757.4, 764.6, Advice::noShock);
  story.heart(764, RhythmKind::organised, 46, 0, true);
  story.happens(766.0, RescuerChange{{}});
  story.compress(768.8, 888.5, {110, 111, 55, 55});
  story.happens(801, Medication{"adrenaline 1 mg"}, Source::observer);
  story.pauseBecause("analysis");
  story.analyse(890.2, 897.1, Advice::noShock);
  story.happens(898.0, RescuerChange{{}});
  story.compress(901.7, 1011.4, {111, 113, 56, 54});
  story.heart(1004, RhythmKind::organised, 58, 0, true);
  story.pauseBecause("analysis");
  story.analyse(1013.0, 1020.5, Advice::noShock);
  story.happens(1021.0, RescuerChange{{}});
  story.compress(1024.0, 1131.2, {112, 110, 55, 55});
  story.heart(1126, RhythmKind::organised, 92);
  story.lasts(641, 1126, Rhythm{RhythmKind::organised, {}, {}}, Source::observer);
  story.pauseBecause("analysis");
  story.analyse(1132.9, 1140.0, Advice::noShock);
  story.happens(1148.5, Circulation{CirculationState::returned}, Source::observer);
  story.lasts(1140, 1320, Rhythm{RhythmKind::organised, 92, {}}, Source::observer);
  story.analyse(1253.0, 1260.2, Advice::noShock);
  says(story, 1260.3, "No shock advised. Check breathing.");
  story.breathe(450, 1300, 6.0);
  story.happens(1288, Milestone{"handover"}, Source::observer);
  story.happens(1318.8, Battery{71, {}, {}});
  story.happens(1320, PowerOff{});
}

} // namespace

Sample ferryTerminal(std::uint64_t seed) {
  Sample sample{"ferry-terminal", Story("ferry-terminal", seed), {}};
  Story& story = sample.story;
  head(story.record.header);
  beginning(story);
  withMask(story);
  withAirway(story);
  towardsCirculation(story);
  story.truth.between = {
      {"power_on_to_first_shock", at(58.7) - at(0)},
      {"electrodes_to_first_shock", at(58.7) - at(31.4)},
      {"collapse_to_first_shock", at(58.7) - at(-247)},
      {"call_to_first_shock", at(58.7) - at(-206)},
      {"first_hands_on_to_first_shock", at(58.7) - at(32.6)},
      {"power_on_to_electrodes", at(31.4) - at(0)},
      {"power_on_to_first_hands_on", at(32.6) - at(0)},
      {"electrodes_to_first_analysis", at(43.6) - at(31.4)},
      {"collapse_to_first_hands_on", at(32.6) - at(-247)},
      {"call_to_first_hands_on", at(32.6) - at(-206)},
      {"call_to_device_arrived", at(-14) - at(-206)},
      {"collapse_to_circulation_returned", at(1148.5) - at(-247)},
      {"time_on", at(1320) - at(0)},
  };
  story.finish(31.4, 1260.2, 1148.5);
  using body::Stroke;
  body::Circumstances how;
  how.tiltFirst = 4; // the pier slopes
  how.tiltLast = 2;
  how.joltsPerMinute = 0.7;
  addWaves(story, 31.4, 1320, {}, how,
           {{349, Stroke::thrust},
            {489, Stroke::shoulder},
            {634.5, Stroke::even},
            {766, Stroke::thrust},
            {898, Stroke::even},
            {1021, Stroke::shoulder}});
  return sample;
}

} // namespace afterbeat::samples
