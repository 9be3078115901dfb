#include "app/papers/sheet_text.h"

#include <algorithm>

namespace afterbeat::papers {

namespace {

/// Facts joined by dots, none of them broken; more lines than `most` if need be.
QStringList wrappedAtDots(const Lettering& lettering, const QString& text, double size,
                          Weight weight, double width) {
  QStringList lines;
  for (const QString& fact : text.split(QStringLiteral(" · "))) {
    const QString longer = lines.isEmpty() ? fact : lines.last() + QStringLiteral(" · ") + fact;
    if (!lines.isEmpty() && lettering.width(longer, size, weight) <= width) {
      lines.last() = longer;
    } else {
      if (!lines.isEmpty()) {
        lines.last() += QStringLiteral(" ·"); // the list goes on
      }
      lines << fact;
    }
  }
  return lines;
}

} // namespace

QStringList wrapped(const Lettering& lettering, const QString& text, double size, Weight weight,
                    double width, int most) {
  const QStringList facts = wrappedAtDots(lettering, text, size, weight, width);
  if (facts.size() <= most && std::all_of(facts.begin(), facts.end(), [&](const QString& line) {
        return lettering.width(line, size, weight) <= width;
      })) {
    return facts;
  }
  QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  // A dot between two facts belongs to the line it ends.
  for (qsizetype i = 1; i < words.size(); ++i) {
    if (words[i] == QStringLiteral("·")) {
      words[i - 1] += QStringLiteral(" ·");
      words.removeAt(i--);
    }
  }
  QStringList lines;
  QString line;
  for (qsizetype i = 0; i < words.size(); ++i) {
    const QString longer = line.isEmpty() ? words[i] : line + QLatin1Char(' ') + words[i];
    if (line.isEmpty() || lettering.width(longer, size, weight) <= width) {
      line = longer;
      continue;
    }
    if (lines.size() + 1 == most) {
      line += QLatin1Char(' ') + words.mid(i).join(QLatin1Char(' '));
      break;
    }
    lines << line;
    line = words[i];
  }
  lines << line;
  for (QString& one : lines) {
    one = lettering.elided(one, size, weight, width);
  }
  return lines;
}

} // namespace afterbeat::papers
