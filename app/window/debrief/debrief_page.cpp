#include "app/window/debrief/debrief_page.h"

#include "app/window/debrief/debrief_rows.h"
#include "app/window/debrief/deck_column.h"
#include "app/window/debrief/replay.h"
#include "app/window/debrief/replay_bar.h"
#include "app/window/look/look.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QClipboard>
#include <QEvent>
#include <QFocusEvent>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

QLabel* sentence(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

} // namespace

DebriefPage::DebriefPage(Session& session, Selection& selection, Replay& replay, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection), replay_(replay),
      deck_(new Deck(this)), body_(new QWidget(this)),
      splitter_(new QSplitter(Qt::Vertical, body_)), rows_(new DebriefRows(session, selection)),
      bar_(new ReplayBar(replay)), nothing_(sentence(nullptr)), cannotTell_(sentence(nullptr)),
      hint_(sentence(nullptr)), scroll_(new QScrollArea) {
  auto* talk = new QWidget;
  auto* across = new QHBoxLayout;
  across->setSpacing(18);
  for (const DeckColumn column : {DeckColumn::well, DeckColumn::practise, DeckColumn::questions}) {
    auto* view = new DeckColumnView(*deck_, column);
    connect(view, &DeckColumnView::activated, this, &DebriefPage::show);
    connect(view, &DeckColumnView::focused, this, [this](const LineCard* card) {
      if (!rebuilding_) {
        current_ = card->line().id;
      }
    });
    columns_ << view;
    across->addWidget(view, 1);
  }
  auto* down = new QVBoxLayout(talk);
  down->setContentsMargins(16, 6, 16, 8);
  down->addWidget(nothing_);
  down->addLayout(across);
  down->addStretch(1);
  down->addWidget(cannotTell_);
  down->addWidget(hint_);
  scroll_->setWidget(talk);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setAccessibleName(tr("What to talk about"));
  auto* lower = new QWidget;
  auto* lowerLayout = new QVBoxLayout(lower);
  lowerLayout->setContentsMargins(0, 0, 0, 0);
  lowerLayout->setSpacing(0);
  lowerLayout->addWidget(bar_);
  lowerLayout->addWidget(scroll_, 1);
  splitter_->addWidget(rows_);
  splitter_->addWidget(lower);
  splitter_->setChildrenCollapsible(false);
  splitter_->setHandleWidth(5);
  rows_->setMinimumHeight(90);
  for (QWidget* part : QList<QWidget*>{body_, splitter_}) {
    auto* owner = part == body_ ? static_cast<QWidget*>(this) : body_;
    auto* layout = new QVBoxLayout(owner);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(part);
  }
  buildActions();
  for (DeckColumnView* column : columns_) {
    column->setLineActions(editing_.mid(0, 2));
  }
  replay_.setSteps([this](bool forward) { return step(forward); });
  connect(rows_->canvas(), &DebriefRowsCanvas::pointedAt, this,
          [this](Time t) { selection_.setCursor(t); });
  connect(deck_, &Deck::changed, this, &DebriefPage::followDeck);
  connect(&session_, &Session::recordChanged, this, [this] { fresh_ = true; });
  connect(&session_, &Session::figuresChanged, this, [this] {
    stale_ = true;
    if (isVisible()) {
      refresh();
    }
  });
  setType();
  enableActions();
}

DebriefPage::~DebriefPage() {
  // What is taken apart has nothing to tell any more.
  deck_->undo().disconnect(this);
  deck_->disconnect(this);
  for (DeckColumnView* column : columns_) {
    column->disconnect(this);
  }
}

QAction* DebriefPage::make(const QString& text, const QKeySequence& key,
                           std::function<void()> does) {
  auto* action = new QAction(text, this);
  action->setShortcut(key);
  connect(action, &QAction::triggered, this, std::move(does));
  actions_ << action;
  return action;
}

void DebriefPage::buildActions() {
  editing_ << make(tr("&Strike the line for this showing"), Qt::Key_Delete, [this] {
    if (const LineCard* card = currentCard()) {
      deck_->strike(card->line().id);
    }
  });
  editing_ << make(tr("&Reword the line"), Qt::Key_F4, [this] {
    if (LineCard* card = currentCard()) {
      card->edit();
    }
  });
  const QStringList adding{tr("Add to what went &well"), tr("Add to what to &practise"),
                           tr("Add a &question")};
  for (int i = 0; i < adding.size(); ++i) {
    editing_ << make(adding[i], QKeySequence(QStringLiteral("Ctrl+B, %1").arg(i + 1)), [this, i] {
      columns_[i]->startAdding();
      scroll_->ensureWidgetVisible(columns_[i]->adder());
    });
  }
  undo_ = make(tr("&Undo"), Qt::CTRL | Qt::Key_Z, [this] { deck_->undo().undo(); });
  redo_ = make(tr("R&edo"), Qt::CTRL | Qt::SHIFT | Qt::Key_Z, [this] { deck_->undo().redo(); });
  make(tr("&Copy the debrief as text"), Qt::CTRL | Qt::SHIFT | Qt::Key_C, [this] { copy(); });
  words_ = make(tr("Show &names and remarks of the record"), QKeySequence(tr("Ctrl+B, N")),
                [this] { rows_->canvas()->refresh(words_->isChecked()); });
  words_->setCheckable(true);
  projector_ = make(tr("Pro&jector size"), Qt::Key_F12, [this] {
    setType();
    shareRoom();
  });
  projector_->setCheckable(true);
  for (const auto change : {&QUndoStack::canUndoChanged, &QUndoStack::canRedoChanged}) {
    connect(&deck_->undo(), change, this, &DebriefPage::enableActions);
  }
}

void DebriefPage::enableActions() {
  const bool inView = isVisible() && session_.hasRecord();
  for (QAction* action : editing_) {
    action->setEnabled(inView);
  }
  undo_->setEnabled(inView && deck_->undo().canUndo());
  redo_->setEnabled(inView && deck_->undo().canRedo());
}

void DebriefPage::refresh() {
  if (!session_.hasRecord()) {
    return;
  }
  stale_ = false;
  if (fresh_) {
    chosen_.clear();
    current_.clear();
  }
  rows_->canvas()->refresh(words_->isChecked());
  deck_->setDebrief(
      papers::makeDebrief(session_.record(), session_.figures(), afterbeat::window::words()),
      fresh_);
  // A class looks at the first line from the start.
  if (const QList<LineCard*> cards = cardsWithMoment(); fresh_ && !cards.isEmpty()) {
    current_ = cards.front()->line().id;
    show(cards.front());
  }
  fresh_ = false;
  rows_->setVisible(deck_->debrief().nothing.isEmpty());
  bar_->setVisible(deck_->debrief().nothing.isEmpty());
  shareRoom();
}

/// The line that had the keyboard keeps it; where it was struck, its neighbour in the column gets
/// it, and the mark of the chosen line as well.
void DebriefPage::rebuildColumns() {
  const LineCard* before = currentCard();
  const bool keyboardHere = isAncestorOf(focusWidget()) && before != nullptr;
  const DeckColumnView* home = nullptr;
  qsizetype place = 0;
  for (const DeckColumnView* column : columns_) {
    for (qsizetype i = 0; i < column->cards().size(); ++i) {
      if (column->cards()[i] == before) {
        home = column;
        place = i;
      }
    }
  }
  rebuilding_ = true;
  for (DeckColumnView* column : columns_) {
    column->refresh();
  }
  if (home != nullptr && currentCard() == nullptr && !home->cards().isEmpty()) {
    const LineCard* heir = home->cards()[std::min(place, home->cards().size() - 1)];
    if (chosen_ == current_ && heir->line().item) {
      choose(heir->line().id);
    }
    current_ = heir->line().id;
  }
  if (LineCard* card = currentCard(); card != nullptr && keyboardHere) {
    card->setFocus(Qt::OtherFocusReason);
  }
  rebuilding_ = false;
}

void DebriefPage::followDeck() {
  rebuildColumns();
  const papers::Debrief& debrief = deck_->debrief();
  nothing_->setText(debrief.nothing);
  nothing_->setVisible(!debrief.nothing.isEmpty());
  cannotTell_->setText(debrief.cannotTell);
  cannotTell_->setVisible(!debrief.cannotTell.isEmpty());
  columns_[0]->setVisible(debrief.nothing.isEmpty());
  columns_[1]->setVisible(debrief.nothing.isEmpty());
  LineCard* chosen = cardOf(chosen_);
  if (chosen != nullptr) {
    chosen->setChosen(true);
  }
  rows_->canvas()->setMoment(chosen != nullptr && chosen->line().item
                                 ? std::optional(chosen->line().item->moment)
                                 : std::nullopt);
}

LineCard* DebriefPage::cardOf(const QString& id) const {
  for (const DeckColumnView* column : columns_) {
    if (LineCard* card = column->card(id)) {
      return card;
    }
  }
  return nullptr;
}

LineCard* DebriefPage::currentCard() const {
  return cardOf(current_);
}

LineCard* DebriefPage::chosenCard() const {
  return cardOf(chosen_);
}

QList<LineCard*> DebriefPage::cardsWithMoment() const {
  QList<LineCard*> cards;
  for (const DeckColumnView* column : columns_) {
    for (LineCard* card : column->cards()) {
      if (card->line().item) {
        cards << card;
      }
    }
  }
  return cards;
}

void DebriefPage::choose(const QString& id) {
  if (LineCard* before = chosenCard()) {
    before->setChosen(false);
  }
  chosen_ = id;
  if (LineCard* card = chosenCard()) {
    card->setChosen(true);
  }
}

/// The moment to stop at: in a minute of much hands off the first time that hands are off.
Time DebriefPage::firstSight(const DeckLine& line) const {
  const Interval& moment = line.item->moment;
  if (line.column == DeckColumn::practise && line.item->rule == papers::DebriefRule::handsOff) {
    for (const Pause& pause : session_.figures().pauses) {
      if (pause.stretch.end > moment.begin && pause.stretch.begin < moment.end) {
        return std::max(pause.stretch.begin, moment.begin);
      }
    }
  }
  return moment.begin;
}

void DebriefPage::showStretch(const Interval& stretch) {
  choose({});
  rows_->canvas()->setMoment(stretch);
  selection_.setCursor(stretch.begin);
  rows_->reveal(stretch.begin);
}

/// The keyboard comes to the line it was at, else to the first.
void DebriefPage::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  LineCard* card = currentCard();
  for (const DeckColumnView* column : columns_) {
    if (card == nullptr && column->isVisible() && !column->cards().isEmpty()) {
      card = column->cards().front();
    }
  }
  if (card != nullptr) {
    card->setFocus(event->reason());
  }
}

void DebriefPage::show(LineCard* card) {
  if (!card->line().item) {
    return;
  }
  choose(card->line().id);
  const Interval& moment = card->line().item->moment;
  const Time first = firstSight(card->line());
  rows_->canvas()->setMoment(moment);
  selection_.lookAtAll(moment);
  selection_.setCursor(first);
  rows_->reveal(first);
  scroll_->ensureWidgetVisible(card);
}

bool DebriefPage::step(bool forward) {
  if (!isVisible()) {
    return false;
  }
  const QList<LineCard*> cards = cardsWithMoment();
  if (!cards.isEmpty()) {
    const auto now = cards.indexOf(chosenCard());
    const auto next = now < 0 ? (forward ? 0 : cards.size() - 1) : now + (forward ? 1 : -1);
    LineCard* card = cards[std::clamp<qsizetype>(next, 0, cards.size() - 1)];
    card->setFocus(Qt::OtherFocusReason);
    show(card);
  }
  return true;
}

void DebriefPage::copy() {
  if (!session_.hasRecord()) {
    return;
  }
  if (stale_) {
    refresh();
  }
  QGuiApplication::clipboard()->setText(papers::debriefText(
      deck_->shown(), session_.record(), session_.figures(), afterbeat::window::words()));
  emit said(tr("The debrief was copied as text, as it is shown now."));
}

void DebriefPage::setType() {
  const bool large = projector_->isChecked();
  QFont type = font();
  type.setPointSizeF(type.pointSizeF() * (large ? kProjector : 1));
  body_->setFont(type);
  QFont small = type;
  small.setPointSizeF(type.pointSizeF() * 0.9);
  QFont medium = type;
  medium.setPointSizeF(type.pointSizeF() * 1.15);
  nothing_->setFont(medium);
  cannotTell_->setFont(type);
  hint_->setFont(small);
  hint_->setVisible(!large);
  for (DeckColumnView* column : columns_) {
    column->setSources(!large);
  }
  hint_->setText(
      tr("Enter shows a moment, Page Down the next one · Space plays · Delete strikes, F4 "
         "rewords, Ctrl+Z undoes · F12 projector size"));
  QPalette faint = palette();
  faint.setColor(QPalette::WindowText, Look::of(palette(), font()).faintInk);
  hint_->setPalette(faint);
  cannotTell_->setPalette(faint);
}

void DebriefPage::shareRoom() {
  const int room = splitter_->height();
  const int share = room * (projector_->isChecked() ? 36 : 46) / 100;
  const int rows = std::min(share, rows_->canvas()->mostHeight());
  splitter_->setSizes({rows, room - rows});
}

void DebriefPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (stale_) {
    refresh();
  }
  shareRoom();
  enableActions();
}

void DebriefPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  enableActions();
}

void DebriefPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) {
    setType();
  }
}

} // namespace afterbeat::window
