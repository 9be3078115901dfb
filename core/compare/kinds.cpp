#include "core/compare/kinds.h"

#include <algorithm>
#include <array>

namespace afterbeat {
namespace {

std::size_t placeOf(StatedKind kind) {
  return kind ? static_cast<std::size_t>(*kind) : 3;
}

constexpr std::array<StatedKind, 4> kKinds{RecordKind::rescue, RecordKind::drill, RecordKind::test,
                                           std::nullopt};

} // namespace

std::vector<KindCount> kindsOf(const Season& season, const Chosen& chosen) {
  std::array<std::size_t, 4> counts{};
  for (const std::uint32_t place : chosen) {
    const RecordFacts& record = season.records[place];
    counts[placeOf(record.kind)] += record.hasFigures ? 1 : 0;
  }
  std::vector<KindCount> kinds;
  for (const StatedKind kind : kKinds) {
    if (const std::size_t count = counts[placeOf(kind)]; count > 0) {
      kinds.push_back({kind, count});
    }
  }
  return kinds;
}

Chosen ofKind(const Season& season, const Chosen& chosen, StatedKind kind) {
  Chosen some;
  for (const std::uint32_t place : chosen) {
    if (season.records[place].hasFigures && season.records[place].kind == kind) {
      some.push_back(place);
    }
  }
  return some;
}

std::size_t withoutFigures(const Season& season, const Chosen& chosen) {
  return static_cast<std::size_t>(
      std::count_if(chosen.begin(), chosen.end(),
                    [&](std::uint32_t place) { return !season.records[place].hasFigures; }));
}

Saying words(const SeasonRefusal& refusal) {
  if (refusal.why == SeasonRefusal::Why::mixedKinds) {
    return {"Rescues, drills and tests are not mixed in one figure. Choose one kind.", {}};
  }
  return {"What these shares were counted over is not known here.", {}};
}

tl::expected<StatedKind, SeasonRefusal> oneKind(const Season& season, const Chosen& chosen) {
  auto kinds = kindsOf(season, chosen);
  if (kinds.size() > 1) {
    return tl::unexpected(SeasonRefusal{SeasonRefusal::Why::mixedKinds, std::move(kinds)});
  }
  return kinds.empty() ? StatedKind{} : kinds.front().kind;
}

void Missing::add(Status status) {
  if (status == Status::notRecorded) {
    ++notRecorded;
  } else if (status == Status::notApplicable) {
    ++notApplicable;
  }
}

} // namespace afterbeat
