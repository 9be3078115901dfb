/// Words and numbers as a reader's language writes them, for everything that is put on paper and
/// for the rows on the screen.
#pragma once

#include "core/record/wall_clock.h"

#include <QString>
#include <QStringList>

#include <functional>

class QTranslator;

namespace afterbeat::papers {

/// Gives the words of the reader's language for English ones: those of the papers, and what the
/// core says of single measures.
using Translate = std::function<QString(const char* english)>;

/// The language that the program runs in.
[[nodiscard]] QString inOwnLanguage(const char* english);

/// A record's own text for showing: one line, without control characters, and with its writing
/// direction kept from changing that of the words around it.
[[nodiscard]] QString plainText(const std::string& text);

/// Loads the words of `language` ("de") that come with the program; false: there are none, and
/// English stands.
[[nodiscard]] bool loadLanguage(QTranslator& translator, const QString& language);

/// The codes of the languages that come with the program, beside English: "de".
[[nodiscard]] QStringList languages();

/// One reader's language. Copies share what they hold.
class Words {
public:
  /// English where `translate` is empty.
  explicit Words(Translate translate = {});
  /// The words of one language whatever the program's own is; English for a language that has none.
  [[nodiscard]] static Words inLanguage(const QString& language);

  [[nodiscard]] QString operator()(const char* english) const;
  /// "en", "de".
  [[nodiscard]] QString language() const;

  /// With this many decimals, and the language's decimal mark.
  [[nodiscard]] QString number(double value, int decimals = 0) const;
  /// Two decimals at most, none that are not needed: "1.5".
  [[nodiscard]] QString plainNumber(double value) const;
  /// "33 %" of a share from 0 to 1; a share that is not all is never rounded up to 100 %, one that
  /// is not nothing never down to 0 %.
  [[nodiscard]] QString percent(double share) const;
  /// "28 s", "3 min 35 s", "1 h 12 min"; rounded to the second; below two seconds one decimal.
  [[nodiscard]] QString length(Duration length) const;
  /// "11 min", "58 s", "1 h 12 min": for a large figure; rounded to the minute from two on.
  [[nodiscard]] QString shortLength(Duration length) const;
  /// "Saturday 14 March 2026".
  [[nodiscard]] QString date(const WallTime& time) const;
  /// "09:12:30".
  [[nodiscard]] QString clock(const WallTime& time) const;
  /// Joined as a list is read aloud: "a, b and c".
  [[nodiscard]] QString list(const QStringList& parts) const;
  /// "five" to twelve, figures beyond.
  [[nodiscard]] QString count(int number) const;

private:
  [[nodiscard]] QString hours(long long minutes) const;
  Translate translate_;
};

} // namespace afterbeat::papers
