#include "app/window/session/shelf.h"

#include <QCollator>
#include <QDir>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>

namespace afterbeat::window {

bool looksLikeRecording(const QString& path) {
  static const QStringList endings{"resuslog", "hea", "csv", "tsv"};
  return endings.contains(QFileInfo(path).suffix().toLower());
}

QStringList recordingsBeside(const QString& path) {
  const QDir folder = QFileInfo(path).absoluteDir();
  QStringList names = folder.entryList(QDir::Files | QDir::Readable, QDir::Unsorted);
  names.erase(std::remove_if(names.begin(), names.end(),
                             [](const QString& name) { return !looksLikeRecording(name); }),
              names.end());
  QCollator order{QLocale(QLocale::English)};
  order.setNumericMode(true);
  std::sort(names.begin(), names.end(), order);
  QStringList paths;
  for (const QString& name : names) {
    paths << folder.absoluteFilePath(name);
  }
  return paths;
}

QString neighbourOn(const QStringList& shelf, const QString& path, bool forward) {
  const qsizetype here = shelf.indexOf(path);
  return here < 0 ? QString() : shelf.value(here + (forward ? 1 : -1));
}

} // namespace afterbeat::window
