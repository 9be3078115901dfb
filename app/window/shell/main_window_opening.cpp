// The window's part in opening what is named, chosen or dropped.
#include "app/archive/place.h"
#include "app/window/compare/compare_page.h"
#include "app/window/compare/season_drop.h"
#include "app/window/compare/season_ways.h"
#include "app/window/session/session.h"
#include "app/window/shell/folder_page.h"
#include "app/window/shell/main_window.h"
#include "app/window/shell/notice_bar.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileInfo>
#include <QMimeData>
#include <QStackedWidget>
#include <QUrl>

namespace afterbeat::window {

void MainWindow::openFile(const QString& path) {
  notices_->hide();
  if (path.isEmpty()) {
    return;
  }
  const QFileInfo info(path);
  if (info.isDir()) {
    session_->close();
    pages_->setCurrentWidget(folderPage_);
    folderPage_->lookInto(info.absoluteFilePath());
    return;
  }
  if (archive::isDatabaseFile(info.filesystemAbsoluteFilePath())) {
    comparePage_->ways()->openTyped(info.absoluteFilePath());
    return;
  }
  session_->open(info.absoluteFilePath());
}

void MainWindow::openFiles(const QStringList& paths) {
  if (paths.size() < 2) {
    openFile(paths.value(0));
    return;
  }
  notices_->hide();
  session_->close();
  pages_->setCurrentWidget(folderPage_);
  QStringList files;
  for (const QString& path : paths) {
    files << QFileInfo(path).absoluteFilePath();
  }
  folderPage_->lookAt(files);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls() && event->mimeData()->urls().front().isLocalFile()) {
    event->acceptProposedAction();
  }
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QList<QUrl> urls = event->mimeData()->urls();
  if (urls.isEmpty() || !urls.front().isLocalFile()) {
    return;
  }
  event->acceptProposedAction();
  QStringList paths;
  for (const QUrl& url : urls) {
    if (url.isLocalFile()) {
      paths << url.toLocalFile();
    }
  }
  if (currentPage() == comparePage_) {
    notices_->hide();
    comparePage_->drop()->dropped(paths, mapToGlobal(event->position()).toPoint());
  } else {
    openFiles(paths);
  }
}

} // namespace afterbeat::window
