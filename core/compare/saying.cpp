#include "core/compare/saying.h"

#include <array>
#include <cmath>

#include <fmt/format.h>

namespace afterbeat {
namespace {

struct InEnglish {
  std::string operator()(const Amount& amount) const { return inEnglish(amount); }
  std::string operator()(MeasureId id) const { return std::string(measureInfo(id).title); }
  std::string operator()(std::chrono::sys_days day) const { return isoDay(day); }
  std::string operator()(const DayOrMonth& day) const {
    constexpr std::size_t kMonth = 7; // of "2026-04-17"
    const std::string whole = isoDay(day.day);
    return day.monthOnly ? whole.substr(0, kMonth) : whole;
  }
  std::string operator()(Term term) const { return std::string(term.english); }
  std::string operator()(const std::string& text) const { return text; }
};

/// 94.96 % of all is not 95 %: one decimal below ten and above ninety.
std::string shareText(double share) {
  const double percent = 100 * share;
  const bool fine = (percent > 0 && percent < 10) || (percent > 90 && percent < 100);
  return fine ? fmt::format("{:.1f} %", percent) : fmt::format("{:.0f} %", percent);
}

} // namespace

AmountKind amountKind(MeasureId id) {
  using enum MeasureId;
  switch (id) {
  case handsOffFraction:
  case chestCompressionFraction:
  case compressionRateInRange:
  case compressionDepthInRange:
  case fullRelease:
    return AmountKind::share;
  default:
    break;
  }
  const std::string_view unit = measureInfo(id).unit;
  if (unit == "s") {
    return AmountKind::seconds;
  }
  if (unit == "/min") {
    return AmountKind::perMinute;
  }
  if (unit == "mm") {
    return AmountKind::millimetres;
  }
  return unit == "J" ? AmountKind::joules : AmountKind::count;
}

std::string inEnglish(const Amount& amount) {
  switch (amount.kind) {
  case AmountKind::count:
    // A median of counts may lie between two.
    return amount.value == std::round(amount.value) ? fmt::format("{:.0f}", amount.value)
                                                    : fmt::format("{:.4g}", amount.value);
  case AmountKind::share:
    return shareText(amount.value);
  case AmountKind::seconds:
    return fmt::format("{:.1f} s", amount.value);
  case AmountKind::perMinute:
    return fmt::format("{:.1f}/min", amount.value);
  case AmountKind::millimetres:
    return fmt::format("{:.1f} mm", amount.value);
  case AmountKind::joules:
    return fmt::format("{:.0f} J", amount.value);
  case AmountKind::plain:
    break;
  }
  return fmt::format("{:.2g}", amount.value);
}

std::string inEnglish(const Saying& saying) {
  std::string text;
  for (std::size_t i = 0; i < saying.english.size(); ++i) {
    const char c = saying.english[i];
    const char next = i + 1 < saying.english.size() ? saying.english[i + 1] : ' ';
    const auto part = static_cast<std::size_t>(next - '1');
    if (c == '%' && next >= '1' && next <= '9' && part < saying.parts.size()) {
      text += std::visit(InEnglish{}, saying.parts[part]);
      ++i;
    } else {
      text += c;
    }
  }
  return text;
}

std::string isoDay(std::chrono::sys_days day) {
  const std::chrono::year_month_day date(day);
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

} // namespace afterbeat
