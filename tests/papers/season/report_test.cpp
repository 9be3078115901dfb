#include "app/papers/season/report_page.h"
#include "app/papers/season/report_pages.h"
#include "app/papers/season/report_pdf.h"
#include "app/papers/season/season_pictures.h"
#include "app/papers/season/without_identity.h"
#include "core/compare/filter.h"
#include "tests/papers/charts/season_example.h"

#include <gtest/gtest.h>

#include <QFile>

#include <algorithm>
#include <map>
#include <set>

namespace afterbeat::papers {
namespace {

SeasonReport reportOf(std::size_t count, const QString& language = QStringLiteral("en")) {
  const Season season = test::exampleSeason(count);
  ReportSettings settings;
  settings.language = language;
  return makeSeasonReport(season, everything(season), settings);
}

/// Compares with the file of that name, or writes it where AFTERBEAT_WRITE_EXPECTED is set.
void expectAs(const char* name, const QString& text) {
  const QString path =
      QStringLiteral(AFTERBEAT_SOURCE_DIR "/tests/papers/expected/%1").arg(QLatin1String(name));
  QFile file(path);
  if (qEnvironmentVariableIsSet("AFTERBEAT_WRITE_EXPECTED")) {
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text.toUtf8());
    return;
  }
  ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name;
  const QStringList expected = QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'));
  const QStringList made = text.split(QLatin1Char('\n'));
  for (qsizetype i = 0; i < std::max(expected.size(), made.size()); ++i) {
    ASSERT_EQ(made.value(i).toStdString(), expected.value(i).toStdString())
        << name << ", line " << i + 1;
  }
}

TEST(SeasonReport, SaysExactlyThis) {
  expectAs("season-40-en.txt", reportOf(40).asText());
  expectAs("season-4-de.txt", reportOf(4, QStringLiteral("de")).asText());
}

TEST(SeasonReport, KindsHavePartsOfTheirOwnAndSitesTheOrderOfNames) {
  const SeasonReport report = reportOf(400);
  QStringList titles;
  for (const ReportSection& section : report.sections) {
    titles << section.title;
    const bool drills = section.title.endsWith(QStringLiteral("drills"));
    EXPECT_EQ(section.marks.contains(QStringLiteral("DRILL")), drills)
        << section.title.toStdString();
    EXPECT_TRUE(section.marks.contains(QStringLiteral("SYNTHETIC")));
  }
  EXPECT_EQ(titles.join(QLatin1Char('|')).toStdString(),
            "Season at a glance: rescues|Boathouse East: rescues|Ferry terminal: rescues|"
            "Lido: rescues|Rowing club Schilfbucht: rescues|Site not recorded: rescues|"
            "Season at a glance: drills|Boathouse East: drills|Ferry terminal: drills|"
            "Lido: drills|Rowing club Schilfbucht: drills|Site not recorded: drills");
}

/// In every table a share that says little alone is followed by length and shocks.
TEST(SeasonReport, TheHandsOffShareIsFollowedByLengthAndShocks) {
  const auto& measures = reportMeasures();
  const auto at = std::find(measures.begin(), measures.end(), MeasureId::handsOffFraction);
  ASSERT_LT(at - measures.begin() + 2, static_cast<std::ptrdiff_t>(measures.size()));
  EXPECT_EQ(at[1], MeasureId::arrestTime);
  EXPECT_EQ(at[2], MeasureId::shocksDelivered);
}

TEST(SeasonReport, EveryTableCountsEveryRecord) {
  const SeasonReport report = reportOf(400);
  int rows = 0;
  for (const ReportSection& section : report.sections) {
    int records = -1;
    for (const ReportBlock& block : section.blocks) {
      if (const auto* text = std::get_if<QString>(&block); text != nullptr && records < 0) {
        records = text->section(QLatin1Char(' '), 0, 0).toInt();
      }
      if (const auto* table = std::get_if<ReportTable>(&block)) {
        for (const QStringList& row : table->rows) {
          ++rows;
          EXPECT_EQ(row[1].toInt() + row[5].toInt() + row[6].toInt(), records)
              << section.title.toStdString() << ": " << row.join(" | ").toStdString();
        }
      }
    }
  }
  EXPECT_GT(rows, 80);
}

/// No line leaves its page or lies on another one; each section begins a page.
TEST(ReportPages, NothingOverlapsOrLeavesThePage) {
  QFont font(QStringLiteral("Inter"));
  font.setPixelSize(10);
  const Lettering lettering(font);
  const QSizeF size(595, 842);
  for (const char* language : {"en", "de"}) {
    for (const std::size_t count : {0U, 1U, 4U, 40U, 400U}) {
      const SeasonReport report = reportOf(count, QString::fromLatin1(language));
      for (const ReportPage& page : setInPages(report, size, lettering)) {
        std::vector<QRectF> boxes;
        for (const ReportLine& line : page.lines) {
          const double wide = lettering.width(line.text, line.size, line.weight);
          const QRectF box(line.at.x(), line.at.y() - 0.73 * line.size, wide, 0.75 * line.size);
          EXPECT_GE(box.left(), 30) << line.text.toStdString();
          EXPECT_LE(box.right(), size.width() - 30) << line.text.toStdString();
          EXPECT_LE(box.bottom(), size.height() - 30) << line.text.toStdString();
          for (const QRectF& other : boxes) {
            EXPECT_FALSE(box.intersects(other)) << language << count << line.text.toStdString();
          }
          boxes.push_back(box);
        }
        for (const ReportChartPlace& chart : page.charts) {
          EXPECT_LE(chart.box.bottom(), size.height() - 40);
          for (const QRectF& box : boxes) {
            EXPECT_FALSE(box.intersects(chart.box)) << chart.chart->title.toStdString();
          }
        }
      }
    }
  }
}

TEST(ReportPages, ASiteIsOnePage) {
  QFont font(QStringLiteral("Inter"));
  font.setPixelSize(10);
  const SeasonReport report = reportOf(400);
  const auto pages = setInPages(report, {595, 842}, Lettering(font));
  for (const ReportPage& page : pages) {
    const QString title = page.lines[page.frames.size()].text;
    EXPECT_FALSE(title.contains(QStringLiteral(": rescues (continued)")) &&
                 !title.startsWith(QStringLiteral("Season")))
        << title.toStdString();
  }
}

/// How it was made stands together where a page holds all of it.
TEST(ReportPages, TheMethodIsNotBroken) {
  QFont font(QStringLiteral("Inter"));
  font.setPixelSize(10);
  for (const char* language : {"en", "de"}) {
    for (const std::size_t count : {0U, 1U, 4U, 40U, 400U}) {
      const SeasonReport report = reportOf(count, QString::fromLatin1(language));
      const QString title = report.words("How it was made");
      int titles = 0;
      for (const ReportPage& page : setInPages(report, {595, 842}, Lettering(font))) {
        for (const ReportLine& line : page.lines) {
          titles += line.text == title ? 1 : 0;
          EXPECT_NE(line.text, report.words("%1 (continued)").arg(title)) << language << count;
        }
      }
      EXPECT_EQ(titles, 1) << language << count;
    }
  }
}

TEST(ReportPage, WhatRecordsSayIsNoMarkup) {
  Season season = test::exampleSeason(40);
  for (RecordFacts& record : season.records) {
    record.site = "<script>alert(1)</script>";
    record.file = "<img src=x onerror=alert(1)>";
    record.team = "\"><svg onload=alert(1)>";
  }
  const QByteArray page =
      reportAsPage(makeSeasonReport(season, everything(season), ReportSettings{}));
  EXPECT_FALSE(page.contains("<script"));
  EXPECT_FALSE(page.contains("<img"));
  EXPECT_FALSE(page.contains("<svg onload"));
  EXPECT_TRUE(page.contains("&lt;script&gt;"));
  for (const char* outside : {"http://127", "src=\"", "@import", "url("}) {
    EXPECT_FALSE(page.contains(outside)) << outside;
  }
}

TEST(WithoutIdentity, KeepsFiguresAndGroupsAndNoName) {
  const Season season = test::exampleSeason(400);
  const Pseudonyms pseudonyms("sixteen bytes ok");
  const Season bare = withoutIdentity(season, pseudonyms);
  ASSERT_EQ(bare.records.size(), season.records.size());
  std::map<std::string, std::string> sites;
  std::set<std::string> names;
  for (std::size_t i = 0; i < bare.records.size(); ++i) {
    const RecordFacts &before = season.records[i], &after = bare.records[i];
    EXPECT_EQ(before.site.empty(), after.site.empty()) << "not recorded stays that";
    const auto known = sites.emplace(before.site, after.site);
    EXPECT_EQ(known.first->second, after.site) << "one site, one pseudonym";
    names.insert(after.file);
    EXPECT_EQ(after.id, "");
    EXPECT_EQ(after.device, "");
    EXPECT_EQ(after.number, 0);
    if (after.day) {
      EXPECT_EQ(static_cast<unsigned>(std::chrono::year_month_day(*after.day).day()), 1U);
    }
  }
  EXPECT_EQ(names.size(), bare.records.size()) << "no two records of one name";
  EXPECT_EQ(&season.column(MeasureId::longestPause), &bare.column(MeasureId::longestPause));
}

/// HMAC-SHA256 of "site", a zero byte and "Ferry terminal" under this key, computed with Python's
/// hmac: its first 40 bits in Crockford's base 32.
TEST(WithoutIdentity, PseudonymsAreAKeyedHash) {
  EXPECT_EQ(Pseudonyms("sixteen bytes ok").site("Ferry terminal"), "Site 4DWV-78PM");
  EXPECT_NE(Pseudonyms("sixteen bytes ok").site("x"), Pseudonyms("sixteen bytes ko").site("x"));
  const std::string site = Pseudonyms("sixteen bytes ok").site("x");
  const std::string team = Pseudonyms("sixteen bytes ok").team("x");
  EXPECT_NE(site.substr(5), team.substr(5)) << "a team is not known by its site's name";
}

TEST(SeasonPictures, HaveNamesForFiles) {
  const Season season = test::exampleSeason(40);
  const auto pictures = seasonPictures(season, everything(season), ReportSettings{});
  std::set<QString> names;
  for (const SeasonPicture& picture : pictures) {
    names.insert(picture.name);
    for (const QChar c : picture.name) {
      EXPECT_TRUE(c == QLatin1Char('-') || (c >= QLatin1Char('a') && c <= QLatin1Char('z')))
          << picture.name.toStdString();
    }
  }
  EXPECT_EQ(names.size(), pictures.size());
  EXPECT_GT(names.size(), 30U);
  EXPECT_TRUE(names.contains(QStringLiteral("rescue-longest-pause-by-site")));
  EXPECT_TRUE(names.contains(QStringLiteral("drill-from-call-stages")));
}

} // namespace
} // namespace afterbeat::papers
