/// Opening files: dialog, files opened lately, made-up headers, other records of the file.
#pragma once

#include "core/record/record.h"

#include <QList>
#include <QObject>

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
  /// Open the refused file anyway as a rescue, a drill, a test.
  [[nodiscard]] const QList<QAction*>& madeUp() const { return madeUp_; }
  void fillRecent(QMenu* menu);

signals:
  void folderChosen(const QString& path);

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

  Session& session_;
  QWidget* window_;
  QAction *open_, *openFolder_, *close_, *stop_, *nextRecord_, *previousRecord_;
  QList<QAction*> madeUp_, recent_;
};

} // namespace afterbeat::window
