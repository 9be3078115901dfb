#include "tests/papers/charts/season_example.h"

#include <array>
#include <cmath>
#include <map>
#include <memory>
#include <random>

namespace afterbeat::test {
namespace {

using Columns = std::map<MeasureId, FigureColumn>;

/// Uniform above 0 and below 1, the same everywhere.
class Dice {
public:
  double operator()() { return (static_cast<double>(engine_() >> 11) + 0.5) / 9007199254740992.0; }
  /// Leans to the long side around `middle`.
  double length(double middle) {
    const double normal =
        std::sqrt(-2 * std::log((*this)())) * std::cos(6.283185307179586 * (*this)());
    return middle * std::exp(0.35 * normal);
  }

private:
  std::mt19937_64 engine_{7};
};

void put(Columns& columns, MeasureId id, double value, bool known = true) {
  columns[id].push_back(known ? FigureCell{value, Status::ok, 0}
                              : FigureCell{0, Status::notRecorded, 0});
}

/// A share and what it was counted over.
void putShare(Columns& columns, MeasureId id, double value, float of) {
  columns[id].push_back({value, Status::ok, of});
}

std::string siteOf(std::size_t i, std::size_t count) {
  static const std::array<std::string, 3> kSites{"Boathouse East", "Ferry terminal",
                                                 "Rowing club Schilfbucht"};
  if (i >= count - std::min<std::size_t>(3, count / 8)) {
    return "Lido";
  }
  return i % 11 == 5 ? "" : kSites[i % 3];
}

RecordFacts factsOf(std::size_t i, std::size_t count) {
  using namespace std::chrono;
  RecordFacts facts;
  facts.number = static_cast<std::int64_t>(i) + 1;
  facts.id = "rec-" + std::to_string(1000 + i);
  facts.file = "case-" + std::to_string(1000 + i) + ".resuslog";
  facts.kind = i % 5 == 4 ? RecordKind::drill : RecordKind::rescue;
  facts.site = siteOf(i, count);
  facts.team = i % 2 == 0 ? "Early shift" : "Late shift";
  facts.device = "SN-" + std::to_string(4400 + i % 6);
  if (i % 17 != 16) {
    facts.day = sys_days{2024y / January / 8} +
                days{static_cast<int>(700.0 * static_cast<double>(i) / static_cast<double>(count))};
  }
  facts.evidence = i % 19 == 18 ? Evidence::none : Evidence::compressions;
  facts.hadShock = i % 7 != 0;
  facts.longestPauseCause = i % 4 == 0 ? PauseCause::noReasonRecorded : PauseCause::analysis;
  facts.synthetic = true;
  return facts;
}

void addFigures(std::size_t i, const RecordFacts& facts, Dice& dice, Columns& columns) {
  using enum MeasureId;
  using namespace std::chrono;
  const bool known = facts.evidence != Evidence::none;
  const bool shock = *facts.hadShock;
  const bool trained = facts.day && *facts.day >= sys_days{2025y / April / 1};
  const double slow = facts.site == "Ferry terminal" ? 1.5 : 1;
  const double off = std::min(0.9, 0.2 * dice.length(1));
  put(columns, arrestTime, dice.length(840), known);
  put(columns, shocksDelivered, shock ? std::floor(1 + 3 * dice()) : 0, known);
  put(columns, handsOffFraction, off, known);
  put(columns, chestCompressionFraction, 1 - off, known);
  put(columns, longestPause, dice.length(trained ? 14 : 24), known);
  put(columns, preShockPauseMedian, dice.length(12), known && shock);
  put(columns, preShockPauseWorst, dice.length(18), known && shock);
  put(columns, shocksWithheld, i % 23 == 22 ? 1 : 0, known);
  put(columns, compressionRate, 112 + 14 * (dice() - 0.5), known);
  putShare(columns, compressionRateInRange, 0.5 + 0.5 * dice(), 400);
  put(columns, pausesOverLimit, std::floor(3 * dice()), known);
  const double arrived = dice.length(300), on = dice.length(35) * slow, pads = dice.length(28);
  const double analysis = dice.length(16), fire = dice.length(22);
  const bool call = i % 4 != 1, timed = i % 7 != 3;
  put(columns, callToDeviceArrived, arrived, call);
  put(columns, powerOnToElectrodes, pads, timed);
  put(columns, electrodesToFirstAnalysis, analysis);
  put(columns, electrodesToFirstShock, analysis + fire, shock);
  put(columns, powerOnToFirstShock, pads + analysis + fire, shock);
  put(columns, callToFirstShock, arrived + on + pads + analysis + fire, call && shock);
}

} // namespace

Season exampleSeason(std::size_t count) {
  Season season;
  auto columns = std::make_shared<Columns>();
  Dice dice;
  for (std::size_t i = 0; i < count; ++i) {
    season.records.push_back(factsOf(i, count));
    addFigures(i, season.records.back(), dice, *columns);
  }
  season.column = [columns, count](MeasureId id) -> const FigureColumn& {
    FigureColumn& column = (*columns)[id];
    column.resize(count); // a measure that nothing above makes: not recorded
    return column;
  };
  return season;
}

} // namespace afterbeat::test
