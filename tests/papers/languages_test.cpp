#include <gtest/gtest.h>

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

QSet<QString> placeholders(const QString& text) {
  QSet<QString> all;
  auto match = QRegularExpression("%\\d").globalMatch(text);
  while (match.hasNext()) {
    all.insert(match.next().captured());
  }
  return all;
}

/// The words of the program's papers, collected afresh from the sources into a copy of a language.
TEST(Languages, EveryWordOnPaperIsTranslated) {
  const QString root = QStringLiteral(AFTERBEAT_SOURCE_DIR);
  QTemporaryDir folder;
  const QString copy = folder.filePath("afterbeat_de.ts");
  ASSERT_TRUE(QFile::copy(root + "/resources/languages/afterbeat_de.ts", copy));
  QProcess process;
  process.start(QStringLiteral(AFTERBEAT_LUPDATE),
                {"-silent", root + "/app/papers", "-ts", copy, "-locations", "none"});
  ASSERT_TRUE(process.waitForFinished(120'000));
  ASSERT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  const QList<Message> messages = messagesOf(copy);
  EXPECT_GT(messages.size(), 150);
  for (const Message& message : messages) {
    EXPECT_NE(message.type, "unfinished") << message.source.toStdString();
    EXPECT_FALSE(message.translation.isEmpty()) << message.source.toStdString();
    EXPECT_EQ(placeholders(message.source), placeholders(message.translation))
        << message.source.toStdString();
  }
}

} // namespace
