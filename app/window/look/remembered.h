/// What the program remembers from one start to the next, under the user's XDG settings folder.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace afterbeat::window::remembered {

/// The folder of the last dialog of this use ("open", "export"); the documents folder at first.
[[nodiscard]] QString folder(const QString& use);
void setFolder(const QString& use, const QString& folder);

/// Files opened lately, newest first; those that are gone are left out.
[[nodiscard]] QStringList recentFiles();
/// Puts a file first; at most eight are kept.
void addRecentFile(const QString& path);

[[nodiscard]] QByteArray bytes(const QString& key);
void setBytes(const QString& key, const QByteArray& value);
[[nodiscard]] QString text(const QString& key, const QString& otherwise = {});
void setText(const QString& key, const QString& value);

inline constexpr int kRecentFiles = 8;

} // namespace afterbeat::window::remembered
