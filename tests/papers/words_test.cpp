#include "app/papers/unbroken.h"
#include "app/papers/words.h"

#include <gtest/gtest.h>

#include <QStringList>

namespace afterbeat::papers {
namespace {

Duration s(double value) {
  return *durationFromSeconds(value);
}

TEST(Words, LengthsAreReadable) {
  const Words say;
  struct Case {
    double seconds;
    const char* words;
  };
  for (const Case& one : {Case{0, "0 s"}, Case{1.5, "1.5 s"}, Case{1.96, "2 s"}, Case{28.4, "28 s"},
                          Case{59.4, "59 s"}, Case{59.6, "1 min"}, Case{60, "1 min"},
                          Case{215, "3 min 35 s"}, Case{3600, "1 h"}, Case{4320, "1 h 12 min"}}) {
    EXPECT_EQ(say.length(s(one.seconds)).toStdString(), one.words) << one.seconds;
  }
  EXPECT_EQ(say.length(s(-12)), QStringLiteral("−12 s"));
}

TEST(Words, NumbersStayWithTheirUnits) {
  struct Case {
    const char *text, *stay;
  };
  for (const Case& one : {
           Case{"after 8 min 18 s it was on", "after 8~min 18~s it was on"},
           Case{"42 % of 12,5 mm", "42~% of 12,5~mm"},
           Case{"110.5 a minute, 108 je Minute", "110.5~a~minute, 108~je~Minute"},
           Case{"in 3 sites, 5 minutes, 7 shocks", "in 3 sites, 5 minutes, 7 shocks"},
       }) {
    EXPECT_EQ(unbroken(QString::fromUtf8(one.text)).replace(QChar(QChar::Nbsp), '~'),
              QString::fromUtf8(one.stay));
  }
}

TEST(Words, ShortLengthsAreRoundedToMinutes) {
  const Words say;
  EXPECT_EQ(say.shortLength(s(662)), "11 min");
  EXPECT_EQ(say.shortLength(s(719.4)), "12 min");
  EXPECT_EQ(say.shortLength(s(58)), "58 s");
  EXPECT_EQ(say.shortLength(s(7260)), "2 h 1 min");
}

TEST(Words, ASmallShareIsNotNoneAndALargeOneNotAll) {
  const Words say;
  EXPECT_EQ(say.percent(0), "0 %");
  EXPECT_EQ(say.percent(0.001), "less than 1 %");
  EXPECT_EQ(say.percent(0.333), "33 %");
  EXPECT_EQ(say.percent(0.999), "99 %");
  EXPECT_EQ(say.percent(1), "100 %");
}

TEST(Words, GermanHasItsOwnDecimalMarkDateAndNumbers) {
  const Words say = Words::inLanguage("de");
  EXPECT_EQ(say.language(), "de");
  EXPECT_EQ(say.number(1.5, 1), "1,5");
  EXPECT_EQ(say.number(20000), "20000");
  EXPECT_EQ(say.date(*parseWallTime("2026-03-14T23:30:00+01:00")),
            QStringLiteral("Samstag, 14. März 2026"));
  EXPECT_EQ(say.count(5), QStringLiteral("fünf"));
  EXPECT_EQ(say.list({"a", "b", "c"}), "a, b und c");
}

TEST(Words, EnglishStandsForALanguageThatHasNoWords) {
  const Words say = Words::inLanguage("xx");
  EXPECT_EQ(say.language(), "en");
  EXPECT_EQ(say.date(*parseWallTime("2026-03-14T23:30:00+01:00")), "Saturday 14 March 2026");
  EXPECT_EQ(say.count(12), "twelve");
  EXPECT_EQ(say.count(13), "13");
  EXPECT_EQ(say.list({"a"}), "a");
}

} // namespace
} // namespace afterbeat::papers
