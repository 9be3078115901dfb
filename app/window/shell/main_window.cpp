#include "app/window/shell/main_window.h"

#include "app/window/compare/compare_page.h"
#include "app/window/debrief/debrief_page.h"
#include "app/window/debrief/replay.h"
#include "app/window/figures/headline_strip.h"
#include "app/window/figures/working_panel.h"
#include "app/window/finding/happenings_view.h"
#include "app/window/finding/list_text.h"
#include "app/window/finding/stepping.h"
#include "app/window/handover/handover_actions.h"
#include "app/window/handover/handover_page.h"
#include "app/window/handover/told_form.h"
#include "app/window/look/appearance.h"
#include "app/window/look/elided_label.h"
#include "app/window/look/language.h"
#include "app/window/look/remembered.h"
#include "app/window/look/stack.h"
#include "app/window/rows/rows_view.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/settings/figure_settings_actions.h"
#include "app/window/shell/file_actions.h"
#include "app/window/shell/folder_page.h"
#include "app/window/shell/header_strip.h"
#include "app/window/shell/help.h"
#include "app/window/shell/lower_area.h"
#include "app/window/shell/notice_bar.h"
#include "app/window/shell/pages.h"
#include "app/window/shell/places_page.h"
#include "app/window/shell/record_page.h"
#include "app/window/shell/side_panel.h"
#include "app/window/shell/toast.h"
#include "app/window/signals/derive_actions.h"
#include "app/window/tables/tables_view.h"
#include "app/window/waves/waves_view.h"

#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QCloseEvent>
#include <QDesktopServices>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QStatusBar>
#include <QTimer>
#include <QToolButton>
#include <QUrl>
#include <QVBoxLayout>

namespace afterbeat::window {

namespace {

/// Reading that is done sooner shows no page of its own.
constexpr int kPatienceMs = 150;

QAction* entry(QMenu* menu, const QString& text, const QKeySequence& key,
               std::function<void()> does) {
  QAction* action = menu->addAction(text, std::move(does));
  action->setShortcut(key);
  return action;
}

} // namespace

MainWindow::MainWindow()
    : session_(new Session(this)), selection_(new Selection(this)),
      appearance_(new Appearance(this)), files_(new FileActions(*session_, this)),
      handover_(new HandoverActions(*session_, this)),
      settings_(new FigureSettingsActions(*session_, this)) {
  setAcceptDrops(true);
  setMinimumSize(1024, 640);
  resize(1280, 800);
  buildPages();
  buildMenus();
  buildStatusBar();
  connect(session_, &Session::stateChanged, this, &MainWindow::showPage);
  connect(session_, &Session::recordChanged, this, &MainWindow::showTitle);
  connect(session_, &Session::recordChanged, this, [this] {
    if (session_->path() != fromCompare_) {
      fromCompare_.clear();
    }
  });
  connect(session_, &Session::figuresChanged, this, &MainWindow::tellComplete);
  connect(recordPage_, &RecordPage::pictureComplete, this, &MainWindow::pictureComplete);
  // When everything that waited for the picture has had its turn.
  connect(this, &MainWindow::pictureComplete, session_,
          [this] { QTimer::singleShot(0, session_, &Session::makeHints); });
  connectMessages();
  restoreGeometry(remembered::bytes("window/geometry"));
  showPage();
}

MainWindow::~MainWindow() = default;

void MainWindow::connectMessages() {
  const auto trouble = [this](const QString& sentence) {
    notices_->say(sentence, NoticeBar::Kind::problem);
  };
  connect(settings_, &FigureSettingsActions::problem, notices_, trouble);
  connect(handover_, &HandoverActions::problem, notices_, trouble);
  connect(recordPage_->stepping(), &Stepping::nowhere, toast_, &Toast::say);
  connect(files_, &FileActions::nowhere, toast_, &Toast::say);
  connect(debriefPage_, &DebriefPage::said, toast_, &Toast::say);
  connect(recordPage_->stepping(), &Stepping::stepped, debriefPage_, [this](const Interval& where) {
    if (debriefPage_->isVisible()) {
      debriefPage_->showStretch(where);
    }
  });
  connect(handover_, &HandoverActions::written, notices_, [this](const QString& path) {
    notices_->sayWritten(tr("The handover sheet was written to %1.").arg(path), path);
  });
  connect(handover_, &HandoverActions::printed, notices_, [this](const QString& printer) {
    notices_->say(tr("The handover sheet was sent to the printer %1.").arg(printer),
                  NoticeBar::Kind::done);
  });
  connect(notices_, &NoticeBar::wanted, this,
          [](const QString& path) { QDesktopServices::openUrl(QUrl::fromLocalFile(path)); });
}

void MainWindow::buildPages() {
  auto* central = new QWidget(this);
  pages_ = new Stack(central);
  notices_ = new NoticeBar(central);
  toast_ = new Toast(central);
  auto* layout = new QVBoxLayout(central);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(notices_);
  layout->addWidget(pages_, 1);
  setCentralWidget(central);
  withoutRecording_ = new QAction(tr("Sheet &without a recording…"), this);
  withoutRecording_->setShortcut(QKeySequence::New);
  connect(withoutRecording_, &QAction::triggered, this, &MainWindow::goToTold);
  places_ = new PlacesPage(*session_);
  recordPage_ = new RecordPage(*session_, *selection_);
  places_->addPlace(recordPage_, QStringLiteral("record"), tr("Record"), tr("Go to the &record"),
                    Qt::Key_F7);
  buildCompare();
  welcomePage_ =
      new WelcomePage(files_->open(), files_->openFolder(), withoutRecording_, comparePage_->go());
  loadingPage_ = new LoadingPage(*session_, files_->stop());
  refusalPage_ = new RefusalPage(*session_, files_->madeUp(), {files_->open(), withoutRecording_});
  folderPage_ = new FolderPage(
      {comparePage_->putBeside(), files_->open(), files_->openFolder(), withoutRecording_});
  replay_ = new Replay(*session_, *selection_, this);
  debriefPage_ = new DebriefPage(*session_, *selection_, *replay_);
  places_->addPlace(debriefPage_, QStringLiteral("debrief"), tr("Debrief"),
                    tr("Go to the &debrief"), Qt::Key_F8);
  recordPage_->addReplay(*replay_);
  handoverPage_ = new HandoverPage(*handover_);
  places_->addPlace(handoverPage_, QStringLiteral("handover"), tr("Handover"),
                    tr("Go to the &handover sheet"), Qt::Key_F9);
  places_->addWayOut(comparePage_->go());
  toldPage_ = new HandoverPage(*handover_, HandoverPage::Kind::told);
  connect(toldPage_->back(), &QAction::triggered, this, &MainWindow::leaveTold);
  for (QWidget* page : QList<QWidget*>{welcomePage_, loadingPage_, refusalPage_, folderPage_,
                                       places_, toldPage_, comparePage_}) {
    pages_->addWidget(page);
  }
  connect(welcomePage_, &WelcomePage::openRecent, this, &MainWindow::openFile);
  connect(folderPage_, &FolderPage::chosen, this, [this](const QString& path) {
    files_->setShelf(folderPage_->paths());
    openFile(path);
  });
  connect(files_, &FileActions::fileChosen, this, &MainWindow::openFile);
  connect(files_, &FileActions::folderChosen, this, &MainWindow::openFile);
}

void MainWindow::buildMenus() {
  QMenu* file = menuBar()->addMenu(tr("&File"));
  file->addAction(files_->open());
  file->addAction(files_->openFolder());
  files_->fillRecent(file->addMenu(tr("Opened &lately")));
  file->addAction(withoutRecording_);
  file->addAction(toldPage_->back());
  QMenu* anyway = file->addMenu(tr("Open without a &header"));
  anyway->addActions(files_->madeUp());
  file->addAction(files_->stop());
  file->addAction(files_->close());
  file->addSeparator();
  file->addActions(handover_->actions());
  QMenu* sheet = file->addMenu(tr("Language and paper of the s&heet"));
  sheet->addActions(handover_->languages());
  sheet->addSeparator();
  sheet->addActions(handover_->paperSizes());
  sheet->addSeparator();
  sheet->addActions(handover_->zoomActions());
  file->addSeparator();
  entry(file, tr("&Quit"), Qt::CTRL | Qt::Key_Q, [this] { close(); });

  QMenu* record = menuBar()->addMenu(tr("&Record"));
  settings_->fill(record);
  record->addSeparator();
  record->addActions(files_->records());
  record->addSeparator();
  record->addActions(files_->files());

  QMenu* figures = menuBar()->addMenu(tr("Fi&gures"));
  figures->addActions(recordPage_->headlines()->actions());
  figures->addSeparator();
  figures->addActions(recordPage_->panel()->working()->actions());
  figures->addSeparator();
  figures->addActions(recordPage_->panel()->actions());
  figures->addActions(recordPage_->lower()->actions());
  figures->addSeparator();
  auto* derive = new DeriveActions(*session_, this);
  figures->addMenu(tr("From the &signals"))->addActions(derive->actions());
  entry(figures, tr("&ECG around shocks"), Qt::SHIFT | Qt::Key_E, [this] {
    places_->goTo(recordPage_);
    TablesView* tables = recordPage_->tables();
    recordPage_->lower()->setCurrentWidget(tables);
    tables->showKind(TableKind::ecgAtShocks);
    tables->setFocus(Qt::OtherFocusReason);
  });
  figures->addSeparator();
  entry(figures, tr("&Copy the list as text"), QKeySequence::Copy, [this] {
    if (const auto* list = qobject_cast<QAbstractItemView*>(QApplication::focusWidget())) {
      QApplication::clipboard()->setText(tabbedText(*list));
      toast_->say(tr("The list was copied as text."));
    }
  });

  for (QAction* action : recordPage_->panel()->actions() + recordPage_->lower()->actions()) {
    connect(action, &QAction::triggered, this, [this] { places_->goTo(recordPage_); });
  }

  QMenu* go = menuBar()->addMenu(tr("&Go"));
  go->addActions(places_->actions());
  go->addSeparator();
  go->addActions(recordPage_->stepping()->actions());
  go->addAction(recordPage_->panel()->happenings()->find());
  go->addSeparator();
  go->addActions(recordPage_->waves()->actions());
  go->addSeparator();
  go->addActions(recordPage_->waves()->tools());
  recordPage_->waves()->fillTracks(go->addMenu(tr("&Tracks of the waves")));
  go->addSeparator();
  go->addAction(recordPage_->nextPlace());

  QMenu* debrief = menuBar()->addMenu(tr("&Debrief"));
  debrief->addActions(replay_->actions());
  debrief->addSeparator();
  debrief->addActions(debriefPage_->actions());

  buildCompareMenu();

  QMenu* view = menuBar()->addMenu(tr("&View"));
  view->addMenu(tr("&Colours"))->addActions(appearance_->modeActions());
  auto* languages = new LanguageActions(this);
  connect(languages, &LanguageActions::chose, notices_,
          [this](const QString& sentence) { notices_->say(sentence); });
  view->addMenu(tr("&Language"))->addActions(languages->actions());
  view->addActions(appearance_->typeActions());
  view->addSeparator();
  QAction* full = entry(view, tr("&Full screen"), Qt::Key_F11,
                        [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
  full->setStatusTip(tr("For the projector"));
  view->addAction(notices_->dismiss());

  QMenu* help = menuBar()->addMenu(tr("&Help"));
  entry(help, tr("&Keys"), Qt::Key_F1, [this] { showKeys(menuBar(), this); });
  entry(help, tr("&About, and what it is not"), Qt::SHIFT | Qt::Key_F1,
        [this] { showAbout(this); });
}

void MainWindow::buildStatusBar() {
  settingsText_ = new ElidedLabel(this);
  auto* change = new QToolButton(this);
  change->setText(tr("Change"));
  change->setAccessibleName(tr("Change what the figures are computed with"));
  change->setToolTip(change->accessibleName());
  change->setPopupMode(QToolButton::InstantPopup);
  change->setFocusPolicy(Qt::StrongFocus);
  auto* choices = new QMenu(change);
  settings_->fill(choices);
  change->setMenu(choices);
  statusBar()->addWidget(change);
  statusBar()->addWidget(settingsText_, 1);
  auto* caution = new QLabel(cautionLine(), this);
  caution->setAccessibleName(tr("Cautions"));
  statusBar()->addPermanentWidget(caution);
  statusBar()->setSizeGripEnabled(false);
  statusBar()->setContentsMargins(14, 0, 14, 0);
  const auto follow = [this] { settingsText_->setWhole(settings_->asText()); };
  connect(session_, &Session::settingsChanged, this, follow);
  follow();
}

QWidget* MainWindow::currentPage() const {
  return pages_->currentWidget() == places_ ? places_->place() : pages_->currentWidget();
}

void MainWindow::goToTold() {
  if (pages_->currentWidget() == toldPage_) {
    return;
  }
  beforeTold_ = pages_->currentWidget();
  // The next sheet is another person's.
  toldPage_->form()->startAnew();
  pages_->setCurrentWidget(toldPage_);
  toldPage_->setFocus(Qt::OtherFocusReason);
  showTitle();
}

void MainWindow::leaveTold() {
  if (beforeTold_ == folderPage_) {
    pages_->setCurrentWidget(folderPage_);
    folderPage_->list()->setFocus(Qt::OtherFocusReason);
    showTitle();
    return;
  }
  showPage();
}

void MainWindow::showPage() {
  switch (session_->state()) {
  case Session::State::empty:
    if (!fromCompare_.isEmpty()) {
      fromCompare_.clear();
      goToCompare();
      return;
    }
    welcomePage_->showRecent(remembered::recentFiles());
    pages_->setCurrentWidget(welcomePage_);
    break;
  case Session::State::loading:
    QTimer::singleShot(kPatienceMs, this, [this] {
      if (session_->state() == Session::State::loading) {
        pages_->setCurrentWidget(loadingPage_);
      }
    });
    return;
  case Session::State::refused:
    pages_->setCurrentWidget(refusalPage_);
    QTimer::singleShot(0, this, &MainWindow::pictureComplete);
    break;
  case Session::State::ready:
    if (pages_->currentWidget() != places_) {
      pages_->setCurrentWidget(places_);
      // Keys belong to the place that is shown, not to the buttons over it.
      places_->place()->setFocus(Qt::OtherFocusReason);
    }
    break;
  }
  showTitle();
}

void MainWindow::tellComplete() {
  if (places_->place() != recordPage_) {
    // The record's own page tells when its rows and waves were painted; it is not in view.
    QTimer::singleShot(0, this, [this] {
      if (session_->state() == Session::State::ready) {
        emit pictureComplete();
      }
    });
  }
}

void MainWindow::showTitle() {
  if (currentPage() == comparePage_) {
    setWindowTitle(tr("%1 – Afterbeat").arg(comparePage_->heading()));
    return;
  }
  if (currentPage() == toldPage_) {
    setWindowTitle(tr("Without a recording – Afterbeat"));
    return;
  }
  if (session_->state() != Session::State::ready) {
    setWindowTitle(tr("Afterbeat"));
    return;
  }
  setWindowTitle(tr("%1 – Afterbeat").arg(places_->header()->asText()));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  remembered::setBytes("window/geometry", saveGeometry());
  recordPage_->saveState();
  event->accept();
}

} // namespace afterbeat::window
