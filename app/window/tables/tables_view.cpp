#include "app/window/tables/tables_view.h"

#include "app/window/look/look.h"
#include "app/window/look/stack.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QButtonGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScopedValueRollback>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

namespace afterbeat::window {

TablesView::TablesView(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection), buttons_(new QButtonGroup(this)),
      pages_(new Stack(this)), none_(new QLabel(this)), caution_(new QLabel(this)) {
  auto* bar = new QWidget(this);
  auto* barLayout = new QHBoxLayout(bar);
  barLayout->setContentsMargins(8, 6, 8, 2);
  barLayout->setSpacing(4);
  make(TableKind::minutes, tr("Minutes"), bar);
  make(TableKind::cycles, tr("Cycles"), bar);
  make(TableKind::pauses, tr("Pauses"), bar);
  make(TableKind::shocks, tr("Shocks"), bar);
  make(TableKind::ecgAtShocks, tr("ECG around shocks"), bar);
  barLayout->addStretch(1);
  none_->setWordWrap(true);
  none_->setMargin(12);
  none_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  none_->setTextFormat(Qt::PlainText);
  pages_->addWidget(none_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(bar);
  layout->addWidget(pages_, 1);
  caution_->setWordWrap(true);
  caution_->setTextFormat(Qt::PlainText);
  caution_->setContentsMargins(12, 2, 12, 6);
  caution_->hide();
  layout->addWidget(caution_);
  connect(buttons_, &QButtonGroup::idClicked, this,
          [this](int id) { showKind(static_cast<TableKind>(id)); });
  connect(&session_, &Session::figuresChanged, this, &TablesView::outdate);
  connect(&session_, &Session::hintsChanged, this, &TablesView::outdate);
  connect(&selection_, &Selection::stretchChanged, this, &TablesView::follow);
  showKind(TableKind::minutes);
}

/// The chosen table's button is filled, on a dark ground as well.
void TablesView::restyle() {
  const Look look = Look::of(palette(), font());
  for (QAbstractButton* button : buttons_->buttons()) {
    QPalette colours = palette();
    if (button->isChecked()) {
      colours.setColor(QPalette::Button, look.accent);
      colours.setColor(QPalette::ButtonText, look.paper);
    }
    button->setPalette(colours);
  }
}

void TablesView::make(TableKind kind, const QString& name, QWidget* bar) {
  Table& table = tables_[static_cast<std::size_t>(kind)];
  table.model = new TableModel(this);
  table.sorting = new TableSorting(this);
  table.sorting->setSourceModel(table.model);
  table.view = new QTableView(pages_);
  QTableView& view = *table.view;
  view.setModel(table.sorting);
  view.setAccessibleName(name);
  view.setSelectionBehavior(QAbstractItemView::SelectRows);
  view.setTabKeyNavigation(false);
  view.setWordWrap(false);
  view.setShowGrid(false);
  view.setAlternatingRowColors(true);
  view.setFrameShape(QFrame::NoFrame);
  view.setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  view.verticalHeader()->hide();
  view.horizontalHeader()->setHighlightSections(false);
  view.horizontalHeader()->setSortIndicator(0, Qt::AscendingOrder);
  view.setSortingEnabled(true);
  pages_->addWidget(&view);
  connect(&view, &QTableView::clicked, this, &TablesView::choose);
  connect(&view, &QTableView::activated, this, &TablesView::choose);
  auto* button = new QToolButton(bar);
  button->setText(name);
  button->setCheckable(true);
  button->setFocusPolicy(Qt::StrongFocus);
  button->setAccessibleName(tr("Table: %1").arg(name));
  buttons_->addButton(button, static_cast<int>(kind));
  bar->layout()->addWidget(button);
}

QAbstractButton* TablesView::button(TableKind kind) const {
  return buttons_->button(static_cast<int>(kind));
}

void TablesView::showKind(TableKind kind) {
  kind_ = kind;
  button(kind)->setChecked(true);
  restyle();
  setFocusProxy(currentTable());
  refresh();
}

void TablesView::outdate() {
  for (Table& table : tables_) {
    table.outdated = true;
  }
  if (isVisible()) {
    refresh();
  }
}

void TablesView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void TablesView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) {
    restyle();
  }
  if (event->type() == QEvent::FontChange) {
    // The tables hear of the new size only after their parent.
    QMetaObject::invokeMethod(this, &TablesView::fitColumns, Qt::QueuedConnection);
  }
}

void TablesView::refresh() {
  Table& table = tables_[static_cast<std::size_t>(kind_)];
  if (!session_.hasRecord() || !isVisible()) {
    return;
  }
  if (table.outdated) {
    table.outdated = false;
    table.model->show(
        tableContent(kind_, session_.record(), session_.figures(), session_.hints().get()));
    fitColumns();
  }
  none_->setText(table.model->content().none);
  caution_->setText(table.model->content().caution);
  caution_->setVisible(!caution_->text().isEmpty() && table.model->rowCount() > 0);
  pages_->setCurrentWidget(table.model->rowCount() == 0 ? static_cast<QWidget*>(none_)
                                                        : table.view);
  follow();
}

void TablesView::fitColumns() {
  for (const Table& table : tables_) {
    table.view->verticalHeader()->setDefaultSectionSize(table.view->fontMetrics().height() + 6);
    // Hundreds of rows are measured, no more: words of one column are much alike.
    constexpr int kMeasured = 200;
    table.view->horizontalHeader()->setResizeContentsPrecision(kMeasured);
    table.view->resizeColumnsToContents();
  }
}

void TablesView::choose(const QModelIndex& index) {
  if (!index.isValid()) {
    return;
  }
  Table& table = tables_[static_cast<std::size_t>(kind_)];
  const TableRow& row = table.model->row(table.sorting->mapToSource(index).row());
  const QScopedValueRollback<bool> own(choosing_, true);
  selection_.lookAtAll(row.stretch, row.what);
}

void TablesView::follow() {
  Table& table = tables_[static_cast<std::size_t>(kind_)];
  if (choosing_ || table.outdated || !isVisible()) {
    return;
  }
  const int row = table.model->rowFor(selection_.stretch());
  if (row < 0) {
    return;
  }
  const QModelIndex there = table.sorting->mapFromSource(table.model->index(row, 0));
  table.view->setCurrentIndex(there);
  table.view->scrollTo(there);
}

} // namespace afterbeat::window
