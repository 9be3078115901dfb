#include "app/window/compare/season_table.h"

#include "app/window/compare/sketch_paint.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr int kSketchWidth = 104, kWidest = 260, kMeasured = 60;
/// Columns of words give way down to this.
constexpr int kNarrowest = 84;

QColor between(const QColor& ink, const QColor& ground) {
  constexpr double kInk = 0.6;
  const auto mixed = [](int a, int b) {
    return static_cast<int>(std::lround(a * kInk + b * (1 - kInk)));
  };
  return {mixed(ink.red(), ground.red()), mixed(ink.green(), ground.green()),
          mixed(ink.blue(), ground.blue())};
}

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
        // In the colours of what is selected: hands on is paler than shocks.
        const QColor ground = option.palette.color(QPalette::Highlight);
        look.paper = ground;
        look.ink = option.palette.color(QPalette::HighlightedText);
        look.rows.handsOn = look.faintInk = between(look.ink, ground);
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
  if (const QString text = emptyText(); !text.isEmpty()) {
    QPainter painter(viewport());
    painter.setPen(Look::of(palette(), font()).faintInk);
    painter.drawText(viewport()->rect().adjusted(16, 24, -16, -16),
                     Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, text);
  }
  emit painted();
}

QString SeasonTable::emptyText() const {
  const Arranged& shown = model_->shown();
  if (!shown.source || model_->rowCount() > 0 || !shown.trouble.isEmpty()) {
    return {};
  }
  return shown.source->season().records.empty()
             ? tr("There is no record here yet. Take recordings into an archive (Shift+I), or look "
                  "through another folder (Shift+F).")
             : tr("No record fits the filter. Shift+U shows all of them again.");
}

void SeasonTable::selectionChanged(const QItemSelection& now, const QItemSelection& before) {
  QTableView::selectionChanged(now, before);
  emit markedChanged();
}

void SeasonTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  if (fittedTo_ != 0 && viewport()->width() != fittedTo_ && isVisible() &&
      horizontalHeader()->length() > viewport()->width()) {
    narrowColumns();
  }
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
                               : std::min(columnWidth(column) + 6, kWidest));
  }
  narrowColumns();
}

/// Where not all columns have room, those of words give way, the file first.
void SeasonTable::narrowColumns() {
  fittedTo_ = viewport()->width();
  int over = horizontalHeader()->length() - fittedTo_;
  for (const Fact fact : {Fact::file, Fact::team, Fact::site}) {
    for (int column = 0; column < model_->columnCount() && over > 0; ++column) {
      const auto what = model_->sorts(column);
      if (what && *what == std::variant<Fact, MeasureId>(fact)) {
        const int least = std::min(columnWidth(column), kNarrowest);
        const int narrow = std::max(least, columnWidth(column) - over);
        over -= columnWidth(column) - narrow;
        setColumnWidth(column, narrow);
      }
    }
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
