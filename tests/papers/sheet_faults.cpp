#include "tests/papers/sheet_faults.h"

#include <algorithm>
#include <cmath>

namespace afterbeat::test {

namespace {

using papers::SheetPage;
using papers::SheetRole;
using papers::SheetRule;
using papers::SheetText;

/// A rule that runs through a text.
bool strikes(const SheetRule& rule, const SheetText& text) {
  const bool level = std::abs(rule.line.y1() - rule.line.y2()) < 0.1;
  const QRectF inner = text.box.adjusted(0.5, text.size * 0.15, -0.5, -text.size * 0.15);
  const QRectF line(std::min(rule.line.x1(), rule.line.x2()),
                    std::min(rule.line.y1(), rule.line.y2()), level ? rule.line.length() : 0.01,
                    level ? 0.01 : rule.line.length());
  return inner.intersects(line);
}

QStringList faultsOf(const SheetPage& page, std::size_t which) {
  const SheetText& text = page.texts[which];
  const QRectF paper(QPointF(0, 0), page.size);
  const QRectF room = text.role == SheetRole::band ? paper : paper.adjusted(39, 15, -39, -15);
  QStringList faults;
  if (!room.contains(text.box)) {
    faults << QStringLiteral("off the page: ") + text.text;
  }
  if (page.rows.intersects(text.box)) {
    faults << QStringLiteral("on the rows: ") + text.text;
  }
  if (text.size < 5.6) {
    faults << QStringLiteral("too small: ") + text.text;
  }
  for (std::size_t i = which + 1; i < page.texts.size(); ++i) {
    if (text.box.intersects(page.texts[i].box)) {
      faults << QStringLiteral("on each other: %1 | %2").arg(text.text, page.texts[i].text);
    }
  }
  if (std::any_of(page.rules.begin(), page.rules.end(),
                  [&](const SheetRule& rule) { return strikes(rule, text); })) {
    faults << QStringLiteral("struck through: ") + text.text;
  }
  return faults;
}

} // namespace

QStringList faultsOf(const SheetPage& page) {
  QStringList faults;
  for (std::size_t i = 0; i < page.texts.size(); ++i) {
    faults << faultsOf(page, i);
  }
  for (const SheetRule& rule : page.rules) {
    if (rule.toFill && (rule.line.length() < 60 || page.rows.contains(rule.line.p1()))) {
      faults << QStringLiteral("cannot be written on: the line at %1").arg(rule.line.y1());
    }
  }
  if (!page.rows.isEmpty() && !QRectF(QPointF(0, 0), page.size).contains(page.rows)) {
    faults << QStringLiteral("the rows leave the page");
  }
  return faults;
}

} // namespace afterbeat::test
