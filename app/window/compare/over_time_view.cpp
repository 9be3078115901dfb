#include "app/window/compare/chart_canvas.h"
#include "app/window/compare/mark_dialog.h"
#include "app/window/compare/season_views.h"
#include "app/window/compare/steps_keeper.h"

#include <QAction>
#include <QComboBox>
#include <QDate>
#include <QGuiApplication>
#include <QInputDialog>
#include <QUndoCommand>
#include <QUndoStack>

#include <algorithm>

namespace afterbeat::window {

namespace {

/// How a measure is drawn.
enum class Drawing { usual, run, control };
/// Beside the measures: the share of records in which a shock was given.
constexpr int kWithShock = 1000;

/// Sets a mark or takes it away.
class StepCommand final : public QUndoCommand {
public:
  StepCommand(StepsKeeper& keeper, MarkedStep step, StepsKeeper::Kept where, bool adds,
              const QString& text)
      : QUndoCommand(text), keeper_(keeper), step_(std::move(step)), where_(where), adds_(adds) {}
  void undo() override { set(!adds_); }
  void redo() override { set(adds_); }

private:
  void set(bool there) {
    if (there) {
      keeper_.put(step_, where_);
    } else {
      keeper_.take(step_);
    }
  }

  StepsKeeper& keeper_;
  MarkedStep step_;
  StepsKeeper::Kept where_;
  bool adds_;
};

QDate dateOf(std::chrono::sys_days day) {
  return QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
}

std::chrono::sys_days dayOf(const QDate& date) {
  return std::chrono::sys_days(std::chrono::days(QDate(1970, 1, 1).daysTo(date)));
}

ChartSubject subjectOf(int chosen, Drawing drawing) {
  if (chosen == kWithShock) {
    return RecordsWithShock{};
  }
  const auto id = static_cast<MeasureId>(chosen);
  if (drawing == Drawing::usual && usualChart(id) != ChartKind::run) {
    return chartWithLimits(id).subject;
  }
  return ValueOf{id};
}

ChartKind kindOf(int chosen, Drawing drawing) {
  if (drawing == Drawing::run) {
    return ChartKind::run;
  }
  if (drawing == Drawing::control || chosen == kWithShock) {
    return ChartKind::individuals;
  }
  return usualChart(static_cast<MeasureId>(chosen));
}

} // namespace

OverTimeView::OverTimeView(SeasonDesk& desk, QWidget* parent)
    : ChartView(desk, tr("Over time"), parent), measure_(addChooser(tr("Figure"))),
      drawing_(addChooser(tr("Drawn as"))), period_(addChooser(tr("A point is"))),
      keeper_(new StepsKeeper(this)), undo_(new QUndoStack(this)) {
  fillMeasures(measure_, MeasureId::powerOnToFirstShock);
  measure_->addItem(tr("Share of records with a shock"), kWithShock);
  drawing_->addItem(tr("as suits the figure"), static_cast<int>(Drawing::usual));
  drawing_->addItem(tr("along the median (run chart)"), static_cast<int>(Drawing::run));
  drawing_->addItem(tr("with limits (control chart)"), static_cast<int>(Drawing::control));
  period_->addItem(tr("each record"), static_cast<int>(Period::record));
  period_->addItem(tr("each week"), static_cast<int>(Period::week));
  period_->addItem(tr("each month"), static_cast<int>(Period::month));
  period_->addItem(tr("each quarter"), static_cast<int>(Period::quarter));
  period_->addItem(tr("each year"), static_cast<int>(Period::year));
  const auto make = [this](const QString& text, const QKeySequence& key, auto does) {
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    actions_ << action;
  };
  make(tr("&New training from here…"), Qt::SHIFT | Qt::Key_T, &OverTimeView::askMark);
  make(tr("&Take a mark away…"), Qt::SHIFT | Qt::Key_D, &OverTimeView::askUnmark);
  make(tr("&Undo the mark"), Qt::SHIFT | Qt::Key_Z, [this] { undo_->undo(); });
  make(tr("&Redo the mark"), Qt::SHIFT | Qt::Key_Y, [this] { undo_->redo(); });
  // Through the canvas, which goes before the stack does: that tells of its end as well.
  connect(undo_, &QUndoStack::indexChanged, canvas(), [this] { follow(); });
  connect(&desk, &SeasonDesk::sourceChanged, this, &OverTimeView::load);
  connect(keeper_, &StepsKeeper::failed, this, &OverTimeView::failed);
  connect(keeper_, &StepsKeeper::changed, this, [this] {
    follow();
    refresh();
    emit stepsChanged();
  });
  connect(qGuiApp, &QGuiApplication::applicationStateChanged, this,
          [this](Qt::ApplicationState state) {
            if (state == Qt::ApplicationActive && isVisible()) {
              keeper_->lookAgain();
            }
          });
  follow();
}

void OverTimeView::showEvent(QShowEvent* event) {
  ChartView::showEvent(event);
  keeper_->lookAgain();
}

ChartMaker OverTimeView::maker() const {
  OverTimeSettings settings;
  const int chosen = measure_->currentData().toInt();
  const auto drawing = static_cast<Drawing>(drawing_->currentData().toInt());
  settings.subject = subjectOf(chosen, drawing);
  settings.chart = kindOf(chosen, drawing);
  settings.period = static_cast<Period>(period_->currentData().toInt());
  const bool shares = !std::holds_alternative<ValueOf>(settings.subject);
  if (shares && settings.period == Period::record &&
      std::holds_alternative<RecordsWithShock>(settings.subject)) {
    // A share of one record is no or all.
    settings.period = Period::month;
  }
  settings.steps = steps();
  return [settings](const Season& season, const Chosen& chosenRecords, const papers::Words& words) {
    return overTime(season, chosenRecords, settings).map([&](const OverTime& made) {
      return papers::overTimeChart(season, made, words);
    });
  };
}

std::optional<MeasureId> OverTimeView::measureDrawn() const {
  const int chosen = measure_->currentData().toInt();
  return chosen == kWithShock ? std::nullopt : std::optional(static_cast<MeasureId>(chosen));
}

const std::vector<MarkedStep>& OverTimeView::steps() const {
  return keeper_->steps();
}

bool OverTimeView::stepsKnown() const {
  return keeper_->known();
}

void OverTimeView::load() {
  const QString key = desk().source() ? desk().source()->key() : QString();
  if (key != loadedFor_) {
    loadedFor_ = key;
    undo_->clear();
  }
  keeper_->open(key, desk().place());
}

void OverTimeView::follow() {
  actions_[0]->setEnabled(desk().source() != nullptr && keeper_->known());
  actions_[1]->setEnabled(std::any_of(steps().begin(), steps().end(),
                                      [this](const auto& step) { return keeper_->mayTake(step); }));
  actions_[2]->setEnabled(undo_->canUndo());
  actions_[3]->setEnabled(undo_->canRedo());
}

void OverTimeView::mark(std::chrono::sys_days day, const QString& words) {
  MarkedStep step{day, words.simplified().toStdString()};
  if (std::find(steps().begin(), steps().end(), step) != steps().end()) {
    emit said(tr("This mark is there already."));
    return;
  }
  const bool alone = keeper_->keptNew() == StepsKeeper::Kept::own;
  undo_->push(new StepCommand(*keeper_, std::move(step), keeper_->keptNew(), true, tr("mark")));
  if (!keeper_->hasArchive()) {
    emit said(tr("Marked. Shift+Z takes it back."));
  } else if (alone) {
    emit said(tr("Marked for you alone, as you may not write to this archive. Shift+Z takes it "
                 "back."));
  } else {
    emit said(tr("Marked in the archive, for all who use it. Shift+Z takes it back."));
  }
}

void OverTimeView::unmark(std::size_t index) {
  if (index < steps().size() && keeper_->mayTake(steps()[index])) {
    const MarkedStep step = steps()[index];
    undo_->push(new StepCommand(*keeper_, step, keeper_->kept(step), false, tr("mark taken away")));
  }
}

MarkQuestion OverTimeView::markQuestion() const {
  MarkQuestion question;
  question.day = QDate::currentDate();
  question.kept = !keeper_->hasArchive() ? tr("The mark will be kept for you alone.")
                  : keeper_->keptNew() == StepsKeeper::Kept::own
                      ? tr("The mark will be kept for you alone, as you may not write to this "
                           "archive.")
                      : tr("The mark will be kept in this archive, for all who use it.");
  const Arranged& arranged = desk().arranged();
  if (!arranged.source) {
    return question;
  }
  const auto& records = arranged.source->season().records;
  // The chooser's kinds stand in the order of `kindsOf`.
  const auto kinds = kindsOf(arranged.source->season(), arranged.chosen);
  if (const auto at = static_cast<std::size_t>(kind()->currentIndex()); at < kinds.size()) {
    for (const std::uint32_t place :
         ofKind(arranged.source->season(), arranged.chosen, kinds[at].kind)) {
      if (const auto& day = records[place].day) {
        question.days.push_back(dateOf(*day));
      } else {
        ++question.withoutDay;
      }
    }
  }
  // The first day of the point that the keyboard is at, else the last record's day.
  if (const auto& chart = canvas()->chart(); chart && canvas()->current() && upToDate()) {
    const papers::ChartPoint& point = chart->points[*canvas()->current()];
    std::optional<std::chrono::sys_days> first;
    for (std::uint32_t i = 0; i < point.count; ++i) {
      const std::uint32_t place = chart->records[point.first + i];
      if (place < records.size() && records[place].day) {
        first = std::min(first.value_or(*records[place].day), *records[place].day);
      }
    }
    if (first) {
      question.day = dateOf(*first);
      return question;
    }
  }
  if (!question.days.empty()) {
    question.day = *std::max_element(question.days.begin(), question.days.end());
  }
  return question;
}

void OverTimeView::askMark() {
  MarkDialog dialog(markQuestion(), this);
  if (dialog.exec() == QDialog::Accepted) {
    mark(dayOf(dialog.day()), dialog.words());
  }
}

void OverTimeView::askUnmark() {
  QStringList names;
  std::vector<std::size_t> indexes;
  for (std::size_t i = 0; i < steps().size(); ++i) {
    const MarkedStep& step = steps()[i];
    if (!keeper_->mayTake(step)) {
      continue;
    }
    QString name = QStringLiteral("%1  %2").arg(dateOf(step.day).toString(Qt::ISODate),
                                                QString::fromStdString(step.words));
    if (keeper_->hasArchive() && keeper_->kept(step) == StepsKeeper::Kept::own) {
      name = tr("%1 (for you alone)").arg(name);
    }
    names << name;
    indexes.push_back(i);
  }
  bool chosen = false;
  const QString name = QInputDialog::getItem(this, tr("Take a mark away"), tr("Which one?"), names,
                                             0, false, &chosen);
  if (const auto at = names.indexOf(name); chosen && at >= 0) {
    unmark(indexes[static_cast<std::size_t>(at)]);
  }
}

} // namespace afterbeat::window
