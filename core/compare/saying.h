/// Sentences with their numbers beside them, so that a reader's language can write both its own
/// way.
#pragma once

#include "core/measures/figures.h"

#include <chrono>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace afterbeat {

/// How a number is written.
enum class AmountKind : std::uint8_t {
  plain,
  /// Whole: how many.
  count,
  /// 0 to 1, written in per cent.
  share,
  seconds,
  perMinute,
  millimetres,
  joules,
};

struct Amount {
  double value = 0;
  AmountKind kind = AmountKind::plain;
};

/// How the values of a measure are written.
[[nodiscard]] AmountKind amountKind(MeasureId id);
[[nodiscard]] inline Amount amountOf(MeasureId id, double value) {
  return {value, amountKind(id)};
}

/// A few words of the program's own that are translated like the sentence.
struct Term {
  std::string_view english;
};

/// A day of which perhaps no more is known, or may be said, than its month.
struct DayOrMonth {
  std::chrono::sys_days day;
  bool monthOnly = false;
};

/// What stands in a place of a sentence: a number, the title of a measure, a day or a month, a
/// term, the user's or a record's own text.
using SayingPart =
    std::variant<Amount, MeasureId, std::chrono::sys_days, DayOrMonth, Term, std::string>;

/// One or more whole sentences in English with places %1 to %9 for its parts; what a translator is
/// shown is `english` as it stands (context "Papers").
struct Saying {
  std::string_view english;
  std::vector<SayingPart> parts;
};

/// As the command line prints it: "0.42 s" is "0.4 s", a share "42 %", a day "2026-04-17".
[[nodiscard]] std::string inEnglish(const Amount& amount);
[[nodiscard]] std::string inEnglish(const Saying& saying);

/// "2026-04-17".
[[nodiscard]] std::string isoDay(std::chrono::sys_days day);

} // namespace afterbeat
