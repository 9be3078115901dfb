#include "app/papers/handover_sheet.h"
#include "app/papers/sheet_text.h"
#include "tests/papers/example_records.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>

namespace afterbeat::papers {
namespace {

/// Output of one of the poppler tools.
QString run(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString();
  EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  return QString::fromUtf8(process.readAllStandardOutput());
}

struct Case {
  const char* name;
  Record record;
  /// Words expected in English and in German.
  QStringList english, german;
};

std::vector<Case> cases() {
  return {
      {"full",
       test::fullRescue(),
       {"11 min", "09:19:57", "3 min 35 s", "47 %", "28 s", "45 s"},
       {"11 min", "09:19:57", "47 %", "Schock 3"}},
      {"empty",
       test::emptyRecord(),
       {"not recorded", "Nothing in this record"},
       {"nicht aufgezeichnet"}},
      {"drill", test::drill(), {"DRILL", "SYNTHETIC"}, {QStringLiteral("ÜBUNG"), "SYNTHETISCH"}},
      {"child",
       test::childWithoutShock(),
       {"Child", "none", "changed 09:12:54"},
       {"Kind", "keiner"}},
      {"cut off", test::cutOff(), {"stopped without being closed", "46 s"}, {"brach ab"}},
      {"overfull", test::overfull(), {"30 analyses", "30 ×", "33 min"}, {"30 Analysen"}},
      {"long", test::longRescue(3), {"rows are left out", "3 h"}, {"Zeilen fehlen hier"}},
      {"notes", test::notesOnly(), {"crew arrived"}, {"Rettungsdienst da"}},
      {"short", test::shortRecord(), {"31 s"}, {"31 s"}},
      {"crowded", test::crowded(), {"6"}, {"6"}},
  };
}

void checkPdf(const QString& path, const SheetOptions& options, const QStringList& words) {
  const QString info = run("pdfinfo", {path});
  EXPECT_TRUE(info.contains(QRegularExpression("Pages: +1\n"))) << info.toStdString();
  EXPECT_TRUE(info.contains(options.paper == QPageSize::A4 ? "(A4)" : "(letter)"))
      << info.toStdString();
  EXPECT_TRUE(info.contains(QRegularExpression("PDF version: +1.4")));
  const QStringList fonts = run("pdffonts", {path}).split('\n', Qt::SkipEmptyParts).mid(2);
  EXPECT_FALSE(fonts.isEmpty());
  for (const QString& font : fonts) {
    EXPECT_TRUE(font.contains(QRegularExpression("^(\\w+\\+)?Inter-.* yes ")))
        << font.toStdString();
  }
  const QString text = run("pdftotext", {"-layout", path, "-"});
  for (const QString& word : words) {
    EXPECT_TRUE(text.contains(word)) << word.toStdString() << "\nin\n" << text.toStdString();
  }
  EXPECT_FALSE(text.contains(QRegularExpression(QStringLiteral("[ﬀﬁﬂﬃﬄ]"))));
}

/// Every word lies on the paper with a margin at its sides.
void checkMargins(const QString& path, const QSizeF& page) {
  QXmlStreamReader xml(run("pdftotext", {"-bbox", path, "-"}));
  int words = 0;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement || xml.name() != QStringLiteral("word")) {
      continue;
    }
    ++words;
    const auto value = [&](const char* name) {
      return xml.attributes().value(QLatin1String(name)).toDouble();
    };
    EXPECT_GE(value("xMin"), 30);
    EXPECT_LE(value("xMax"), page.width() - 30);
    EXPECT_GE(value("yMin"), -1);
    EXPECT_LE(value("yMax"), page.height() + 1);
  }
  EXPECT_GT(words, 60);
}

TEST(SheetPdf, OnePageWithEveryWordWhateverTheRecord) {
  QTemporaryDir folder;
  for (const Case& one : cases()) {
    const Figures figures = computeFigures(one.record);
    for (const char* language : {"en", "de"}) {
      for (const auto paper : {QPageSize::A4, QPageSize::Letter}) {
        SCOPED_TRACE(std::string(one.name) + " " + language);
        SheetOptions options;
        options.language = language;
        options.paper = paper;
        options.fileName = "ferry.resuslog";
        options.fileSha256 = QString(64, 'c');
        const QString path = folder.filePath("sheet.pdf");
        QString error;
        ASSERT_TRUE(writeHandoverPdf(path, one.record, figures, options, &error))
            << error.toStdString();
        const bool english = options.language == "en";
        checkPdf(path, options,
                 (english ? one.english : one.german) + QStringList{QString(64, 'c')});
        checkMargins(path, QPageSize(paper).size(QPageSize::Point));
      }
    }
  }
}

TEST(SheetPdf, AFolderThatIsNotThereIsSaidAndNothingIsLeft) {
  const Record record = test::fullRescue();
  QString error;
  EXPECT_FALSE(
      writeHandoverPdf("/nowhere/at/all/sheet.pdf", record, computeFigures(record), {}, &error));
  EXPECT_TRUE(error.startsWith("The sheet could not be written")) << error.toStdString();
}

/// Set in a process that is started without fonts.
constexpr const char* kWithoutFonts = "AFTERBEAT_TEST_WITHOUT_FONTS";

void expectRefusalWithoutFont() {
  QTemporaryDir folder;
  const Record record = test::fullRescue();
  QString error;
  EXPECT_FALSE(
      writeHandoverPdf(folder.filePath("sheet.pdf"), record, computeFigures(record), {}, &error));
  EXPECT_TRUE(error.contains("Inter") && error.contains("fonts-inter")) << error.toStdString();
  EXPECT_FALSE(QFile::exists(folder.filePath("sheet.pdf")));
}

TEST(SheetPdf, AMissingFontIsSaidAndNoOtherTaken) {
  if (qEnvironmentVariableIsSet(kWithoutFonts)) {
    expectRefusalWithoutFont();
    return;
  }
  QTemporaryDir folder;
  QFile config(folder.filePath("fonts.conf"));
  ASSERT_TRUE(config.open(QIODevice::WriteOnly));
  config.write("<?xml version=\"1.0\"?><fontconfig></fontconfig>");
  config.close();
  QProcess process;
  auto environment = QProcessEnvironment::systemEnvironment();
  environment.insert("FONTCONFIG_FILE", config.fileName());
  environment.insert(kWithoutFonts, "1");
  process.setProcessEnvironment(environment);
  process.start(QCoreApplication::applicationFilePath(),
                {"--gtest_filter=SheetPdf.AMissingFontIsSaidAndNoOtherTaken"});
  ASSERT_TRUE(process.waitForFinished(60'000));
  const QString output = QString::fromUtf8(process.readAllStandardOutput());
  EXPECT_EQ(process.exitCode(), 0) << output.toStdString();
  EXPECT_TRUE(output.contains("[  PASSED  ] 1 test.")) << output.toStdString();
}

TEST(SheetPdf, LongTextIsBrokenAndCutByRule) {
  QFont font(QString::fromLatin1(kPaperFont));
  font.setPixelSize(10);
  const Lettering lettering(font);
  const QString text = "first fact that is long · second fact that is long · third";
  const QStringList lines = wrapped(lettering, text, 10, Weight::regular, 140, 3);
  EXPECT_EQ(lines, (QStringList{QStringLiteral("first fact that is long ·"),
                                QStringLiteral("second fact that is long ·"), "third"}));
  const QStringList cut =
      wrapped(lettering, QString("word ").repeated(60), 10, Weight::regular, 140, 2);
  ASSERT_EQ(cut.size(), 2);
  EXPECT_TRUE(cut[1].endsWith(QStringLiteral("…")));
  for (const QString& line : cut + lines) {
    EXPECT_LE(lettering.width(line, 10, Weight::regular), 140);
  }
}

} // namespace
} // namespace afterbeat::papers
