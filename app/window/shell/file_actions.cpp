#include "app/window/shell/file_actions.h"

#include "app/window/look/remembered.h"
#include "app/window/session/session.h"
#include "app/window/session/shelf.h"

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>

namespace afterbeat::window {

FileActions::FileActions(Session& session, QWidget* parent)
    : QObject(parent), session_(session), window_(parent),
      open_(make(tr("&Open…"), QKeySequence::Open, &FileActions::ask)),
      openFolder_(make(tr("Open a &folder or card…"), Qt::CTRL | Qt::SHIFT | Qt::Key_O,
                       &FileActions::askFolder)),
      close_(make(tr("&Close the record"), Qt::CTRL | Qt::Key_W, &FileActions::closeFile)),
      stop_(make(tr("&Stop reading"), Qt::Key_Escape, &FileActions::stopReading)),
      nextRecord_(make(tr("&Next record of the file"), Qt::CTRL | Qt::Key_PageDown,
                       &FileActions::showNext)),
      previousRecord_(make(tr("P&revious record of the file"), Qt::CTRL | Qt::Key_PageUp,
                           &FileActions::showPrevious)),
      nextFile_(make(tr("Next recording of the f&older"), Qt::ALT | Qt::Key_PageDown,
                     &FileActions::openNext)),
      previousFile_(make(tr("Previous recording of the fo&lder"), Qt::ALT | Qt::Key_PageUp,
                         &FileActions::openPrevious)) {
  const auto anyway = [this](const QString& text, int number, RecordKind kind) {
    auto* action = new QAction(text, this);
    action->setShortcut(QKeySequence(QStringLiteral("Ctrl+U, %1").arg(number)));
    connect(action, &QAction::triggered, this,
            [this, kind] { session_.open(session_.path(), kind); });
    madeUp_ << action;
  };
  anyway(tr("Open it as a rescue"), 1, RecordKind::rescue);
  anyway(tr("Open it as a drill"), 2, RecordKind::drill);
  anyway(tr("Open it as a test"), 3, RecordKind::test);
  for (int i = 0; i < remembered::kRecentFiles; ++i) {
    auto* action = new QAction(this);
    action->setShortcut(QKeySequence(QStringLiteral("Ctrl+R, %1").arg(i + 1)));
    connect(action, &QAction::triggered, this,
            [this, action] { session_.open(action->data().toString()); });
    recent_ << action;
  }
  connect(&session_, &Session::stateChanged, this, &FileActions::follow);
  connect(&session_, &Session::recordChanged, this, [this] {
    remembered::addRecentFile(session_.path());
    refreshRecent();
  });
  refreshRecent();
  follow();
}

QAction* FileActions::make(const QString& text, const QKeySequence& key,
                           void (FileActions::*does)()) {
  auto* action = new QAction(text, this);
  action->setShortcut(key);
  connect(action, &QAction::triggered, this, does);
  return action;
}

void FileActions::ask() {
  const QString path = QFileDialog::getOpenFileName(
      window_, tr("Open a recording"), remembered::folder("open"),
      tr("Recordings (*.resuslog *.hea *.csv *.tsv *.txt);;Event logs (*.resuslog);;"
         "WFDB records (*.hea);;Observer's notes (*.csv *.tsv *.txt);;All files (*)"));
  if (!path.isEmpty()) {
    remembered::setFolder("open", QFileInfo(path).path());
    session_.open(path);
  }
}

void FileActions::askFolder() {
  const QString path = QFileDialog::getExistingDirectory(
      window_, tr("Open a folder with recordings"), remembered::folder("open"));
  if (!path.isEmpty()) {
    remembered::setFolder("open", path);
    emit folderChosen(path);
  }
}

void FileActions::closeFile() {
  session_.close();
}

void FileActions::stopReading() {
  session_.cancel();
  emit stopped();
}

void FileActions::setOtherWork(bool busy) {
  otherWork_ = busy;
  follow();
}

void FileActions::showNext() {
  session_.showRecord(session_.loaded().shown + 1);
}

void FileActions::showPrevious() {
  if (session_.loaded().shown > 0) {
    session_.showRecord(session_.loaded().shown - 1);
  }
}

void FileActions::openNext() {
  openNeighbour(true);
}

void FileActions::openPrevious() {
  openNeighbour(false);
}

void FileActions::openNeighbour(bool forward) {
  const QString here = QFileInfo(session_.path()).absoluteFilePath();
  const QStringList shelf = shelf_.contains(here) ? shelf_ : recordingsBeside(here);
  const QString next = neighbourOn(shelf, here, forward);
  if (!next.isEmpty()) {
    emit fileChosen(next);
  } else {
    emit nowhere(forward ? tr("This is the last recording of the folder.")
                         : tr("This is the first recording of the folder."));
  }
}

void FileActions::fillRecent(QMenu* menu) {
  menu->addActions(recent_);
}

void FileActions::refreshRecent() {
  const QStringList files = remembered::recentFiles();
  for (qsizetype i = 0; i < recent_.size(); ++i) {
    const bool used = i < files.size();
    QString name = used ? QFileInfo(files[i]).fileName() : tr("(empty)");
    recent_[i]->setText(name.replace(QLatin1Char('&'), QStringLiteral("&&")));
    recent_[i]->setToolTip(used ? files[i] : QString());
    recent_[i]->setData(used ? files[i] : QString());
    recent_[i]->setVisible(used);
    recent_[i]->setEnabled(used);
  }
}

void FileActions::follow() {
  const bool ready = session_.state() == Session::State::ready;
  const std::size_t records = session_.hasRecord() ? session_.loaded().file->records.size() : 0;
  close_->setEnabled(ready || session_.state() == Session::State::refused);
  stop_->setEnabled(session_.state() == Session::State::loading || otherWork_);
  nextFile_->setEnabled(close_->isEnabled());
  previousFile_->setEnabled(close_->isEnabled());
  nextRecord_->setEnabled(ready && session_.loaded().shown + 1 < records);
  previousRecord_->setEnabled(ready && session_.loaded().shown > 0);
  const bool refused =
      session_.state() == Session::State::refused && session_.refused().mayMakeUpHeader;
  for (QAction* action : madeUp_) {
    action->setEnabled(refused);
  }
}

} // namespace afterbeat::window
