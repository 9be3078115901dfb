#include "app/window/figures/measures_list.h"

#include "app/window/figures/measure_delegate.h"
#include "app/window/figures/reasons.h"
#include "app/window/figures/targets.h"
#include "app/window/figures/working_panel.h"
#include "app/window/finding/list_text.h"
#include "app/window/look/figure_words.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/signals/origin.h"

#include <QEvent>
#include <QHeaderView>
#include <QSignalBlocker>

namespace afterbeat::window {

namespace {

constexpr int kIdRole = Qt::UserRole;

/// The figures in the order in which a person asks.
struct Group {
  const char* title;
  std::vector<MeasureId> ids;
};

const std::vector<Group>& groups() {
  using enum MeasureId;
  static const std::vector<Group> kGroups{
      {QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "How fast?"),
       {powerOnToFirstShock, electrodesToFirstShock, firstHandsOnToFirstShock, collapseToFirstShock,
        callToFirstShock, powerOnToElectrodes, powerOnToFirstHandsOn, electrodesToFirstAnalysis,
        collapseToFirstHandsOn, callToFirstHandsOn, callToDeviceArrived}},
      {QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Hands on?"),
       {handsOffFraction, chestCompressionFraction, handsOffTime, adjustedHandsOffTime, arrestTime,
        longestPause, pausesOverLimit}},
      {QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "How well?"),
       {compressionRate, compressionRateInRange, compressionDepth, compressionDepthInRange,
        fullRelease, compressions, compressionsPerMinute}},
      {QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Shocks?"),
       {shocksDelivered, shocksWithheld, shocksUnknown, energyTotal, analyses,
        analysesAdvisingShock, adviceToShockMedian, adviceToShockWorst, preShockPauseMedian,
        preShockPauseWorst, postShockPauseMedian, postShockPauseWorst, periShockPauseMedian,
        periShockPauseWorst, timeOn}},
      {QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Breaths?"),
       {ventilations, ventilationsPerMinute}},
      {QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Circulation?"),
       {circulationTime, longestCirculation, collapseToCirculationReturned}}};
  return kGroups;
}

MeasureId idOf(const QTreeWidgetItem* item) {
  return static_cast<MeasureId>(item->data(0, kIdRole).toInt());
}

void fill(QTreeWidgetItem* item, const Record& record, const Figures& figures,
          const FigureOrigin& origin) {
  const MeasureId id = idOf(item);
  const Measure& measure = figures[id];
  const bool recorded = measure.status == Status::ok;
  const auto target = targetOf(id, record, figures);
  const Verdict verdict = recorded && target ? target->verdict : Verdict::none;
  QStringList first, second;
  if (!recorded) {
    first << reasonWords(id, record, figures);
  } else if (target) {
    if (verdict != Verdict::none) {
      first << verdictWords(verdict);
    }
    first << target->words;
    second << citationWords(target->source);
  }
  if (const QString left = leftOutWords(id, figures); !left.isEmpty()) {
    second << left;
  }
  if (const QString derived = originWords(id, figures, origin); !derived.isEmpty()) {
    second << derived;
  }
  const QString value = valueWords(measure);
  item->setText(1, value);
  item->setData(0, kValueRole, value);
  item->setData(0, kVerdictRole, static_cast<int>(verdict));
  item->setData(0, kTargetRole, first.join(QStringLiteral(" · ")));
  item->setData(0, kDetailRole, second.join(QLatin1Char('\n')));
  item->setData(0, kRecordedRole, recorded);
  const QString spoken =
      (QStringList{titleWords(id) + QStringLiteral(": ") + value} + first + second)
          .join(QStringLiteral(". "));
  item->setData(0, Qt::AccessibleTextRole, spoken);
  item->setData(0, kCopyRole, spoken);
  item->setToolTip(0, definitionText(figures, id));
}

} // namespace

MeasuresList::MeasuresList(Session& session, Selection& selection, QWidget* parent)
    : QTreeWidget(parent), session_(session), selection_(selection) {
  setAccessibleName(tr("All figures"));
  // The second column holds the value for readers that do not see; the delegate paints it.
  setColumnCount(2);
  setColumnHidden(1, true);
  setHeaderLabels({tr("figure"), tr("value")});
  setHeaderHidden(true);
  setRootIsDecorated(false);
  setIndentation(12);
  setFrameShape(QFrame::NoFrame);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setItemDelegate(new MeasureDelegate(this));
  header()->setStretchLastSection(false);
  header()->setSectionResizeMode(0, QHeaderView::Stretch);
  // Lines wrap elsewhere in another width.
  connect(header(), &QHeaderView::sectionResized, this, [this] { scheduleDelayedItemsLayout(); });
  build();
  connect(&session_, &Session::figuresChanged, this, &MeasuresList::refresh);
  connect(&selection_, &Selection::measureChanged, this, &MeasuresList::markChosen);
  connect(this, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
    if (item && item->parent() && session_.hasRecord()) {
      selection_.setMeasure(idOf(item));
    }
  });
  connect(this, &QTreeWidget::itemClicked, this, [this](QTreeWidgetItem* item) {
    if (item->parent()) {
      emit chosen();
    }
  });
  connect(this, &QTreeWidget::itemActivated, this, [this](QTreeWidgetItem* item) {
    if (item->parent()) {
      emit chosen();
    }
  });
  refresh();
}

void MeasuresList::build() {
  items_.resize(static_cast<std::size_t>(MeasureId::count_));
  for (const Group& group : groups()) {
    auto* heading = new QTreeWidgetItem(this, {tr(group.title)});
    heading->setFlags(Qt::ItemIsEnabled);
    for (const MeasureId id : group.ids) {
      auto* item = new QTreeWidgetItem(heading, {titleWords(id)});
      item->setData(0, kIdRole, static_cast<int>(id));
      items_[static_cast<std::size_t>(id)] = item;
    }
  }
  expandAll();
}

void MeasuresList::refresh() {
  QFont bold = font();
  bold.setBold(true);
  for (int g = 0; g < topLevelItemCount(); ++g) {
    topLevelItem(g)->setFont(0, bold);
  }
  if (!session_.hasRecord()) {
    return;
  }
  for (QTreeWidgetItem* item : items_) {
    fill(item, session_.record(), session_.figures(), session_.loaded().origin);
  }
  scheduleDelayedItemsLayout();
}

void MeasuresList::changeEvent(QEvent* event) {
  QTreeWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    refresh();
  }
}

void MeasuresList::markChosen() {
  const QSignalBlocker quiet(this);
  const auto id = selection_.measure();
  setCurrentItem(id ? items_[static_cast<std::size_t>(*id)] : nullptr);
}

QString MeasuresList::valueText(MeasureId id) const {
  return items_[static_cast<std::size_t>(id)]->text(1);
}

} // namespace afterbeat::window
