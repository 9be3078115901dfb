#include "app/papers/debrief_rules.h"

#include "app/papers/debrief_parts.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat::papers {

namespace {

constexpr std::array<std::string_view, static_cast<std::size_t>(DebriefRule::count_)> kNames{
    "hands_off",         "longest_pause", "before_shock", "after_shock",     "first_shock",
    "first_compression", "rate",          "rate_steady",  "depth",           "release",
    "breaths",           "halves",        "electrodes",   "advice_to_shock", "best_minute",
};

/// Rules that speak of one pause: the same pause is not spoken of twice in one list.
bool speaksOfOnePause(DebriefRule rule) {
  return rule == DebriefRule::longestPause || rule == DebriefRule::beforeShock ||
         rule == DebriefRule::afterShock || rule == DebriefRule::breaths ||
         rule == DebriefRule::firstCompression || rule == DebriefRule::adviceToShock;
}

/// Two findings of one list that would say the same thing twice.
bool sayTheSame(const Finding& a, const Finding& b) {
  const auto shares = [](const Finding& f) {
    return f.rule == DebriefRule::handsOff || f.rule == DebriefRule::halves;
  };
  if (shares(a) && shares(b)) {
    return true;
  }
  return speaksOfOnePause(a.rule) && speaksOfOnePause(b.rule) && a.moment.touches(b.moment);
}

/// The furthest from their targets, at most three.
std::vector<std::size_t> furthest(const std::vector<Finding>& findings, bool within) {
  constexpr std::size_t kMost = 3;
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < findings.size(); ++i) {
    if (findings[i].within == within && (within || findings[i].away >= kNearMiss)) {
      order.push_back(i);
    }
  }
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return findings[a].away > findings[b].away;
  });
  std::vector<std::size_t> chosen;
  for (const std::size_t i : order) {
    const bool said = std::any_of(chosen.begin(), chosen.end(), [&](std::size_t other) {
      return sayTheSame(findings[i], findings[other]);
    });
    if (!said && chosen.size() < kMost) {
      chosen.push_back(i);
    }
  }
  return chosen;
}

std::optional<std::size_t> nearestBeyond(const std::vector<Finding>& findings) {
  std::optional<std::size_t> nearest;
  for (std::size_t i = 0; i < findings.size(); ++i) {
    if (!findings[i].within && (!nearest || findings[i].away < findings[*nearest].away)) {
      nearest = i;
    }
  }
  return nearest;
}

} // namespace

std::string_view ruleName(DebriefRule rule) {
  return kNames[static_cast<std::size_t>(rule)];
}

bool meets(double value, Aim aim, const Range& target) {
  switch (aim) {
  case Aim::atMost:
    return value <= target.high;
  case Aim::below:
    return value < target.high;
  case Aim::atLeast:
    return value >= target.low;
  case Aim::inRange:
    return target.holds(value);
  }
  return false;
}

std::optional<double> awayFrom(double value, Aim aim, const Range& target) {
  if (aim == Aim::inRange) {
    const double half = (target.high - target.low) / 2;
    if (!(half > 0)) {
      return std::nullopt;
    }
    const double fromMiddle = std::fabs(value - (target.low + target.high) / 2);
    return std::fabs(1 - fromMiddle / half);
  }
  // A share that should be at least so much is its complement that should be at most the rest.
  const double limit = aim == Aim::atLeast ? 1 - target.low : target.high;
  const double measured = aim == Aim::atLeast ? 1 - value : std::max(0.0, value);
  if (!(limit > 0)) {
    return std::nullopt;
  }
  return std::fabs(1 - measured / limit);
}

namespace debrief {

Finding* add(std::vector<Finding>& all, Finding finding) {
  const auto away = awayFrom(finding.value, finding.aim, finding.target);
  if (!away) {
    return nullptr;
  }
  finding.away = *away;
  finding.within = meets(finding.value, finding.aim, finding.target);
  all.push_back(std::move(finding));
  return &all.back();
}

Finding begin(DebriefRule rule, double value, Aim aim, Range target) {
  Finding finding;
  finding.rule = rule;
  finding.value = value;
  finding.aim = aim;
  finding.target = target;
  return finding;
}

std::vector<const MinuteRow*> wholeMinutes(const Figures& figures) {
  std::vector<const MinuteRow*> whole;
  for (const MinuteRow& row : figures.minutes) {
    if (row.epoch.length() == kWholeMinute && row.arrest >= kMostOfAMinute) {
      whole.push_back(&row);
    }
  }
  return whole;
}

bool handsKnown(const Figures& figures) {
  return figures.evidence != Evidence::none && total(figures.arrest) >= kLeastArrest;
}

} // namespace debrief

std::vector<Finding> debriefFindings(const Record& record, const Figures& figures) {
  std::vector<Finding> all;
  debrief::addPauseFindings(record, figures, all);
  debrief::addQualityFindings(record, figures, all);
  std::stable_sort(all.begin(), all.end(),
                   [](const Finding& a, const Finding& b) { return a.rule < b.rule; });
  return all;
}

std::optional<BestMinute> bestMinute(const Figures& figures) {
  std::optional<BestMinute> best;
  const auto share = [](const BestMinute& minute) {
    return static_cast<double>(minute.handsOn.count()) / static_cast<double>(minute.of.count());
  };
  for (const MinuteRow* row : debrief::wholeMinutes(figures)) {
    if (!row->handsOff) {
      continue;
    }
    const BestMinute minute{row->epoch, row->arrest - *row->handsOff, row->arrest};
    if (minute.handsOn > Duration{0} && (!best || share(minute) > share(*best))) {
      best = minute;
    }
  }
  return best;
}

DebriefChoice chooseDebrief(const std::vector<Finding>& findings) {
  DebriefChoice choice;
  choice.well = furthest(findings, true);
  choice.practise = furthest(findings, false);
  if (choice.well.empty()) {
    choice.nearest = nearestBeyond(findings);
    const auto same = std::find_if(choice.practise.begin(), choice.practise.end(),
                                   [&](std::size_t i) { return i == choice.nearest; });
    if (same != choice.practise.end() && choice.practise.size() > 1) {
      choice.practise.erase(same);
    } else if (same != choice.practise.end()) {
      choice.nearest.reset(); // the only thing to practise stays that
    }
  }
  const bool handsPraised = std::any_of(choice.well.begin(), choice.well.end(), [&](std::size_t i) {
    return findings[i].rule == DebriefRule::handsOff;
  });
  choice.effort = choice.well.size() < 2 && !handsPraised;
  return choice;
}

} // namespace afterbeat::papers
