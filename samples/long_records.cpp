#include "samples/samples.h"
#include "samples/waves.h"

namespace afterbeat::samples {

namespace {

void head(Header& h, const char* site) {
  h.recorded = parseWallTime("2026-01-24T06:02:00+01:00");
  h.kind = RecordKind::rescue;
  h.patient = PatientCategory::adult;
  h.device = {"HS-11", "", "monitor of the hill station", "0551-0003", "3.0", "Hill station"};
  h.site = site;
  h.event.cause = "cold water";
}

} // namespace

Sample threeHours(std::uint64_t seed, double rateHz) {
  using namespace entry;
  const std::string name = rateHz > 250 ? "long-three-hours-500-hz" : "long-three-hours";
  Sample sample{name, Story("long-three-hours", seed), {}};
  Story& story = sample.story;
  head(story.record.header, "Upper lake, ice road");
  constexpr double kEnd = 10800;
  story.happens(0, PowerOn{});
  story.happens(0, Electrodes{ElectrodeState::attached, 88});
  story.heart(0, RhythmKind::shockable, 0, 0.25);
  for (double begin = 0; begin < kEnd; begin += 120) {
    story.compress(begin + 3, begin + 108, {108, 112, 55, 53});
    story.pauseBecause(begin < 600 ? "shock" : "analysis");
    story.analyse(begin + 110, begin + 117, begin < 600 ? Advice::shock : Advice::noShock);
    if (begin < 600) {
      story.shock(begin + 119, true, 200, 2.0);
    }
  }
  story.heart(5400, RhythmKind::organised, 44, 0, true);
  story.happens(kEnd, PowerOff{});
  story.truth.between = {{"time_on", at(kEnd) - at(0)}};
  story.finish(0, kEnd - 3);
  std::vector<body::Rescuer> rescuers;
  for (double s = 0; s < kEnd; s += 120) {
    rescuers.push_back({s, body::kAllStrokes.at(rescuers.size() % 3)});
  }
  addWaves(story, 0, kEnd, {rateHz, rateHz, rateHz, rateHz}, {}, rescuers);
  return sample;
}

Sample manyCompressions(std::uint64_t seed) {
  using namespace entry;
  Sample sample{"long-20000-compressions", Story("long-20000-compressions", seed), {}};
  Story& story = sample.story;
  head(story.record.header, "Upper lake, hut");
  story.happens(0, PowerOn{});
  double s = 2;
  for (int cycle = 0; cycle < 100; ++cycle) {
    s = story.compress(s, s + 1000, {110, 110, 54, 54}, 200);
    story.pauseBecause("analysis");
    story.analyse(s + 1.5, s + 8.5, Advice::noShock);
    s += 11;
  }
  story.happens(s + 20, PowerOff{});
  story.truth.between = {{"time_on", at(s + 20) - at(0)}};
  story.finish(2, s - 2.5);
  return sample;
}

} // namespace afterbeat::samples
