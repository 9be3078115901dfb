/// Beats and faults in public recordings whose beats were marked by cardiologists.
#include "core/signal/dsp/resample.h"
#include "core/signal/ecg/beats.h"
#include "core/signal/ecg/quality.h"
#include "importers/wfdb/read_wfdb.h"
#include "importers/wfdb/wfdb_annotations.h"
#include "tests/core/signal/ecg/matched_beats.h"
#include "tests/importers/reference_recordings.h"

#include <fstream>
#include <iterator>
#include <set>

using namespace afterbeat;

namespace {

/// A channel of a recording in mV.
std::vector<double> channelOf(const std::filesystem::path& path, std::size_t number) {
  const auto imported = readWfdb(path);
  const Channel& channel = imported->record.channels.at(number);
  std::vector<double> values;
  readValues(channel, channel.blocks.front(), 0, channel.blocks.front().count,
             *factorToUsual(channel.quantity, channel.unit), values);
  return values;
}

/// Moments of the beats marked in an annotation file, in seconds. Codes of beats as in the WFDB
/// library's ecgcodes.h (from memory).
std::vector<double> markedBeats(const std::filesystem::path& path, double rateHz) {
  static const std::set<int> kBeatCodes{1,  2,  3,  4,  5,  6,  7,  8,  9,
                                        10, 11, 12, 13, 25, 34, 35, 38, 41};
  std::ifstream in(path, std::ios::binary);
  const std::string bytes{std::istreambuf_iterator<char>(in), {}};
  std::vector<double> out;
  for (const WfdbAnnotation& one : parseAnnotations(bytes).all) {
    if (kBeatCodes.contains(one.code)) {
      out.push_back(static_cast<double>(one.sample) / rateHz);
    }
  }
  return out;
}

/// mitdb 100 (Moody and Mark, IEEE Eng Med Biol Mag 2001;20(3):45-50): at least 99.8 % both ways.
TEST(BeatsOutside, ARecordOfHalfAnHour) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto folder = referenceRecordings() / "ecg" / "mitdb";
  const auto truth = markedBeats(folder / "100.atr", 360);
  ASSERT_EQ(truth.size(), 2273U);
  for (const std::size_t channel : {0U, 1U}) {
    const auto recorded = channelOf(folder / "100.hea", channel);
    for (const double rateHz : {360.0, 100.0, 125.0, 250.0, 500.0, 1000.0}) {
      for (const double sign : {1.0, -1.0}) {
        auto values = resampled(recorded, 360, rateHz);
        for (double& value : values) {
          value *= sign;
        }
        const auto found = findBeats({Time{}, rateHz, values});
        const auto both = static_cast<double>(matchedBeats(truth, found));
        EXPECT_GE(both / static_cast<double>(truth.size()), 0.998) << channel << " " << rateHz;
        EXPECT_GE(both / static_cast<double>(found.size()), 0.998) << channel << " " << rateHz;
      }
    }
  }
}

TEST(EcgFaultsOutside, ACleanRecordHasNearlyNone) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto values = channelOf(referenceRecordings() / "ecg" / "mitdb" / "100.hea", 0);
  double faulty = 0;
  for (const FaultyStretch& one : ecgFaults({Time{}, 360, values})) {
    faulty += seconds(one.where.length());
  }
  EXPECT_LT(faulty, 2);
}

/// cudb cu32 (Nolle et al., Computers in Cardiology 1986;13:515-518) is paced nearly throughout,
/// cu26 clips more than the others.
TEST(EcgFaultsOutside, PacingPulsesAndClippingAreFound) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto lengthOf = [](const char* record, SignalFault fault) {
    const auto values = channelOf(referenceRecordings() / "ecg" / "cudb" / record, 0);
    double out = 0;
    for (const FaultyStretch& one : ecgFaults({Time{}, 250, values})) {
      out += one.fault == fault ? seconds(one.where.length()) : 0;
    }
    return out;
  };
  EXPECT_GT(lengthOf("cu32.hea", SignalFault::spikes), 400);
  EXPECT_LT(lengthOf("cu01.hea", SignalFault::spikes), 5);
  EXPECT_GT(lengthOf("cu26.hea", SignalFault::saturated), 10);
  EXPECT_LT(lengthOf("cu01.hea", SignalFault::saturated), 1);
}

} // namespace
