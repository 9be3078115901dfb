#include "core/compare/stand_out.h"

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
          {StandOutRule::farOut, measure, farOutWords(measure, cell.value, fences->median)});
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

std::vector<StandOut> worthALook(const Season& season, const Chosen& chosen,
                                 const Profile& profile) {
  Reasons reasons;
  addFacts(season, chosen, reasons);
  addPauses(season, chosen, profile, reasons);
  for (const KindCount& kind : kindsOf(season, chosen)) {
    const Chosen some = ofKind(season, chosen, kind.kind);
    for (const MeasureId measure : kAsked) {
      addFarOut(season, some, measure, reasons);
    }
  }
  std::vector<StandOut> found;
  for (const std::uint32_t place : chosen) {
    if (const auto at = reasons.find(place); at != reasons.end()) {
      found.push_back({place, std::move(at->second)});
      reasons.erase(at);
    }
  }
  std::stable_sort(found.begin(), found.end(), [&](const StandOut& a, const StandOut& b) {
    return a.reasons.size() != b.reasons.size()
               ? a.reasons.size() > b.reasons.size()
               : season.records[a.place].day > season.records[b.place].day;
  });
  return found;
}

} // namespace afterbeat
