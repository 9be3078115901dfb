#include "importers/csv/note_times.h"

#include "core/record/wall_clock.h"
#include "importers/csv/words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cmath>
#include <numeric>

namespace afterbeat {
namespace {

using std::chrono::hours;
using std::chrono::minutes;

std::string_view trimmed(std::string_view text) {
  const auto begin = text.find_first_not_of(" \t\r\n");
  const auto end = text.find_last_not_of(" \t\r\n");
  return begin == std::string_view::npos ? std::string_view{} : text.substr(begin, end - begin + 1);
}

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

/// Digits only, at most six of them.
std::optional<unsigned> smallNumber(std::string_view text) {
  if (text.empty() || text.size() > 6 || !std::all_of(text.begin(), text.end(), isDigit)) {
    return std::nullopt;
  }
  unsigned value = 0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

/// Digits with perhaps a point or comma and more digits, as seconds.
std::optional<Duration> secondsText(std::string_view text) {
  const auto mark = text.find_first_of(".,");
  const auto whole = text.substr(0, mark);
  const auto decimals = mark == std::string_view::npos ? "0" : text.substr(mark + 1);
  if (!smallNumber(whole) && whole != "1000000") {
    return std::nullopt;
  }
  if (decimals.empty() || decimals.size() > 12 ||
      !std::all_of(decimals.begin(), decimals.end(), isDigit)) {
    return std::nullopt;
  }
  double value = 0;
  const auto plain = std::string{whole} + "." + std::string{decimals};
  std::from_chars(plain.data(), plain.data() + plain.size(), value);
  return durationFromSeconds(value);
}

/// What can stand behind the numbers.
enum class Suffix { none, inSeconds, inMinutes, clock, am, pm };

Suffix suffixNamed(std::string_view word) {
  static constexpr std::array<std::pair<std::string_view, Suffix>, 18> kSuffixes = {{
      {"", Suffix::none},
      {"s", Suffix::inSeconds},
      {"sec", Suffix::inSeconds},
      {"secs", Suffix::inSeconds},
      {"sek", Suffix::inSeconds},
      {"seconds", Suffix::inSeconds},
      {"sekunden", Suffix::inSeconds},
      {"min", Suffix::inMinutes},
      {"minutes", Suffix::inMinutes},
      {"minuten", Suffix::inMinutes},
      {"mins", Suffix::inMinutes},
      {"h", Suffix::clock},
      {"uhr", Suffix::clock},
      {"am", Suffix::am},
      {"pm", Suffix::pm},
      {"vorm", Suffix::am},
      {"nachm", Suffix::pm},
      {"sekunde", Suffix::inSeconds},
  }};
  const auto* found = std::find_if(kSuffixes.begin(), kSuffixes.end(),
                                   [&](const auto& one) { return one.first == word; });
  return found == kSuffixes.end() ? Suffix::none : found->second;
}

/// Takes the letters at the end off `text`; nothing if they are no word known here.
std::optional<Suffix> takeSuffix(std::string_view& text) {
  const auto last = text.find_last_of("0123456789");
  if (last == std::string_view::npos) {
    return std::nullopt;
  }
  std::string word;
  for (const char c : text.substr(last + 1)) {
    if (c == ' ' || c == '.') {
      continue; // "p.m."
    }
    word.push_back(static_cast<char>(std::tolower(static_cast<unsigned char>(c))));
  }
  text = text.substr(0, last + 1);
  const auto suffix = suffixNamed(word);
  return suffix == Suffix::none && !word.empty() ? std::nullopt : std::optional{suffix};
}

/// The numbers between colons; the last one may have decimals and is in `last`.
struct Parts {
  std::vector<unsigned> whole;
  Duration last{};
  bool lastWhole = true;
};

std::optional<Parts> splitAtColons(std::string_view text) {
  Parts parts;
  for (auto colon = text.find(':'); colon != std::string_view::npos; colon = text.find(':')) {
    const auto number = smallNumber(trimmed(text.substr(0, colon)));
    if (!number || parts.whole.size() == 2) {
      return std::nullopt;
    }
    parts.whole.push_back(*number);
    text.remove_prefix(colon + 1);
  }
  const auto last = secondsText(trimmed(text));
  if (!last) {
    return std::nullopt;
  }
  parts.last = *last;
  parts.lastWhole = text.find_first_of(".,") == std::string_view::npos;
  return parts;
}

/// A 12-hour reading as one of 24 hours; nothing if the hour is not 1 to 12.
std::optional<unsigned> fullHour(unsigned hour, Suffix suffix) {
  if (suffix != Suffix::am && suffix != Suffix::pm) {
    return hour <= 23 ? std::optional{hour} : std::nullopt;
  }
  if (hour < 1 || hour > 12) {
    return std::nullopt;
  }
  return hour % 12 + (suffix == Suffix::pm ? 12U : 0U);
}

std::optional<Duration> clockOf(const Parts& parts, Suffix suffix) {
  const auto hour = parts.whole.empty() ? std::nullopt : fullHour(parts.whole[0], suffix);
  if (!hour) {
    return std::nullopt;
  }
  const Duration minute{minutes{1}};
  if (parts.whole.size() == 1) {
    const bool usable = parts.lastWhole && parts.last < Duration{60'000'000};
    return usable ? std::optional{Duration{hours{*hour}} + parts.last * 60} : std::nullopt;
  }
  return parts.whole[1] <= 59 && parts.last < minute
             ? std::optional{Duration{hours{*hour}} + minutes{parts.whole[1]} + parts.last}
             : std::nullopt;
}

std::optional<Duration> elapsedOf(const Parts& parts, Suffix suffix) {
  const Duration minute{minutes{1}};
  if (parts.whole.empty()) {
    return suffix == Suffix::inMinutes ? parts.last * 60 : parts.last;
  }
  if (parts.last >= minute) {
    return std::nullopt;
  }
  if (parts.whole.size() == 1) {
    return Duration{minutes{parts.whole[0]}} + parts.last;
  }
  return parts.whole[1] <= 59
             ? std::optional{Duration{hours{parts.whole[0]}} + minutes{parts.whole[1]} + parts.last}
             : std::nullopt;
}

std::optional<TimeCell> parseNumbers(std::string_view text) {
  const bool negative = !text.empty() && text.front() == '-';
  if (negative || (!text.empty() && text.front() == '+')) {
    text = trimmed(text.substr(1));
  }
  const auto suffix = takeSuffix(text);
  if (!suffix) {
    return std::nullopt;
  }
  std::string plain{text};
  if (*suffix == Suffix::clock && plain.find(':') == std::string::npos) {
    std::replace(plain.begin(), plain.end(), '.', ':'); // 14.05 Uhr
  }
  const auto parts = splitAtColons(plain);
  if (!parts) {
    return std::nullopt;
  }
  TimeCell cell;
  cell.fields = static_cast<int>(parts->whole.size()) + 1;
  cell.surelyClock = *suffix == Suffix::clock || *suffix == Suffix::am || *suffix == Suffix::pm;
  cell.clock = negative ? std::nullopt : clockOf(*parts, *suffix);
  const auto elapsed = elapsedOf(*parts, *suffix);
  if ((!elapsed && !cell.clock) || (cell.surelyClock && !cell.clock)) {
    return std::nullopt;
  }
  cell.elapsed = negative ? -elapsed.value_or(Duration{}) : elapsed.value_or(Duration{});
  return cell;
}

std::optional<TimeCell> fromWallTime(const WallTime& wall) {
  const auto midnight = std::chrono::floor<std::chrono::days>(wall.local());
  TimeCell cell;
  cell.fields = 3;
  cell.clock = wall.local() - midnight;
  cell.surelyClock = true;
  cell.date = std::chrono::year_month_day{midnight};
  if (wall.zoneKnown) {
    cell.zone = wall.zone;
  }
  return cell;
}

std::optional<std::chrono::year_month_day> validDate(unsigned year, unsigned month, unsigned day) {
  const std::chrono::year_month_day date{std::chrono::year{static_cast<int>(year)},
                                         std::chrono::month{month}, std::chrono::day{day}};
  return year >= 1900 && year <= 2999 && date.ok() ? std::optional{date} : std::nullopt;
}

bool saysAny(const std::vector<std::string>& heading, std::initializer_list<const char*> words) {
  return std::any_of(words.begin(), words.end(), [&](const char* word) {
    const auto wanted = wordsOf(word);
    return std::search(heading.begin(), heading.end(), wanted.begin(), wanted.end()) !=
           heading.end();
  });
}

} // namespace

std::optional<std::chrono::year_month_day> parseDateCell(std::string_view text) {
  text = trimmed(text);
  std::array<unsigned, 3> numbers{};
  char mark = '\0';
  for (std::size_t i = 0; i < 3; ++i) {
    const auto end = text.find_first_of("-./");
    const auto number = smallNumber(text.substr(0, end));
    if (!number || (i < 2) != (end != std::string_view::npos)) {
      return std::nullopt;
    }
    numbers[i] = *number;
    if (i < 2) {
      if (mark != '\0' && mark != text[end]) {
        return std::nullopt;
      }
      mark = text[end];
      text.remove_prefix(end + 1);
    }
  }
  const auto [a, b, c] = numbers;
  if (a > 31) {
    return validDate(a, b, c);
  }
  const auto year = c < 100 && mark != '-' ? c + 2000 : c;
  const auto dayFirst = validDate(year, b, a);
  return dayFirst || mark != '/' ? dayFirst : validDate(year, a, b);
}

std::optional<TimeCell> parseTimeCell(std::string_view text) {
  text = trimmed(text);
  if (const auto wall = parseWallTime(text)) {
    return fromWallTime(*wall);
  }
  const auto gap = text.find_first_of(" T,");
  const auto date =
      gap == std::string_view::npos ? std::nullopt : parseDateCell(text.substr(0, gap));
  if (!date) {
    return parseNumbers(text);
  }
  auto cell = parseNumbers(trimmed(text.substr(gap + 1)));
  if (!cell || !cell->clock) {
    return std::nullopt;
  }
  cell->date = date;
  cell->surelyClock = true;
  return cell;
}

TimeMeaning decideTimes(std::string_view heading, const std::vector<TimeCell>& cells,
                        bool hasDateColumn) {
  const auto any = [&](auto&& test) { return std::any_of(cells.begin(), cells.end(), test); };
  if (hasDateColumn || any([](const TimeCell& cell) { return cell.surelyClock; })) {
    return TimeMeaning::clock;
  }
  const auto words = wordsOf(heading);
  if (saysAny(words, {"clock", "uhrzeit", "uhr", "time of day", "local time", "ortszeit",
                      "wall time", "tageszeit", "hh"})) {
    return TimeMeaning::clock;
  }
  if (saysAny(words, {"elapsed", "seconds", "sekunden", "s", "sec", "sek", "t", "mm", "min",
                      "laufzeit", "verstrichen", "stopwatch", "stoppuhr"}) ||
      any([](const TimeCell& cell) { return cell.fields == 1; })) {
    return TimeMeaning::elapsed;
  }
  const auto first = std::find_if(cells.begin(), cells.end(),
                                  [](const TimeCell& cell) { return cell.fields == 3; });
  const bool fromOneOClock =
      first != cells.end() && first->clock && first->elapsed >= Duration{hours{1}};
  return fromOneOClock ? TimeMeaning::clock : TimeMeaning::elapsed;
}

std::vector<Duration> unwrapClock(const std::vector<Duration>& readings) {
  constexpr Duration kHalfDay{hours{12}};
  constexpr Duration kDay{hours{24}};
  std::vector<Duration> times;
  Duration day{};
  for (const auto reading : readings) {
    if (!times.empty()) {
      const auto step = day + reading - times.back();
      if (step < -kHalfDay) {
        day += kDay;
      } else if (step > kHalfDay && day > Duration{}) {
        day -= kDay;
      }
    }
    times.push_back(day + reading);
  }
  return times;
}

} // namespace afterbeat
