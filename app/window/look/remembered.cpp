#include "app/window/look/remembered.h"

#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace afterbeat::window::remembered {

namespace {

QSettings settings() {
  return QSettings(QSettings::IniFormat, QSettings::UserScope, "afterbeat", "afterbeat");
}

} // namespace

QString folder(const QString& use) {
  return settings()
      .value("folders/" + use, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
      .toString();
}

void setFolder(const QString& use, const QString& folder) {
  settings().setValue("folders/" + use, folder);
}

QStringList recentFiles() {
  QStringList there;
  for (const QString& path : settings().value("recent").toStringList()) {
    if (QFileInfo(path).isFile()) {
      there << path;
    }
  }
  return there;
}

void addRecentFile(const QString& path) {
  QStringList files = settings().value("recent").toStringList();
  files.removeAll(path);
  files.prepend(path);
  settings().setValue("recent", files.mid(0, kRecentFiles));
}

QByteArray bytes(const QString& key) {
  return settings().value(key).toByteArray();
}
void setBytes(const QString& key, const QByteArray& value) {
  settings().setValue(key, value);
}
QString text(const QString& key, const QString& otherwise) {
  return settings().value(key, otherwise).toString();
}
void setText(const QString& key, const QString& value) {
  // Each change writes the file anew.
  if (QSettings kept = settings(); kept.value(key) != value) {
    kept.setValue(key, value);
  }
}

} // namespace afterbeat::window::remembered
