/// Opening files: dialog, files opened lately, made-up headers, other records of the file.
#pragma once

#include "core/record/record.h"

#include <QList>
#include <QObject>
#include <QStringList>

class QAction;
class QMenu;
class QWidget;

namespace afterbeat::window {

class Session;

class FileActions final : public QObject {
  Q_OBJECT

public:
  FileActions(Session& session, QWidget* parent);
  [[nodiscard]] QAction* open() const { return open_; }
  [[nodiscard]] QAction* openFolder() const { return openFolder_; }
  [[nodiscard]] QAction* close() const { return close_; }
  [[nodiscard]] QAction* stop() const { return stop_; }
  /// Next and previous record of the file.
  [[nodiscard]] QList<QAction*> records() const { return {nextRecord_, previousRecord_}; }
  /// Next and previous recording of the folder, or of the list it was chosen from.
  [[nodiscard]] QList<QAction*> files() const { return {nextFile_, previousFile_}; }
  /// The recordings among which the next one opened was chosen; those of its folder without.
  void setShelf(const QStringList& paths) { shelf_ = paths; }
  /// Open the refused file anyway as a rescue, a drill, a test.
  [[nodiscard]] const QList<QAction*>& madeUp() const { return madeUp_; }
  void fillRecent(QMenu* menu);
  /// Something else than a recording is being read, which `stop` ends as well.
  void setOtherWork(bool busy);

signals:
  /// `stop` was asked for.
  void stopped();
  void folderChosen(const QString& path);
  /// Another recording is wanted.
  void fileChosen(const QString& path);
  /// There was nothing to go to; a sentence.
  void nowhere(const QString& sentence);

private:
  void ask();
  void askFolder();
  void refreshRecent();
  void follow();
  QAction* make(const QString& text, const QKeySequence& key, void (FileActions::*does)());
  void closeFile();
  void stopReading();
  void showNext();
  void showPrevious();
  void openNext();
  void openPrevious();
  void openNeighbour(bool forward);

  Session& session_;
  QWidget* window_;
  QAction *open_, *openFolder_, *close_, *stop_, *nextRecord_, *previousRecord_, *nextFile_,
      *previousFile_;
  QList<QAction*> madeUp_, recent_;
  QStringList shelf_;
  bool otherWork_ = false;
};

} // namespace afterbeat::window
