#include "app/window/compare/season_table.h"

#include "app/window/compare/sketch_paint.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr int kSketchWidth = 150, kWidest = 260, kMeasured = 60;

/// Paints the small picture over the line's ground.
class SketchDelegate final : public QStyledItemDelegate {
public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    QStyledItemDelegate::paint(painter, option, index);
    const auto* sketch = static_cast<const archive::RowsSketch*>(
        index.data(SeasonTableModel::kSketchRole).value<const void*>());
    if (sketch) {
      Look look = Look::of(option.palette, option.font);
      if (option.state & QStyle::State_Selected) {
        // On the colour of what is selected the picture keeps a paper of its own.
        painter->fillRect(option.rect.adjusted(2, 2, -2, -2), look.paper);
      }
      paintSketch(*painter, QRectF(option.rect).adjusted(4, 4, -4, -4), *sketch, look);
    }
  }
};

} // namespace

SeasonTable::SeasonTable(SeasonDesk& desk, QWidget* parent)
    : QTableView(parent), desk_(desk), model_(new SeasonTableModel(desk, this)) {
  setModel(model_);
  setAccessibleName(tr("Records"));
  setItemDelegateForColumn(model_->sketchColumn(), new SketchDelegate(this));
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::ExtendedSelection);
  setTabKeyNavigation(false);
  setWordWrap(false);
  setShowGrid(false);
  setAlternatingRowColors(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  verticalHeader()->hide();
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionsClickable(true);
  horizontalHeader()->setSortIndicatorShown(true);
  horizontalHeader()->setResizeContentsPrecision(kMeasured);
  connect(horizontalHeader(), &QHeaderView::sectionClicked, this, &SeasonTable::sortByColumn);
  connect(this, &QTableView::doubleClicked, this,
          [this](const QModelIndex& index) { emit wanted(model_->place(index.row())); });
  connect(model_, &QAbstractItemModel::modelAboutToBeReset, this, [this] {
    if (model_->shown().latestOf > 0) {
      before_ = looked();
    }
  });
  connect(model_, &QAbstractItemModel::modelReset, this, [this] {
    if (model_->linesStayed()) {
      lookAgain(before_);
      return;
    }
    fitColumns();
    showOrder();
    if (model_->rowCount() > 0) {
      setCurrentIndex(model_->index(0, 0));
    }
  });
}

std::vector<std::uint32_t> SeasonTable::marked() const {
  std::vector<std::uint32_t> places;
  for (const QModelIndex& index : selectionModel()->selectedRows()) {
    places.push_back(model_->place(index.row()));
  }
  return places;
}

SeasonTable::Looked SeasonTable::looked() const {
  Looked now;
  for (const QModelIndex& index : selectionModel()->selectedRows()) {
    now.marked.push_back(index.row());
  }
  for (int column = 0; column < model_->columnCount(); ++column) {
    now.widths.push_back(columnWidth(column));
  }
  now.row = currentIndex().row();
  now.column = currentIndex().column();
  now.down = verticalScrollBar()->value();
  now.across = horizontalScrollBar()->value();
  return now;
}

void SeasonTable::lookAgain(const Looked& before) {
  for (std::size_t column = 0; column < before.widths.size(); ++column) {
    setColumnWidth(static_cast<int>(column), before.widths[column]);
  }
  QItemSelection marked;
  for (const int row : before.marked) {
    marked.select(model_->index(row, 0), model_->index(row, model_->columnCount() - 1));
  }
  selectionModel()->setCurrentIndex(model_->index(before.row, before.column),
                                    QItemSelectionModel::NoUpdate);
  selectionModel()->select(marked, QItemSelectionModel::ClearAndSelect);
  // So that there is room to scroll in.
  executeDelayedItemsLayout();
  verticalScrollBar()->setValue(before.down);
  horizontalScrollBar()->setValue(before.across);
  showOrder();
}

void SeasonTable::paintEvent(QPaintEvent* event) {
  QTableView::paintEvent(event);
  emit painted();
}

void SeasonTable::sortByColumn(int column) {
  const auto what = model_->sorts(column);
  if (!what) {
    showOrder();
    return;
  }
  const bool again = desk_.order().by == *what;
  desk_.setOrder({*what, again ? !desk_.order().descending : desk_.order().descending});
  if (desk_.onlyLatest()) {
    showOrder(); // as it is, not yet as it was asked for
  }
}

void SeasonTable::showOrder() {
  const Order order = desk_.onlyLatest() ? SeasonDesk::latestFirst() : desk_.order();
  for (int column = 0; column < model_->columnCount(); ++column) {
    const auto what = model_->sorts(column);
    if (what && *what == order.by) {
      horizontalHeader()->setSortIndicator(column, order.descending ? Qt::DescendingOrder
                                                                    : Qt::AscendingOrder);
      return;
    }
  }
  horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
}

void SeasonTable::fitColumns() {
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
  for (int column = 0; column < model_->columnCount(); ++column) {
    resizeColumnToContents(column);
    setColumnWidth(column, column == model_->sketchColumn()
                               ? kSketchWidth
                               : std::min(columnWidth(column) + 8, kWidest));
  }
}

void SeasonTable::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    QMetaObject::invokeMethod(this, &SeasonTable::fitColumns, Qt::QueuedConnection);
  }
}

void SeasonTable::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && currentIndex().isValid()) {
    emit wanted(model_->place(currentIndex().row()));
    return;
  }
  QTableView::keyPressEvent(event);
}

} // namespace afterbeat::window
