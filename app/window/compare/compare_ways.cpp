#include "app/window/compare/compare_ways.h"

#include "app/window/compare/beside_load.h"
#include "app/window/compare/compare_page.h"
#include "app/window/look/remembered.h"
#include "app/window/session/session.h"

#include <QFileDialog>
#include <QFileInfo>

namespace afterbeat::window {

CompareWays::CompareWays(Session& session, ComparePage& page, QWidget* window)
    : QObject(window), session_(session), page_(page), window_(window) {
  pool_.setMaxThreadCount(1);
}

CompareWays::~CompareWays() {
  if (cancelled_) {
    *cancelled_ = true;
  }
  pool_.waitForDone();
}

void CompareWays::askFiles() {
  QStringList paths = QFileDialog::getOpenFileNames(
      window_, tr("Two to eight recordings to lay side by side"), remembered::folder("open"),
      tr("Recordings (*.resuslog *.hea *.csv *.tsv *.txt);;All files (*)"));
  if (paths.isEmpty()) {
    return;
  }
  remembered::setFolder("open", QFileInfo(paths.front()).path());
  if (session_.state() == Session::State::ready && !paths.contains(session_.path())) {
    paths.prepend(session_.path());
  }
  putBeside(paths);
}

void CompareWays::putBeside(const QStringList& paths) {
  if (paths.size() < 2) {
    emit said(tr("Choose two to eight recordings to lay side by side."));
    return;
  }
  page_.openBeside(paths);
  emit asked();
}

void CompareWays::findBefore() {
  if (session_.state() != Session::State::ready) {
    return;
  }
  if (cancelled_) {
    *cancelled_ = true;
  }
  cancelled_ = std::make_shared<std::atomic<bool>>(false);
  const QString path = QFileInfo(session_.path()).absoluteFilePath();
  pool_.start([this, path, header = session_.record().header, cancelled = cancelled_] {
    const QString before = recordingBefore(path, header, *cancelled);
    QMetaObject::invokeMethod(
        this,
        [this, path, before, cancelled] {
          if (cancelled != cancelled_) {
            return;
          }
          if (before.isEmpty()) {
            emit said(tr("This folder holds no earlier recording of the same kind and place."));
          } else {
            putBeside({before, path});
          }
        },
        Qt::QueuedConnection);
  });
}

} // namespace afterbeat::window
