/// The groups of figures of the reference, and what they share.
#pragma once

#include "tests/core/measures/reference_facts.h"

#include <functional>
#include <optional>
#include <vector>

namespace afterbeat::reference {

[[nodiscard]] double secondsOf(Duration d);
[[nodiscard]] Interval stretch(const Facts& f, int from, int to);
/// Total length of the cells between two points for which `in` holds.
[[nodiscard]] Duration cells(const Facts& f, int from, int to, const std::function<bool(int)>& in);
[[nodiscard]] Duration arrestTime(const Facts& f);
/// Total of the counted gaps.
[[nodiscard]] Duration handsOffTime(const Facts& f);
/// Those of `all` that lie inside an arrest interval.
[[nodiscard]] std::vector<Found> insideArrest(const Facts& f, const std::vector<Found>& all);
/// The latest time of the record's entries, those left out that `skip` names.
[[nodiscard]] std::optional<Time> latest(const Facts& f,
                                         const std::function<bool(const Entry&)>& skip);

/// Whether "no shock" and "no analysis" would have been recorded, had it been otherwise.
[[nodiscard]] bool holdsADefibrillatorsRecording(const Facts& f);

/// Everything the three states of a measure need.
class Sheet {
public:
  explicit Sheet(Figures& figures) : figures_(figures) {
    for (int i = 0; i < static_cast<int>(MeasureId::count_); ++i) {
      Measure m;
      m.id = static_cast<MeasureId>(i);
      figures_.measures.push_back(m);
    }
  }
  void notRecorded(MeasureId id) { at(id).status = Status::notRecorded; }
  void notApplicable(MeasureId id) { at(id).status = Status::notApplicable; }
  void value(MeasureId id, double v) {
    at(id).status = Status::ok;
    at(id).value = v;
  }
  void ratio(MeasureId id, double numerator, double denominator, double factor = 1) {
    value(id, factor * numerator / denominator);
    at(id).numerator = numerator;
    at(id).denominator = denominator;
  }

private:
  Measure& at(MeasureId id) { return figures_.measures[static_cast<std::size_t>(id)]; }
  Figures& figures_;
};

/// What part of the record a rate is asked for.
struct Slice {
  /// Whether an interval with this second compression belongs to it.
  std::function<bool(int)> hasSecond;
  /// Stretches are clipped to this.
  int from, to;
};

struct Rate {
  std::optional<double> rate, inRange;
  double numerator = 0, denominator = 0, inRangeNumerator = 0, inRangeDenominator = 0;
};

/// Rate and share in range of a part of the record, from intervals or from stretches.
[[nodiscard]] Rate rateIn(const Facts& f, const Slice& slice);

void handsOff(const Facts& f, Sheet& sheet);
void pauses(const Facts& f, Figures& figures, Sheet& sheet);
void rates(const Facts& f, Sheet& sheet);
void depths(const Facts& f, Sheet& sheet);
void release(const Facts& f, Sheet& sheet);
void counts(const Facts& f, Sheet& sheet);
void listShocks(const Facts& f, Figures& figures);
void shockPauses(const Figures& figures, Sheet& sheet);
void deviceCounts(const Facts& f, const Figures& figures, Sheet& sheet);
void betweenEvents(const Facts& f, Sheet& sheet);
void circulation(const Facts& f, Figures& figures, Sheet& sheet);
void timeOn(const Facts& f, Sheet& sheet);
void minutes(const Facts& f, Figures& figures);
void cycles(const Facts& f, Figures& figures);

} // namespace afterbeat::reference
