/// A season that a test tells record by record.
#pragma once

#include "core/compare/filter.h"
#include "core/compare/saying.h"
#include "core/compare/season.h"

#include <array>
#include <map>

namespace afterbeat {

using Values = std::map<MeasureId, double>;

/// A day of 2026.
inline std::chrono::sys_days day(unsigned month, unsigned d) {
  return std::chrono::year(2026) / std::chrono::month(month) / std::chrono::day(d);
}

class ToldSeason {
public:
  /// Measures that are not told are not recorded.
  RecordFacts& add(RecordFacts facts, const Values& values = {}) {
    facts.number = static_cast<std::int64_t>(season_.records.size()) + 1;
    facts.evidence = Evidence::compressions;
    season_.records.push_back(std::move(facts));
    for (FigureColumn& column : columns_) {
      column.emplace_back();
    }
    for (const auto& [id, value] : values) {
      cell(season_.records.size() - 1, id) = {value, Status::ok, 0};
    }
    return season_.records.back();
  }
  RecordFacts& rescue(const std::string& site, std::optional<std::chrono::sys_days> when,
                      const Values& values = {}) {
    RecordFacts facts;
    facts.kind = RecordKind::rescue;
    facts.site = site;
    facts.day = when;
    return add(std::move(facts), values);
  }
  FigureCell& cell(std::size_t place, MeasureId id) {
    return columns_[static_cast<std::size_t>(id)][place];
  }
  const Season& season() {
    season_.column = [this](MeasureId id) -> const FigureColumn& {
      return columns_[static_cast<std::size_t>(id)];
    };
    return season_;
  }
  Chosen all() { return everything(season()); }

private:
  Season season_;
  std::array<FigureColumn, static_cast<std::size_t>(MeasureId::count_)> columns_;
};

/// All sentences, one after the other.
template <typename Sayings>
std::string told(const Sayings& sayings) {
  std::string text;
  for (const auto& saying : sayings) {
    text += inEnglish(saying) + '\n';
  }
  return text;
}

} // namespace afterbeat
