#include "importers/wfdb/signal_meaning.h"
#include "importers/wfdb/wfdb_header.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using testing::HasSubstr;

WfdbHeader parsed(std::string_view text, std::vector<Problem>& problems) {
  auto header = parseWfdbHeader(text, problems);
  EXPECT_TRUE(header) << header.error().sentence();
  return header.value_or(WfdbHeader{});
}

std::string refusal(std::string_view text) {
  std::vector<Problem> problems;
  const auto header = parseWfdbHeader(text, problems);
  EXPECT_FALSE(header) << text;
  return header ? std::string{} : header.error().sentence();
}

TEST(WfdbHeader, everyFieldOfTheRecordLine) {
  std::vector<Problem> problems;
  const auto header = parsed("case7 2 360.5/3.6e2(12.5) 650000 13:5:0.25 25/4/1989\n"
                             "a.dat 212\n"
                             "a.dat 212\n",
                             problems);
  EXPECT_EQ(header.name, "case7");
  EXPECT_EQ(header.frequency, 360.5);
  EXPECT_EQ(header.counterFrequency, 360);
  EXPECT_EQ(header.baseCounter, 12.5);
  EXPECT_EQ(header.samples, 650000U);
  // header(5): 13:5:0 is 1:05 pm; 25/4/1989 is 25 April 1989.
  EXPECT_EQ(header.baseTime, hours{13} + minutes{5} + std::chrono::milliseconds{250});
  EXPECT_EQ(header.baseDate,
            (std::chrono::year_month_day{std::chrono::year{1989}, std::chrono::month{4},
                                         std::chrono::day{25}}));
  EXPECT_EQ(header.signals.size(), 2U);
  EXPECT_TRUE(problems.empty());
}

TEST(WfdbHeader, defaultsAreThoseOfTheManual) {
  std::vector<Problem> problems;
  const auto header = parsed("r 2\nx.dat 16\nx.dat 16 0 12 7\n", problems);
  // header(5): 250 samples per second, number of samples unspecified.
  EXPECT_EQ(header.frequency, 250);
  EXPECT_EQ(header.samples, 0U);
  EXPECT_FALSE(header.baseTime);
  const auto& bare = header.signals.at(0);
  EXPECT_EQ(bare.gain, 200);
  EXPECT_FALSE(bare.calibrated);
  EXPECT_EQ(bare.units, "mV");
  EXPECT_EQ(bare.baseline, 0);
  EXPECT_EQ(bare.samplesPerFrame, 1);
  EXPECT_EQ(bare.description, "record r, signal 0");
  // A gain of zero counts as missing; the baseline is the ADC zero.
  const auto& zeroGain = header.signals.at(1);
  EXPECT_EQ(zeroGain.gain, 200);
  EXPECT_FALSE(zeroGain.calibrated);
  EXPECT_EQ(zeroGain.baseline, 7);
}

TEST(WfdbHeader, everyFieldOfASignalLine) {
  std::vector<Problem> problems;
  const auto header = parsed("r 1 250 10\n"
                             "file_1.dat 16x4:3+512 12.5(-300)/mmHg 14 8 -5 -28468 0 Arterial "
                             "pressure, left\r\n",
                             problems);
  const auto& signal = header.signals.at(0);
  EXPECT_EQ(signal.line, 2);
  EXPECT_EQ(signal.file, "file_1.dat");
  EXPECT_EQ(signal.format, 16);
  EXPECT_EQ(signal.samplesPerFrame, 4);
  EXPECT_EQ(signal.skew, 3U);
  EXPECT_EQ(signal.byteOffset, 512U);
  EXPECT_EQ(signal.gain, 12.5);
  EXPECT_EQ(signal.baseline, -300);
  EXPECT_EQ(signal.units, "mmHg");
  EXPECT_EQ(signal.resolution, 14);
  EXPECT_EQ(signal.adcZero, 8);
  EXPECT_EQ(signal.initialValue, -5);
  EXPECT_EQ(signal.checksum, -28468);
  EXPECT_EQ(signal.description, "Arterial pressure, left");
}

TEST(WfdbHeader, commentsAndEmptyLinesAndCarriageReturns) {
  std::vector<Problem> problems;
  const auto header = parsed("# before\r\n\r\nr 1 250\r\n\r\n  # between\r\n"
                             "r.dat 212 200 12 0 -128 1830 0 ECG\r\n# after\r\n",
                             problems);
  EXPECT_THAT(header.comments, testing::ElementsAre("before", "between", "after"));
  EXPECT_EQ(header.signals.at(0).description, "ECG");
  EXPECT_EQ(header.signals.at(0).line, 6);
  EXPECT_TRUE(problems.empty());
}

TEST(WfdbHeader, whatCannotBeARecordIsRefusedInASentence) {
  EXPECT_THAT(refusal(""), HasSubstr("empty"));
  EXPECT_THAT(refusal("# only a comment\n"), HasSubstr("empty"));
  EXPECT_THAT(refusal("time;what\n95;shock\n"), HasSubstr("not a WFDB record"));
  EXPECT_THAT(refusal("r two 250\n"), HasSubstr("not a WFDB record"));
  EXPECT_THAT(refusal("r -1 250\n"), HasSubstr("not a WFDB record"));
  EXPECT_THAT(refusal("r 99999999 250\n"), HasSubstr("not a WFDB record"));
  EXPECT_THAT(refusal("r/3 2 250 1000\na 500\nb 500\n"), HasSubstr("segments"));
  EXPECT_THAT(refusal("r 1 0\nr.dat 16\n"), HasSubstr("sampling frequency"));
  EXPECT_THAT(refusal("r 1 -250\nr.dat 16\n"), HasSubstr("sampling frequency"));
  EXPECT_THAT(refusal("r 1 nan\nr.dat 16\n"), HasSubstr("sampling frequency"));
}

TEST(WfdbHeader, badSignalLinesAreReportedWithTheirNumber) {
  for (const std::string line :
       {"r.dat", "r.dat x", "r.dat 16x0", "r.dat 16:", "r.dat 16+-4", "r.dat 16 abc",
        "r.dat 16 200(5", "r.dat 16 200(a)", "r.dat 16 200 12 zero", "r.dat 16 1e-300",
        "r.dat 16 200 12 0 0 12.5"}) {
    std::vector<Problem> problems;
    const auto header = parsed("r 1 250 10\n" + line + "\n", problems);
    ASSERT_EQ(problems.size(), 1U) << line;
    EXPECT_EQ(problems[0].line, 2) << line;
    EXPECT_EQ(problems[0].severity, Severity::error) << line;
    EXPECT_FALSE(header.signals.at(0).valid) << line;
  }
}

TEST(WfdbHeader, tooFewAndTooManySignalLines) {
  std::vector<Problem> few;
  EXPECT_FALSE(parsed("r 2 250 10\nr.dat 16\n", few).signals.at(0).valid);
  EXPECT_THAT(sentence(few.at(0)), HasSubstr("announces 2 signals and describes 1"));
  std::vector<Problem> many;
  EXPECT_EQ(parsed("r 1 250 10\nr.dat 16\nr.dat 16\n", many).signals.size(), 1U);
  EXPECT_EQ(many.at(0).severity, Severity::info);
}

TEST(WfdbHeader, unusableTimesAndDatesAreLeftOut) {
  for (const std::string rest : {"25:00:00 1/1/2020", "12:60:00 1/1/2020", "12:00 1/1/2020",
                                 "x 1/1/2020", "12:00:60 1/1/2020"}) {
    std::vector<Problem> problems;
    EXPECT_FALSE(parsed("r 0 250 10 " + rest + "\n", problems).baseTime) << rest;
    EXPECT_EQ(problems.size(), 1U) << rest;
  }
  for (const std::string date : {"31/2/2020", "1/13/2020", "2020-01-01", "1/1/"}) {
    std::vector<Problem> problems;
    EXPECT_FALSE(parsed("r 0 250 10 12:00:00 " + date + "\n", problems).baseDate) << date;
    EXPECT_EQ(problems.size(), 1U) << date;
  }
}

TEST(WfdbHeader, isToldApartFromOtherText) {
  EXPECT_TRUE(looksLikeWfdbHeader("418 2 250 525000\r\n418.dat 212 200 12 0 -128 1830 0 ECG\r\n"));
  EXPECT_TRUE(looksLikeWfdbHeader("# remark\n100 1 360\n100.dat 16\n"));
  EXPECT_TRUE(looksLikeWfdbHeader("long/2 2 250 1000\na 500\nb 500\n"));
  EXPECT_FALSE(looksLikeWfdbHeader("95\t2\tshock\n97\t3\tshock\n"));
  EXPECT_FALSE(looksLikeWfdbHeader("time what\n95 shock\n"));
  EXPECT_FALSE(looksLikeWfdbHeader("{\"resuslog\":\"1.0\"}\n"));
  EXPECT_FALSE(looksLikeWfdbHeader(""));
}

TEST(SignalMeaning, unitsInUcum) {
  EXPECT_EQ(ucumUnit("mV"), "mV");
  EXPECT_EQ(ucumUnit("uV"), "uV");
  EXPECT_EQ(ucumUnit("\u00b5V"), "uV");
  EXPECT_EQ(ucumUnit("mmHg"), "mm[Hg]");
  EXPECT_EQ(ucumUnit("Ohms"), "Ohm");
  EXPECT_EQ(ucumUnit("furlongs per day"), "{furlongs_per_day}");
}

TEST(SignalMeaning, quantities) {
  EXPECT_EQ(quantityOf("MLII", "mV"), "ecg");
  EXPECT_EQ(quantityOf("ECG", "uV"), "ecg");
  EXPECT_EQ(quantityOf("chest impedance", "Ohm"), "impedance");
  EXPECT_EQ(quantityOf("RESP", "mV"), "respiration");
  EXPECT_EQ(quantityOf("CO2", "mm[Hg]"), "capnogram");
  EXPECT_EQ(quantityOf("ABP", "mm[Hg]"), "pressure");
  EXPECT_EQ(quantityOf("PLETH", "mV"), "pleth");
  EXPECT_EQ(quantityOf("EEG C3", "uV"), "other");
  EXPECT_EQ(quantityOf("acceleration z", "m/s2"), "acceleration");
}

TEST(CleanText, keepsUtf8AndRescuesTheRest) {
  EXPECT_EQ(cleanText("  two words \t"), "two words");
  EXPECT_EQ(cleanText("M\u00fcller \U0001F600"), "M\u00fcller \U0001F600");
  EXPECT_EQ(cleanText("M\xFCller"), "M\u00fcller");           // Latin-1
  EXPECT_EQ(cleanText("\xED\xA0\x80"), "\u00ed\u00a0\u0080"); // a lone surrogate
  EXPECT_EQ(cleanText(std::string_view{"a\0b", 3}), "a b");
}

} // namespace
} // namespace afterbeat
