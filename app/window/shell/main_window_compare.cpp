// The window's part in comparing many records: the ways there and back.
#include "app/window/compare/compare_page.h"
#include "app/window/compare/compare_ways.h"
#include "app/window/session/session.h"
#include "app/window/shell/file_actions.h"
#include "app/window/shell/folder_page.h"
#include "app/window/shell/main_window.h"
#include "app/window/shell/notice_bar.h"
#include "app/window/shell/places_page.h"
#include "app/window/shell/toast.h"

#include <QAction>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QStackedWidget>

namespace afterbeat::window {

void MainWindow::buildCompare() {
  comparePage_ = new ComparePage(*session_, places_->actions().front(), files_->stop());
  compareWays_ = new CompareWays(*session_, *comparePage_, this);
  connect(comparePage_->go(), &QAction::triggered, this, &MainWindow::goToCompare);
  connect(comparePage_->putBeside(), &QAction::triggered, this, &MainWindow::putBeside);
  connect(comparePage_->besideBefore(), &QAction::triggered, compareWays_,
          &CompareWays::findBefore);
  connect(compareWays_, &CompareWays::asked, this, &MainWindow::goToCompare);
  connect(compareWays_, &CompareWays::said, toast_, &Toast::say);
  connect(comparePage_, &ComparePage::wanted, this, &MainWindow::openFromCompare);
  connect(comparePage_, &ComparePage::asked, this, &MainWindow::goToCompare);
  connect(comparePage_, &ComparePage::said, notices_,
          [this](const QString& sentence) { notices_->say(sentence, NoticeBar::Kind::done); });
  connect(comparePage_, &ComparePage::failed, notices_,
          [this](const QString& sentence) { notices_->say(sentence, NoticeBar::Kind::problem); });
  connect(comparePage_, &ComparePage::outdated, notices_, [this](const QString& sentence) {
    if (notices_->text() == sentence) {
      notices_->hide();
    }
  });
  connect(comparePage_, &ComparePage::written, notices_,
          [this](const QString& path, const QString& remark) {
            notices_->sayWritten(
                (tr("Written to %1.").arg(path) + QLatin1Char(' ') + remark).trimmed(), path);
          });
  connect(comparePage_, &ComparePage::busyChanged, this,
          [this] { files_->setOtherWork(comparePage_->busy()); });
  connect(files_, &FileActions::stopped, comparePage_, &ComparePage::stop);
}

void MainWindow::goToCompare() {
  pages_->setCurrentWidget(comparePage_);
  comparePage_->setFocus(Qt::OtherFocusReason);
  showTitle();
}

void MainWindow::openFromCompare(const QString& path) {
  fromCompare_ = QFileInfo(path).absoluteFilePath();
  if (session_->state() == Session::State::ready && session_->path() == fromCompare_) {
    showPage();
  } else {
    openFile(path);
  }
}

void MainWindow::putBeside() {
  if (currentPage() == folderPage_ && folderPage_->besideChosen().size() > 1) {
    compareWays_->putBeside(folderPage_->besideChosen());
  } else if (!comparePage_->putMarkedBeside()) {
    compareWays_->askFiles();
  }
}

void MainWindow::buildCompareMenu() {
  QMenu* compare = menuBar()->addMenu(tr("&Compare"));
  for (const QList<QAction*>& group : comparePage_->actionGroups()) {
    if (!compare->isEmpty()) {
      compare->addSeparator();
    }
    compare->addActions(group);
  }
  compare->addMenu(tr("Archives opened latel&y"))->addActions(comparePage_->recentArchives());
  // From among many back to the place of the record, whichever it was.
  for (QAction* place : places_->actions()) {
    connect(place, &QAction::triggered, this, [this] {
      if (currentPage() == comparePage_ && session_->state() == Session::State::ready) {
        showPage();
      }
    });
  }
}

} // namespace afterbeat::window
