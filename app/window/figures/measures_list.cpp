#include "app/window/figures/measures_list.h"

#include "app/window/figures/working_panel.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QEvent>
#include <QHeaderView>
#include <QSignalBlocker>

namespace afterbeat::window {

namespace {

constexpr int kIdRole = Qt::UserRole;

/// A group begins at its first measure and reaches to the next group's.
struct Group {
  MeasureId first;
  const char* title;
};
constexpr Group kGroups[] = {
    {MeasureId::arrestTime,
     QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Hands off the chest")},
    {MeasureId::compressions, QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Compressions")},
    {MeasureId::ventilations, QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Breaths")},
    {MeasureId::longestPause, QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Pauses")},
    {MeasureId::shocksDelivered,
     QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Shocks and analyses")},
    {MeasureId::powerOnToFirstShock,
     QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "From one to the other")},
    {MeasureId::circulationTime,
     QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Circulation")},
    {MeasureId::timeOn, QT_TRANSLATE_NOOP("afterbeat::window::MeasuresList", "Device")},
};

MeasureId idOf(const QTreeWidgetItem* item) {
  return static_cast<MeasureId>(item->data(0, kIdRole).toInt());
}

} // namespace

MeasuresList::MeasuresList(Session& session, Selection& selection, QWidget* parent)
    : QTreeWidget(parent), session_(session), selection_(selection) {
  setAccessibleName(tr("All figures"));
  setColumnCount(2);
  setHeaderLabels({tr("figure"), tr("value")});
  setRootIsDecorated(false);
  setIndentation(12);
  setFrameShape(QFrame::NoFrame);
  setUniformRowHeights(true);
  header()->setStretchLastSection(false);
  header()->setSectionResizeMode(0, QHeaderView::Stretch);
  header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
  build();
  connect(&session_, &Session::figuresChanged, this, &MeasuresList::refresh);
  connect(&selection_, &Selection::measureChanged, this, &MeasuresList::markChosen);
  connect(this, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
    if (item && item->parent() && session_.hasRecord()) {
      selection_.setMeasure(idOf(item));
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
  QTreeWidgetItem* group = nullptr;
  std::size_t next = 0;
  for (int i = 0; i < static_cast<int>(MeasureId::count_); ++i) {
    const auto id = static_cast<MeasureId>(i);
    if (next < std::size(kGroups) && kGroups[next].first == id) {
      group = new QTreeWidgetItem(this, {tr(kGroups[next].title)});
      group->setFlags(Qt::ItemIsEnabled);
      group->setFirstColumnSpanned(true);
      ++next;
    }
    auto* item = new QTreeWidgetItem(group, {titleWords(id)});
    item->setData(0, kIdRole, i);
    item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
    items_.push_back(item);
  }
  expandAll();
}

void MeasuresList::refresh() {
  QFont bold = font();
  bold.setBold(true);
  const QBrush faint(Look::of(palette(), font()).faintInk);
  for (int g = 0; g < topLevelItemCount(); ++g) {
    topLevelItem(g)->setFont(0, bold);
  }
  if (!session_.hasRecord()) {
    return;
  }
  const Figures& figures = session_.figures();
  for (QTreeWidgetItem* item : items_) {
    const Measure& measure = figures[idOf(item)];
    item->setText(1, valueWords(measure));
    item->setToolTip(0, definitionText(figures, measure.id));
    item->setForeground(1, measure.status == Status::ok ? QBrush(palette().text()) : faint);
  }
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
