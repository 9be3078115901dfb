#include "app/window/figures/headline_strip.h"

#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/signals/origin.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>

namespace afterbeat::window {

namespace {

constexpr int kWidestCard = 280;
/// Cards take all the room up to their widest, and the rest stays empty.
constexpr int kCardShare = 100;

/// What was read off the signals is said beside the figure.
void addOrigin(const QString& words, CardText& text) {
  if (!words.isEmpty()) {
    text.notes << words;
    text.sentence += QLatin1Char('\n') + words;
  }
}

} // namespace

HeadlineStrip::HeadlineStrip(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection) {
  setAccessibleName(tr("Headline figures"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(6, 2, 6, 2);
  layout->setSpacing(4);
  for (int i = 0; i < kMostCards; ++i) {
    auto* card = new HeadlineCard(this);
    card->setMaximumWidth(kWidestCard);
    layout->addWidget(card, kCardShare);
    cards_ << card;
    auto* action = new QAction(tr("Working of figure %1").arg(i + 1), this);
    action->setShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + i)));
    connect(action, &QAction::triggered, this, [this, i] { choose(i); });
    connect(card, &HeadlineCard::clicked, this, [this, i] { choose(i); });
    actions_ << action;
  }
  layout->addStretch(1);
  auto* none = new QAction(tr("No working over the rows"), this);
  none->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_0));
  connect(none, &QAction::triggered, this, [this] { selection_.setMeasure(std::nullopt); });
  actions_ << none;
  connect(&session_, &Session::figuresChanged, this, &HeadlineStrip::refresh);
  connect(&selection_, &Selection::measureChanged, this, &HeadlineStrip::markChosen);
}

QList<HeadlineCard*> HeadlineStrip::cards() const {
  return cards_.mid(0, static_cast<qsizetype>(shown_.size()));
}

void HeadlineStrip::refresh() {
  shown_ = cardsOf(session_.record(), session_.figures());
  shown_.resize(std::min<std::size_t>(shown_.size(), kMostCards));
  for (qsizetype i = 0; i < cards_.size(); ++i) {
    const bool used = i < static_cast<qsizetype>(shown_.size());
    cards_[i]->setVisible(used);
    actions_[i]->setEnabled(used);
    if (used) {
      Card& card = shown_[static_cast<std::size_t>(i)];
      CardText& text = card.text;
      addOrigin(originWords(card.id, session_.figures(), session_.loaded().origin), text);
      cards_[i]->setCard(text);
      actions_[i]->setText(tr("Working: %1").arg(text.title));
    }
  }
  fitLines();
  markChosen();
}

void HeadlineStrip::fitLines() {
  const auto count = static_cast<int>(shown_.size());
  if (count == 0) {
    return;
  }
  const QMargins around = layout()->contentsMargins();
  const int room = width() - around.left() - around.right() - (count - 1) * layout()->spacing();
  const int each = std::min(room / count, kWidestCard);
  constexpr int kLeast = 2, kMost = 4;
  int lines = kLeast;
  for (const HeadlineCard* card : cards()) {
    lines = std::max(lines, card->linesFor(each));
  }
  for (HeadlineCard* card : cards_) {
    card->setLines(std::min(lines, kMost));
  }
}

void HeadlineStrip::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitLines();
}

void HeadlineStrip::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    fitLines();
  }
}

void HeadlineStrip::markChosen() {
  for (qsizetype i = 0; i < static_cast<qsizetype>(shown_.size()); ++i) {
    cards_[i]->setChecked(selection_.measure() == shown_[static_cast<std::size_t>(i)].id);
  }
}

void HeadlineStrip::choose(int index) {
  if (static_cast<std::size_t>(index) >= shown_.size()) {
    return;
  }
  selection_.setMeasure(shown_[static_cast<std::size_t>(index)].id);
  markChosen();
  emit chosen();
}

} // namespace afterbeat::window
