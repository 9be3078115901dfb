#include "app/window/finding/happenings_view.h"

#include "app/window/finding/happening_delegate.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>

namespace afterbeat::window {

HappeningsView::HappeningsView(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection), filter_(new QLineEdit(this)),
      count_(new QLabel(this)), table_(new QTableView(this)),
      find_(new QAction(tr("Find in what happened"), this)) {
  filter_->setPlaceholderText(tr("Type to filter: shock, pause, 09:15 …"));
  filter_->setClearButtonEnabled(true);
  filter_->setAccessibleName(tr("Filter what happened"));
  filter_->installEventFilter(this);
  count_->setAccessibleName(tr("How many are shown"));
  shown_.setSourceModel(&model_);
  table_->setModel(&shown_);
  table_->setAccessibleName(tr("What happened"));
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setShowGrid(false);
  table_->setTabKeyNavigation(false);
  table_->setWordWrap(false);
  table_->setFrameShape(QFrame::NoFrame);
  table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setSectionResizeMode(HappeningsModel::whatColumn,
                                                   QHeaderView::Stretch);
  // Two lines a row: narrow as the panel is, the words have most of its width.
  table_->setItemDelegate(new HappeningDelegate(this));
  table_->setColumnHidden(HappeningsModel::originColumn, true);
  setFocusProxy(filter_);
  auto* top = new QHBoxLayout;
  top->setContentsMargins(8, 8, 8, 0);
  top->addWidget(filter_, 1);
  top->addWidget(count_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addLayout(top);
  layout->addWidget(table_, 1);
  find_->setShortcut(QKeySequence::Find);
  connect(find_, &QAction::triggered, this, [this] {
    emit wanted();
    filter_->setFocus(Qt::ShortcutFocusReason);
    filter_->selectAll();
  });
  connect(filter_, &QLineEdit::textChanged, this, [this](const QString& text) {
    shown_.setTyped(text);
    showCount();
  });
  connect(filter_, &QLineEdit::returnPressed, this, [this] { choose(shown_.index(0, 0)); });
  connect(table_, &QTableView::clicked, this, &HappeningsView::choose);
  connect(table_, &QTableView::activated, this, &HappeningsView::choose);
  connect(&session_, &Session::figuresChanged, this, &HappeningsView::outdate);
  connect(&selection_, &Selection::stretchChanged, this, &HappeningsView::follow);
}

void HappeningsView::outdate() {
  outdated_ = true;
  if (isVisible()) {
    refresh();
  }
}

void HappeningsView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
  follow();
}

void HappeningsView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    // The table hears of the new size only after its parent.
    QMetaObject::invokeMethod(this, &HappeningsView::fitColumns, Qt::QueuedConnection);
  }
}

void HappeningsView::refresh() {
  if (!outdated_ || !session_.hasRecord()) {
    return;
  }
  outdated_ = false;
  std::vector<Problem> problems = session_.loaded().file->problems;
  const std::vector<Problem>& notices = session_.figures().notices;
  problems.insert(problems.end(), notices.begin(), notices.end());
  model_.show(session_.record(), happenings(session_.record(), session_.figures(), problems));
  table_->setColumnHidden(HappeningsModel::clockColumn, !model_.hasClock());
  table_->setColumnHidden(HappeningsModel::sinceColumn, model_.hasClock());
  fitColumns();
  showCount();
  follow();
}

void HappeningsView::fitColumns() {
  const QFontMetrics metrics = table_->fontMetrics();
  constexpr int kRoom = 14;
  const auto fit = [&](int column, const QString& widest) {
    const QString title = model_.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    table_->setColumnWidth(
        column,
        std::max(metrics.horizontalAdvance(widest), metrics.horizontalAdvance(title)) + kRoom);
  };
  fit(HappeningsModel::clockColumn, QStringLiteral("00:00:00.0"));
  fit(HappeningsModel::sinceColumn, QStringLiteral("−0:00:00.0"));
  table_->verticalHeader()->setDefaultSectionSize(HappeningDelegate::heightFor(table_->font()));
}

void HappeningsView::showCount() {
  count_->setText(shown_.rowCount() == model_.rowCount()
                      ? QString::number(model_.rowCount())
                      : tr("%1 of %2").arg(shown_.rowCount()).arg(model_.rowCount()));
}

QString HappeningsView::countText() const {
  return count_->text();
}

void HappeningsView::choose(const QModelIndex& index) {
  if (!index.isValid()) {
    return;
  }
  const Happening& one = model_.at(shown_.mapToSource(index).row());
  const QScopedValueRollback<bool> own(choosing_, true);
  selection_.lookAtAll(one.stretch, one.what);
  table_->setCurrentIndex(index);
}

void HappeningsView::follow() {
  if (choosing_ || outdated_ || !isVisible()) {
    return;
  }
  // At the moment pointed at or replayed, where it is in view; else what lies in the middle.
  const auto cursor = selection_.cursor();
  const bool pointed = cursor && selection_.what().isEmpty() && selection_.stretch().holds(*cursor);
  const int row =
      pointed ? model_.lastBegun(*cursor) : model_.nearest(selection_.stretch(), selection_.what());
  const QModelIndex there = row < 0 ? QModelIndex() : shown_.mapFromSource(model_.index(row, 0));
  if (there.isValid()) {
    const QSignalBlocker quiet(table_);
    table_->setCurrentIndex(there);
    table_->scrollTo(there);
  }
}

bool HappeningsView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == filter_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Down && shown_.rowCount() > 0) {
      table_->setFocus(Qt::OtherFocusReason);
      if (!table_->currentIndex().isValid()) {
        table_->setCurrentIndex(shown_.index(0, 0));
      }
      return true;
    }
    if (key == Qt::Key_Escape && !filter_->text().isEmpty()) {
      filter_->clear();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

} // namespace afterbeat::window
