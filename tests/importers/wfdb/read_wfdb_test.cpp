#include "importers/wfdb/read_wfdb.h"

#include "../scratch_folder.h"
#include "annotation_bytes.h"

#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

/// Samples 995, 1011 and so on as three-byte pairs (see wfdb_samples_test.cpp for the packing).
const std::string kTwoSamples = "\xE3\x33\xF3";

class ReadWfdb : public testing::Test {
protected:
  tl::expected<Imported, ImportError> read(const std::string& name) {
    return readWfdb(folder_.path() / name);
  }
  Imported imported(const std::string& name) {
    auto result = read(name);
    EXPECT_TRUE(result) << result.error().sentence();
    return result.value_or(Imported{});
  }
  std::string refusal(const std::string& name) {
    const auto result = read(name);
    EXPECT_FALSE(result);
    return result ? std::string{} : result.error().sentence();
  }
  static std::vector<std::string> sentences(const Imported& imported, Severity severity) {
    std::vector<std::string> found;
    for (const auto& problem : imported.problems) {
      if (problem.severity == severity) {
        found.push_back(sentence(problem));
      }
    }
    return found;
  }
  static std::vector<std::string> errors(const Imported& imported) {
    return sentences(imported, Severity::error);
  }

  ScratchFolder folder_;
};

TEST_F(ReadWfdb, aWholeRecord) {
  folder_.write("r.hea", "r 3 250 2 13:05:00 14/03/2026\r\n"
                         "r.dat 212 200(12)/mV 12 0 995 1990 0 II\r\n"
                         "r.dat 212 0 12 7 1011 2022 0 III\r\n"
                         "imp.dat 16+4 10/Ohm 16 0 1 0 0 chest impedance\r\n"
                         "# a remark\r\n");
  folder_.write("r.dat", kTwoSamples + kTwoSamples);
  folder_.write("imp.dat", std::string{"head\x01\x00\xFF\xFF", 8});
  folder_.write("r.atr", word(28, 1) + aux("(VF") + endMark());
  const auto result = imported("r.hea");
  const auto& record = result.record;
  EXPECT_TRUE(errors(result).empty());
  ASSERT_EQ(record.channels.size(), 3U);
  EXPECT_EQ(record.channels[0].id, "ecg1");
  EXPECT_EQ(record.channels[1].id, "ecg2");
  EXPECT_EQ(record.channels[2].id, "impedance1");
  EXPECT_EQ(record.channels[0].label, "II");
  EXPECT_EQ(record.channels[0].unit, "mV");
  EXPECT_EQ(record.channels[0].rateHz, 250);
  EXPECT_THAT(record.channels[0].samples, ElementsAre(995, 995));
  EXPECT_NEAR(record.channels[0].physical(995), (995 - 12) / 200.0, 1e-12);
  EXPECT_NEAR(record.channels[1].physical(1011), (1011 - 7) / 200.0, 1e-12);
  EXPECT_THAT(record.channels[2].samples, ElementsAre(1, -1));
  EXPECT_NEAR(record.channels[2].physical(-1), -0.1, 1e-12);
  ASSERT_EQ(record.channels[0].blocks.size(), 1U);
  EXPECT_EQ(record.channels[0].blocks[0].t, Time{});
  EXPECT_EQ(record.channels[0].blocks[0].count, 2U);
  ASSERT_EQ(record.entries.size(), 1U);
  EXPECT_EQ(record.entries[0].t, *timeFromSeconds(0.004));
  EXPECT_EQ(record.entries[0].end, *timeFromSeconds(0.008));
  ASSERT_TRUE(record.header.recorded);
  EXPECT_EQ(formatWallTime(*record.header.recorded), "2026-03-14T13:05:00-00:00");
  EXPECT_EQ(record.header.clock.state, ClockState::zoneUnknown);
  EXPECT_EQ(record.header.kind, RecordKind::test);
  EXPECT_TRUE(result.kindAssumed);
  EXPECT_EQ(record.lastTime, *timeFromSeconds(0.008));
  EXPECT_THAT(sentences(result, Severity::info),
              testing::Contains(HasSubstr("\"III\" is not calibrated")));
}

TEST_F(ReadWfdb, anyOfItsNames) {
  folder_.write("r.hea", "r 1 250 2\nr.dat 212\n");
  folder_.write("r.dat", kTwoSamples);
  folder_.write("r.atr", endMark());
  const auto id = imported("r.hea").record.header.id;
  EXPECT_THAT(id, testing::StartsWith("urn:uuid:"));
  for (const auto* name : {"r", "r.dat", "r.atr"}) {
    EXPECT_EQ(imported(name).record.header.id, id) << name;
  }
  folder_.write("r.dat", "\xE3\x33\xF2");
  EXPECT_NE(imported("r").record.header.id, id);
  folder_.write("header.txt", "r 1 250 2\nr.dat 212\n");
  EXPECT_EQ(imported("header.txt").record.channels.size(), 1U);
}

TEST_F(ReadWfdb, missingValues) {
  folder_.write("r.hea", "r 2 250 2\nr.dat 212\ns.dat 16\n");
  folder_.write("r.dat", std::string{"\x00\x78\xFF", 3});
  folder_.write("s.dat", std::string{"\x00\x80\x00\xF8", 4});
  const auto result = imported("r");
  EXPECT_THAT(result.record.channels.at(0).samples, ElementsAre(kMissingSample, 2047));
  // -2048 is an ordinary value of format 16.
  EXPECT_THAT(result.record.channels.at(1).samples, ElementsAre(kMissingSample, -2048));
}

TEST_F(ReadWfdb, checksumsCountMissingValuesAndAreCompared) {
  // -2048 + 2047 = -1
  folder_.write("r.hea", "r 1 250 2\nr.dat 212 200 12 0 -2048 -1 0 I\n");
  folder_.write("r.dat", std::string{"\x00\x78\xFF", 3});
  EXPECT_TRUE(errors(imported("r")).empty());
  folder_.write("r.dat", std::string{"\x00\x78\xFE", 3});
  const auto damaged = imported("r");
  ASSERT_EQ(errors(damaged).size(), 1U);
  EXPECT_THAT(errors(damaged)[0], HasSubstr("checksum (-2 instead of -1)"));
  EXPECT_EQ(damaged.problems[0].line, 2);
  EXPECT_EQ(damaged.record.channels.at(0).samples.size(), 2U);
}

TEST_F(ReadWfdb, theInitialValueIsCompared) {
  folder_.write("r.hea", "r 1 250 2\nr.dat 212 200 12 0 994\n");
  folder_.write("r.dat", kTwoSamples);
  ASSERT_EQ(errors(imported("r")).size(), 1U);
  EXPECT_THAT(errors(imported("r"))[0], HasSubstr("begins with 995 where its header says 994"));
}

TEST_F(ReadWfdb, aShortFileGivesWhatIsThere) {
  folder_.write("r.hea",
                "r 2 250 4\nr.dat 212 200 12 0 995 0 0 I\nr.dat 212 200 12 0 1011 0 0 II\n");
  // Every length down to nothing: 8 samples in 12 bytes are stated.
  for (std::size_t length = 0; length < 12; ++length) {
    folder_.write("r.dat",
                  (kTwoSamples + kTwoSamples + kTwoSamples + kTwoSamples).substr(0, length));
    const auto result = imported("r");
    const auto samples =
        result.record.channels.at(0).samples.size() + result.record.channels.at(1).samples.size();
    EXPECT_EQ(samples, length / 3 * 2 + (length % 3 == 2 ? 1 : 0)) << length;
    ASSERT_EQ(errors(result).size(), 1U) << length; // no false alarm on the checksum
    EXPECT_THAT(errors(result)[0], HasSubstr("shorter than its header says"));
  }
}

TEST_F(ReadWfdb, anOddByteOfFormat16IsNotASample) {
  folder_.write("r.hea", "r 1 250\nr.dat 16\n");
  folder_.write("r.dat", std::string{"\x01\x00\x02\x00\x03", 5});
  EXPECT_THAT(imported("r").record.channels.at(0).samples, ElementsAre(1, 2));
}

TEST_F(ReadWfdb, aLongFileIsReadAsFarAsStated) {
  folder_.write("r.hea", "r 1 250 1\nr.dat 16 200 16 0 1 1\n");
  folder_.write("r.dat", std::string{"\x01\x00\x02\x00", 4});
  const auto result = imported("r");
  EXPECT_THAT(result.record.channels.at(0).samples, ElementsAre(1));
  EXPECT_THAT(sentences(result, Severity::info), testing::Contains(HasSubstr("longer than")));
  EXPECT_TRUE(errors(result).empty());
}

TEST_F(ReadWfdb, skewedSamplesLieBeforeTheRecord) {
  folder_.write("r.hea", "r 1 250 3\nr.dat 16:1 200 16 0 1 6\n");
  folder_.write("r.dat", std::string{"\x01\x00\x02\x00\x03\x00", 6});
  const auto result = imported("r");
  EXPECT_THAT(result.record.channels.at(0).samples, ElementsAre(2, 3));
  EXPECT_TRUE(errors(result).empty()); // header(5): the checksum includes them
}

TEST_F(ReadWfdb, otherFormsAreReportedAndTheRestIsRead) {
  folder_.write("r.hea", "r 4 250 2\na.dat 8\nb.dat 16x2\nc.dat 16\nd.dat 212\n");
  for (const auto* name : {"a.dat", "b.dat", "c.dat", "d.dat"}) {
    folder_.write(name, std::string{"\x01\x00\x02\x00", 4});
  }
  const auto result = imported("r");
  EXPECT_EQ(result.record.channels.size(), 2U);
  ASSERT_EQ(errors(result).size(), 2U);
  EXPECT_THAT(errors(result)[0], HasSubstr("format 8, which is not supported"));
  EXPECT_THAT(errors(result)[1], HasSubstr("has 2 samples where others have one"));
}

TEST_F(ReadWfdb, missingFilesAreReported) {
  folder_.write("r.hea", "r 2 250 2\ngone.dat 16\nr.dat 212\n");
  folder_.write("r.dat", kTwoSamples);
  const auto result = imported("r");
  EXPECT_EQ(result.record.channels.size(), 1U);
  ASSERT_EQ(errors(result).size(), 1U);
  EXPECT_THAT(errors(result)[0], HasSubstr("gone.dat cannot be read (no such file"));
}

TEST_F(ReadWfdb, filesElsewhereAreNotOpened) {
  folder_.write("secret.dat", kTwoSamples);
  for (const std::string name : {"../x/secret.dat", "/etc/hostname", "-", ".", ".."}) {
    folder_.write("r.hea", "r 1 250 2\n" + name + " 16\n");
    EXPECT_THAT(refusal("r"), HasSubstr("does not lie beside the header")) << name;
  }
}

TEST_F(ReadWfdb, nothingToReadIsASentence) {
  EXPECT_THAT(refusal("nowhere"), HasSubstr("no such file"));
  folder_.write("r.hea", "r 1 250 2\nr.dat 310\n");
  EXPECT_THAT(refusal("r"), HasSubstr("format 310"));
  folder_.write("r.hea", "r 0 250 2\n");
  EXPECT_THAT(refusal("r"), HasSubstr("neither signals nor remarks"));
  folder_.write("r.atr", word(28, 250) + aux("(N") + endMark());
  EXPECT_EQ(imported("r").record.entries.size(), 1U);
}

TEST_F(ReadWfdb, aTimeOfDayWithoutADateIsKeptAsSuch) {
  folder_.write("r.hea", "r 1 250 2 23:59:30\nr.dat 212\n");
  folder_.write("r.dat", kTwoSamples);
  const auto result = imported("r");
  EXPECT_FALSE(result.record.header.recorded);
  EXPECT_EQ(result.record.header.clock.state, ClockState::unset);
  EXPECT_EQ(result.timeOfDay, std::chrono::seconds{86370});
}

TEST_F(ReadWfdb, hugeNumbersInTheHeaderDoNoHarm) {
  folder_.write("r.dat", kTwoSamples);
  folder_.write("r.atr", word(28, 1) + aux("(VF") + endMark());
  for (const std::string header :
       {"r 2 250 18446744073709551615\nr.dat 212\nr.dat 212\n", "r 1 1e-300 2\nr.dat 212\n",
        "r 1 1e300 2\nr.dat 212\n",
        "r 1 250 2\nr.dat 212:18446744073709551615+18446744073709551615\n",
        "r 1 250 2\nr.dat 212+2 1e300(1e300)\n", "r 1 250 2\nr.dat 212 200 12 -2147483648\n"}) {
    folder_.write("r.hea", header);
    const auto result = read("r");
    EXPECT_TRUE(!result || result->record.channels.size() <= 2);
  }
}

/// Bytes that are nearly right: whole files with a few places changed, and pure noise.
TEST_F(ReadWfdb, randomBytesNeverCrash) {
  std::mt19937 random{418};
  const std::string header = "r 2 250 4 12:00:00 01/02/2026\r\n"
                             "r.dat 212x1:0+0 200(3)/mV 12 0 995 1 0 ECG\r\n"
                             "r.dat 212 200 12 0 1011 2 0 ECG\r\n# end\r\n";
  const std::string annotations = word(28, 18) + aux("(N") + word(22, 0) +
                                  aux("## time resolution: 250") + skip(70000) + word(32, 2) +
                                  word(33, 9) + endMark();
  const auto changed = [&](std::string bytes) {
    const auto changes = random() % 4;
    for (unsigned i = 0; i < changes; ++i) {
      bytes[random() % bytes.size()] = static_cast<char>(random() % 256);
    }
    return bytes;
  };
  int read = 0;
  for (int round = 0; round < 1000; ++round) {
    folder_.write("r.hea", changed(header));
    folder_.write("r.atr", changed(annotations));
    folder_.write("r.dat", changed(kTwoSamples + kTwoSamples + kTwoSamples + kTwoSamples));
    const auto result = readWfdb(folder_.path() / "r");
    read += result ? 1 : 0;
    for (const auto& channel : result ? result->record.channels : std::vector<Channel>{}) {
      for (const auto& block : channel.blocks) {
        ASSERT_LE(block.first + block.count, channel.samples.size());
      }
    }
  }
  EXPECT_GT(read, 100);
  for (int round = 0; round < 300; ++round) {
    std::string noise(random() % 300, '\0');
    for (auto& byte : noise) {
      byte = static_cast<char>(random() % 256);
    }
    folder_.write("r.hea", noise);
    EXPECT_FALSE(readWfdb(folder_.path() / "r"));
  }
}

} // namespace
} // namespace afterbeat
