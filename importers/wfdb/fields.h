/// Small pieces of reading numbers and fields out of lines of text.
#pragma once

#include <charconv>
#include <cmath>
#include <optional>
#include <string_view>

namespace afterbeat {

/// The whole of `text` as a number; nothing if it is not one or does not fit. A leading + is fine.
template <typename Number>
[[nodiscard]] std::optional<Number> wholeNumber(std::string_view text) {
  if (!text.empty() && text.front() == '+') {
    text.remove_prefix(1);
  }
  Number value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size()) {
    return std::nullopt;
  }
  return value;
}

/// The whole of `text` as a finite number with a decimal point.
[[nodiscard]] inline std::optional<double> wholeReal(std::string_view text) {
  const auto value = wholeNumber<double>(text);
  return value && std::isfinite(*value) ? value : std::nullopt;
}

/// Takes the next field, up to spaces or tabs, off the front of `rest`; empty at the end.
[[nodiscard]] inline std::string_view takeField(std::string_view& rest) {
  const auto begin = rest.find_first_not_of(" \t");
  if (begin == std::string_view::npos) {
    rest = {};
    return {};
  }
  rest.remove_prefix(begin);
  const auto field = rest.substr(0, rest.find_first_of(" \t"));
  rest.remove_prefix(field.size());
  return field;
}

/// Splits `text` at the first `mark`: what stands before is returned, what stands after stays in
/// `text`. Without the mark everything is returned and `text` is empty.
[[nodiscard]] inline std::string_view takeUntil(std::string_view& text, char mark) {
  const auto before = text.substr(0, text.find(mark));
  text.remove_prefix(before.size() == text.size() ? before.size() : before.size() + 1);
  return before;
}

} // namespace afterbeat
