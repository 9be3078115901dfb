/// The recordings in a folder, e.g. a device's card.
#pragma once

#include "core/record/record.h"

#include <QDateTime>
#include <QList>
#include <QString>
#include <QStringList>

#include <atomic>
#include <optional>

namespace afterbeat::window {

/// A file that can probably be opened, and what its header says.
struct FoundRecording {
  QString path;
  /// Relative to the folder.
  QString name;
  qint64 bytes = 0;
  /// Of an event log whose header could be read.
  std::optional<Header> header;
  /// The record's own begin where its clock was set, else when the file was last written.
  QDateTime when;
  bool whenFromRecord = false;
  /// It is empty, or begins like no recording: listed, and last.
  bool unusable = false;
};

struct FoundRecordings {
  /// Newest first; those that can hardly be opened last.
  QList<FoundRecording> recordings;
  /// There were more files than are looked at.
  bool more = false;
};

/// Looks through a folder and those in it, at most `kMostFiles` files; reads the begin of each
/// event log. Follows no links to folders. Meant for a worker thread; gives up where `cancelled`.
inline constexpr int kMostFiles = 5000;
[[nodiscard]] FoundRecordings findRecordings(const QString& folder,
                                             const std::atomic<bool>& cancelled);

/// The same of files that were named one by one; folders and what is not there are left out.
[[nodiscard]] FoundRecordings lookAtFiles(const QStringList& paths,
                                          const std::atomic<bool>& cancelled);

} // namespace afterbeat::window
