#include "app/archive/marked_steps.h"

#include <algorithm>
#include <cstdio>
#include <functional>
#include <optional>
#include <string_view>

#include <fmt/format.h>

namespace afterbeat::archive {

namespace {

/// Name of the note.
const std::string kSteps = "marked days";

std::string lineOf(const MarkedStep& step) {
  const std::chrono::year_month_day ymd(step.day);
  std::string line =
      fmt::format("{:04}-{:02}-{:02} {}", static_cast<int>(ymd.year()),
                  static_cast<unsigned>(ymd.month()), static_cast<unsigned>(ymd.day()), step.words);
  std::replace_if(
      line.begin(), line.end(), [](char c) { return c == '\n' || c == '\r'; }, ' ');
  return line;
}

std::optional<MarkedStep> stepOf(const std::string& line) {
  const std::string date = line.substr(0, line.find(' '));
  int year = 0;
  unsigned month = 0, day = 0;
  char after = 0;
  if (date.size() != 10 ||
      std::sscanf(date.c_str(), "%4d-%2u-%2u%c", &year, &month, &day, &after) != 3) {
    return std::nullopt;
  }
  const std::chrono::year_month_day ymd{std::chrono::year(year), std::chrono::month(month),
                                        std::chrono::day(day)};
  if (!ymd.ok()) {
    return std::nullopt;
  }
  return MarkedStep{ymd, line.size() > 11 ? line.substr(11) : ""};
}

void eachLine(std::string_view text, const std::function<void(const std::string&)>& does) {
  while (!text.empty()) {
    const auto end = text.find('\n');
    does(std::string(text.substr(0, end)));
    text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
  }
}

std::vector<MarkedStep> byDay(std::vector<MarkedStep> steps) {
  std::stable_sort(steps.begin(), steps.end(),
                   [](const MarkedStep& a, const MarkedStep& b) { return a.day < b.day; });
  return steps;
}

Expected<std::vector<MarkedStep>>
changed(const Archive& archive, const std::function<std::string(const std::string&)>& change) {
  return archive.changeNote(kSteps, change).map([](const std::string& text) {
    return byDay(stepsFromText(text));
  });
}

} // namespace

std::string stepsAsText(const std::vector<MarkedStep>& steps) {
  std::string text;
  for (const MarkedStep& step : steps) {
    text += (text.empty() ? "" : "\n") + lineOf(step);
  }
  return text;
}

std::vector<MarkedStep> stepsFromText(const std::string& text) {
  std::vector<MarkedStep> steps;
  eachLine(text, [&steps](const std::string& line) {
    if (const auto step = stepOf(line)) {
      steps.push_back(*step);
    }
  });
  return steps;
}

std::string withStep(const std::string& text, const MarkedStep& step) {
  const std::string line = lineOf(step);
  bool there = false;
  eachLine(text, [&](const std::string& one) { there = there || one == line; });
  if (there) {
    return text;
  }
  return text.empty() || text.back() == '\n' ? text + line : text + '\n' + line;
}

std::string withoutStep(const std::string& text, const MarkedStep& step) {
  const std::string line = lineOf(step);
  std::string left;
  eachLine(text, [&](const std::string& one) {
    if (one != line) {
      left += (left.empty() ? "" : "\n") + one;
    }
  });
  return left;
}

Expected<std::vector<MarkedStep>> sharedSteps(const Archive& archive) {
  return archive.note(kSteps).map(
      [](const std::string& text) { return byDay(stepsFromText(text)); });
}

Expected<std::vector<MarkedStep>> shareStep(const Archive& archive, const MarkedStep& step) {
  return changed(archive, [&step](const std::string& text) { return withStep(text, step); });
}

Expected<std::vector<MarkedStep>> unshareStep(const Archive& archive, const MarkedStep& step) {
  return changed(archive, [&step](const std::string& text) { return withoutStep(text, step); });
}

} // namespace afterbeat::archive
