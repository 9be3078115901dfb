#include "app/papers/phrase_words.h"

#include "app/papers/words.h"
#include "core/record/phrase.h"

#include <QCoreApplication>
#include <QLocale>

#include <vector>

namespace afterbeat::papers {

namespace {

QString translated(const std::string& english) {
  return QCoreApplication::translate("Importers", english.c_str());
}

bool isDecimal(const std::string& text) {
  const auto point = text.find('.');
  return point != std::string::npos && point > 0 && point + 1 < text.size() &&
         text.find_first_not_of("0123456789", text.front() == '-' ? 1 : 0) == point &&
         text.find_first_not_of("0123456789", point + 1) == std::string::npos;
}

} // namespace

QString decimalWords(const std::string& value) {
  QString text = plainText(value);
  if (isDecimal(value)) {
    text.replace(QLatin1Char('.'), QLocale().decimalPoint());
  }
  return text;
}

QString clauseWords(const std::string& english) {
  return plainText(translated(english).toStdString());
}

QString phraseWords(std::span<const std::string> parts) {
  if (parts.empty()) {
    return {};
  }
  std::vector<std::string> values;
  for (const std::string& value : parts.subspan(1)) {
    values.push_back((isDecimal(value) ? decimalWords(value) : clauseWords(value)).toStdString());
  }
  const std::string text = translated(parts.front()).toStdString();
  return QString::fromStdString(filled(text, values));
}

} // namespace afterbeat::papers
