#include "app/papers/sheet_page.h"

#include <QPainter>

#include <algorithm>

namespace afterbeat::papers {

namespace {

QColor colorOf(SheetInk ink) {
  switch (ink) {
  case SheetInk::white:
    return Qt::white;
  case SheetInk::faint:
    return {0x40, 0x46, 0x4B};
  case SheetInk::black:
    break;
  }
  return Qt::black;
}

const char* nameOf(SheetRole role) {
  switch (role) {
  case SheetRole::band:
    return "band";
  case SheetRole::head:
    return "head";
  case SheetRole::figureTitle:
    return "title";
  case SheetRole::figureDoubt:
    return "DOUBT";
  case SheetRole::figureValue:
    return "VALUE";
  case SheetRole::figureNote:
    return "note";
  case SheetRole::notice:
    return "notice";
  case SheetRole::section:
    return "section";
  case SheetRole::text:
    return "text";
  case SheetRole::label:
    return "label";
  case SheetRole::caption:
    return "caption";
  case SheetRole::footer:
    break;
  }
  return "footer";
}

void paintBox(QPainter& painter, const SheetBox& box) {
  if (box.filled) {
    painter.fillRect(box.rect, Qt::black);
    return;
  }
  painter.setPen(QPen(Qt::black, box.width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(box.rect);
}

} // namespace

QString SheetPage::asText() const {
  QStringList lines;
  bool rowsTold = rows.isEmpty();
  for (const SheetText& text : texts) {
    if (!rowsTold && text.role == SheetRole::footer) {
      lines << QStringLiteral("[rows]");
      rowsTold = true;
    }
    const bool toFill = std::any_of(rules.begin(), rules.end(), [&](const SheetRule& rule) {
      return rule.toFill && rule.line.y1() > text.at.y() - 1 && rule.line.y1() < text.at.y() + 4 &&
             rule.line.x1() >= text.box.right() && rule.line.x1() < text.box.right() + 8;
    });
    lines << QStringLiteral("[%1] %2%3")
                 .arg(QLatin1String(nameOf(text.role)), text.text,
                      toFill ? QStringLiteral(" ____") : QString());
  }
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void paintSheet(QPainter& painter, const SheetPage& page, const RowsPicture& rows) {
  QFont font(QString::fromLatin1(kPaperFont));
  font.setPixelSize(10);
  const Lettering lettering(font);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, true);
  for (const SheetBox& box : page.boxes) {
    paintBox(painter, box);
  }
  for (const SheetRule& rule : page.rules) {
    painter.setPen(QPen(colorOf(rule.ink), rule.width, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(rule.line);
  }
  for (const SheetText& text : page.texts) {
    lettering.paint(painter, text.at, text.text, text.size, text.weight, colorOf(text.ink));
  }
  if (!page.rows.isEmpty()) {
    rows.paint(painter, page.rows, page.rowsLook, {}, true, page.rowsFit);
  }
  painter.restore();
}

} // namespace afterbeat::papers
