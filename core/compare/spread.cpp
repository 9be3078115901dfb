#include "core/compare/spread.h"

#include "core/compare/companions.h"
#include "core/compare/filter.h"
#include "core/statistics/rank_test.h"

#include <algorithm>
#include <unordered_map>

namespace afterbeat {
namespace {

constexpr int kNoQuarter = -1;

int quarterNumber(const RecordFacts& record) {
  if (!record.day) {
    return kNoQuarter;
  }
  const Quarter q = quarterOf(*record.day);
  return q.year * 4 + q.number - 1;
}

/// Puts each chosen record into its group; the groups in the order in which they come up.
class Sorter {
public:
  Sorter(const Season& season, GroupBy by) : season_(season), by_(by) {}

  std::size_t groupOf(std::uint32_t place, std::vector<SpreadGroup>& groups) {
    const RecordFacts& record = season_.records[place];
    switch (by_) {
    case GroupBy::site:
      return named(record.site, groups);
    case GroupBy::team:
      return named(record.team, groups);
    case GroupBy::quarter:
      return timed(record, groups);
    case GroupBy::nothing:
      break;
    }
    return named(nothing_, groups);
  }

private:
  std::size_t named(const std::string& name, std::vector<SpreadGroup>& groups) {
    const auto [at, isNew] = names_.try_emplace(name, groups.size());
    if (isNew) {
      groups.emplace_back().name = name;
    }
    return at->second;
  }

  std::size_t timed(const RecordFacts& record, std::vector<SpreadGroup>& groups) {
    const auto [at, isNew] = quarters_.try_emplace(quarterNumber(record), groups.size());
    if (isNew) {
      groups.emplace_back();
      if (record.day) {
        groups.back().quarter = quarterOf(*record.day);
      }
    }
    return at->second;
  }

  const Season& season_;
  GroupBy by_;
  std::string nothing_;
  std::unordered_map<std::string_view, std::size_t> names_;
  std::unordered_map<int, std::size_t> quarters_;
};

/// By name in any letter case, or by time; what is not recorded last.
void sortGroups(std::vector<SpreadGroup>& groups, GroupBy by) {
  const auto folded = [](const std::string& name) {
    std::string text;
    appendFolded(text, name);
    return text;
  };
  std::sort(groups.begin(), groups.end(), [&](const SpreadGroup& a, const SpreadGroup& b) {
    if (by == GroupBy::quarter) {
      return a.quarter && b.quarter ? *a.quarter < *b.quarter : a.quarter.has_value();
    }
    if (a.name.empty() || b.name.empty()) {
      return !a.name.empty() && b.name.empty();
    }
    const std::string one = folded(a.name), other = folded(b.name);
    return one != other ? one < other : a.name < b.name;
  });
}

std::vector<double> valuesOf(const std::vector<SpreadPoint>& points) {
  std::vector<double> values;
  values.reserve(points.size());
  for (const SpreadPoint& point : points) {
    values.push_back(point.value);
  }
  return values;
}

void summarise(SpreadGroup& group, const BootstrapSettings& bootstrap) {
  group.tooFew = group.points.size() < kLeastForSummary;
  if (group.tooFew) {
    return;
  }
  auto values = valuesOf(group.points);
  std::sort(values.begin(), values.end());
  group.quartiles = Quartiles{quantileOfSorted(values, 0.25), quantileOfSorted(values, 0.5),
                              quantileOfSorted(values, 0.75)};
  group.interval = medianInterval(values, bootstrap);
}

/// All values of all groups, in one ascending order.
struct AllValues {
  std::vector<double> values;
  std::vector<int> group;
};

AllValues ascending(const std::vector<SpreadGroup>& groups) {
  std::vector<std::pair<double, int>> all;
  for (std::size_t g = 0; g < groups.size(); ++g) {
    for (const SpreadPoint& point : groups[g].points) {
      all.emplace_back(point.value, static_cast<int>(g));
    }
  }
  std::sort(all.begin(), all.end());
  AllValues split;
  split.values.reserve(all.size());
  split.group.reserve(all.size());
  for (const auto& [value, g] : all) {
    split.values.push_back(value);
    split.group.push_back(g);
  }
  return split;
}

/// The median of the values that are of a group still in the pool, and not of group `g`.
double medianWithout(const AllValues& all, const std::vector<bool>& inPool, int g,
                     std::size_t others) {
  const std::size_t upper = others / 2, lower = (others - 1) / 2;
  std::size_t seen = 0;
  double below = 0;
  for (std::size_t i = 0; i < all.values.size(); ++i) {
    if (all.group[i] == g || !inPool[static_cast<std::size_t>(all.group[i])]) {
      continue;
    }
    below = seen == lower ? all.values[i] : below;
    if (seen++ == upper) {
      return (below + all.values[i]) / 2;
    }
  }
  return below;
}

/// Groups that are held against each other; those found to differ leave it.
class Pool {
public:
  Pool(std::vector<SpreadGroup>& groups, std::size_t figuresAsked)
      : groups_(groups), figuresAsked_(static_cast<double>(figuresAsked)), all_(ascending(groups)),
        inPool_(groups.size(), true) {}

  /// Compares each group that has enough values with the others in the pool, and takes out the one
  /// that differs most clearly; false: none does, or this is the last round.
  bool round(bool last) {
    const auto compared = comparedGroups();
    if (compared.empty()) {
      return false;
    }
    const auto chances = chancesOf(compared);
    const std::vector<double> corrected = correctedOf(chances);
    // Corrected ones can be alike where the chances themselves are not.
    const auto least = static_cast<std::size_t>(std::min_element(chances.begin(), chances.end()) -
                                                chances.begin());
    if (last || corrected[least] >= kClearChance || groupsLeft() <= 2) {
      for (std::size_t i = 0; i < compared.size(); ++i) {
        note(compared[i], corrected[i]);
      }
      return false;
    }
    note(compared[least], corrected[least]);
    inPool_[compared[least]] = false;
    return true;
  }

private:
  [[nodiscard]] std::size_t groupsLeft() const {
    std::size_t left = 0;
    for (std::size_t g = 0; g < groups_.size(); ++g) {
      left += inPool_[g] && !groups_[g].points.empty() ? 1U : 0U;
    }
    return left;
  }

  [[nodiscard]] std::size_t valuesLeft() const {
    std::size_t left = 0;
    for (std::size_t g = 0; g < groups_.size(); ++g) {
      left += inPool_[g] ? groups_[g].points.size() : 0;
    }
    return left;
  }

  [[nodiscard]] std::vector<std::size_t> comparedGroups() const {
    std::vector<std::size_t> compared;
    const std::size_t values = valuesLeft();
    for (std::size_t g = 0; g < groups_.size(); ++g) {
      const bool enough = values - groups_[g].points.size() >= kLeastForSummary;
      if (inPool_[g] && !groups_[g].tooFew && enough) {
        compared.push_back(g);
      }
    }
    return compared;
  }

  [[nodiscard]] std::vector<double> chancesOf(const std::vector<std::size_t>& compared) const {
    std::vector<int> group = all_.group;
    for (int& g : group) {
      g = inPool_[static_cast<std::size_t>(g)] ? g : -1;
    }
    const auto chances =
        rankTestAgainstOthers(all_.values, group, static_cast<int>(groups_.size()));
    std::vector<double> asked;
    for (const std::size_t g : compared) {
      asked.push_back(chances[g]);
    }
    return asked;
  }

  [[nodiscard]] std::vector<double> correctedOf(const std::vector<double>& chances) const {
    // Of two groups each is the other's others: one comparison, not two.
    std::vector<double> corrected = groupsLeft() == 2 ? chances : holm(chances);
    for (double& chance : corrected) {
      chance = std::min(1.0, chance * figuresAsked_);
    }
    return corrected;
  }

  void note(std::size_t g, double chance) {
    SpreadGroup& group = groups_[g];
    const std::size_t others = valuesLeft() - group.points.size();
    group.against = AgainstOthers{group.quartiles->median,
                                  medianWithout(all_, inPool_, static_cast<int>(g), others), others,
                                  chance, chance < kClearChance};
  }

  std::vector<SpreadGroup>& groups_;
  double figuresAsked_;
  AllValues all_;
  std::vector<bool> inPool_;
};

/// So many groups are taken out one by one; of more the rest is named as the last round finds it.
constexpr int kRounds = 5;

/// Were every group held against all others, one slow site would make all the others "faster than
/// elsewhere". So the one that differs most is taken out before the rest is asked again.
void compare(std::vector<SpreadGroup>& groups, std::size_t figuresAsked) {
  Pool pool(groups, figuresAsked);
  for (int taken = 0; pool.round(taken == kRounds); ++taken) {
  }
}

void addBeside(const Season& season, Spread& spread) {
  for (SpreadGroup& group : spread.groups) {
    Chosen records;
    for (const SpreadPoint& point : group.points) {
      records.push_back(point.place);
    }
    group.beside = besideOf(spread.measure, season, records);
  }
}

} // namespace

Quarter quarterOf(std::chrono::sys_days day) {
  const std::chrono::year_month_day date(day);
  return {static_cast<int>(date.year()),
          (static_cast<int>(static_cast<unsigned>(date.month())) + 2) / 3};
}

tl::expected<Spread, SeasonRefusal> spread(const Season& season, const Chosen& chosen,
                                           MeasureId measure, GroupBy by,
                                           const SpreadSettings& settings) {
  const auto kind = oneKind(season, chosen);
  if (!kind) {
    return tl::unexpected(kind.error());
  }
  Spread result;
  result.measure = measure;
  result.kind = *kind;
  result.by = by;
  result.bootstrap = settings.bootstrap;
  const FigureColumn& column = season.column(measure);
  Sorter sorter(season, by);
  for (const std::uint32_t place : chosen) {
    SpreadGroup& group = result.groups[sorter.groupOf(place, result.groups)];
    if (column[place].ok()) {
      group.points.push_back({place, column[place].value});
    } else {
      group.missing.add(column[place].status);
      result.missing.add(column[place].status);
    }
  }
  sortGroups(result.groups, by);
  for (SpreadGroup& group : result.groups) {
    summarise(group, settings.bootstrap);
  }
  if (by == GroupBy::site || by == GroupBy::team) {
    compare(result.groups, settings.figuresAsked);
  }
  addBeside(season, result);
  return result;
}

} // namespace afterbeat
