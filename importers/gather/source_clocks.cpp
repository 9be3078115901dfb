#include "importers/gather/source_clocks.h"

#include <algorithm>
#include <cstdlib>

#include <fmt/format.h>

namespace afterbeat {
namespace {

constexpr Duration kDay{std::chrono::hours{24}};

std::optional<Duration> readingOf(const SourceClock& clock) {
  if (!clock.wall) {
    return clock.timeOfDay;
  }
  const auto local = clock.wall->local();
  return local - std::chrono::floor<std::chrono::days>(local);
}

/// More than -12 h, at most 12 h.
Duration nearest(Duration difference) {
  difference %= kDay;
  if (difference > kDay / 2) {
    difference -= kDay;
  } else if (difference <= -kDay / 2) {
    difference += kDay;
  }
  return difference;
}

std::string_view words(ClockComparison how) {
  switch (how) {
  case ClockComparison::instants:
    return inEnglish("Importers", "their clocks").text();
  case ClockComparison::localReadings:
    return inEnglish("Importers", "the local readings of their clocks, as a time zone is not known")
        .text();
  case ClockComparison::timesOfDay:
    return inEnglish("Importers", "their times of day, as a date is not known").text();
  }
  return "";
}

/// The first source above `index` whose clock can be compared.
std::optional<std::size_t> comparable(const std::vector<SourceClock>& clocks, std::size_t index) {
  for (std::size_t i = 0; i < index; ++i) {
    if (difference(clocks[i], clocks[index])) {
      return i;
    }
  }
  return std::nullopt;
}

} // namespace

SourceClock clockOf(const Imported& source) {
  return {wallTimeAt(source.record, Time{}), source.timeOfDay};
}

std::optional<ClockDifference> difference(const SourceClock& first, const SourceClock& second) {
  if (first.wall && second.wall) {
    if (first.wall->zoneKnown && second.wall->zoneKnown) {
      return ClockDifference{second.wall->utc - first.wall->utc, ClockComparison::instants};
    }
    return ClockDifference{second.wall->local() - first.wall->local(),
                           ClockComparison::localReadings};
  }
  const auto from = readingOf(first);
  const auto to = readingOf(second);
  if (!from || !to) {
    return std::nullopt;
  }
  return ClockDifference{nearest(*to - *from), ClockComparison::timesOfDay};
}

std::string shownOffset(Duration offset) {
  const auto micros = std::abs(offset.count());
  auto text = fmt::format("{}.{:06}", micros / 1'000'000, micros % 1'000'000);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') {
    text.pop_back();
  }
  return (offset < Duration{} ? "-" : "+") + text + " s";
}

Placement place(const std::vector<GatherSource>& sources, std::vector<Problem>& problems) {
  Placement placement;
  std::vector<SourceClock> clocks;
  const auto say = [&](Severity severity, EnglishText said, const auto&... values) {
    problems.push_back(importNote(0, severity, said, values...));
  };
  for (std::size_t i = 0; i < sources.size(); ++i) {
    clocks.push_back(clockOf(sources[i].imported));
    if (clocks[i].wall && !placement.clockSource) {
      placement.clockSource = i;
    }
    auto offset = sources[i].offset;
    const auto other = comparable(clocks, i);
    if (offset) {
      say(Severity::info, inEnglish("Importers", "%1 lies at %2, as given."), sources[i].label,
          shownOffset(*offset));
    } else if (other) {
      const auto apart = *difference(clocks[*other], clocks[i]);
      offset = placement.offsets[*other] + apart.value;
      if (!timeFromSeconds(seconds(*offset))) {
        say(Severity::error,
            inEnglish("Importers", "The clocks of %1 and %2 are more than eleven days apart, so "
                                   "one of them is wrong; %3 is put at +0 s."),
            sources[*other].label, sources[i].label, sources[i].label);
        offset = Duration{};
      } else {
        say(Severity::info,
            inEnglish("Importers", "%1 lies at %2, found by comparing it with %3: %4."),
            sources[i].label, shownOffset(*offset), sources[*other].label, words(apart.how));
      }
    } else if (i > 0) {
      say(Severity::info,
          inEnglish("Importers",
                    "%1 is put at +0 s, as no clock ties it to the sources before it."),
          sources[i].label);
    }
    placement.offsets.push_back(offset.value_or(Duration{}));
  }
  return placement;
}

} // namespace afterbeat
