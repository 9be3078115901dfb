#include "tests/window/pseudo.h"

#include <QHash>

namespace afterbeat::window {

namespace {

/// Codes and formats that are no words.
bool isNoWord(const QString& text) {
  return text == "en" || text.startsWith("dddd") || text.contains(";;");
}

QChar accented(QChar c) {
  static const QHash<QChar, QChar> with{{'a', u'á'}, {'e', u'é'}, {'i', u'í'}, {'o', u'ö'},
                                        {'u', u'ü'}, {'n', u'ñ'}, {'A', u'Á'}, {'O', u'Ö'}};
  return with.value(c, c);
}

} // namespace

QString PseudoLanguage::translate(const char* context, const char* source, const char*, int) const {
  const QString text = QString::fromUtf8(source);
  if (context[0] == 'Q' || text.isEmpty() || isNoWord(text)) {
    return {};
  }
  QString out;
  bool inTag = false;
  for (qsizetype i = 0; i < text.size(); ++i) {
    const QChar c = text[i];
    inTag = (inTag || c == '<') && c != '>';
    out += inTag ? c : accented(c);
  }
  const auto longer = std::max<qsizetype>(1, text.size() * 2 / 5);
  QString tail;
  for (qsizetype i = 0; i < longer; ++i) {
    tail += i % 8 == 0 ? QChar(' ') : QChar('~');
  }
  return '[' + out + tail + ']';
}

QString outsideOfBrackets(const QString& text) {
  QString out;
  int depth = 0;
  for (const QChar c : text) {
    depth += c == '[' ? 1 : 0;
    if (depth == 0) {
      out += c;
    }
    depth -= c == ']' && depth > 0 ? 1 : 0;
  }
  return out;
}

} // namespace afterbeat::window
