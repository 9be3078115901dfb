#include "core/compare/typed_words.h"

#include "core/compare/filter.h"

#include <algorithm>

namespace afterbeat {
namespace {

using Days = std::chrono::sys_days;

std::vector<std::string> foldedWords(const std::string& typed) {
  std::string folded;
  appendFolded(folded, typed);
  std::vector<std::string> words;
  std::string word;
  for (const char c : folded + ' ') {
    if (c == ' ' || c == '\t' || c == '\n') {
      if (!word.empty()) {
        words.push_back(std::move(word));
      }
      word.clear();
    } else {
      word += c;
    }
  }
  return words;
}

/// Takes these words out where they stand one after the other; whether they did.
bool takeOut(std::vector<std::string>& words, const std::string& phrase) {
  const std::vector<std::string> sought = foldedWords(phrase);
  const auto at = std::search(words.begin(), words.end(), sought.begin(), sought.end());
  if (sought.empty() || at == words.end()) {
    return false;
  }
  words.erase(at, at + static_cast<std::ptrdiff_t>(sought.size()));
  return true;
}

/// The digits from `at` on as a number; empty where one of them is none.
std::optional<int> number(const std::string& text, std::size_t at, std::size_t digits) {
  int value = 0;
  for (std::size_t i = at; i < at + digits; ++i) {
    if (i >= text.size() || text[i] < '0' || text[i] > '9') {
      return std::nullopt;
    }
    value = 10 * value + (text[i] - '0');
  }
  return value;
}

DayRange months(int year, unsigned first, unsigned last) {
  const std::chrono::year y{year};
  return {Days(y / std::chrono::month(first) / 1),
          Days(y / std::chrono::month(last) / std::chrono::last)};
}

bool isQuarter(const std::string& text) {
  return text.size() == 7 && text[5] == 'q';
}

/// "2026", "2026-q1", "2026-03", "2026-03-14".
std::optional<DayRange> rangeOf(const std::string& text) {
  const auto year = number(text, 0, 4);
  if (!year || *year == 0 || (text.size() > 4 && text[4] != '-')) {
    return std::nullopt;
  }
  if (text.size() == 4) {
    return months(*year, 1, 12);
  }
  if (isQuarter(text)) {
    const auto quarter = number(text, 6, 1);
    return quarter && *quarter >= 1 && *quarter <= 4
               ? std::optional(months(*year, static_cast<unsigned>(3 * *quarter - 2),
                                      static_cast<unsigned>(3 * *quarter)))
               : std::nullopt;
  }
  const auto month = number(text, 5, 2);
  if (!month || *month < 1 || *month > 12) {
    return std::nullopt;
  }
  if (text.size() == 7) {
    return months(*year, static_cast<unsigned>(*month), static_cast<unsigned>(*month));
  }
  const auto day = number(text, 8, 2);
  if (text.size() != 10 || text[7] != '-' || !day) {
    return std::nullopt;
  }
  const std::chrono::year_month_day date{std::chrono::year(*year),
                                         std::chrono::month(static_cast<unsigned>(*month)),
                                         std::chrono::day(static_cast<unsigned>(*day))};
  return date.ok() ? std::optional(DayRange{Days(date), Days(date)}) : std::nullopt;
}

} // namespace

std::optional<DayRange> periodFrom(const std::string& folded) {
  const auto dots = folded.find("..");
  if (dots == std::string::npos) {
    return isQuarter(folded) ? rangeOf(folded) : std::nullopt;
  }
  const std::string first = folded.substr(0, dots), last = folded.substr(dots + 2);
  DayRange range{Days(std::chrono::year(1) / 1 / 1), Days(std::chrono::year(9999) / 12 / 31)};
  for (const auto& [text, isFirst] : {std::pair(&first, true), std::pair(&last, false)}) {
    if (text->empty()) {
      continue;
    }
    const auto one = rangeOf(*text);
    if (!one) {
      return std::nullopt;
    }
    (isFirst ? range.first : range.second) = isFirst ? one->first : one->second;
  }
  return first.empty() && last.empty() ? std::nullopt : std::optional(range);
}

TypedWords typedWords(const std::string& typed, const std::string& withShock,
                      const std::string& withoutShock) {
  TypedWords meant;
  std::vector<std::string> words = foldedWords(typed);
  if (takeOut(words, withoutShock)) {
    meant.hadShock = false;
  } else if (takeOut(words, withShock)) {
    meant.hadShock = true;
  }
  for (std::string& word : words) {
    if (const auto period = periodFrom(word)) {
      meant.periods.push_back(*period);
    } else {
      meant.words.push_back(std::move(word));
    }
  }
  return meant;
}

} // namespace afterbeat
