/// The report of a season, with names and without.
#include "app/archive/marked_steps.h"
#include "tests/window/season_fixture.h"

#include <QRegularExpression>

namespace afterbeat::window {

namespace {

class SeasonReportSaved : public ArchiveWindowTest {
protected:
  SeasonReportSaved() {
    QByteArray log = smallDrill();
    fileWith(
        "lantern.resuslog",
        log.replace(R"("kind":"drill",)",
                    R"("kind":"drill","team":"Night watch","device":{"serial":"K-99-SECRET"},)"));
  }
  /// The pseudonym of the only site; empty: none.
  static QString siteIn(const QByteArray& csv) {
    return QRegularExpression("Site [0-9A-Z]{4}-[0-9A-Z]{4}").match(csv).captured();
  }
};

TEST_F(SeasonReportSaved, NamesNobodyWhereThatWasAskedFor) {
  takeIn();
  ASSERT_TRUE(archive::shareStep(
      *archive::Archive::open(place()),
      {std::chrono::sys_days(std::chrono::year(2026) / 4 / 1), "Mole nine is trained"}));
  desk_.openArchive(place());
  settled();
  ASSERT_TRUE(
      QTest::qWaitFor([this] { return compare_->overTime()->steps().size() == 1; }, kPatience));
  const QList<const char*> identities{"South boathouse", "Night watch", "K-99-SECRET",
                                      "lantern",         "0b6f9f3e",    "2026-04-17"};
  const QByteArray named = writeReport("named.csv");
  for (const char* identity : identities) {
    EXPECT_TRUE(named.contains(identity)) << identity;
  }
  EXPECT_FALSE(said().contains("pseudonyms"));
  for (const char* file : {"r.csv", "r.html"}) {
    const QByteArray nameless = writeReport(file, true);
    for (const char* identity : identities + QList<const char*>{"Mole nine"}) {
      EXPECT_FALSE(nameless.contains(identity)) << file << ": " << identity;
    }
    EXPECT_TRUE(nameless.contains("Site ")) << file;
    EXPECT_TRUE(said().contains("no names, serials or free text")) << said().toStdString();
    EXPECT_TRUE(said().contains("the same in every report of this archive"));
  }
}

TEST_F(SeasonReportSaved, KeepsThePseudonymsOfAnArchiveAndMakesNewOnesForFiles) {
  takeIn();
  const QString ofArchive = siteIn(writeReport("a.csv", true));
  EXPECT_FALSE(ofArchive.isEmpty());
  EXPECT_EQ(siteIn(writeReport("b.csv", true)), ofArchive);
  desk_.openFiles({folder_.path()});
  settled();
  const QString ofFiles = siteIn(writeReport("c.csv", true));
  EXPECT_FALSE(ofFiles.isEmpty());
  EXPECT_NE(ofFiles, ofArchive);
  EXPECT_TRUE(said().contains("for this report alone")) << said().toStdString();
  EXPECT_NE(siteIn(writeReport("d.csv", true)), ofFiles);
}

TEST_F(SeasonReportSaved, IsNotWrittenWhereTheUserThinksBetterOfIt) {
  takeIn();
  answering([this] { pressShift(Qt::Key_Q); },
            [](QWidget& dialog) { QTest::keyClick(&dialog, Qt::Key_Escape); });
  EXPECT_FALSE(said().contains("report"));
}

} // namespace

} // namespace afterbeat::window
