#include "app/window/debrief/line_card.h"

#include "app/window/look/look.h"

#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPainter>
#include <QRegularExpression>
#include <QResizeEvent>

namespace afterbeat::window {

namespace {

constexpr int kBar = 4;

/// A number stays on one line with its unit.
QString kept(QString text) {
  static const QRegularExpression kNumberAndUnit(QStringLiteral("(\\d) (?=(s|%|mm|min|h)\\b|%)"));
  return text.replace(kNumberAndUnit, QStringLiteral("\\1\u00a0"));
}

QLabel* wrapped(const QString& text, QWidget* parent) {
  auto* label = new QLabel(kept(text), parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  label->setAttribute(Qt::WA_TransparentForMouseEvents);
  label->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  return label;
}

QString targetText(const DeckLine& line, bool sources = true) {
  if (!line.item) {
    return {};
  }
  const QString from = LineCard::tr("from %1").arg(line.item->when);
  const QString target = sources ? papers::targetLine(*line.item) : line.item->target;
  return target.isEmpty() ? from : QStringLiteral("%1  ·  %2").arg(from, target);
}

} // namespace

LineCard::LineCard(const DeckLine& line, QWidget* parent)
    : QFrame(parent), line_(line),
      figure_(wrapped(line.item ? line.item->figure : QString(), this)),
      sentence_(wrapped(line.text, this)), target_(wrapped(targetText(line), this)),
      editor_(new QLineEdit(this)), layout_(new QGridLayout(this)) {
  setFocusPolicy(Qt::StrongFocus);
  layout_->setContentsMargins(kBar + 10, 5, 8, 5);
  layout_->setHorizontalSpacing(12);
  layout_->setVerticalSpacing(1);
  layout_->setColumnStretch(1, 1);
  arrange();
  figure_->setWordWrap(false);
  figure_->setVisible(line.item.has_value());
  target_->setVisible(line.item.has_value());
  editor_->hide();
  editor_->setAccessibleName(tr("Reword this line"));
  editor_->installEventFilter(this);
  if (line.item && !line.item->citation.isEmpty()) {
    setToolTip(line.item->citation);
  }
  setAccessibleName(asText());
  restyle();
}

/// Beside each other where the sentence then still has room, else one under the other.
void LineCard::arrange() {
  constexpr int kLettersBeside = 52;
  const bool beside = width() > kLettersBeside * QFontMetrics(font()).averageCharWidth();
  if (beside == beside_ && layout_->count() > 0) {
    return;
  }
  beside_ = beside;
  for (QWidget* part : QList<QWidget*>{figure_, sentence_, editor_, target_}) {
    layout_->removeWidget(part);
  }
  const int column = beside && line_.item ? 1 : 0, first = beside ? 0 : 1;
  const int across = column == 0 ? 2 : 1;
  layout_->addWidget(figure_, 0, 0, beside ? 2 : 1, beside ? 1 : 2, Qt::AlignTop);
  layout_->addWidget(sentence_, first, column, 1, across);
  layout_->addWidget(editor_, first, column, 1, across);
  layout_->addWidget(target_, first + 1, column, 1, across);
}

void LineCard::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  arrange();
}

QString LineCard::asText() const {
  QStringList parts{line_.text};
  if (line_.item) {
    parts << line_.item->figure << targetText(line_);
  }
  return parts.join(QStringLiteral("; "));
}

void LineCard::setSources(bool shown) {
  target_->setText(targetText(line_, shown));
}

void LineCard::setChosen(bool chosen) {
  chosen_ = chosen;
  setAccessibleDescription(chosen ? tr("Its moment is marked in the rows") : QString());
  update();
}

void LineCard::edit() {
  editor_->setText(line_.text);
  sentence_->hide();
  editor_->show();
  editor_->setFocus(Qt::OtherFocusReason);
  // All of it is chosen, and its begin is in view.
  const auto length = static_cast<int>(editor_->text().size());
  editor_->setSelection(length, -length);
}

void LineCard::endEditing(bool keep) {
  if (editor_->isHidden()) {
    return;
  }
  const QString text = editor_->text();
  editor_->hide();
  sentence_->show();
  setFocus(Qt::OtherFocusReason);
  if (keep && text.simplified() != line_.text) {
    emit reworded(text);
  }
}

bool LineCard::eventFilter(QObject* watched, QEvent* event) {
  if (watched == editor_ && event->type() == QEvent::ShortcutOverride) {
    // Undo, Delete and Escape belong to the text while it is edited.
    event->accept();
    return true;
  }
  if (watched == editor_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape) {
      endEditing(key != Qt::Key_Escape);
      return true;
    }
  }
  if (watched == editor_ && event->type() == QEvent::FocusOut && editor_->isVisible()) {
    endEditing(true);
  }
  return QFrame::eventFilter(watched, event);
}

void LineCard::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    emit activated();
    return;
  }
  if (event->key() == Qt::Key_Down) {
    focusNextChild();
    return;
  }
  if (event->key() == Qt::Key_Up) {
    focusPreviousChild();
    return;
  }
  QFrame::keyPressEvent(event);
}

void LineCard::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  if (event->button() == Qt::LeftButton) {
    emit activated();
  }
}

void LineCard::focusInEvent(QFocusEvent* event) {
  QFrame::focusInEvent(event);
  emit focused();
  update();
}

void LineCard::focusOutEvent(QFocusEvent* event) {
  QFrame::focusOutEvent(event);
  update();
}

void LineCard::paintEvent(QPaintEvent*) {
  const Look look = Look::of(palette(), font());
  QPainter painter(this);
  painter.fillRect(rect(), chosen_ ? look.accentSoft : look.paper);
  painter.fillRect(0, 0, kBar, height(), chosen_ ? look.accent : look.line);
  if (hasFocus()) {
    painter.setPen(QPen(look.accent, 2));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
  }
}

void LineCard::restyle() {
  const Look look = Look::of(palette(), font());
  QFont large = font();
  large.setPointSizeF(large.pointSizeF() * 1.7);
  large.setBold(true);
  figure_->setFont(large);
  QFont medium = font();
  medium.setPointSizeF(medium.pointSizeF() * 1.15);
  sentence_->setFont(medium);
  editor_->setFont(medium);
  QFont small = font();
  small.setPointSizeF(small.pointSizeF() * 0.9);
  target_->setFont(small);
  QPalette faint = palette();
  faint.setColor(QPalette::WindowText, look.faintInk);
  target_->setPalette(faint);
  // Figures of one column stand under each other.
  figure_->setMinimumWidth(QFontMetrics(large).horizontalAdvance(QStringLiteral("112/min")));
}

void LineCard::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
  }
}

} // namespace afterbeat::window
