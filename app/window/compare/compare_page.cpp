#include "app/window/compare/compare_page.h"

#include "app/window/compare/beside_load.h"
#include "app/window/compare/beside_view.h"
#include "app/window/compare/chart_canvas.h"
#include "app/window/compare/chart_writing.h"
#include "app/window/compare/compare_pages.h"
#include "app/window/compare/figures_moved.h"
#include "app/window/compare/filter_bar.h"
#include "app/window/compare/save_report.h"
#include "app/window/compare/season_drop.h"
#include "app/window/compare/season_table.h"
#include "app/window/compare/season_views.h"
#include "app/window/compare/season_ways.h"
#include "app/window/compare/stand_out_view.h"
#include "app/window/look/elided_label.h"
#include "app/window/look/look.h"
#include "app/window/look/remembered.h"
#include "app/window/look/stack.h"
#include "app/window/session/session.h"
#include "app/window/shell/place_button.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QClipboard>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

namespace afterbeat::window {

namespace {

/// Reading that is done sooner shows no page of its own.
constexpr int kPatienceMs = 150;

QAction* make(const QString& text, const QString& name, const QKeySequence& key, QObject* parent) {
  auto* action = new QAction(text, parent);
  action->setIconText(name);
  action->setShortcut(key);
  return action;
}

} // namespace

ComparePage::ComparePage(Session& session, QAction* back, QAction* stop, QWidget* parent)
    : QWidget(parent), session_(session), desk_(new SeasonDesk(session, this)),
      ways_(new SeasonWays(*desk_, this)), drop_(new SeasonDrop(*desk_, this)),
      moved_(new FiguresMoved(*desk_, this)),
      go_(make(tr("&Compare many"), tr("Compare"), Qt::Key_C, this)),
      putBeside_(make(tr("Lay &side by side…"), {}, Qt::SHIFT | Qt::Key_C, this)),
      besideBefore_(
          make(tr("Beside the recording &before this one"), {}, Qt::SHIFT | Qt::Key_B, this)),
      save_(make(tr("Sa&ve the chart…"), {}, Qt::SHIFT | Qt::Key_S, this)),
      copy_(make(tr("Copy the chart as te&xt"), {}, Qt::SHIFT | Qt::Key_X, this)),
      title_(new ElidedLabel(this)), facts_(new ElidedLabel(this)),
      back_(new QPushButton(tr("Back to the record"), this)), switch_(new QHBoxLayout),
      stack_(new Stack(this)),
      empty_(new CompareEmpty(putBeside_, ways_->ways(), ways_->recent(), this)),
      busyPage_(new CompareBusy(stop, this)), filter_(new FilterBar(*desk_, this)),
      group_(new QActionGroup(this)), finding_(*this) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(makeHeader(back));
  layout->addWidget(filter_);
  layout->addWidget(stack_, 1);
  stack_->addWidget(empty_);
  stack_->addWidget(busyPage_);
  buildViews();
  connectDesk();
  connect(save_, &QAction::triggered, this, &ComparePage::saveChart);
  connect(copy_, &QAction::triggered, this, &ComparePage::copyChart);
  connect(&session_, &Session::stateChanged, this, &ComparePage::follow);
  title_->setWhole(tr("Compare"));
  restyle();
  follow();
}

QWidget* ComparePage::makeHeader(QAction* back) {
  auto* header = new QWidget(this);
  auto* across = new QHBoxLayout;
  across->setSpacing(12);
  across->addWidget(title_);
  across->addWidget(facts_, 1);
  back_->setAccessibleName(back_->text());
  back_->setToolTip(QStringLiteral("%1 (%2)").arg(
      back_->text(), back->shortcut().toString(QKeySequence::NativeText)));
  connect(back_, &QPushButton::clicked, back, &QAction::trigger);
  across->addWidget(back_);
  switch_->setSpacing(2);
  auto* down = new QVBoxLayout(header);
  down->setContentsMargins(16, 8, 16, 4);
  down->setSpacing(4);
  down->addLayout(across);
  down->addLayout(switch_);
  return header;
}

void ComparePage::buildViews() {
  table_ = new SeasonTable(*desk_, this);
  beside_ = new BesideView(session_, this);
  spread_ = new SpreadView(*desk_, this);
  overTime_ = new OverTimeView(*desk_, this);
  report_ = new SaveReport(*desk_, *overTime_, this);
  stages_ = new StagesView(*desk_, this);
  standOut_ = new StandOutView(*desk_, this);
  addView(table_, tr("Records"), tr("Show the &records"), Qt::SHIFT | Qt::Key_F4);
  addView(beside_, tr("Side by side"), tr("Show what lies si&de by side"), Qt::SHIFT | Qt::Key_F5);
  addView(spread_, tr("Spread"), tr("Show the s&pread of a figure"), Qt::SHIFT | Qt::Key_F6);
  addView(overTime_, tr("Over time"), tr("Show a figure over &time"), Qt::SHIFT | Qt::Key_F7);
  addView(stages_, tr("Where the time goes"), tr("Show &where the time goes"),
          Qt::SHIFT | Qt::Key_F8);
  addView(standOut_, tr("Worth a look"), tr("Show what is worth a &look"), Qt::SHIFT | Qt::Key_F9);
  switch_->addStretch(1);
  connect(table_, &SeasonTable::wanted, this, &ComparePage::openPlace);
  connect(table_, &SeasonTable::markedChanged, this, &ComparePage::followMarked);
  connect(beside_, &BesideView::latestWanted, this, [this] {
    layBeside([](const SeasonSource& source) { return twoLatest(source.season()); });
  });
  for (ChartView* view : QList<ChartView*>{spread_, overTime_, stages_}) {
    connect(view, &ChartView::wanted, this, &ComparePage::openPlace);
    connect(view, &ChartView::drawn, this, &ComparePage::follow);
  }
  connect(standOut_, &StandOutView::wanted, this, &ComparePage::openPlace);
  connect(report_, &SaveReport::said, this, &ComparePage::said);
  connect(report_, &SaveReport::failed, this, &ComparePage::failed);
  connect(report_, &SaveReport::written, this, &ComparePage::written);
  connect(overTime_, &OverTimeView::said, this, &ComparePage::said);
  connect(overTime_, &OverTimeView::failed, this, &ComparePage::failed);
  connect(overTime_, &OverTimeView::stepsChanged, this, &ComparePage::follow);
  connect(beside_, &BesideView::busyChanged, this, &ComparePage::follow);
  connect(beside_, &BesideView::shown, this, [this] {
    showView(beside_);
    emit shown();
  });
  connect(beside_, &BesideView::wanted, this, &ComparePage::wanted);
}

void ComparePage::connectDesk() {
  busyPage_->follow([this] {
    const bool season = desk_->busy();
    const auto done = season ? desk_->done() : static_cast<std::size_t>(beside_->done());
    const auto all = season ? desk_->found() : static_cast<std::size_t>(beside_->toRead());
    return CompareBusy::State{all > 0 ? tr("%1 of %2 recordings were read").arg(done).arg(all)
                                      : tr("Looking for recordings, or asking the archive…"),
                              all > 0 ? static_cast<double>(done) / static_cast<double>(all) : 0};
  });
  connect(desk_, &SeasonDesk::busyChanged, this, &ComparePage::follow);
  connect(desk_, &SeasonDesk::sourceChanged, this, &ComparePage::followSource);
  connect(desk_, &SeasonDesk::arrangedChanged, this, [this] {
    tableAwaited_ = true;
    follow();
    emit shown();
  });
  connect(table_, &SeasonTable::painted, this, [this] {
    if (std::exchange(tableAwaited_, false)) {
      // What was painted reaches the screen before the event loop comes round again.
      QTimer::singleShot(0, this,
                         [this, whole = !desk_->onlyLatest()] { emit tablePainted(whole); });
    }
  });
  connect(desk_, &SeasonDesk::failed, this, &ComparePage::failed);
  connect(desk_, &SeasonDesk::takenIn, this, [this] {
    const archive::TakeInReport& report = *desk_->report();
    QString text = tr("Taken in: %1 new, %2 changed, %3 known already, %4 that could not be read.")
                       .arg(report.added)
                       .arg(report.changed)
                       .arg(report.known)
                       .arg(report.refused.size());
    if (report.cancelled) {
      text += QLatin1Char(' ') +
              tr("It was stopped: what was taken in stays, the next time goes on from there.");
    }
    emit said(text);
  });
  connect(ways_, &SeasonWays::asked, this, &ComparePage::asked);
  connect(ways_, &SeasonWays::said, this, &ComparePage::failed);
  connect(drop_, &SeasonDrop::archiveWanted, ways_, &SeasonWays::openTyped);
  connect(drop_, &SeasonDrop::besideWanted, this, &ComparePage::openBeside);
  connect(drop_, &SeasonDrop::recordWanted, this, &ComparePage::wanted);
}

void ComparePage::followSource() {
  const SharedSource& open = desk_->onlyLatest() ? desk_->shown().source : desk_->source();
  if (!open) {
    // What was begun did not come to its end.
    shownKey_.clear();
    view_ = view_ == beside_ && !beside_->beside().records.empty() ? view_ : nullptr;
    follow();
    return;
  }
  const bool known = open->key() == shownKey_ && view_;
  shownKey_ = open->key();
  if (known && desk_->onlyLatest()) {
    // All records come to the latest: nothing moves, and the keyboard stays where it is.
    follow();
    return;
  }
  // The same season under other settings stays in the view it is in.
  showView(known && view_ != beside_ ? view_ : table_);
}

void ComparePage::addView(QWidget* view, const QString& name, const QString& text,
                          const QKeySequence& key) {
  QAction* action = make(text, name, key, this);
  action->setCheckable(true);
  action->setActionGroup(group_);
  action->setEnabled(false);
  connect(action, &QAction::triggered, this, [this, view] {
    emit asked();
    showView(view);
  });
  auto* button = new PlaceButton(action, this);
  connect(action, &QAction::changed, button,
          [action, button] { button->setVisible(action->isEnabled()); });
  button->setVisible(false);
  switch_->addWidget(button);
  views_ << action;
  viewWidgets_ << view;
  stack_->addWidget(view);
}

QList<QList<QAction*>> ComparePage::actionGroups() const {
  return {{go_, putBeside_, besideBefore_},
          ways_->ways() << ways_->broken() << moved_->action(),
          views_,
          filter_->actions(),
          beside_->actions(),
          overTime_->actions(),
          {save_, copy_, report_->action()}};
}

const QList<QAction*>& ComparePage::recentArchives() const {
  return ways_->recent();
}

QWidget* ComparePage::current() const {
  return stack_->currentWidget();
}

QString ComparePage::heading() const {
  return facts_->whole().isEmpty() ? title_->whole()
                                   : QStringLiteral("%1: %2").arg(title_->whole(), facts_->whole());
}

void ComparePage::openBeside(const QStringList& paths) {
  beside_->open(paths);
}

bool ComparePage::putMarkedBeside() {
  const auto places = table_->marked();
  // Where some lie side by side already, others are asked for.
  const bool free = view_ != beside_ || beside_->beside().records.empty();
  if (!isVisible() || !free || places.size() < 2) {
    return false;
  }
  if (places.size() > kMostBeside) {
    tooMany_ = tr("Eight records at most stand side by side, and %1 are marked.")
                   .arg(words().number(static_cast<double>(places.size())));
    emit failed(tooMany_);
    return true;
  }
  layBeside([places](const SeasonSource&) { return places; });
  return true;
}

void ComparePage::layBeside(std::function<std::vector<std::uint32_t>(const SeasonSource&)> which) {
  if (!desk_->shown().source) {
    return;
  }
  finding_.ask(
      [source = desk_->shown().source, which = std::move(which)] {
        QStringList paths;
        for (const std::uint32_t place : which(*source)) {
          if (const auto path = source->file(place)) {
            paths << *path;
          }
        }
        return paths;
      },
      [this](const QStringList& paths) {
        if (paths.size() < 2) {
          emit failed(tr("No two records here have the same kind and site, a known day and their "
                         "files at hand. Mark two in Records instead."));
        } else {
          openBeside(paths);
        }
      });
}

/// The line near the table says how to compare; what was said of too many marks is over.
void ComparePage::followMarked() {
  filter_->setMarked(table_->marked().size());
  if (!tooMany_.isEmpty()) {
    emit outdated(std::exchange(tooMany_, {}));
  }
}

void ComparePage::openPlace(std::uint32_t place) {
  if (!desk_->shown().source) {
    return;
  }
  finding_.ask([source = desk_->shown().source, place] { return source->file(place); },
               [this](const tl::expected<QString, QString>& path) {
                 if (!path) {
                   emit failed(path.error());
                 } else if (!QFileInfo::exists(*path)) {
                   emit failed(tr("The file of this record is not where it was: %1. Its figures "
                                  "are in the archive all the same.")
                                   .arg(*path));
                 } else {
                   emit wanted(*path);
                 }
               });
}

ChartView* ComparePage::chartView() const {
  return qobject_cast<ChartView*>(view_);
}

void ComparePage::saveChart() {
  ChartView* view = chartView();
  if (!view || !view->canvas()->chart()) {
    return;
  }
  const QString path = QFileDialog::getSaveFileName(
      this, tr("Save the chart"), remembered::folder("export") + QStringLiteral("/chart.svg"),
      tr("Pictures (*.svg *.png *.pdf)"));
  if (path.isEmpty()) {
    return;
  }
  remembered::setFolder("export", QFileInfo(path).path());
  const QString trouble = writeChart(*view->canvas()->chart(), path);
  if (trouble.isEmpty()) {
    emit written(path, {});
  } else {
    emit failed(trouble);
  }
}

void ComparePage::copyChart() {
  if (const ChartView* view = chartView()) {
    QApplication::clipboard()->setText(view->asText());
    emit said(tr("The chart was copied as text."));
  }
}

void ComparePage::stop() {
  beside_->stop();
  desk_->stop();
}

bool ComparePage::busy() const {
  return beside_->busy() || desk_->busy();
}

void ComparePage::showView(QWidget* view) {
  view_ = view;
  if (!tooMany_.isEmpty()) {
    emit outdated(std::exchange(tooMany_, {}));
  }
  stack_->setCurrentWidget(view);
  setFocusProxy(view);
  if (isVisible()) {
    view->setFocus(Qt::OtherFocusReason);
  }
  follow();
}

QString ComparePage::factsText() const {
  if (view_ == beside_) {
    const auto count = beside_->beside().records.size();
    return count == 0 ? tr("nothing side by side yet") : tr("%1 records side by side").arg(count);
  }
  const SharedSource& open = desk_->onlyLatest() ? desk_->shown().source : desk_->source();
  return open && view_ ? open->name() : QString();
}

void ComparePage::follow() {
  const bool laid = !beside_->beside().records.empty();
  // What is made of a season waits for all of it.
  const bool season = desk_->source() && !desk_->onlyLatest();
  for (qsizetype i = 0; i < views_.size(); ++i) {
    const QWidget* view = viewWidgets_[i];
    views_[i]->setEnabled(season || (view == beside_ && laid) ||
                          ((view == table_ || view == beside_) && desk_->onlyLatest()));
    views_[i]->setChecked(view_ == viewWidgets_[i]);
  }
  facts_->setWhole(factsText());
  const bool drawn = chartView() && chartView()->canvas()->chart();
  save_->setEnabled(drawn);
  copy_->setEnabled(drawn);
  report_->action()->setEnabled(season && overTime_->stepsKnown());
  const bool ready = session_.state() == Session::State::ready;
  back_->setVisible(ready);
  besideBefore_->setEnabled(ready);
  followBusy();
  emit busyChanged();
}

void ComparePage::followBusy() {
  // With the latest records in view there is something to look at.
  if (beside_->busy() || (desk_->busy() && !desk_->onlyLatest())) {
    QTimer::singleShot(kPatienceMs, this, [this] {
      if ((desk_->busy() && !desk_->onlyLatest()) || (beside_->busy() && beside_->toRead() > 0)) {
        stack_->setCurrentWidget(busyPage_);
        filter_->hide();
      }
    });
  } else {
    stack_->setCurrentWidget(view_ ? view_ : empty_);
    filter_->setVisible((desk_->source() || desk_->onlyLatest()) && view_ && view_ != beside_);
    filter_->setOrdered(view_ == table_);
  }
}

void ComparePage::restyle() {
  const Look look = Look::of(palette(), font());
  QFont large = font();
  large.setBold(true);
  large.setPointSizeF(large.pointSizeF() * 1.2);
  title_->setFont(large);
  QPalette faint = palette();
  faint.setColor(QPalette::WindowText, look.faintInk);
  facts_->setPalette(faint);
}

void ComparePage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
  }
}

} // namespace afterbeat::window
