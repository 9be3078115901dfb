/// What readers and importers say about damaged sources, in a German window.
#include "tests/window/window_fixture.h"

#include "app/papers/words.h"
#include "app/window/problems/problem_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <QTranslator>
#include <QTreeView>

#include <set>

namespace afterbeat::window {
namespace {

/// The language stands before the window is made.
struct WithGerman {
  WithGerman() : before(QLocale()) {
    EXPECT_TRUE(papers::loadLanguage(language, QStringLiteral("de")));
    QCoreApplication::installTranslator(&language);
    QLocale::setDefault(QLocale(QStringLiteral("de")));
  }
  ~WithGerman() {
    QCoreApplication::removeTranslator(&language);
    QLocale::setDefault(before);
  }
  QLocale before;
  QTranslator language;
};

class ReadingWords : public WithGerman, public WindowTest {
protected:
  static void expectGerman(const QString& text) {
    static const QRegularExpression english(QStringLiteral(
        "\\b(the|is|are|were|and|this|that|not|which|its|it|their|of|could|cannot|holds)\\b"));
    EXPECT_FALSE(text.isEmpty());
    EXPECT_FALSE(text.contains(english)) << text.toStdString();
    EXPECT_FALSE(text.contains(QRegularExpression(QStringLiteral("%\\d")))) << text.toStdString();
  }

  /// Every problem that is listed is German; gives their English sentences.
  std::set<std::string> listedInGerman() {
    std::set<std::string> english;
    const ProblemsView& view = *page_->panel()->problems();
    const auto check = [&](const QModelIndex& index) {
      expectGerman(index.data().toString());
      if (const Problem* problem = view.problems().problemAt(index)) {
        const std::string text = sentence(*problem);
        EXPECT_NE(index.data().toString().toStdString(), text);
        english.insert(text);
      }
    };
    const QAbstractItemModel& model = *view.tree()->model();
    for (int row = 0; row < model.rowCount(); ++row) {
      const QModelIndex top = model.index(row, 0);
      check(top);
      for (int inner = 0; inner < model.rowCount(top); ++inner) {
        check(model.index(inner, 0, top));
      }
    }
    return english;
  }

  /// Nothing could be read, and that is said in German.
  QString refusedInGerman(const QString& path) {
    open(path);
    EXPECT_EQ(window_.currentPage(), window_.refusalPage());
    const QString text = window_.refusalPage()->asText();
    expectGerman(text);
    return text;
  }
};

TEST_F(ReadingWords, ADamagedLogSpeaksGerman) {
  QByteArray log = smallDrill();
  const auto first = log.indexOf('\n') + 1;
  log.insert(first,
             "{\"t\": 1, garbage\n{\"t\":2,\"a\":1,\"a\":2}\n[1]\n{\"t\":3,\"n\":1e999}\n"
             "{\"t\":4,\"type\":\"samples\",\"channel\":\"x1\",\"count\":2,\"data\":\"AAAA\"}\n"
             "{\"t\":4,\"type\":\"samples\",\"channel\":\"x1\",\"count\":0,\"data\":\"\"}\n"
             "{\"t\":4,\"type\":\"samples\",\"channel\":\"x1\",\"count\":1,\"data\":7}\n");
  log.insert(first - 2, ",\"channels\":[{\"id\":\"x1\",\"quantity\":\"ecg\",\"unit\":\"mV\","
                        "\"rate_hz\":250,\"encoding\":\"int16le\"},{\"id\":\"x2\",\"quantity\":"
                        "\"ecg\",\"rate_hz\":0},{\"id\":\"x3\",\"quantity\":\"ecg\",\"rate_hz\":1,"
                        "\"scale\":\"a\"}]");
  open(fileWith("schaden.resuslog", log));
  EXPECT_GE(listedInGerman().size(), 9U);
}

TEST_F(ReadingWords, NotesWithFaultsSpeakGerman) {
  open(fileWith("notizen.csv", "Zeit;Ereignis;Wert\n0:10;Kompressionen Beginn;\n"
                               "0:12;Kompressionen Beginn;\n0:30;Analyse;\n0:40;;\n"
                               "spät;Schock;150\n;Schock;150\n0:50;Kuckuck;\n"
                               "0:55;Kompressionen Ende;\n0:56;Kompressionen Ende;\n"));
  EXPECT_GE(listedInGerman().size(), 7U);
}

TEST_F(ReadingWords, AWfdbRecordWithFaultsSpeaksGerman) {
  static_cast<void>(fileWith("kurz.dat", QByteArray(1000, '\1')));
  open(fileWith("kurz.hea", "kurz 3 250 1000 25:00:00 32/01/2026\n"
                            "kurz.dat 16 0 16 0 7 5 0 II\nfehlt.dat 16 200 16 0 0 0 0 V\n"
                            "anders.dat 80 200 16 0 0 0 0 I\nzuviel.dat 16 200 16 0 0 0 0 X\n"
                            "# Kommentar\n"));
  const auto english = listedInGerman();
  EXPECT_GE(english.size(), 9U);
  // Decimals as a German reader writes them: 3.000 would be three thousand.
  QString all;
  const QAbstractItemModel& model = *page_->panel()->problems()->tree()->model();
  for (int row = 0; row < model.rowCount(); ++row) {
    const QModelIndex top = model.index(row, 0);
    for (int inner = 0; inner < model.rowCount(top); ++inner) {
      all += model.index(inner, 0, top).data().toString();
    }
  }
  EXPECT_TRUE(all.contains("2,000 s von 4,000 s")) << all.toStdString();
}

TEST_F(ReadingWords, RefusalsSpeakGerman) {
  static_cast<void>(refusedInGerman(fileWith("leer.csv", "\n\n")));
  static_cast<void>(refusedInGerman(fileWith("eine.csv", "nur\neine\n")));
  static_cast<void>(refusedInGerman(fileWith("ohne.csv", "Name;Wort\nMöwe;Boot\n")));
  static_cast<void>(refusedInGerman(fileWith("teile.hea", "teile/2 1 250 100\n")));
  const QString nothing =
      refusedInGerman(fileWith("nichts.hea", "nichts 1 250 100\nfehlt.dat 16 200 16 0 0 0 0 II\n"));
  EXPECT_TRUE(nothing.contains("(Datei oder Ordner gibt es nicht)")) << nothing.toStdString();
  static_cast<void>(refusedInGerman(folder_.filePath("gibtesnicht.resuslog")));
}

} // namespace
} // namespace afterbeat::window
