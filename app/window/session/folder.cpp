#include "app/window/session/folder.h"

#include "core/bytes/byte_source.h"
#include "core/record/wall_clock.h"
#include "core/resuslog/read_log.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QTimeZone>

#include <algorithm>

namespace afterbeat::window {

namespace {

/// Enough for a header with a long list of channels.
constexpr qint64 kHeaderBytes = 64 << 10;

std::optional<Record> beginOf(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    return std::nullopt;
  }
  std::string begin = file.read(kHeaderBytes).toStdString();
  if (const auto line = begin.find('\n'); line != std::string::npos) {
    begin.resize(line + 1);
  }
  MemorySource source(begin);
  auto log = readLog(source);
  if (!log || log->records.empty()) {
    return std::nullopt;
  }
  return std::move(log->records.front().record);
}

FoundRecording look(const QFileInfo& info, const QDir& folder) {
  FoundRecording found;
  found.path = info.absoluteFilePath();
  found.name = folder.relativeFilePath(found.path);
  found.bytes = info.size();
  found.when = info.lastModified();
  if (info.suffix().compare("resuslog", Qt::CaseInsensitive) != 0) {
    return found;
  }
  if (const auto record = beginOf(found.path)) {
    found.header = record->header;
    if (const auto wall = wallTimeAt(*record, Time{})) {
      const QString text = QString::fromStdString(formatDate(*wall)) + QLatin1Char('T') +
                           QString::fromStdString(formatClock(*wall));
      const QDateTime when = QDateTime::fromString(text, Qt::ISODate);
      if (when.isValid()) {
        found.when = when;
        found.whenFromRecord = true;
      }
    }
  }
  return found;
}

} // namespace

FoundRecordings findRecordings(const QString& folder, const std::atomic<bool>& cancelled) {
  FoundRecordings found;
  const QDir root(folder);
  QDirIterator files(folder, QDir::Files | QDir::Readable, QDirIterator::Subdirectories);
  static const QStringList endings{"resuslog", "hea", "csv", "tsv"};
  for (int seen = 0; files.hasNext() && !cancelled; ++seen) {
    if (seen == kMostFiles) {
      found.more = true;
      break;
    }
    files.next();
    if (endings.contains(files.fileInfo().suffix().toLower())) {
      found.recordings << look(files.fileInfo(), root);
    }
  }
  std::stable_sort(found.recordings.begin(), found.recordings.end(),
                   [](const FoundRecording& a, const FoundRecording& b) {
                     return a.when == b.when ? a.name < b.name : a.when > b.when;
                   });
  return found;
}

} // namespace afterbeat::window
