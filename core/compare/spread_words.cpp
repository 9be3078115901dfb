#include "core/compare/companions.h"
#include "core/compare/spread.h"

namespace afterbeat {
namespace {

/// So many groups that differ get a sentence of their own.
constexpr std::size_t kNamed = 6;

/// With fewer records in a group silence is said to mean little; common practice.
constexpr std::size_t kManyRecords = 30;

Amount count(std::size_t n) {
  return {static_cast<double>(n), AmountKind::count};
}

Saying clearDifference(const Spread& spread, const SpreadGroup& group) {
  const AgainstOthers& against = *group.against;
  if (group.name.empty()) {
    return {"Where none is recorded the middle record has %1, all others have %2: more of a "
            "difference than chance explains.",
            {amountOf(spread.measure, against.medianHere),
             amountOf(spread.measure, against.medianOthers)}};
  }
  return {"%1: the middle record has %2, elsewhere it has %3: more of a difference than chance "
          "explains.",
          {group.name, amountOf(spread.measure, against.medianHere),
           amountOf(spread.measure, against.medianOthers)}};
}

} // namespace

std::vector<Saying> words(const Spread& spread) {
  std::vector<Saying> all;
  bool compared = false, few = false;
  std::size_t clear = 0;
  for (const SpreadGroup& group : spread.groups) {
    compared = compared || group.against.has_value();
    few = few || group.points.size() < kManyRecords;
    if (group.against && group.against->clear && ++clear <= kNamed) {
      all.push_back(clearDifference(spread, group));
    }
  }
  if (clear > kNamed) {
    all.push_back({"Groups that differ as well: %1.", {count(clear - kNamed)}});
  }
  if (compared && clear == 0) {
    all.push_back({"No group differs from the others by more than chance explains.", {}});
    if (few) {
      all.push_back({"In few records a real difference can go unseen.", {}});
    }
  }
  if (spread.missing.notRecorded > 0) {
    all.push_back(
        {"Records in which it is not recorded: %1.", {count(spread.missing.notRecorded)}});
  }
  if (spread.missing.notApplicable > 0) {
    all.push_back(
        {"Records to which it does not apply: %1.", {count(spread.missing.notApplicable)}});
  }
  if (!neverAlone(spread.measure).empty()) {
    all.push_back({"This share alone says little: how long it took and how many shocks were given "
                   "stand beside it.",
                   {}});
  }
  return all;
}

std::vector<Saying> whereGroupsDiffer(const std::vector<Spread>& spreads) {
  std::vector<Saying> all;
  bool compared = false;
  const std::size_t groups = spreads.empty() ? 0 : spreads.front().groups.size();
  for (std::size_t g = 0; g < groups; ++g) {
    for (const Spread& spread : spreads) {
      const SpreadGroup& group = spread.groups[g];
      compared = compared || group.against.has_value();
      if (!group.against || !group.against->clear) {
        continue;
      }
      const Amount here = amountOf(spread.measure, group.against->medianHere);
      const Amount elsewhere = amountOf(spread.measure, group.against->medianOthers);
      all.push_back(group.name.empty() ? Saying{"Where none is recorded – %1: %2, elsewhere %3.",
                                                {spread.measure, here, elsewhere}}
                                       : Saying{"%1 – %2: %3, elsewhere %4.",
                                                {group.name, spread.measure, here, elsewhere}});
    }
  }
  if (compared && all.empty()) {
    all.push_back({"No group differs from the others in any of these figures by more than chance "
                   "explains. In few records a real difference can go unseen.",
                   {}});
  }
  return all;
}

Saying words(const Spread& spread, const SpreadGroup& group) {
  if (group.points.empty()) {
    return {"No record has a value.", {}};
  }
  if (group.tooFew) {
    return {"Too few records for a middle and its interval: %1.", {count(group.points.size())}};
  }
  return {"Middle of %1 records: %2 (may really be %3 to %4).",
          {count(group.points.size()), amountOf(spread.measure, group.quartiles->median),
           amountOf(spread.measure, group.interval->low),
           amountOf(spread.measure, group.interval->high)}};
}

std::optional<Saying> referenceWords(const Spread& spread) {
  const ReferenceBand* band = referenceBand(spread.measure);
  if (band == nullptr || spread.kind != RecordKind::rescue) {
    return std::nullopt;
  }
  return Saying{"Band: middle %1, half of the records between %2 and %3, in a published group of "
                "rescues (%4). What others measured, not a target.",
                {amountOf(spread.measure, band->median), amountOf(spread.measure, band->low),
                 amountOf(spread.measure, band->high), std::string(band->source)}};
}

} // namespace afterbeat
