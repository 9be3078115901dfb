#include "app/window/compare/chart_canvas.h"
#include "app/window/compare/mark_dialog.h"
#include "app/window/compare/season_views.h"
#include "app/window/look/remembered.h"

#include <QAction>
#include <QComboBox>
#include <QDate>
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

QString rememberedKey(const QString& source) {
  // Slashes would make groups of the settings.
  return QStringLiteral("compare/steps/%1")
      .arg(QString::fromLatin1(source.toUtf8().toBase64(QByteArray::Base64UrlEncoding)));
}

class StepsCommand final : public QUndoCommand {
public:
  StepsCommand(std::function<void(const std::vector<MarkedStep>&)> set,
               std::vector<MarkedStep> before, std::vector<MarkedStep> after, const QString& text)
      : QUndoCommand(text), set_(std::move(set)), before_(std::move(before)),
        after_(std::move(after)) {}
  void undo() override { set_(before_); }
  void redo() override { set_(after_); }

private:
  std::function<void(const std::vector<MarkedStep>&)> set_;
  std::vector<MarkedStep> before_, after_;
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
  if (drawing == Drawing::usual && usualChart(id) == ChartKind::shares) {
    return CountedShare{id};
  }
  if (drawing == Drawing::usual && usualChart(id) == ChartKind::counts) {
    return CountedFor{id, MeasureId::arrestTime, 600};
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

QString stepsAsText(const std::vector<MarkedStep>& steps) {
  QStringList lines;
  for (const MarkedStep& step : steps) {
    lines << QStringLiteral("%1 %2").arg(dateOf(step.day).toString(Qt::ISODate),
                                         QString::fromStdString(step.words).simplified());
  }
  return lines.join(QLatin1Char('\n'));
}

std::vector<MarkedStep> stepsFromText(const QString& text) {
  std::vector<MarkedStep> steps;
  for (const QString& line : text.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
    const QDate date = QDate::fromString(line.section(QLatin1Char(' '), 0, 0), Qt::ISODate);
    if (date.isValid()) {
      steps.push_back({dayOf(date), line.section(QLatin1Char(' '), 1).toStdString()});
    }
  }
  return steps;
}

OverTimeView::OverTimeView(SeasonDesk& desk, QWidget* parent)
    : ChartView(desk, tr("Over time"), parent), measure_(addChooser(tr("Figure"))),
      drawing_(addChooser(tr("Drawn as"))), period_(addChooser(tr("A point is"))),
      undo_(new QUndoStack(this)) {
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
  follow();
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
  settings.steps = steps_;
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

void OverTimeView::load() {
  const QString key = desk().source() ? desk().source()->key() : QString();
  if (key == loadedFor_) {
    return;
  }
  loadedFor_ = key;
  undo_->clear();
  steps_ = stepsFromText(remembered::text(rememberedKey(key)));
  follow();
}

void OverTimeView::follow() {
  actions_[0]->setEnabled(desk().source() != nullptr);
  actions_[1]->setEnabled(!steps_.empty());
  actions_[2]->setEnabled(undo_->canUndo());
  actions_[3]->setEnabled(undo_->canRedo());
}

void OverTimeView::setSteps(const std::vector<MarkedStep>& steps) {
  steps_ = steps;
  remembered::setText(rememberedKey(loadedFor_), stepsAsText(steps_));
  refresh();
}

void OverTimeView::change(std::vector<MarkedStep> to, const QString& what) {
  std::stable_sort(to.begin(), to.end(),
                   [](const MarkedStep& a, const MarkedStep& b) { return a.day < b.day; });
  undo_->push(new StepsCommand([this](const std::vector<MarkedStep>& steps) { setSteps(steps); },
                               steps_, std::move(to), what));
}

void OverTimeView::mark(std::chrono::sys_days day, const QString& words) {
  std::vector<MarkedStep> to = steps_;
  to.push_back({day, words.simplified().toStdString()});
  change(std::move(to), tr("mark"));
}

void OverTimeView::unmark(std::size_t index) {
  if (index < steps_.size()) {
    std::vector<MarkedStep> to = steps_;
    to.erase(to.begin() + static_cast<std::ptrdiff_t>(index));
    change(std::move(to), tr("mark taken away"));
  }
}

void OverTimeView::askMark() {
  // The day of the point that the keyboard is at, else of the last one.
  QDate day = QDate::currentDate();
  if (const auto& chart = canvas()->chart(); chart && !chart->points.empty()) {
    const std::size_t at = canvas()->current().value_or(chart->points.size() - 1);
    day = QDate(1970, 1, 1).addDays(static_cast<qint64>(chart->points[at].x));
  }
  MarkDialog dialog(day, this);
  if (dialog.exec() == QDialog::Accepted) {
    mark(dayOf(dialog.day()), dialog.words());
    emit said(tr("Marked. Shift+Z takes it back."));
  }
}

void OverTimeView::askUnmark() {
  QStringList names;
  for (const MarkedStep& step : steps_) {
    names << QStringLiteral("%1  %2").arg(dateOf(step.day).toString(Qt::ISODate),
                                          QString::fromStdString(step.words));
  }
  bool chosen = false;
  const QString name = QInputDialog::getItem(this, tr("Take a mark away"), tr("Which one?"), names,
                                             0, false, &chosen);
  if (chosen) {
    unmark(static_cast<std::size_t>(std::max<qsizetype>(0, names.indexOf(name))));
  }
}

} // namespace afterbeat::window
