#include "importers/wfdb/wfdb_samples.h"

#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace afterbeat {
namespace {

using testing::ElementsAre;

/// Packs as signal(5) describes format 212, by arithmetic on the 24 bits of a pair.
std::string packed(const std::vector<int>& samples) {
  std::string bytes;
  for (std::size_t i = 0; i < samples.size(); i += 2) {
    const unsigned first = static_cast<unsigned>(samples[i] + 4096) % 4096U;
    const unsigned second =
        i + 1 < samples.size() ? static_cast<unsigned>(samples[i + 1] + 4096) % 4096U : 0U;
    const unsigned pair = first + second / 256U * 4096U; // the second one's 4 high bits
    bytes.push_back(static_cast<char>(pair % 256U));
    bytes.push_back(static_cast<char>(pair / 256U));
    if (i + 1 < samples.size()) {
      bytes.push_back(static_cast<char>(second % 256U));
    }
  }
  return bytes;
}

// Worked by hand from signal(5), format 212: the first sample is the low 12 bits of the first byte
// pair (low byte first); the second has the pair's high 4 bits as its high bits, and the next byte
// as its low 8 bits.
// Bytes E3 33 F3: pair 0x33E3, first 0x3E3 = 995, second 0x3F3 = 1011 (the first samples the header
// of record 100 states).
TEST(WfdbSamples, format212ByHand) {
  EXPECT_THAT(unpackSamples(SampleForm::packed12, "\xE3\x33\xF3", 2, 1), // NOLINT
              ElementsAre(ElementsAre(995, 1011)));
  // Bytes 80 FF F2: pair 0xFF80, first 0xF80 = 3968 - 4096 = -128, second 0xFF2 = 4082 - 4096 = -14
  // (the first samples the header of record 418 states).
  EXPECT_THAT(unpackSamples(SampleForm::packed12, "\x80\xFF\xF2", 2, 1),
              ElementsAre(ElementsAre(-128, -14)));
  // Bytes 00 78 FF: first 0x800 = -2048 (no value), second 0x7FF = 2047 (the upper rail).
  EXPECT_THAT(unpackSamples(SampleForm::packed12, std::string_view{"\x00\x78\xFF", 3}, 2, 1),
              ElementsAre(ElementsAre(-2048, 2047)));
}

TEST(WfdbSamples, format16ByHand) {
  EXPECT_THAT(unpackSamples(SampleForm::plain16,
                            std::string_view{"\x01\x00\xFF\xFF\x00\x80\xFF\x7F", 8}, 4, 1),
              ElementsAre(ElementsAre(1, -1, -32768, 32767)));
}

TEST(WfdbSamples, signalsTakeTurns) {
  EXPECT_THAT(unpackSamples(SampleForm::packed12, packed({1, 2, 3, 4, 5, 6, 7}), 7, 3),
              ElementsAre(ElementsAre(1, 4, 7), ElementsAre(2, 5), ElementsAre(3, 6)));
}

TEST(WfdbSamples, howManyABytesHold) {
  EXPECT_EQ(samplesIn(SampleForm::packed12, 0), 0U);
  EXPECT_EQ(samplesIn(SampleForm::packed12, 1), 0U);
  EXPECT_EQ(samplesIn(SampleForm::packed12, 2), 1U);
  EXPECT_EQ(samplesIn(SampleForm::packed12, 3), 2U);
  EXPECT_EQ(samplesIn(SampleForm::packed12, 5), 3U);
  EXPECT_EQ(samplesIn(SampleForm::plain16, 5), 2U);
}

TEST(WfdbSamples, whatWasPackedIsUnpacked) {
  EXPECT_TRUE(rc::check([](bool) {
    const auto samples = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-2048, 2048));
    const auto bytes = packed(samples);
    RC_ASSERT(samplesIn(SampleForm::packed12, bytes.size()) == samples.size());
    const auto dealt = unpackSamples(SampleForm::packed12, bytes, samples.size(), 1);
    RC_ASSERT(std::vector<int>(dealt[0].begin(), dealt[0].end()) == samples);
  }));
}

TEST(WfdbSamples, checksumIsASignedSixteenBitSum) {
  EXPECT_EQ(sampleChecksum({}), 0);
  EXPECT_EQ(sampleChecksum({32767, 1}), -32768);
  EXPECT_EQ(sampleChecksum({-32768, -1}), 32767);
  EXPECT_EQ(sampleChecksum({-128, 100, 3}), -25);
}

} // namespace
} // namespace afterbeat
