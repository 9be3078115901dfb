/// Files and folders that are dropped onto the place for many records.
#pragma once

#include <QObject>
#include <QStringList>

class QPoint;
class QWidget;

namespace afterbeat::window {

class SeasonDesk;

/// Where more than one thing can be done with them, a menu at that point asks which.
class SeasonDrop final : public QObject {
  Q_OBJECT

public:
  SeasonDrop(SeasonDesk& desk, QWidget* window);
  /// Takes them into the archive that is open, looks at them as a season, lays two to eight files
  /// side by side, or opens the only one. An archive alone is opened. `at` is on the screen.
  void dropped(const QStringList& paths, const QPoint& at);

signals:
  void archiveWanted(const QString& path);
  void besideWanted(const QStringList& paths);
  /// A record is to be opened.
  void recordWanted(const QString& path);

private:
  SeasonDesk& desk_;
  QWidget* window_;
};

} // namespace afterbeat::window
