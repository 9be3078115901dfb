#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <QXmlStreamReader>

namespace {

struct Message {
  QString source, translation, type;
};

QList<Message> messagesOf(const QString& path) {
  QList<Message> all;
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  QXmlStreamReader xml(&file);
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) {
      continue;
    }
    if (xml.name() == QStringLiteral("message")) {
      all.append(Message{});
    } else if (xml.name() == QStringLiteral("source")) {
      all.last().source = xml.readElementText();
    } else if (xml.name() == QStringLiteral("translation")) {
      all.last().type = xml.attributes().value("type").toString();
      all.last().translation = xml.readElementText(QXmlStreamReader::IncludeChildElements);
    }
  }
  EXPECT_FALSE(xml.hasError()) << path.toStdString();
  return all;
}

/// The window's helpers for texts outside of classes look them up where the collector puts them.
TEST(Languages, FreeFunctionsLookTextsUpWhereTheyAreCollected) {
  static const QRegularExpression helper(QStringLiteral(
      R"(QString tr\(const char\* \w+\) \{\s*return QCoreApplication::translate\("([^"]*)\")"));
  int seen = 0;
  QDirIterator files(QStringLiteral(AFTERBEAT_SOURCE_DIR "/app/window"), {"*.cpp", "*.h"},
                     QDir::Files, QDirIterator::Subdirectories);
  while (files.hasNext()) {
    QFile file(files.next());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto match = helper.match(QString::fromUtf8(file.readAll()));
    if (match.hasMatch()) {
      ++seen;
      EXPECT_EQ(match.captured(1), "afterbeat::window") << file.fileName().toStdString();
    }
  }
  EXPECT_GT(seen, 2);
}

/// A text that is only marked is looked up under the name it was marked with: by `translate` with
/// that name, or by the `tr` of the class with its namespaces.
TEST(Languages, MarkedTextsAreLookedUpWhereTheyAreCollected) {
  static const QRegularExpression marked(QStringLiteral(R"(QT_TRANSLATE_NOOP\(\s*"([^"]*)\")"));
  QSet<QString> contexts;
  QString all;
  QDirIterator files(QStringLiteral(AFTERBEAT_SOURCE_DIR "/app"), {"*.cpp", "*.h"}, QDir::Files,
                     QDirIterator::Subdirectories);
  while (files.hasNext()) {
    QFile file(files.next());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(file.readAll());
    all += text;
    auto match = marked.globalMatch(text);
    while (match.hasNext()) {
      contexts.insert(match.next().captured(1));
    }
  }
  EXPECT_GT(contexts.size(), 2);
  for (const QString& context : contexts) {
    const QRegularExpression lookedUp(QStringLiteral(R"(translate\(\s*"%1")").arg(context));
    EXPECT_TRUE(context.startsWith("afterbeat::window::") || all.contains(lookedUp))
        << context.toStdString();
  }
}

QSet<QString> placeholders(const QString& text) {
  QSet<QString> all;
  auto match = QRegularExpression("%\\d").globalMatch(text);
  while (match.hasNext()) {
    all.insert(match.next().captured());
  }
  return all;
}

/// The words of papers and window, collected afresh from the sources into a copy of a language.
TEST(Languages, EveryWordIsTranslated) {
  const QString root = QStringLiteral(AFTERBEAT_SOURCE_DIR);
  QTemporaryDir folder;
  const QString copy = folder.filePath("afterbeat_de.ts");
  ASSERT_TRUE(QFile::copy(root + "/resources/languages/afterbeat_de.ts", copy));
  QProcess process;
  process.start(QStringLiteral(AFTERBEAT_LUPDATE),
                {"-silent", "-I", root, root + "/core", root + "/importers", root + "/app/archive",
                 root + "/app/papers", root + "/app/window", "-no-obsolete", "-tr-function-alias",
                 "QT_TRANSLATE_NOOP+=inEnglish", "-ts", copy, "-locations", "none"});
  ASSERT_TRUE(process.waitForFinished(120'000));
  ASSERT_EQ(process.exitCode(), 0);
  // A text whose class the collector does not know would be looked up under another name. Free
  // functions of the window's files share the name of its namespace.
  const QString said = QString::fromUtf8(process.readAllStandardError());
  for (const QString& line : said.split(QLatin1Char('\n'))) {
    EXPECT_FALSE(line.contains("lacks Q_OBJECT") && !line.contains("'afterbeat::window'"))
        << line.toStdString();
    EXPECT_FALSE(line.contains("unknown namespace")) << line.toStdString();
  }
  const QList<Message> messages = messagesOf(copy);
  EXPECT_GT(messages.size(), 500);
  for (const Message& message : messages) {
    EXPECT_NE(message.type, "unfinished") << message.source.toStdString();
    EXPECT_FALSE(message.translation.isEmpty()) << message.source.toStdString();
    EXPECT_EQ(placeholders(message.source), placeholders(message.translation))
        << message.source.toStdString();
  }
}

} // namespace
