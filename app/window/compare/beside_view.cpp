#include "app/window/compare/beside_view.h"

#include "app/window/compare/beside_canvas.h"
#include "app/window/compare/beside_legend.h"
#include "app/window/compare/beside_name.h"
#include "app/window/compare/beside_table.h"
#include "app/window/compare/beside_words.h"
#include "app/window/compare/compare_pages.h"
#include "app/window/look/look.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QComboBox>
#include <QEvent>
#include <QFileInfo>
#include <QFocusEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr int kNamesAcross = 4, kFew = 3, kRoom = 16, kBetween = 12;
/// A sixth of each is a round length: rows are ticked in sixths.
constexpr int kRowMinutes[] = {2, 6, 12, 30};
/// Those that are chosen for the reader.
constexpr Duration kUsual[] = {std::chrono::minutes(2), std::chrono::minutes(6),
                               std::chrono::minutes(12)};

QLabel* sentenceLabel(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

} // namespace

BesideView::BesideView(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), names_(new QGridLayout), most_(sentenceLabel(this)),
      better_(sentenceLabel(this)), notes_(sentenceLabel(this)), alignment_(new QComboBox(this)),
      rowLength_(new QComboBox(this)), canvas_(new BesideCanvas), legend_(new BesideLegend(this)),
      empty_(new BesideEmpty(this)), filled_(new QWidget(this)), scroll_(new QScrollArea(this)),
      model_(new BesideTable(this)), table_(new QTableView(this)),
      parts_(new QSplitter(Qt::Vertical, this)) {
  alignment_->setAccessibleName(tr("Moment at which the records are aligned"));
  rowLength_->setAccessibleName(tr("Length of a row"));
  for (const int minutes : kRowMinutes) {
    rowLength_->addItem(tr("%1 min").arg(minutes), minutes);
  }
  auto* choices = new QHBoxLayout;
  choices->setSpacing(8);
  choices->addWidget(new QLabel(tr("Aligned at"), this));
  choices->addWidget(alignment_);
  choices->addSpacing(16);
  choices->addWidget(new QLabel(tr("A row is"), this));
  choices->addWidget(rowLength_);
  choices->addStretch(1);
  scroll_->setWidget(canvas_);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table_->setModel(model_);
  table_->setAccessibleName(tr("Moments and figures of the records"));
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setTabKeyNavigation(false);
  table_->setShowGrid(false);
  table_->setAlternatingRowColors(true);
  table_->setWordWrap(false);
  table_->setFrameShape(QFrame::NoFrame);
  table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setHighlightSections(false);
  auto* rows = new QWidget(parts_);
  auto* downRows = new QVBoxLayout(rows);
  downRows->setContentsMargins(0, 0, 0, 0);
  downRows->setSpacing(0);
  downRows->addWidget(scroll_, 1);
  downRows->addWidget(legend_);
  parts_->addWidget(rows);
  parts_->addWidget(table_);
  parts_->setChildrenCollapsible(false);
  auto* head = new QVBoxLayout;
  head->setContentsMargins(16, 8, 16, 8);
  head->setSpacing(6);
  names_->setHorizontalSpacing(8);
  names_->setVerticalSpacing(4);
  head->addLayout(names_);
  head->addWidget(most_);
  head->addWidget(better_);
  head->addWidget(notes_);
  head->addLayout(choices);
  auto* down = new QVBoxLayout(filled_);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(0);
  down->addLayout(head);
  down->addWidget(parts_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(empty_, 1);
  layout->addWidget(filled_, 1);
  filled_->hide();
  connect(empty_, &BesideEmpty::latestWanted, this, &BesideView::latestWanted);
  setTabOrder(alignment_, rowLength_);
  setTabOrder(rowLength_, canvas_);
  setTabOrder(canvas_, table_);
  actions_ << cycle(tr("Align at the next &moment"), Qt::SHIFT | Qt::Key_A, alignment_)
           << cycle(tr("Next &length of a row"), Qt::SHIFT | Qt::Key_L, rowLength_);
  connect(alignment_, &QComboBox::activated, this, [this] {
    wantedMoment_ = static_cast<KeyMoment>(alignment_->currentData().toInt());
    compare();
  });
  connect(rowLength_, &QComboBox::activated, this, [this] {
    lengthChosen_ = true;
    showRows();
  });
  connect(canvas_, &BesideCanvas::moved, this, [this](const QRectF& box) {
    scroll_->ensureVisible(0, static_cast<int>(box.center().y()), 0,
                           static_cast<int>(box.height() / 2) + 24);
  });
  connect(canvas_, &BesideCanvas::wanted, this,
          [this](std::size_t record) { emit wanted(beside_.records[record].path); });
  connect(&session_, &Session::settingsChanged, this, [this] {
    if (!beside_.records.empty() && !busy()) {
      start(0, [beside = beside_, settings = session_.settings()](BesideWatch&) {
        return computeBeside(beside, settings);
      });
    }
  });
  restyle();
}

void BesideView::focusInEvent(QFocusEvent* event) {
  QWidget* first = beside_.records.empty() ? static_cast<QWidget*>(empty_->latest()) : canvas_;
  first->setFocus(event->reason());
}

BesideView::~BesideView() {
  if (watch_) {
    watch_->cancelled = true;
  }
  pool_.waitForDone();
}

QAction* BesideView::cycle(const QString& text, const QKeySequence& key, QComboBox* box) {
  auto* action = new QAction(text, this);
  action->setShortcut(key);
  connect(action, &QAction::triggered, this, [box] {
    if (box->count() > 0) {
      box->setCurrentIndex((box->currentIndex() + 1) % box->count());
      emit box->activated(box->currentIndex());
    }
  });
  return action;
}

void BesideView::open(const QStringList& paths) {
  start(static_cast<int>(paths.size()),
        [paths, settings = session_.settings()](BesideWatch& watch) {
          return readBeside(paths, settings, watch);
        });
}

void BesideView::start(int files, std::function<Beside(BesideWatch&)> work) {
  if (watch_) {
    watch_->cancelled = true;
  }
  watch_ = std::make_shared<BesideWatch>();
  toRead_ = files;
  pool_.start([this, work = std::move(work), watch = watch_] {
    auto read = std::make_shared<Beside>(work(*watch));
    QMetaObject::invokeMethod(
        this, [this, watch, read] { finish(watch, std::move(*read)); }, Qt::QueuedConnection);
  });
  emit busyChanged();
}

void BesideView::stop() {
  if (watch_) {
    watch_->cancelled = true;
    watch_.reset();
    emit busyChanged();
  }
}

void BesideView::finish(const std::shared_ptr<BesideWatch>& watch, Beside beside) {
  if (watch != watch_) {
    return;
  }
  watch_.reset();
  beside_ = std::move(beside);
  compare();
  emit busyChanged();
  emit shown();
}

void BesideView::compare() {
  // With every file refused there is something to say all the same.
  const bool any = !beside_.records.empty() || !beside_.unread.empty();
  empty_->setVisible(!any);
  filled_->setVisible(any);
  std::vector<RecordAndFigures> all;
  for (const BesideRecord& one : beside_.records) {
    all.push_back({one.record.get(), one.figures.get()});
  }
  const std::vector<KeyMoment> common = commonMoments(all);
  KeyMoment at = KeyMoment::powerOn;
  if (!common.empty() && std::find(common.begin(), common.end(), at) == common.end()) {
    at = common.front();
  }
  compared_ = sideBySide(all, wantedMoment_.value_or(at));
  const bool none = std::none_of(compared_.offsets.begin(), compared_.offsets.end(),
                                 [](const auto& offset) { return offset.has_value(); });
  if (wantedMoment_ && none) {
    compared_ = sideBySide(all, at); // chosen for other records, none of these has it
  }
  fillAlignment();
  showNames();
  showSentences();
  model_->show(compared_, beside_.records);
  table_->clearSpans();
  for (int row = 0; row < model_->rowCount(); ++row) {
    if (model_->isHeading(row)) {
      table_->setSpan(row, 0, 1, model_->columnCount());
    }
  }
  fitTable();
  shareRoom();
  showRows();
}

/// Only moments that at least one of the records has.
void BesideView::fillAlignment() {
  const QSignalBlocker quiet(alignment_);
  alignment_->clear();
  for (const MomentRow& row : compared_.moments) {
    const auto known = std::count_if(row.seconds.begin(), row.seconds.end(),
                                     [](const auto& seconds) { return seconds.has_value(); });
    if (known > 0 || row.moment == compared_.alignedAt) {
      alignment_->addItem(momentName(row.moment), static_cast<int>(row.moment));
    }
  }
  const int now = alignment_->findData(static_cast<int>(compared_.alignedAt));
  alignment_->setCurrentIndex(now);
}

void BesideView::showNames() {
  qDeleteAll(nameButtons_);
  nameButtons_.clear();
  const auto count = static_cast<int>(beside_.records.size());
  const int across = count <= kNamesAcross ? std::max(1, count) : kNamesAcross;
  for (int i = 0; i < count; ++i) {
    const BesideRecord& one = beside_.records[static_cast<std::size_t>(i)];
    auto* button = new BesideName(
        letterOf(static_cast<std::size_t>(i)), placeOf(*one.record),
        QStringLiteral("%1 · %2").arg(marksOf(*one.record), whenOf(*one.record)),
        QStringLiteral("%1 · %2").arg(marksOf(*one.record), shortWhenOf(*one.record)), this);
    button->setToolTip(one.path);
    button->setProperty("path", one.path);
    connect(button, &QAbstractButton::clicked, this,
            [this, path = one.path] { emit wanted(path); });
    names_->addWidget(button, i / across, i % across);
    nameButtons_ << button;
  }
}

QString BesideView::notInRows() const {
  QStringList without;
  for (std::size_t i = 0; i < beside_.records.size(); ++i) {
    if (!compared_.offsets[i]) {
      without << letterOf(i);
    }
  }
  return without.isEmpty() ? QString()
                           : tr("Not in the rows, as %1 is not recorded: %2.")
                                 .arg(momentName(compared_.alignedAt), words().list(without));
}

void BesideView::showSentences() {
  most_->setText(compared_.differsMost ? mostWords(*compared_.differsMost, beside_.records)
                                       : tr("No moment and no pause that two of them record "
                                            "differs."));
  better_->setText(betterWords(compared_));
  better_->setVisible(!better_->text().isEmpty());
  QStringList notes;
  if (compared_.mixedKinds) {
    notes << tr("These records are of different kinds: what differs may come from that.");
  }
  if (const QString without = notInRows(); !without.isEmpty()) {
    notes << without;
  }
  if (!beside_.leftOut.isEmpty()) {
    notes << tr("Eight records at most stand side by side. Left out: %1.")
                 .arg(words().list(beside_.leftOut));
  }
  for (const UnreadFile& file : beside_.unread) {
    notes << tr("%1 is not among them. %2").arg(QFileInfo(file.path).fileName(), file.sentence);
  }
  notes_->setText(notes.join(QLatin1Char('\n')));
  notes_->setVisible(!notes.isEmpty());
}

BesideOrder BesideView::order() const {
  BesideOrder order;
  order.records = beside_.records;
  order.compared = compared_;
  if (compared_.differsMost) {
    for (std::size_t i = 0; i < beside_.records.size(); ++i) {
      order.marked.push_back(stretchOf(*compared_.differsMost, beside_.records[i]));
      order.markedWords << stretchWords(*compared_.differsMost, i);
    }
  }
  return order;
}

void BesideView::showRows() {
  BesideOrder rows = order();
  if (!lengthChosen_) {
    // Few have room for the shortest rows; of many, most are to be seen at one glance.
    const bool few = static_cast<int>(beside_.records.size()) <= kFew;
    const Duration length = few ? Duration(std::chrono::minutes(kRowMinutes[0]))
                                : fittingRowLength(rows, {std::begin(kUsual), std::end(kUsual)});
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(length).count();
    rowLength_->setCurrentIndex(rowLength_->findData(static_cast<int>(minutes)));
  }
  rows.rowLength = std::chrono::minutes(rowLength_->currentData().toInt());
  legend_->show(beside_.records,
                std::any_of(rows.marked.begin(), rows.marked.end(),
                            [](const auto& stretch) { return stretch.has_value(); }));
  canvas_->show(std::move(rows));
  QMetaObject::invokeMethod(this, &BesideView::seeAligned, Qt::QueuedConnection);
}

/// From the top, or from the rows that hold the moment where these would be out of sight.
void BesideView::seeAligned() {
  const QRectF box = canvas_->alignedBox();
  const bool within = box.bottom() <= scroll_->viewport()->height();
  scroll_->verticalScrollBar()->setValue(within ? 0 : static_cast<int>(box.top()));
}

void BesideView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (canvas_->current() < 0) {
    QMetaObject::invokeMethod(this, &BesideView::seeAligned, Qt::QueuedConnection);
  }
}

/// Few records leave room for their figures beside the rows; many need all the breadth.
void BesideView::shareRoom() {
  const bool few = static_cast<int>(beside_.records.size()) <= kFew;
  parts_->setOrientation(few ? Qt::Horizontal : Qt::Vertical);
  if (few) {
    const int wanted = table_->horizontalHeader()->length() + table_->verticalScrollBar()->width();
    const int table = std::min(wanted + kRoom, width() / 2);
    parts_->setSizes({width() - table, table});
  } else {
    parts_->setSizes({3, 2});
  }
}

void BesideView::fitTable() {
  table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 6);
  for (int column = 0; column < model_->columnCount(); ++column) {
    int widest = 0;
    for (int row = 0; row < model_->rowCount(); ++row) {
      if (!model_->isHeading(row)) {
        widest = std::max(widest, table_->fontMetrics().horizontalAdvance(
                                      model_->index(row, column).data().toString()));
      }
    }
    table_->setColumnWidth(column, widest + kRoom + kBetween);
  }
}

QString BesideView::sentence() const {
  return most_->text();
}

QString BesideView::asText() const {
  QStringList lines;
  for (const BesideName* button : nameButtons_) {
    lines << button->whole();
  }
  lines << most_->text() << better_->text();
  if (!notes_->text().isEmpty()) {
    lines << notes_->text();
  }
  return (lines << canvas_->picture().asText()).join(QLatin1Char('\n'));
}

void BesideView::restyle() {
  QFont large = font();
  large.setPointSizeF(large.pointSizeF() * 1.15);
  large.setBold(true);
  most_->setFont(large);
}

void BesideView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    restyle();
    QMetaObject::invokeMethod(this, &BesideView::fitTable, Qt::QueuedConnection);
  }
}

} // namespace afterbeat::window
