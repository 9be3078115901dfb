#include "app/window/session/folder.h"

#include "app/window/session/shelf.h"
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
  found.unusable = found.bytes == 0;
  if (info.suffix().compare("resuslog", Qt::CaseInsensitive) != 0) {
    return found;
  }
  const auto record = beginOf(found.path);
  found.unusable = !record;
  if (record) {
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

void sort(QList<FoundRecording>& all) {
  std::stable_sort(all.begin(), all.end(), [](const FoundRecording& a, const FoundRecording& b) {
    if (a.unusable != b.unusable) {
      return b.unusable;
    }
    return a.when == b.when ? a.name < b.name : a.when > b.when;
  });
}

} // namespace

FoundRecordings lookAtFiles(const QStringList& paths, const std::atomic<bool>& cancelled) {
  FoundRecordings found;
  for (const QString& path : paths) {
    const QFileInfo info(path);
    if (cancelled || !info.isFile()) {
      continue;
    }
    FoundRecording one = look(info, info.absoluteDir());
    one.unusable = one.unusable || !info.isReadable();
    found.recordings << one;
  }
  sort(found.recordings);
  return found;
}

FoundRecordings findRecordings(const QString& folder, const std::atomic<bool>& cancelled) {
  FoundRecordings found;
  const QDir root(folder);
  QDirIterator files(folder, QDir::Files | QDir::Readable, QDirIterator::Subdirectories);
  for (int seen = 0; files.hasNext() && !cancelled; ++seen) {
    if (seen == kMostFiles) {
      found.more = true;
      break;
    }
    files.next();
    if (looksLikeRecording(files.fileName())) {
      found.recordings << look(files.fileInfo(), root);
    }
  }
  sort(found.recordings);
  return found;
}

} // namespace afterbeat::window
