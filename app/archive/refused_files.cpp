#include "app/archive/refused_files.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace afterbeat::archive {

namespace {

namespace fs = std::filesystem;

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

/// One array of strings a phrase: the English text, then the values in its places.
QString kept(const std::vector<Phrase>& said) {
  QJsonArray phrases;
  for (const Phrase& phrase : said) {
    QJsonArray parts;
    for (const std::string& part : phrase.parts) {
      parts.append(text(part));
    }
    phrases.append(parts);
  }
  return QString::fromUtf8(QJsonDocument(phrases).toJson(QJsonDocument::Compact));
}

/// Empty where nothing was kept.
std::vector<Phrase> phrasesFrom(const QString& kept) {
  std::vector<Phrase> said;
  for (const auto& parts : QJsonDocument::fromJson(kept.toUtf8()).array()) {
    Phrase& phrase = said.emplace_back();
    for (const auto& part : parts.toArray()) {
      phrase.parts.push_back(part.toString().toStdString());
    }
  }
  return said;
}

bool isBelow(const fs::path& path, const fs::path& folder) {
  return std::mismatch(folder.begin(), folder.end(), path.begin(), path.end()).first ==
         folder.end();
}

} // namespace

void putRefused(Database& database, const RefusedFile& file, const std::string& sha256) {
  database.again(QStringLiteral("INSERT INTO refused (path, sha256, sentence, said) "
                                "VALUES (?, ?, ?, ?) ON CONFLICT (path) DO UPDATE "
                                "SET sha256 = excluded.sha256, sentence = excluded.sentence, "
                                "said = excluded.said"),
                 {text(file.path.string()), text(sha256), text(file.sentence), kept(file.said)});
}

void forgetRefused(Database& database, const fs::path& path) {
  database.again(QStringLiteral("DELETE FROM refused WHERE path = ?"), {text(path.string())});
}

void forgetGone(Database& database, const std::vector<fs::path>& sources) {
  for (const RefusedFile& file : readRefused(database)) {
    std::error_code error;
    const bool asked = std::any_of(sources.begin(), sources.end(), [&](const fs::path& source) {
      return isBelow(file.path, source) && fs::exists(source, error);
    });
    const fs::file_type now = fs::status(file.path, error).type();
    if (asked && (now == fs::file_type::not_found || now == fs::file_type::directory)) {
      forgetRefused(database, file.path);
    }
  }
}

std::vector<RefusedFile> readRefused(Database& database) {
  std::vector<RefusedFile> files;
  QSqlQuery row =
      database.run(QStringLiteral("SELECT path, sentence, said FROM refused ORDER BY path"));
  while (row.next()) {
    files.push_back({row.value(0).toString().toStdString(), row.value(1).toString().toStdString(),
                     phrasesFrom(row.value(2).toString())});
  }
  return files;
}

} // namespace afterbeat::archive
