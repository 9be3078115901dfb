/// What archives and guideline profiles say about trouble, in a German window.
#include "app/archive/database.h"
#include "app/archive/schema.h"
#include "app/papers/words.h"
#include "app/window/settings/figure_settings_actions.h"
#include "tests/window/season_fixture.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>
#include <QTreeWidget>

namespace afterbeat::window {

namespace {

/// The language stands before the window is made.
struct InGerman {
  InGerman() : before(QLocale()) {
    EXPECT_TRUE(papers::loadLanguage(language, QStringLiteral("de")));
    QCoreApplication::installTranslator(&language);
    QLocale::setDefault(QLocale(QStringLiteral("de")));
  }
  ~InGerman() {
    QCoreApplication::removeTranslator(&language);
    QLocale::setDefault(before);
  }
  QLocale before;
  QTranslator language;
};

class ArchiveWords : public InGerman, public ArchiveWindowTest {
protected:
  /// What is said of the attempt to open it.
  QString refusalOf(const QString& typed) {
    compare_->ways()->openTyped(typed);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !compare_->busy(); }, kPatience));
    return said();
  }
  [[nodiscard]] QString path() const { return QString::fromStdString(place().name); }
  void change(const char* sql) const {
    archive::Database(place(), archive::Access::write).run(QString::fromLatin1(sql));
  }
  QString profileRefusal(const QByteArray& json) {
    QString error;
    EXPECT_FALSE(window_.settings().useProfileFile(fileWith("own.json", json), &error));
    return error;
  }
};

TEST_F(ArchiveWords, AnArchiveThatCannotBeOpened) {
  EXPECT_EQ(refusalOf("/no/such.sqlite"), "Es gibt kein Archiv /no/such.sqlite.");
  EXPECT_EQ(refusalOf("service:a b"),
            QStringLiteral("„a b“ ist kein Name eines Dienstes: erlaubt sind nur Buchstaben, "
                           "Ziffern, „_“, „-“ und „.“."));
  EXPECT_TRUE(refusalOf(fileWith("text.sqlite", "Neither a database nor empty, and long enough."))
                  .startsWith("Das Archiv "));
  writeSeason(2);
  takeIn();
  change("UPDATE archive_schema SET version = 99");
  EXPECT_EQ(refusalOf(path()),
            QStringLiteral("Dieses Archiv hat ein neueres Afterbeat geändert (seine Tabellen haben "
                           "Version 99, dieses Programm kennt %1). Nichts wurde angerührt; nehmen "
                           "Sie das neuere Programm.")
                .arg(archive::schemaVersion()));
}

TEST_F(ArchiveWords, AGuidelineInItThatCannotBeReadIsSaidInBothItsSentences) {
  writeSeason(2);
  takeIn();
  change("UPDATE making SET profile_text = '{\"id\":\"x\"}'");
  desk_.takeIn(place(), {folder_.path()});
  ASSERT_TRUE(QTest::qWaitFor([this] { return !compare_->busy(); }, kPatience));
  EXPECT_EQ(said().toStdString(),
            "Das Archiv enthält eine Leitlinie, die sich nicht lesen lässt. „name“ fehlt.");
}

TEST_F(ArchiveWords, FilesThatCouldNotBeReadAreListed) {
  writeSeason(1);
  fileWith("empty.resuslog", "");
  fileWith("later.resuslog", R"({"resuslog":"7.5","record_id":"x"})");
  const auto listed = [this] {
    QStringList text;
    compare_->ways()->broken()->trigger();
    for (QDialog* dialog : window_.findChildren<QDialog*>()) {
      if (auto* list = dialog->findChild<QTreeWidget*>(); list && dialog->isVisible()) {
        for (int i = 0; i < list->topLevelItemCount(); ++i) {
          text << list->topLevelItem(i)->text(1);
        }
        dialog->close();
      }
    }
    return text;
  };
  const QStringList reasons{"Die Datei ist leer; es gibt nichts zu lesen.",
                            "Die Datei ist in Version \"7.5\" des Ereignisprotokolls geschrieben; "
                            "dieses Programm liest die "
                            "Versionen 1.x. Ein neueres Programm kann sie vielleicht lesen."};
  desk_.openFiles({folder_.path()});
  compare_->go()->trigger();
  settled();
  EXPECT_EQ(listed(), reasons);
  takeIn();
  EXPECT_EQ(listed(), reasons);
}

TEST_F(ArchiveWords, AnArchiveThatGoesWhileItIsLookedAt) {
  writeSeason(2);
  takeIn();
  // Its records are read, and it is gone before their figures are.
  ArchiveReading reading;
  reading.all = [this](const archive::ArchivePlace& place, const FigureSettings& settings) {
    auto read = readArchive(place, settings);
    EXPECT_TRUE(read && QFile::remove(path()));
    return read;
  };
  desk_.setReading(reading);
  desk_.openArchive(place());
  EXPECT_TRUE(QTest::qWaitFor([this] { return !desk_.busy() && !desk_.arranging(); }, kPatience));
  EXPECT_EQ(desk_.arranged().trouble, QStringLiteral("Es gibt kein Archiv %1.").arg(path()));
}

TEST_F(ArchiveWords, AProfileThatCannotBeUsed) {
  const auto inside = [](const char* sentence) {
    return QStringLiteral("Das Profil ist nicht brauchbar: %1 Die Zahlen bleiben, wie sie "
                          "waren.")
        .arg(QString::fromUtf8(sentence));
  };
  EXPECT_EQ(profileRefusal("{"), inside("Ab Zeile 1 ist das kein gültiges JSON."));
  EXPECT_EQ(profileRefusal(R"({"id":"a","name":"b","id":"c"})"),
            inside("„id“ steht zweimal in denselben Klammern."));
  EXPECT_EQ(
      profileRefusal(R"({"id":"a","name":"b","rate_per_min":{"low":0.5,"high":120,"source":"s"}})"),
      inside("„rate_per_min.low“ muss zwischen 1 und 400 liegen, ist aber 0,5."));
}

} // namespace

} // namespace afterbeat::window
