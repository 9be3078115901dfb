#include "app/window/figures/headline_card.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>

namespace afterbeat::window {

namespace {

constexpr int kMargin = 10;

QFont scaled(QFont font, double by, QFont::Weight weight) {
  font.setPointSizeF(font.pointSizeF() * by);
  font.setWeight(weight);
  return font;
}

} // namespace

HeadlineCard::HeadlineCard(QWidget* parent) : QAbstractButton(parent) {
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void HeadlineCard::setCard(const CardText& text) {
  text_ = text;
  setText(text.title);
  setAccessibleName(QStringLiteral("%1: %2").arg(text.title, text.number));
  setAccessibleDescription(text.sentence);
  setToolTip(text.sentence);
  updateGeometry();
  update();
}

QFont HeadlineCard::numberFont() const {
  return scaled(font(), text_.isNumber ? 1.9 : 1.25, QFont::Bold);
}

QFont HeadlineCard::noteFont(bool strong) const {
  return scaled(font(), 0.92, strong ? QFont::Bold : QFont::Normal);
}

/// Notes and target, wrapped between words where a line has not the room.
QList<HeadlineCard::Line> HeadlineCard::linesUnder(int width) const {
  QList<Line> lines;
  const auto add = [&](const QString& text, bool strong) {
    const QFontMetrics metrics(noteFont(strong));
    // Type that is a little smaller comes before another line.
    constexpr double kShrink = 0.86;
    const int room = static_cast<int>(width / kShrink);
    QString line;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
      const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
      if (!line.isEmpty() && metrics.horizontalAdvance(longer) > room) {
        lines << Line{line, strong};
        line = word;
      } else {
        line = longer;
      }
    }
    if (!line.isEmpty()) {
      lines << Line{line, strong};
    }
  };
  for (qsizetype i = 0; i < text_.notes.size(); ++i) {
    add(text_.notes[i], i == 0 && text_.warned);
  }
  add(text_.target, text_.attention);
  return lines;
}

int HeadlineCard::linesFor(int width) const {
  return static_cast<int>(linesUnder(width - 2 * kMargin).size());
}

void HeadlineCard::setLines(int lines) {
  if (lines != lines_) {
    lines_ = lines;
    updateGeometry();
    update();
  }
}

QSize HeadlineCard::sizeHint() const {
  const QFontMetrics title(font()), note(noteFont()), number(numberFont());
  int width =
      std::max(title.horizontalAdvance(text_.title), number.horizontalAdvance(text_.number));
  for (const QString& line : text_.notes) {
    width = std::max(width, note.horizontalAdvance(line));
  }
  const int numberHeight = QFontMetrics(scaled(font(), 1.9, QFont::Bold)).height();
  return {width + 2 * kMargin, title.height() + numberHeight + lines_ * note.height() + 14};
}

QSize HeadlineCard::minimumSizeHint() const {
  return {QFontMetrics(font()).horizontalAdvance(QStringLiteral("mmmmmmmm")), sizeHint().height()};
}

void HeadlineCard::paintEvent(QPaintEvent*) {
  const Look look = Look::of(palette(), font());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF frame = QRectF(rect()).adjusted(0.5, 2.5, -0.5, -2.5);
  if (isChecked() || underMouse() || hasFocus()) {
    painter.setPen(isChecked() || hasFocus() ? QPen(look.accent, hasFocus() ? 2 : 1)
                                             : QPen(look.line, 1));
    painter.setBrush(isChecked() ? QBrush(look.accentSoft) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(frame.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
  }
  const QRect inner = rect().adjusted(kMargin, 6, -kMargin, -6);
  const auto line = [&](QFont f, const QColor& color, int top, const QString& text) {
    // In a narrow card the type gives way, and words are cut only when it cannot any more.
    constexpr double kSmallest = 7.5, kStep = 0.25;
    const auto cut = [&](const QFont& tried) {
      return QFontMetrics(tried).elidedText(text, Qt::ElideRight, inner.width()) != text;
    };
    while (cut(f) && f.pointSizeF() - kStep >= kSmallest) {
      f.setPointSizeF(f.pointSizeF() - kStep);
    }
    const QFontMetrics metrics(f);
    painter.setFont(f);
    painter.setPen(color);
    painter.drawText(QRect(inner.left(), top, inner.width(), metrics.height()),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(text, Qt::ElideRight, inner.width()));
    return top + metrics.height();
  };
  line(font(), look.faintInk, inner.top(), text_.title);
  const int noteTop = inner.bottom() + 1 - lines_ * QFontMetrics(noteFont()).height();
  const int titleBottom = inner.top() + QFontMetrics(font()).height();
  const int numberHeight = QFontMetrics(numberFont()).height();
  line(numberFont(), text_.attention ? look.attention : look.ink,
       titleBottom + (noteTop - titleBottom - numberHeight) / 2, text_.number);
  int top = noteTop;
  for (const Line& under : linesUnder(inner.width())) {
    top = line(noteFont(under.strong), under.strong ? look.attention : look.faintInk, top,
               under.text);
  }
}

void HeadlineCard::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

} // namespace afterbeat::window
