/// The compression-artefact filter on public recordings, with artefacts made in two ways that share
/// nothing with it: by the tests' own harmonics, and by the simulated chest of the samples.
#include "core/signal/ecg/artefact_filter.h"
#include "core/signal/rhythm/hints.h"
#include "importers/wfdb/read_wfdb.h"
#include "samples/body/scenes.h"
#include "tests/core/signal/ecg/made_artefact.h"
#include "tests/importers/reference_recordings.h"

#include <cstdio>
#include <string>

using namespace afterbeat;

namespace {

constexpr double kRate = 250;
constexpr std::size_t kLength = 5000;

struct Clip {
  std::string name;
  std::vector<double> values;
};

/// 20 s without a missing sample, of each stretch of at least 24 s that bears one of the labels;
/// from 2 s after its begin, its mean taken off.
std::vector<Clip> clips(const std::vector<std::string>& records, RhythmKind kind) {
  std::vector<Clip> out;
  for (const std::string& record : records) {
    const auto imported = readWfdb(referenceRecordings() / "ecg" / (record + ".hea"));
    const Channel& channel = imported->record.channels.front();
    std::size_t taken = 0;
    for (const Entry& entry : imported->record.entries) {
      const auto* rhythm = entry.complete<entry::Rhythm>();
      if (rhythm == nullptr || rhythm->is != kind || taken == 2 ||
          seconds(entry.lastTime() - entry.t) < 24) {
        continue;
      }
      const auto begin = static_cast<std::size_t>((seconds(entry.t) + 2) * kRate);
      std::vector<double> values;
      readValues(channel, channel.blocks.front(), begin, kLength, 1, values);
      double mean = 0;
      for (const double value : values) {
        mean += value / static_cast<double>(kLength);
      }
      if (!std::isnan(mean)) {
        for (double& value : values) {
          value -= mean;
        }
        out.push_back({record, std::move(values)});
        ++taken;
      }
    }
  }
  return out;
}

/// Twenty seconds from the middle of a scene of the simulated body, hands on throughout.
MadeArtefact simulated(std::uint64_t seed) {
  using namespace samples::body;
  Setting setting = drawSetting(seed);
  setting.length = 40;
  setting.ratio = 0;
  setting.pauses = 0;
  const Scene scene = play(setting);
  const auto all = compressionArtefact(scene.body, kRate);
  const auto begin = static_cast<std::size_t>(10 * kRate);
  MadeArtefact out{{all.begin() + static_cast<std::ptrdiff_t>(begin),
                    all.begin() + static_cast<std::ptrdiff_t>(begin + kLength)},
                   {}};
  const Time zero = *timeFromSeconds(scene.body.from + 10);
  for (const auto& one : scene.truth.compressions) {
    const Time t{one.t - zero};
    if (t >= Time{} && seconds(t) <= kLength / kRate) {
      out.deepest.push_back(t);
    }
  }
  return out;
}

/// Mean and least gain in decibels over clips at a signal-to-artefact ratio of 0 dB.
struct Gains {
  double mean = 0, least = 1e9;
  std::size_t count = 0;
};

constexpr std::size_t kFirst = 375, kEnd = kLength - 375;

/// A clip with an artefact as strong as itself, and filtered.
struct Disturbed {
  std::vector<double> before, after;
};
Disturbed disturb(const std::vector<double>& clean, MadeArtefact artefact) {
  scaleToSnr(artefact.values, clean, 0, kFirst, kEnd);
  Disturbed out{clean, {}};
  for (std::size_t i = 0; i < kLength; ++i) {
    out.before[i] += artefact.values[i];
  }
  out.after = suppressCompressions({Time{}, kRate, out.before}, artefact.deepest).values;
  return out;
}

Gains gains(const std::vector<Clip>& clips, MadeArtefact (*make)(std::uint64_t)) {
  Gains out;
  for (std::size_t k = 0; k < clips.size(); ++k) {
    const auto [before, after] = disturb(clips[k].values, make(k + 1));
    const double gain = gainDb(clips[k].values, before, after, kFirst, kEnd);
    out.mean += gain;
    out.least = std::min(out.least, gain);
    ++out.count;
  }
  out.mean /= static_cast<double>(out.count);
  return out;
}

MadeArtefact harmonic(std::uint64_t seed) {
  return madeArtefact(kLength, kRate, static_cast<unsigned>(seed), 0.5, 19.9);
}

/// Seconds hinted to be of a kind.
double secondsOf(RhythmKind kind, const std::vector<double>& values) {
  const std::vector run{SignalView{Time{}, kRate, values}};
  double out = 0;
  for (const Entry& hint : hintRhythm({.runs = run}).entries) {
    const auto* rhythm = hint.complete<entry::Rhythm>();
    out += rhythm != nullptr && rhythm->is == kind ? seconds(hint.lastTime() - hint.t) : 0;
  }
  return out;
}

void expectSixDecibels(const char* what, const std::vector<Clip>& some) {
  const Gains harmonics = gains(some, harmonic), body = gains(some, simulated);
  std::printf(
      "%s, %zu clips: %.1f dB (least %.1f) with made harmonics, %.1f dB (least %.1f) with the "
      "simulated chest\n",
      what, some.size(), harmonics.mean, harmonics.least, body.mean, body.least);
  EXPECT_GE(harmonics.mean, 6);
  EXPECT_GE(body.mean, 6);
}

std::vector<Clip> fibrillation() {
  return clips({"vfdb/424", "vfdb/425", "vfdb/430", "vfdb/607", "vfdb/611", "vfdb/612", "vfdb/614",
                "vfdb/615", "cudb/cu01", "cudb/cu04", "cudb/cu05", "cudb/cu09", "cudb/cu10",
                "cudb/cu16", "cudb/cu28", "cudb/cu33"},
               RhythmKind::shockable);
}

TEST(ArtefactFilterOutside, SixDecibelsOnRealFibrillation) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto some = fibrillation();
  ASSERT_GE(some.size(), 12U);
  expectSixDecibels("Fibrillation", some);
}

TEST(ArtefactFilterOutside, FibrillationIsNeverMadeAnOrganisedRhythm) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  double clean = 0, before = 0, after = 0, kept = 0, all = 0;
  for (const auto make : {harmonic, simulated}) {
    std::uint64_t seed = 100;
    for (const Clip& clip : fibrillation()) {
      const auto disturbed = disturb(clip.values, make(++seed));
      clean += secondsOf(RhythmKind::organised, clip.values);
      before += secondsOf(RhythmKind::organised, disturbed.before);
      const double made = secondsOf(RhythmKind::organised, disturbed.after);
      EXPECT_EQ(made, 0) << clip.name << " " << seed;
      after += made;
      kept += secondsOf(RhythmKind::shockable, disturbed.after);
      all += kLength / kRate;
    }
  }
  std::printf("Of %.0f s of fibrillation, hinted as organised: %.0f s as recorded, %.0f s with the "
              "artefact, %.0f s filtered; as shockable when filtered: %.0f s\n",
              all, clean, before, after, kept);
}

TEST(ArtefactFilterOutside, SixDecibelsOnRealHeartbeats) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto some = clips({"vfdb/424", "vfdb/425", "vfdb/605", "vfdb/607", "vfdb/610", "vfdb/612",
                           "vfdb/614", "vfdb/615"},
                          RhythmKind::organised);
  ASSERT_GE(some.size(), 8U);
  expectSixDecibels("Heartbeats", some);
}

} // namespace
