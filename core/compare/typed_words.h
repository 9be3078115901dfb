/// What the words typed into a filter mean.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace afterbeat {

/// First and last day, both included.
using DayRange = std::pair<std::chrono::sys_days, std::chrono::sys_days>;

/// All of it must hold.
struct TypedWords {
  /// In small letters; each is looked for in what a record says.
  std::vector<std::string> words;
  std::optional<bool> hadShock;
  std::vector<DayRange> periods;
};

/// A quarter ("2026-Q1"), or from one day, month, quarter or year to another, either end left out
/// ("2026-03..2026-05", "2026-04-17..", "..2025"). Empty: it is no period, as a day or month alone,
/// which is looked for like any word.
[[nodiscard]] std::optional<DayRange> periodFrom(const std::string& folded);

/// Takes `withShock` and `withoutShock` ("with a shock") for what they say, wherever these words
/// stand one after the other; small letters or not.
[[nodiscard]] TypedWords typedWords(const std::string& typed, const std::string& withShock,
                                    const std::string& withoutShock);

} // namespace afterbeat
