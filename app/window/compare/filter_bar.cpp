#include "app/window/compare/filter_bar.h"

#include "app/papers/said.h"
#include "app/window/compare/season_table_model.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QAction>
#include <QComboBox>
#include <QDate>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace afterbeat::window {

namespace {

/// Typing is answered when the fingers rest.
constexpr int kTypingMs = 120;
/// A number that stands for "all" in a chooser.
constexpr int kAll = -1;

constexpr Fact kSortFacts[] = {Fact::day,  Fact::site,   Fact::team,
                               Fact::kind, Fact::device, Fact::longestPauseCause,
                               Fact::file};
/// Facts and measures have numbers of their own in the chooser.
constexpr int kMeasures = 1000;

QDate dateOf(std::chrono::sys_days day) {
  return QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
}

std::chrono::sys_days dayOf(const QDate& date) {
  return std::chrono::sys_days(std::chrono::days(QDate(1970, 1, 1).daysTo(date)));
}

} // namespace

FilterBar::FilterBar(SeasonDesk& desk, QWidget* parent)
    : QWidget(parent), desk_(desk), words_(new QLineEdit(this)), kind_(chooser(tr("Kind"))),
      site_(chooser(tr("Site"))), team_(chooser(tr("Team"))), period_(chooser(tr("Period"))),
      shock_(chooser(tr("Had a shock"))), cause_(chooser(tr("Longest pause was"))),
      sortBy_(new QComboBox(this)), sortWords_(new QLabel(tr("Sort by"), this)),
      direction_(new QToolButton(this)), sentence_(new QLabel(this)), typing_(new QTimer(this)) {
  words_->setPlaceholderText(
      tr("Type to filter: site, team, kind, cause, with a shock, 2026-Q1, 2026-03..2026-05…"));
  words_->setAccessibleName(tr("Type to filter the records"));
  words_->setClearButtonEnabled(true);
  sortBy_->setAccessibleName(tr("Sort by"));
  sortBy_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  sortBy_->setMinimumContentsLength(18);
  direction_->setFocusPolicy(Qt::StrongFocus);
  sentence_->setTextFormat(Qt::PlainText);
  sentence_->setWordWrap(true);
  typing_->setSingleShot(true);
  typing_->setInterval(kTypingMs);
  auto* first = new QHBoxLayout;
  first->setSpacing(8);
  first->addWidget(words_, 1);
  first->addWidget(sortWords_);
  first->addWidget(sortBy_);
  first->addWidget(direction_);
  auto* second = new QHBoxLayout;
  second->setSpacing(8);
  for (QComboBox* box : {kind_, site_, team_, period_, shock_, cause_}) {
    second->addWidget(box, 1);
  }
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(16, 4, 16, 6);
  down->setSpacing(6);
  down->addLayout(first);
  down->addLayout(second);
  down->addWidget(sentence_);
  const auto make = [this](const QString& text, const QKeySequence& key, auto does) {
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    actions_ << action;
  };
  make(tr("&Filter by typing"), Qt::CTRL | Qt::SHIFT | Qt::Key_F, [this] {
    words_->setFocus(Qt::ShortcutFocusReason);
    words_->selectAll();
  });
  make(tr("Show &all records again"), Qt::SHIFT | Qt::Key_U, &FilterBar::clear);
  make(tr("Turn the &order round"), Qt::SHIFT | Qt::Key_O, &FilterBar::turnRound);
  connect(direction_, &QToolButton::clicked, this, &FilterBar::turnRound);
  connect(typing_, &QTimer::timeout, this, &FilterBar::ask);
  connect(words_, &QLineEdit::textChanged, typing_, qOverload<>(&QTimer::start));
  for (QComboBox* box : {kind_, site_, team_, period_, shock_, cause_}) {
    connect(box, &QComboBox::activated, this, &FilterBar::ask);
  }
  connect(sortBy_, &QComboBox::activated, this, &FilterBar::askOrder);
  connect(&desk_, &SeasonDesk::sourceChanged, this, &FilterBar::fill);
  connect(&desk_, &SeasonDesk::arrangedChanged, this, &FilterBar::follow);
  connect(&desk_, &SeasonDesk::wishChanged, this, &FilterBar::follow);
  fillOrders();
}

QComboBox* FilterBar::chooser(const QString& name) {
  auto* box = new QComboBox(this);
  box->setAccessibleName(name);
  box->setToolTip(name);
  // Long names give way; the list that opens shows them whole.
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(8);
  return box;
}

void FilterBar::fillOrders() {
  for (const Fact fact : kSortFacts) {
    sortBy_->addItem(factTitle(fact), static_cast<int>(fact));
  }
  sortBy_->insertSeparator(sortBy_->count());
  for (int i = 0; i < static_cast<int>(MeasureId::count_); ++i) {
    sortBy_->addItem(titleWords(static_cast<MeasureId>(i)), kMeasures + i);
  }
}

void FilterBar::fill() {
  const Filter& filter = desk_.filter();
  if (!typing_->isActive()) {
    const QSignalBlocker quiet(words_);
    words_->setText(QString::fromStdString(filter.words));
  }
  const auto refill = [this, &filter](QComboBox* box, auto add) {
    // What there is to choose from is known of the whole season alone.
    box->setEnabled(desk_.source() != nullptr);
    const QVariant chosen = box->currentData();
    const bool all = box->currentIndex() <= 0 || filter == Filter();
    box->clear();
    add();
    const int there = all ? 0 : box->findData(chosen);
    box->setCurrentIndex(std::max(0, there));
  };
  refill(kind_, [this] {
    kind_->addItem(tr("All kinds"), kAll);
    for (const RecordKind kind : {RecordKind::rescue, RecordKind::drill, RecordKind::test}) {
      kind_->addItem(kindWords(kind), static_cast<int>(kind));
    }
  });
  refill(site_, [this] { fillNames(site_, &RecordFacts::site); });
  refill(team_, [this] { fillNames(team_, &RecordFacts::team); });
  refill(period_, [this] { fillPeriods(); });
  refill(shock_, [this] {
    shock_->addItem(tr("With or without shock"), kAll);
    shock_->addItem(tr("With a shock"), 1);
    shock_->addItem(tr("Without a shock"), 0);
  });
  refill(cause_, [this] {
    cause_->addItem(tr("Longest pause: any"), kAll);
    for (int i = 0; i <= static_cast<int>(PauseCause::noReasonRecorded); ++i) {
      cause_->addItem(causeName(static_cast<PauseCause>(i)), i);
    }
  });
}

const std::vector<RecordFacts>& FilterBar::records() const {
  static const std::vector<RecordFacts> none;
  return desk_.source() ? desk_.source()->season().records : none;
}

/// Names as they stand in the records, in the order of the alphabet.
void FilterBar::fillNames(QComboBox* box, std::string RecordFacts::*fact) {
  std::set<std::string> names;
  for (const RecordFacts& facts : records()) {
    names.insert(facts.*fact);
  }
  const bool sites = box == site_;
  box->addItem(sites ? tr("All sites") : tr("All teams"));
  for (const std::string& name : names) {
    const QString nothing = sites ? tr("site not recorded") : tr("team not recorded");
    box->addItem(name.empty() ? nothing : papers::plainText(name), QString::fromStdString(name));
  }
}

void FilterBar::fillPeriods() {
  std::set<int, std::greater<>> years;
  for (const RecordFacts& facts : records()) {
    if (facts.day) {
      years.insert(dateOf(*facts.day).year());
    }
  }
  period_->addItem(tr("All days"));
  for (const int year : years) {
    period_->addItem(QString::number(year), QStringLiteral("%1-01 %1-12").arg(year));
    for (int quarter = 4; quarter >= 1; --quarter) {
      const QString first = QStringLiteral("%1").arg(quarter * 3 - 2, 2, 10, QLatin1Char('0'));
      const QString last = QStringLiteral("%1").arg(quarter * 3, 2, 10, QLatin1Char('0'));
      period_->addItem(tr("%1, quarter %2").arg(year).arg(quarter),
                       QStringLiteral("%1-%2 %1-%3").arg(year).arg(first, last));
    }
  }
}

void FilterBar::ask() {
  typing_->stop();
  Filter filter;
  filter.words = words_->text().toStdString();
  if (kind_->currentIndex() > 0) {
    filter.kind = static_cast<RecordKind>(kind_->currentData().toInt());
  }
  if (site_->currentIndex() > 0) {
    filter.site = site_->currentData().toString().toStdString();
  }
  if (team_->currentIndex() > 0) {
    filter.team = team_->currentData().toString().toStdString();
  }
  if (period_->currentIndex() > 0) {
    const QStringList ends = period_->currentData().toString().split(QLatin1Char(' '));
    filter.firstDay = dayOf(QDate::fromString(ends[0] + QStringLiteral("-01"), Qt::ISODate));
    const QDate last = QDate::fromString(ends[1] + QStringLiteral("-01"), Qt::ISODate);
    filter.lastDay = dayOf(last.addMonths(1).addDays(-1));
  }
  if (shock_->currentIndex() > 0) {
    filter.hadShock = shock_->currentData().toInt() == 1;
  }
  if (cause_->currentIndex() > 0) {
    filter.longestPauseCause = static_cast<PauseCause>(cause_->currentData().toInt());
  }
  desk_.setFilter(filter);
}

void FilterBar::clear() {
  const QSignalBlocker quiet(words_);
  words_->clear();
  for (QComboBox* box : {kind_, site_, team_, period_, shock_, cause_}) {
    box->setCurrentIndex(0);
  }
  ask();
}

void FilterBar::askOrder() {
  const int chosen = sortBy_->currentData().toInt();
  Order order = desk_.order();
  if (chosen >= kMeasures) {
    order.by = static_cast<MeasureId>(chosen - kMeasures);
  } else {
    order.by = static_cast<Fact>(chosen);
  }
  desk_.setOrder(order);
}

void FilterBar::turnRound() {
  Order order = desk_.order();
  order.descending = !order.descending;
  desk_.setOrder(order);
}

void FilterBar::follow() {
  const Order& order = desk_.order();
  const auto* id = std::get_if<MeasureId>(&order.by);
  sortBy_->setCurrentIndex(sortBy_->findData(id ? kMeasures + static_cast<int>(*id)
                                                : static_cast<int>(std::get<Fact>(order.by))));
  direction_->setText(order.descending ? QStringLiteral("↓") : QStringLiteral("↑"));
  direction_->setAccessibleName(order.descending ? tr("Largest or latest first")
                                                 : tr("Smallest or earliest first"));
  direction_->setToolTip(direction_->accessibleName());
  sentence_->setText(sentence());
}

void FilterBar::setOrdered(bool ordered) {
  ordered_ = ordered;
  for (QWidget* widget : QList<QWidget*>{sortWords_, sortBy_, direction_}) {
    widget->setVisible(ordered);
  }
  sentence_->setText(sentence());
}

void FilterBar::setMarked(std::size_t marked) {
  marked_ = marked;
  sentence_->setText(sentence());
}

QString FilterBar::sentence() const {
  const auto number = [](std::size_t count) {
    return window::words().number(static_cast<double>(count));
  };
  if (desk_.onlyLatest()) {
    const QString latest =
        tr("The latest %1 of %2 records; all of them are being read…")
            .arg(number(desk_.shown().chosen.size()), number(desk_.shown().latestOf));
    const bool wish = desk_.order() != SeasonDesk::latestFirst() || desk_.filter() != Filter();
    return wish ? latest + QLatin1Char(' ') +
                      tr("The order and filter you chose take effect once all records are there.")
                : latest;
  }
  if (!desk_.source()) {
    return {};
  }
  const std::size_t all = desk_.source()->season().records.size();
  if (desk_.arranged().source != desk_.source()) {
    return tr("Records: %1. They are being sorted…").arg(number(all));
  }
  if (!desk_.arranged().trouble.isEmpty()) {
    return desk_.arranged().trouble;
  }
  const std::size_t shown = desk_.arranged().chosen.size();
  QStringList parts;
  if (all == 0) {
    parts << tr("No recording that can be read was found here.");
  } else {
    parts << (shown == all ? tr("Records: %1, all of them.").arg(number(all))
                           : tr("%1 of %2 records; the others do not fit the filter.")
                                 .arg(number(shown), number(all)));
  }
  if (const std::size_t without = desk_.arranged().withoutValue; ordered_ && without > 0) {
    parts << tr("Nothing recorded of what they are sorted by, and therefore last: %1.")
                 .arg(number(without));
  }
  if (const std::size_t without = desk_.arranged().withoutFigures; without > 0) {
    parts << tr("No figures under these settings: %1.").arg(number(without));
  }
  if (const std::size_t broken = desk_.source()->refused().size(); broken > 0) {
    parts << tr("Files that could not be read and are not among them: %1.").arg(number(broken));
  }
  if (all > 0 && !desk_.source()->asAsked()) {
    parts << tr("This archive holds no figures with the settings below; these were computed with: "
                "%1.")
                 .arg(papers::settingsOf(desk_.source()->settings(), window::words()));
  }
  if (ordered_ && shown > 1) {
    parts << (marked_ < 2 ? tr("To compare some: mark two to eight, then Shift+C.")
                          : tr("Marked: %1. Shift+C lays them side by side.").arg(number(marked_)));
  }
  return parts.join(QLatin1Char(' '));
}

} // namespace afterbeat::window
