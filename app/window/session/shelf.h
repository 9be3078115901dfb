/// The recordings among which the open one stands: those that were listed to choose from, else the
/// files of its folder.
#pragma once

#include <QString>
#include <QStringList>

namespace afterbeat::window {

/// A file's ending is one that recordings have.
[[nodiscard]] bool looksLikeRecording(const QString& path);

/// The recordings of a file's folder, sorted by name as people count (2 before 10).
[[nodiscard]] QStringList recordingsBeside(const QString& path);

/// The one after (or before) `path` in `shelf`; empty at its end, and where it is not in it.
[[nodiscard]] QString neighbourOn(const QStringList& shelf, const QString& path, bool forward);

} // namespace afterbeat::window
