#include "app/papers/said.h"

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

namespace afterbeat::papers {
namespace {

/// Neighbouring string literals of a C++ text, joined.
QStringList literalsOf(const QString& text) {
  static const QRegularExpression joined(QStringLiteral(R"re((?:"(?:[^"\\\n]|\\.)*"\s*)+)re"));
  static const QRegularExpression single(QStringLiteral(R"re("((?:[^"\\\n]|\\.)*)")re"));
  QStringList all;
  auto groups = joined.globalMatch(text);
  while (groups.hasNext()) {
    QString literal;
    auto parts = single.globalMatch(groups.next().captured());
    while (parts.hasNext()) {
      literal += parts.next().captured(1);
    }
    all << literal;
  }
  return all;
}

/// Every sentence of core/compare is among the texts that are collected for translators.
TEST(Said, EverySentenceOfTheCoreIsThereForTranslators) {
  QFile collected(QStringLiteral(AFTERBEAT_SOURCE_DIR "/app/papers/compare_texts.cpp"));
  ASSERT_TRUE(collected.open(QIODevice::ReadOnly));
  const QStringList known = literalsOf(QString::fromUtf8(collected.readAll()));
  int seen = 0;
  QDirIterator files(QStringLiteral(AFTERBEAT_SOURCE_DIR "/core/compare"), {"*.cpp"}, QDir::Files);
  while (files.hasNext()) {
    QFile file(files.next());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    for (const QString& literal : literalsOf(QString::fromUtf8(file.readAll()))) {
      if (literal.contains(QLatin1String("%1")) ||
          (literal.endsWith(QLatin1Char('.')) && literal.contains(QLatin1Char(' ')))) {
        ++seen;
        EXPECT_TRUE(known.contains(literal)) << literal.toStdString();
      }
    }
  }
  EXPECT_GT(seen, 40);
}

TEST(Said, EveryTitleIsTranslated) {
  const Words german = Words::inLanguage(QStringLiteral("de"));
  for (std::size_t i = 0; i < static_cast<std::size_t>(MeasureId::count_); ++i) {
    const auto id = static_cast<MeasureId>(i);
    EXPECT_NE(titleOf(id, german), titleOf(id, Words{})) << measureInfo(id).title;
  }
}

TEST(Said, PartsAreWrittenInTheReadersLanguage) {
  const Saying saying{
      "Typically the longest stage is from %1 to %2: %3 in the middle of %4 records.",
      {Term{"call"}, Term{"first shock"}, Amount{12.34, AmountKind::seconds},
       Amount{1234, AmountKind::count}}};
  EXPECT_EQ(said(saying, Words{}), "Typically the longest stage is from call to first shock: 12.3 "
                                   "s in the middle of 1234 records.");
  EXPECT_EQ(said(saying, Words::inLanguage(QStringLiteral("de"))),
            QString::fromUtf8("Gewöhnlich ist der längste Abschnitt der von „Notruf“ bis „erster "
                              "Schock“: 12,3 s in der Mitte von 1234 Aufzeichnungen."));
}

TEST(Said, TextOfARecordCannotTakeAnotherPlace) {
  const Saying saying{"%1: %2, far above what is usual here (middle %3).",
                      {std::string("%3%2\n\x1b"), std::string("b"), std::string("c")}};
  EXPECT_TRUE(said(saying, Words{}).startsWith(QLatin1String("%3%2")));
  EXPECT_TRUE(said(saying, Words{})
                  .endsWith(QLatin1String(": b, far above what is usual here "
                                          "(middle c).")));
}

TEST(Said, DaysAndLengths) {
  const Saying saying{"%1: %2, far above what is usual here (middle %3).",
                      {std::chrono::sys_days(std::chrono::year(2026) / 4 / 17),
                       Amount{215, AmountKind::seconds}, Amount{0.845, AmountKind::share}}};
  EXPECT_EQ(
      said(saying, Words::inLanguage(QStringLiteral("de"))),
      QString::fromUtf8("17. Apr. 2026: 3 min 35 s, weit über dem hier Üblichen (Mitte 85 %)."));
}

} // namespace
} // namespace afterbeat::papers
