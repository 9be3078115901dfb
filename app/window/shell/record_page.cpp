#include "app/window/shell/record_page.h"

#include "app/window/debrief/replay.h"
#include "app/window/debrief/replay_bar.h"
#include "app/window/figures/headline_strip.h"
#include "app/window/figures/measures_list.h"
#include "app/window/figures/working_panel.h"
#include "app/window/finding/stepping.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/remembered.h"
#include "app/window/problems/problems_view.h"
#include "app/window/rows/rows_view.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/shell/lower_area.h"
#include "app/window/shell/side_panel.h"
#include "app/window/tables/tables_view.h"
#include "app/window/waves/waves_plot.h"
#include "app/window/waves/waves_view.h"

#include <QAction>
#include <QSplitter>
#include <QTabBar>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

/// Waves or a table can be read from this height on.
constexpr int kLeastLower = 180;
/// A few lines of a table, where there are no waves.
constexpr int kTableHeight = 220;

constexpr const char* kDown = "splitters/down";

/// What the reader sees first: the longest pause, else the first shock, else the beginning.
PointedAt firstLook(const Figures& figures) {
  const auto longest = std::max_element(
      figures.pauses.begin(), figures.pauses.end(),
      [](const Pause& a, const Pause& b) { return a.stretch.length() < b.stretch.length(); });
  if (longest != figures.pauses.end()) {
    const Time middle = longest->stretch.begin + longest->stretch.length() / 2;
    return {longest->stretch, pointedAt(figures, middle, Duration{-1}).what};
  }
  if (!figures.shocks.empty()) {
    return pointedAt(figures, figures.shocks.front().t, Duration{0});
  }
  const Time begin = figures.window ? figures.window->begin : Time{};
  return {{begin, begin + Selection::kAround}, {}};
}

} // namespace

RecordPage::RecordPage(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection),
      panel_(new SidePanel(session, selection)),
      headlines_(new HeadlineStrip(session, selection, this)),
      problemsStrip_(new ProblemsStrip(session, *panel_->problems(), panel_->showProblems(), this)),
      rows_(new RowsView(session, selection)), waves_(new WavesView(session, selection)),
      tables_(new TablesView(session, selection)), lower_(new LowerArea),
      stepping_(new Stepping(session, selection, this)),
      across_(new QSplitter(Qt::Horizontal, this)), down_(new QSplitter(Qt::Vertical)),
      nextPlace_(new QAction(tr("Go to the next place"), this)) {
  down_->addWidget(rows_);
  lower_->addPage(waves_, tr("Waves"), tr("Show the &waves"), Qt::SHIFT | Qt::Key_F2);
  lower_->addPage(tables_, tr("Tables"), tr("Show the &tables"), Qt::SHIFT | Qt::Key_F3);
  down_->addWidget(lower_);
  down_->setStretchFactor(0, 3);
  down_->setStretchFactor(1, 2);
  across_->addWidget(down_);
  across_->addWidget(panel_);
  across_->setStretchFactor(0, 1);
  across_->setStretchFactor(1, 0);
  across_->setSizes({900, 340});
  for (QSplitter* splitter : {across_, down_}) {
    splitter->setChildrenCollapsible(false);
    splitter->setHandleWidth(5);
  }
  rows_->setMinimumHeight(120);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(problemsStrip_);
  layout->addWidget(headlines_);
  layout->addWidget(across_, 1);
  nextPlace_->setShortcut(Qt::Key_F6);
  connect(nextPlace_, &QAction::triggered, this, &RecordPage::goToNextPlace);
  connect(headlines_, &HeadlineStrip::chosen, panel_, &SidePanel::showWorking);
  connect(&session_, &Session::recordChanged, this, &RecordPage::startRecord);
  connect(&session_, &Session::figuresChanged, this, [this] {
    awaited_ = true;
    rowsPainted_ = false;
    wavesPainted_ = !waves_->hasTracks();
    fitWaves();
    newRecord_ = false;
  });
  connect(rows_->canvas(), &RowsCanvas::painted, this, [this] {
    rowsPainted_ = true;
    tellComplete();
  });
  connect(rows_->canvas(), &RowsCanvas::wavesAsked, this, [this] {
    if (waves_->hasTracks()) {
      lower_->setCurrentWidget(waves_);
      waves_->plot()->setFocus(Qt::OtherFocusReason);
    }
  });
  connect(waves_, &WavesView::painted, this, [this] {
    wavesPainted_ = true;
    tellComplete();
  });
  connect(waves_, &WavesView::tracksChanged, this, &RecordPage::shareRoom);
  connect(down_, &QSplitter::splitterMoved, this, [this] { sharedByHand_ = true; });
  across_->restoreState(remembered::bytes("splitters/across"));
}

void RecordPage::saveState() const {
  remembered::setBytes("splitters/across", across_->saveState());
  if (sharedByHand_) {
    remembered::setBytes(kDown, down_->saveState());
  }
}

void RecordPage::addReplay(Replay& replay) {
  auto* bar = new ReplayBar(replay, this);
  qobject_cast<QVBoxLayout*>(layout())->insertWidget(layout()->indexOf(across_), bar);
  bar->hide();
  connect(&replay, &Replay::changed, bar, [bar, &replay] {
    if (replay.playing()) {
      bar->show();
    }
  });
  connect(&session_, &Session::recordChanged, bar, &QWidget::hide);
}

void RecordPage::startRecord() {
  newRecord_ = true;
  const Figures& figures = session_.figures();
  selection_.setExtent(extentOf(session_.record(), figures));
  const PointedAt first = firstLook(figures);
  selection_.lookAtAll(first.stretch, first.what);
  selection_.setMeasure(figures[MeasureId::handsOffFraction].status == Status::ok
                            ? MeasureId::handsOffFraction
                            : MeasureId::timeOn);
  panel_->showWorking();
}

void RecordPage::fitWaves() {
  // Without waves a table stands there, or one sentence, and the rows get the room.
  const bool tracks = waves_->hasTracks();
  const bool alone = lower_->count() == 1;
  lower_->setMaximumHeight(tracks || !alone ? QWIDGETSIZE_MAX : waves_->sizeHint().height());
  const int readable = waves_->leastHeight() + lower_->tabBar()->sizeHint().height();
  lower_->setMinimumHeight(tracks ? std::max(kLeastLower, readable) : !alone ? kLeastLower : 0);
  if (newRecord_ && !alone) {
    lower_->setCurrentIndex(tracks ? 0 : 1);
  }
  if (!newRecord_ || (!tracks && alone)) {
    return;
  }
  if (down_->restoreState(remembered::bytes(kDown))) {
    sharedByHand_ = true;
  }
  shareRoom();
}

void RecordPage::shareRoom() {
  if (sharedByHand_ || !session_.hasRecord() || (!waves_->hasTracks() && lower_->count() == 1)) {
    return;
  }
  // Waves that can be read and the whole rescue in view, where there is room for both; then rows
  // take what they can use, and the waves the rest. Where there is not, half and half.
  constexpr int kOtherStrips = 190;
  const int room = down_->height() > kOtherStrips ? down_->height() - down_->handleWidth()
                                                  : window()->height() - kOtherStrips;
  const int width = rows_->viewport()->width();
  const int least = rows_->canvas()->leastHeight(width), most = rows_->canvas()->mostHeight(width);
  const int around = lower_->tabBar()->sizeHint().height();
  const int wanted =
      waves_->hasTracks() ? std::max(kLeastLower, waves_->goodHeight() + around) : kTableHeight;
  int given = std::max(wanted, room - most);
  if (room - given < least) {
    given = std::max(lower_->minimumHeight(), std::min(given, std::max(room - least, room / 2)));
  }
  down_->setSizes({room - given, given});
}

void RecordPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  // The splitter has its new size only after this.
  QTimer::singleShot(0, this, &RecordPage::shareRoom);
}

void RecordPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && session_.hasRecord()) {
    // Other places learn of the type in their own time.
    QTimer::singleShot(0, this, [this] {
      fitWaves();
      shareRoom();
    });
  }
}

void RecordPage::goToNextPlace() {
  const QList<QWidget*> places{headlines_->cards().value(0), rows_->canvas(),
                               waves_->hasTracks() ? waves_->plot() : nullptr,
                               tables_->currentTable(),
                               panel_->currentWidget() == panel_->working()
                                   ? static_cast<QWidget*>(panel_->working()->table())
                                   : panel_->currentWidget()};
  const QWidget* focus = focusWidget();
  qsizetype now = -1;
  for (qsizetype i = 0; i < places.size(); ++i) {
    if (places[i] && focus && (places[i] == focus || places[i]->isAncestorOf(focus))) {
      now = i;
    }
  }
  if (now < 0 && qobject_cast<const HeadlineCard*>(focus)) {
    now = 0;
  }
  for (qsizetype step = 1; step <= places.size(); ++step) {
    QWidget* next = places[(now + step) % places.size()];
    if (next && next->isVisible()) {
      next->setFocus(Qt::ShortcutFocusReason);
      return;
    }
  }
}

void RecordPage::tellComplete() {
  if (!awaited_ || !rowsPainted_ || !wavesPainted_ || session_.state() != Session::State::ready) {
    return;
  }
  awaited_ = false;
  // What was painted reaches the screen before the event loop comes round again.
  QTimer::singleShot(0, this, [this] {
    if (session_.state() == Session::State::ready) {
      emit pictureComplete();
    }
  });
}

} // namespace afterbeat::window
