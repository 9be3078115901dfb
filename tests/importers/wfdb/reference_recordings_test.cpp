// Against recordings of the MIT-BIH Malignant Ventricular Arrhythmia Database (Greenwald 1986,
// doi:10.13026/C22P44), the Creighton University Ventricular Tachyarrhythmia Database (Nolle et
// al., Computers in Cardiology 1986;13:515-518) and the MIT-BIH Arrhythmia Database (Moody and
// Mark, IEEE Eng Med Biol Mag 2001;20(3):45-50), all by way of PhysioNet (Goldberger et al.,
// Circulation 2000;101(23):e215-e220).

#include "../reference_recordings.h"
#include "importers/wfdb/read_wfdb.h"
#include "importers/wfdb/wfdb_annotations.h"
#include "importers/wfdb/wfdb_samples.h"

#include <fstream>
#include <numeric>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;

Imported imported(const fs::path& path) {
  auto result = readWfdb(path);
  EXPECT_TRUE(result) << path << ": " << result.error().sentence();
  return result.value_or(Imported{});
}

void expectNoErrors(const Imported& result, const fs::path& path) {
  for (const auto& problem : result.problems) {
    EXPECT_EQ(problem.severity, Severity::info) << path << ": " << sentence(problem);
  }
}

/// The sum that the header states, from the channel as read (a missing value counts as -2048).
std::int16_t checksum12(const Channel& channel) {
  auto samples = channel.samples;
  std::replace(samples.begin(), samples.end(), kMissingSample, missingValue(SampleForm::packed12));
  return sampleChecksum(samples);
}

// Check values: the headers of the records.
TEST(ReferenceRecordings, record418) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto result = imported(referenceRecordings() / "ecg" / "vfdb" / "418.hea");
  expectNoErrors(result, "418");
  const auto& channels = result.record.channels;
  ASSERT_EQ(channels.size(), 2U);
  EXPECT_EQ(channels[0].samples.size(), 525000U);
  EXPECT_EQ(channels[1].samples.size(), 525000U);
  EXPECT_EQ(channels[0].samples[0], -128);
  EXPECT_EQ(channels[1].samples[0], -14);
  EXPECT_EQ(checksum12(channels[0]), 1830);
  EXPECT_EQ(checksum12(channels[1]), -5967);
  EXPECT_NEAR(channels[0].physical(-128), -0.64, 1e-12);
  EXPECT_EQ(channels[0].quantity, "ecg");
  EXPECT_EQ(channels[0].unit, "mV");
  EXPECT_EQ(channels[0].rateHz, 250);
}

TEST(ReferenceRecordings, cu01) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto result = imported(referenceRecordings() / "ecg" / "cudb" / "cu01.hea");
  expectNoErrors(result, "cu01");
  ASSERT_EQ(result.record.channels.size(), 1U);
  const auto& samples = result.record.channels[0].samples;
  EXPECT_THAT(std::vector<std::int16_t>(samples.begin(), samples.begin() + 3),
              ElementsAre(-109, -123, -119));
  EXPECT_EQ(checksum12(result.record.channels[0]), -28468);
}

TEST(ReferenceRecordings, record100) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto result = imported(referenceRecordings() / "ecg" / "mitdb" / "100");
  expectNoErrors(result, "100");
  const auto& channels = result.record.channels;
  ASSERT_EQ(channels.size(), 2U);
  EXPECT_EQ(channels[0].label, "MLII");
  EXPECT_EQ(channels[1].label, "V5");
  EXPECT_EQ(channels[0].rateHz, 360);
  EXPECT_EQ(channels[0].samples.at(0), 995);
  EXPECT_EQ(channels[1].samples.at(0), 1011);
  EXPECT_NEAR(channels[0].physical(995), -0.145, 1e-9); // baseline 1024, 200 per mV
  ASSERT_EQ(result.record.entries.size(), 1U);
  EXPECT_EQ(result.record.entries[0].t, *timeFromSeconds(18.0 / 360));
  EXPECT_EQ(result.record.entries[0].end, *timeFromSeconds(650000.0 / 360));
  const auto counted = [](const Problem& problem) {
    return sentence(problem).find("2273 marks on single heart beats") != std::string::npos;
  };
  EXPECT_EQ(std::count_if(result.problems.begin(), result.problems.end(), counted), 1);
}

struct Line {
  Time from{}, to{};
  std::string label;
};

std::vector<Line> rhythmLines(const fs::path& path) {
  std::ifstream stream{path};
  std::vector<Line> lines;
  std::string text;
  std::getline(stream, text);
  EXPECT_EQ(text.substr(0, 21), "start_s,end_s,label") << path;
  while (std::getline(stream, text)) {
    std::istringstream fields{text};
    std::string from, to, label;
    std::getline(fields, from, ',');
    std::getline(fields, to, ',');
    std::getline(fields, label, '\r');
    lines.push_back({*timeFromSeconds(std::stod(from)), *timeFromSeconds(std::stod(to)), label});
  }
  return lines;
}

std::string expectedReason(const std::string& label) {
  return label == "VT" ? "VT, rate not stated by the source" : label == "NOISE" ? "noise" : label;
}

TEST(ReferenceRecordings, rhythmStretchesOfEveryRecord) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  int records = 0;
  std::size_t stretches = 0;
  for (const auto* folder : {"vfdb", "cudb"}) {
    for (const auto& file : fs::directory_iterator(referenceRecordings() / "ecg" / folder)) {
      if (file.path().extension() != ".hea") {
        continue;
      }
      ++records;
      const auto result = imported(file.path());
      expectNoErrors(result, file.path());
      auto table = file.path();
      table.replace_extension(".rhythm.csv");
      const auto lines = rhythmLines(table);
      std::vector<Entry> found;
      std::copy_if(result.record.entries.begin(), result.record.entries.end(),
                   std::back_inserter(found),
                   [](const Entry& entry) { return entry.complete<entry::Rhythm>() != nullptr; });
      ASSERT_EQ(found.size(), lines.size()) << file.path();
      for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& rhythm = std::get<entry::Rhythm>(found[i].data);
        EXPECT_EQ(found[i].t, lines[i].from) << file.path() << " line " << i;
        EXPECT_EQ(found[i].end, lines[i].to) << file.path() << " line " << i;
        EXPECT_EQ(rhythm.reason, expectedReason(lines[i].label)) << file.path();
        EXPECT_EQ(rhythm.is, rhythmOfLabel(lines[i].label)) << file.path();
      }
      stretches += lines.size();
    }
  }
  EXPECT_EQ(records, 30);
  EXPECT_GT(stretches, 300U);
}

} // namespace
} // namespace afterbeat
