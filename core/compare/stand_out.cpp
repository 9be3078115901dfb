#include "core/compare/stand_out.h"

#include "core/compare/companions.h"
#include "core/statistics/quantile.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace afterbeat {
namespace {

/// Measures that are asked for values far out: lengths of time that matter, and how hands worked.
constexpr std::array kAsked{
    MeasureId::longestPause,
    MeasureId::postShockPauseWorst,
    MeasureId::chestCompressionFraction,
    MeasureId::compressionRate,
    MeasureId::compressionDepth,
    MeasureId::ventilationsPerMinute,
    MeasureId::adviceToShockWorst,
    MeasureId::powerOnToElectrodes,
    MeasureId::powerOnToFirstHandsOn,
    MeasureId::electrodesToFirstAnalysis,
    MeasureId::powerOnToFirstShock,
    MeasureId::callToFirstShock,
};

using Reasons = std::map<std::uint32_t, std::vector<StandOutReason>>;

/// Values beyond these are far out.
struct Fences {
  double low = 0, median = 0, high = 0;
};

std::optional<Fences> fencesOf(MeasureId measure, std::vector<double> values) {
  if (values.size() < kLeastForFarOut) {
    return std::nullopt;
  }
  const bool logarithms = amountKind(measure) == AmountKind::seconds &&
                          std::all_of(values.begin(), values.end(), [](double v) { return v > 0; });
  if (logarithms) {
    for (double& v : values) {
      v = std::log(v);
    }
  }
  const Quartiles q = *quartiles(std::move(values));
  // Where half of the values are the same, everything else would be far out.
  if (q.range() <= 0) {
    return std::nullopt;
  }
  const Fences f{q.low - 3 * q.range(), q.median, q.high + 3 * q.range()};
  return logarithms ? Fences{std::exp(f.low), std::exp(f.median), std::exp(f.high)} : f;
}

/// A share that says little alone, with how long it took and how many shocks were given.
Saying farOutShareWords(const Season& season, std::uint32_t place, MeasureId measure, double value,
                        double median) {
  std::vector<SayingPart> parts{measure, amountOf(measure, value), amountOf(measure, median)};
  for (const MeasureId beside : neverAlone(measure)) {
    const FigureCell& cell = season.column(beside)[place];
    parts.emplace_back(beside);
    if (cell.ok()) {
      parts.emplace_back(amountOf(beside, cell.value));
    } else {
      parts.emplace_back(Term{"not recorded"});
    }
  }
  return value > median
             ? Saying{"%1: %2, far above what is usual here (middle %3). Beside it: %4 %5, %6 %7.",
                      parts}
             : Saying{"%1: %2, far below what is usual here (middle %3). Beside it: %4 %5, %6 %7.",
                      parts};
}

Saying farOutWords(MeasureId measure, double value, double median) {
  const std::vector<SayingPart> parts{measure, amountOf(measure, value), amountOf(measure, median)};
  return value > median ? Saying{"%1: %2, far above what is usual here (middle %3).", parts}
                        : Saying{"%1: %2, far below what is usual here (middle %3).", parts};
}

void addFarOut(const Season& season, const Chosen& ofOneKind, MeasureId measure, Reasons& reasons) {
  const FigureColumn& column = season.column(measure);
  std::vector<double> values;
  for (const std::uint32_t place : ofOneKind) {
    if (column[place].ok()) {
      values.push_back(column[place].value);
    }
  }
  const auto fences = fencesOf(measure, std::move(values));
  if (!fences) {
    return;
  }
  for (const std::uint32_t place : ofOneKind) {
    const FigureCell& cell = column[place];
    if (cell.ok() && (cell.value < fences->low || cell.value > fences->high)) {
      reasons[place].push_back(
          {StandOutRule::farOut, measure,
           neverAlone(measure).empty()
               ? farOutWords(measure, cell.value, fences->median)
               : farOutShareWords(season, place, measure, cell.value, fences->median)});
    }
  }
}

void addPauses(const Season& season, const Chosen& chosen, const Profile& profile,
               Reasons& reasons) {
  const FigureColumn& before = season.column(MeasureId::preShockPauseWorst);
  const FigureColumn& longest = season.column(MeasureId::longestPause);
  const FigureColumn& withheld = season.column(MeasureId::shocksWithheld);
  for (const std::uint32_t place : chosen) {
    if (profile.preShockPauseLimit && before[place].ok() &&
        before[place].value >= profile.preShockPauseLimit->value) {
      reasons[place].push_back(
          {StandOutRule::preShockPause,
           MeasureId::preShockPauseWorst,
           {"Pause of %1 before a shock; the profile asks for less than %2.",
            {Amount{before[place].value, AmountKind::seconds},
             Amount{profile.preShockPauseLimit->value, AmountKind::seconds}}}});
    }
    if (profile.pauseLimit && longest[place].ok() &&
        longest[place].value > profile.pauseLimit->value &&
        season.records[place].longestPauseCause == PauseCause::noReasonRecorded) {
      reasons[place].push_back({StandOutRule::unexplainedPause,
                                MeasureId::longestPause,
                                {"Pause of %1 for which no reason is recorded.",
                                 {Amount{longest[place].value, AmountKind::seconds}}}});
    }
    if (withheld[place].ok() && withheld[place].value > 0) {
      reasons[place].push_back({StandOutRule::shockWithheld,
                                MeasureId::shocksWithheld,
                                {"A shock was advised or charged and not given.", {}}});
    }
  }
}

void addFacts(const Season& season, const Chosen& chosen, Reasons& reasons) {
  for (const std::uint32_t place : chosen) {
    const RecordFacts& record = season.records[place];
    if (record.settingDiffers) {
      reasons[place].push_back(
          {StandOutRule::settingDiffers,
           MeasureId::arrestTime,
           {"The device was set for another age group than the patient's.", {}}});
    }
    if (record.evidence == Evidence::none && record.kind != RecordKind::test) {
      reasons[place].push_back({StandOutRule::noEvidence,
                                MeasureId::arrestTime,
                                {"Nothing in the record shows compressions.", {}}});
    }
  }
}

} // namespace

std::string_view ruleSource(StandOutRule rule) {
  switch (rule) {
  case StandOutRule::farOut:
    return "Tukey, Exploratory Data Analysis, 1977 (from memory)";
  case StandOutRule::preShockPause:
  case StandOutRule::unexplainedPause:
    return "The limit of the guideline profile in use";
  default:
    return kCommonPractice;
  }
}

namespace {

using RuleCounts = std::array<std::size_t, static_cast<std::size_t>(StandOutRule::noEvidence) + 1>;

std::size_t indexOf(StandOutRule rule) {
  return static_cast<std::size_t>(rule);
}

RuleCounts countRules(const Reasons& reasons) {
  RuleCounts counts{};
  for (const auto& [place, all] : reasons) {
    for (const StandOutReason& reason : all) {
      ++counts[indexOf(reason.rule)];
    }
  }
  return counts;
}

bool isUsual(StandOutRule rule, const RuleCounts& counts, std::size_t records) {
  // Far out is rare by its own making, and is asked of many measures.
  const double share = records >= kLeastForFarOut ? kUsualShare : kUsualShareOfFew;
  return rule != StandOutRule::farOut && records >= kLeastForSummary &&
         static_cast<double>(counts[indexOf(rule)]) > share * static_cast<double>(records);
}

/// Every reason of the records of one kind, the usual ones marked.
Reasons reasonsOf(const Season& season, const Chosen& ofOneKind, const Profile& profile) {
  Reasons reasons;
  addFacts(season, ofOneKind, reasons);
  addPauses(season, ofOneKind, profile, reasons);
  for (const MeasureId measure : kAsked) {
    addFarOut(season, ofOneKind, measure, reasons);
  }
  const RuleCounts counts = countRules(reasons);
  for (auto& [place, all] : reasons) {
    for (StandOutReason& reason : all) {
      reason.usual = isUsual(reason.rule, counts, ofOneKind.size());
    }
  }
  return reasons;
}

/// How many reasons single the record out.
std::ptrdiff_t unusual(const StandOut& one) {
  return std::count_if(one.reasons.begin(), one.reasons.end(),
                       [](const StandOutReason& reason) { return !reason.usual; });
}

Saying usualWords(StandOutRule rule, const Profile& profile, std::size_t count,
                  std::size_t records) {
  const Amount some{static_cast<double>(count), AmountKind::count};
  const Amount all{static_cast<double>(records), AmountKind::count};
  switch (rule) {
  case StandOutRule::preShockPause:
    return {"Here this is usual and names no record by itself: a pause before a shock that is not "
            "below the limit of %1, in %2 of %3 records.",
            {Amount{profile.preShockPauseLimit->value, AmountKind::seconds}, some, all}};
  case StandOutRule::unexplainedPause:
    return {"Here this is usual and names no record by itself: a long pause without a recorded "
            "reason, in %1 of %2 records.",
            {some, all}};
  case StandOutRule::shockWithheld:
    return {
        "Here this is usual and names no record by itself: a shock that was not given, in %1 of "
        "%2 records.",
        {some, all}};
  case StandOutRule::settingDiffers:
    return {"Here this is usual and names no record by itself: a setting for another age group, in "
            "%1 of %2 records.",
            {some, all}};
  case StandOutRule::noEvidence:
  case StandOutRule::farOut:
    break;
  }
  return {"Here this is usual and names no record by itself: nothing shows compressions, in %1 of "
          "%2 records.",
          {some, all}};
}

} // namespace

std::vector<StandOut> worthALook(const Season& season, const Chosen& chosen,
                                 const Profile& profile) {
  Reasons reasons;
  for (const KindCount& kind : kindsOf(season, chosen)) {
    reasons.merge(reasonsOf(season, ofKind(season, chosen, kind.kind), profile));
  }
  std::vector<StandOut> found;
  for (const std::uint32_t place : chosen) {
    if (const auto at = reasons.find(place); at != reasons.end()) {
      StandOut one{place, std::move(at->second)};
      reasons.erase(at);
      if (unusual(one) > 0) {
        found.push_back(std::move(one));
      }
    }
  }
  std::stable_sort(found.begin(), found.end(), [&](const StandOut& a, const StandOut& b) {
    const auto one = unusual(a), other = unusual(b);
    return one != other ? one > other : season.records[a.place].day > season.records[b.place].day;
  });
  return found;
}

tl::expected<std::vector<Saying>, SeasonRefusal>
usualHere(const Season& season, const Chosen& chosen, const Profile& profile) {
  if (const auto kind = oneKind(season, chosen); !kind) {
    return tl::unexpected(kind.error());
  }
  const RuleCounts counts = countRules(reasonsOf(season, chosen, profile));
  std::vector<Saying> all;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    const auto rule = static_cast<StandOutRule>(i);
    if (isUsual(rule, counts, chosen.size())) {
      all.push_back(usualWords(rule, profile, counts[i], chosen.size()));
    }
  }
  return all;
}

} // namespace afterbeat
