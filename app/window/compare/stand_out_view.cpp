#include "app/window/compare/stand_out_view.h"

#include "app/papers/said.h"
#include "app/window/compare/archive_words.h"
#include "app/window/compare/season_table_model.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "core/compare/stand_out.h"

#include <QHeaderView>
#include <QLabel>
#include <QStyledItemDelegate>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

/// The tree asks how high a line is as if its words were never broken to fit their column.
class BrokenWords final : public QStyledItemDelegate {
public:
  using QStyledItemDelegate::QStyledItemDelegate;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    QStyleOptionViewItem there = option;
    if (const auto* tree = qobject_cast<const QTreeView*>(option.widget)) {
      there.rect = {0, 0, tree->columnWidth(index.column()), 1};
    }
    // As wide as it wants to be: the first column is made to fit.
    return {QStyledItemDelegate::sizeHint(option, index).width(),
            QStyledItemDelegate::sizeHint(there, index).height()};
  }
};

/// "North boathouse · North lifeboat"; of a record that says neither, its file.
QString whereAndWho(const RecordFacts& facts) {
  if (facts.site.empty() && facts.team.empty()) {
    return factWords(Fact::file, facts);
  }
  QStringList parts;
  for (const auto& [fact, text] : {std::pair(Fact::site, facts.site), {Fact::team, facts.team}}) {
    if (!text.empty()) {
      parts << factWords(fact, facts);
    }
  }
  return parts.join(QStringLiteral("  ·  "));
}

} // namespace

StandOutView::StandOutView(SeasonDesk& desk, QWidget* parent)
    : QWidget(parent), desk_(desk), sentence_(new QLabel(this)), list_(new QTreeWidget(this)),
      work_(*this) {
  sentence_->setWordWrap(true);
  sentence_->setTextFormat(Qt::PlainText);
  sentence_->setContentsMargins(16, 6, 16, 6);
  list_->setAccessibleName(tr("Records worth a look"));
  list_->setColumnCount(2);
  list_->setHeaderLabels({tr("Record"), tr("Why it is worth a look")});
  list_->setRootIsDecorated(false);
  list_->setAlternatingRowColors(true);
  list_->setWordWrap(true);
  list_->setFrameShape(QFrame::NoFrame);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->header()->setStretchLastSection(true);
  auto* broken = new BrokenWords(list_);
  list_->setItemDelegate(broken);
  connect(list_->header(), &QHeaderView::sectionResized, broken,
          [broken] { emit broken->sizeHintChanged({}); });
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(0);
  down->addWidget(sentence_);
  down->addWidget(list_, 1);
  setFocusProxy(list_);
  connect(list_, &QTreeWidget::itemActivated, this, [this](const QTreeWidgetItem* item) {
    emit wanted(item->data(0, Qt::UserRole).toUInt());
  });
  connect(&desk_, &SeasonDesk::arrangedChanged, this, &StandOutView::refresh);
}

StandOutView::Found StandOutView::find(const SharedSource& source, const Chosen& chosen) {
  const Profile& profile = source->settings().profile;
  Found found;
  found.of = chosen.size() - withoutFigures(source->season(), chosen);
  try {
    const auto all = worthALook(source->season(), chosen, profile);
    found.all = all.size();
    const auto kinds = kindsOf(source->season(), chosen);
    for (const KindCount& one : kinds) {
      const auto usual =
          usualHere(source->season(), ofKind(source->season(), chosen, one.kind), profile);
      if (usual && !usual->empty()) {
        const QString sentences = papers::said(*usual, words());
        found.usual << (kinds.size() > 1
                            ? QStringLiteral("%1: %2").arg(kindWords(one.kind), sentences)
                            : sentences);
      }
    }
    for (std::size_t i = 0; i < std::min(all.size(), kMostShown); ++i) {
      const RecordFacts& facts = source->season().records[all[i].place];
      Line line;
      line.place = all[i].place;
      line.record =
          QStringLiteral("%1  ·  %2\n%3")
              .arg(factWords(Fact::day, facts), factWords(Fact::kind, facts), whereAndWho(facts));
      QStringList reasons;
      for (const StandOutReason& reason : all[i].reasons) {
        reasons << papers::said(reason.saying, words());
      }
      line.reasons = reasons.join(QLatin1Char('\n'));
      found.lines.push_back(std::move(line));
    }
  } catch (const archive::ArchiveFailure& failure) {
    found.refusal = archiveWords(failure.error);
  }
  return found;
}

void StandOutView::refresh() {
  outdated_ = true;
  if (!isVisible() || !desk_.arranged().source) {
    return;
  }
  outdated_ = false;
  work_.ask([source = desk_.arranged().source,
             chosen = desk_.arranged().chosen] { return find(source, chosen); },
            [this](const Found& found) { deliver(found); });
}

void StandOutView::deliver(const Found& found) {
  const auto number = [](std::size_t count) { return words().number(static_cast<double>(count)); };
  if (!found.refusal.isEmpty()) {
    sentence_->setText(found.refusal);
  } else if (found.all == 0) {
    const QString none = tr("No record stands out, of %1.").arg(number(found.of));
    sentence_->setText((QStringList{none} + found.usual).join(QLatin1Char('\n')));
  } else {
    QString text =
        tr("Records that stand out: %1 of %2, those with most reasons first. A reason to look, "
           "not a judgement: what happened there may have been right.")
            .arg(number(found.all), number(found.of));
    if (found.all > found.lines.size()) {
      text += QLatin1Char(' ') + tr("The first %1 are listed.").arg(number(found.lines.size()));
    }
    sentence_->setText((QStringList{text} + found.usual).join(QLatin1Char('\n')));
  }
  list_->clear();
  QList<QTreeWidgetItem*> items;
  for (const Line& line : found.lines) {
    auto* item = new QTreeWidgetItem({line.record, line.reasons});
    item->setData(0, Qt::UserRole, line.place);
    for (int column = 0; column < 2; ++column) {
      item->setTextAlignment(column, Qt::AlignLeft | Qt::AlignTop);
    }
    items << item;
  }
  list_->addTopLevelItems(items);
  list_->setVisible(!items.isEmpty());
  list_->resizeColumnToContents(0);
  if (!items.isEmpty()) {
    list_->setCurrentItem(items.front());
  }
  emit drawn();
}

QString StandOutView::sentence() const {
  return sentence_->text();
}

void StandOutView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (outdated_) {
    refresh();
  }
}

} // namespace afterbeat::window
