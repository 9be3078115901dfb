#include "app/window/debrief/deck_column.h"

#include "app/window/look/look.h"

#include <QAction>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace afterbeat::window {

namespace {

QLabel* text(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

QString headingOf(DeckColumn column) {
  switch (column) {
  case DeckColumn::well:
    return papers::wentWellHeading(words());
  case DeckColumn::practise:
    return papers::practiseHeading(words());
  case DeckColumn::questions:
    break;
  }
  return papers::questionsHeading(words());
}

} // namespace

DeckColumnView::DeckColumnView(Deck& deck, DeckColumn column, QWidget* parent)
    : QWidget(parent), deck_(deck), column_(column), heading_(text(this)), note_(text(this)),
      below_(text(this)), lines_(new QVBoxLayout), adder_(new QLineEdit(this)) {
  heading_->setText(headingOf(column));
  setAccessibleName(heading_->text());
  lines_->setSpacing(5);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(5);
  layout->addWidget(heading_);
  layout->addWidget(note_);
  layout->addLayout(lines_);
  layout->addWidget(adder_);
  layout->addWidget(below_);
  layout->addStretch(1);
  adder_->hide();
  adder_->setPlaceholderText(tr("One more line, then Enter"));
  adder_->setAccessibleName(tr("One more line: %1").arg(heading_->text()));
  adder_->installEventFilter(this);
  restyle();
}

void DeckColumnView::startAdding() {
  adder_->clear();
  adder_->show();
  adder_->setFocus(Qt::OtherFocusReason);
}

bool DeckColumnView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    event->accept(); // keys belong to the text while it is written
    return true;
  }
  if (event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape) {
      adder_->hide();
      const QString id = key == Qt::Key_Escape ? QString() : deck_.add(column_, adder_->text());
      if (LineCard* added = card(id)) {
        added->setFocus(Qt::OtherFocusReason);
      }
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

LineCard* DeckColumnView::card(const QString& id) const {
  const auto found = std::find_if(cards_.begin(), cards_.end(),
                                  [&](const LineCard* card) { return card->line().id == id; });
  return found == cards_.end() ? nullptr : *found;
}

QString DeckColumnView::notes() const {
  return QStringList{note_->text(), below_->text()}.join(QLatin1Char('\n')).trimmed();
}

void DeckColumnView::refresh() {
  for (LineCard* card : cards_) {
    lines_->removeWidget(card);
    card->hide();
    card->deleteLater();
  }
  cards_.clear();
  for (const DeckLine& line : deck_.lines(column_)) {
    auto* card = new LineCard(line, this);
    card->setSources(sources_);
    connect(card, &LineCard::activated, this, [this, card] { emit activated(card); });
    connect(card, &LineCard::focused, this, [this, card] { emit focused(card); });
    connect(card, &LineCard::reworded, this, [this, id = line.id](const QString& words) {
      // The card goes with the change; not from inside its own event.
      QMetaObject::invokeMethod(
          this, [this, id, words] { deck_.reword(id, words); }, Qt::QueuedConnection);
    });
    card->setContextMenuPolicy(Qt::ActionsContextMenu);
    card->addActions(lineActions_);
    lines_->addWidget(card);
    cards_ << card;
    card->show();
  }
  const papers::Debrief& debrief = deck_.debrief();
  note_->setText(column_ == DeckColumn::well       ? debrief.wellNote
                 : column_ == DeckColumn::practise ? debrief.practiseNote
                                                   : QString());
  note_->setVisible(!note_->text().isEmpty());
  const int struck = deck_.struck(column_);
  below_->setText(struck > 0 ? tr("Struck for this showing: %1").arg(struck) : QString());
  below_->setVisible(struck > 0);
}

void DeckColumnView::setSources(bool shown) {
  sources_ = shown;
  for (LineCard* card : cards_) {
    card->setSources(shown);
  }
}

void DeckColumnView::restyle() {
  const Look look = Look::of(palette(), font());
  QFont large = font();
  large.setBold(true);
  large.setPointSizeF(large.pointSizeF() * 1.35);
  heading_->setFont(large);
  QPalette faint = palette();
  faint.setColor(QPalette::WindowText, look.faintInk);
  below_->setPalette(faint);
  note_->setFont(font());
  below_->setFont(font());
  adder_->setFont(font());
}

void DeckColumnView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
  }
}

} // namespace afterbeat::window
