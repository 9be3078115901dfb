/// The working of every figure adds up to the figure, on random records.
#include "tests/core/measures/random_record.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace afterbeat {
namespace {

using reference::recordOf;
using reference::Scenario;
using reference::settingsOf;

bool close(double a, double b) {
  return std::abs(a - b) <= 1e-6 * (1 + std::abs(b));
}

/// Sums over a measure's working.
struct Sum {
  double length = 0, n = 0;
  int parts = 0;
};

Sum sumOf(const Measure& m, WorkingKind kind) {
  Sum sum;
  for (const WorkingPart& part : m.working) {
    if (part.kind == kind) {
      sum.length += seconds(part.to - part.from);
      sum.n += part.n.value_or(0);
      ++sum.parts;
    }
  }
  return sum;
}

void expectClose(double got, double expected, const std::string& what) {
  if (!close(got, expected)) {
    RC_FAIL(what + ": the working makes " + std::to_string(got) + ", the figure is " +
            std::to_string(expected));
  }
}

void expectClose(double got, const Measure& m) {
  if (m.value) {
    expectClose(got, *m.value, std::string(measureInfo(m.id).name));
  }
}

RC_GTEST_PROP(Working, addsUpToTimes, ()) {
  const Scenario scenario = *reference::scenarios();
  const Figures f = computeFigures(recordOf(scenario), settingsOf(scenario));
  using Id = MeasureId;
  using Kind = WorkingKind;
  const auto length = [&](Id id, Kind kind) { return sumOf(f[id], kind).length; };
  expectClose(length(Id::arrestTime, Kind::arrestInterval), f[Id::arrestTime]);
  expectClose(length(Id::handsOffTime, Kind::pause), f[Id::handsOffTime]);
  expectClose(length(Id::adjustedHandsOffTime, Kind::pause) -
                  length(Id::adjustedHandsOffTime, Kind::pauseForAnalysis),
              f[Id::adjustedHandsOffTime]);
  expectClose(length(Id::longestPause, Kind::pause), f[Id::longestPause]);
  expectClose(length(Id::circulationTime, Kind::circulation), f[Id::circulationTime]);
  expectClose(length(Id::longestCirculation, Kind::circulation), f[Id::longestCirculation]);
  expectClose(length(Id::timeOn, Kind::onPeriod), f[Id::timeOn]);
  for (const Id id : {Id::handsOffFraction, Id::chestCompressionFraction}) {
    if (f[id].value) {
      expectClose(length(id, Kind::pause), *f[Id::handsOffTime].value, "pauses of a fraction");
    }
  }
  for (int i = static_cast<int>(Id::powerOnToFirstShock);
       i <= static_cast<int>(Id::collapseToCirculationReturned); ++i) {
    const Measure& m = f[static_cast<Id>(i)];
    if (m.value) {
      expectClose(length(m.id, Kind::fromTo), std::abs(*m.value),
                  std::string(measureInfo(m.id).name));
    }
  }
}

RC_GTEST_PROP(Working, addsUpToCounts, ()) {
  const Scenario scenario = *reference::scenarios();
  const Figures f = computeFigures(recordOf(scenario), settingsOf(scenario));
  using Id = MeasureId;
  using Kind = WorkingKind;
  const auto parts = [&](Id id, Kind kind) { return sumOf(f[id], kind).parts; };
  expectClose(sumOf(f[Id::compressions], Kind::compressionRun).n, f[Id::compressions]);
  expectClose(parts(Id::ventilations, Kind::ventilation), f[Id::ventilations]);
  expectClose(parts(Id::pausesOverLimit, Kind::pause), f[Id::pausesOverLimit]);
  expectClose(parts(Id::shocksDelivered, Kind::shock), f[Id::shocksDelivered]);
  expectClose(parts(Id::shocksWithheld, Kind::shockWithheld), f[Id::shocksWithheld]);
  expectClose(parts(Id::shocksUnknown, Kind::shockUnknown), f[Id::shocksUnknown]);
  expectClose(parts(Id::analyses, Kind::analysis), f[Id::analyses]);
  expectClose(parts(Id::analysesAdvisingShock, Kind::analysis), f[Id::analysesAdvisingShock]);
  for (const Measure& m : f.measures) {
    int number = 0;
    for (const WorkingPart& part : m.working) {
      RC_ASSERT(part.from <= part.to);
      if (part.kind == Kind::shock) {
        RC_ASSERT(part.n == ++number);
      }
    }
  }
}

RC_GTEST_PROP(Working, addsUpToRates, ()) {
  const Scenario scenario = *reference::scenarios();
  const Figures f = computeFigures(recordOf(scenario), settingsOf(scenario));
  using Id = MeasureId;
  using Kind = WorkingKind;
  const Measure &rate = f[Id::compressionRate], &inRange = f[Id::compressionRateInRange];
  const Sum runs = sumOf(rate, Kind::compressionRun), good = sumOf(inRange, Kind::compressionRun);
  if (rate.value && f.evidence == Evidence::segments) {
    expectClose(sumOf(rate, Kind::cprStretch).length, *rate.denominator, "rated stretches");
  } else if (rate.value) {
    // A run of n compressions has n - 1 intervals.
    expectClose(runs.n - runs.parts, *rate.numerator, "intervals");
    expectClose(runs.length, *rate.denominator, "length of the intervals");
    for (const WorkingPart& part : rate.working) {
      RC_ASSERT((*part.n > 1 || part.from == part.to));
    }
  }
  if (inRange.value && f.evidence != Evidence::segments) {
    expectClose(good.n - good.parts, *inRange.numerator, "intervals in range");
  }
  // Every kept compression between a run's ends is one of the run.
  for (const Measure* m : {&f[Id::compressions], &rate, &inRange, &f[Id::compressionDepth],
                           &f[Id::compressionDepthInRange], &f[Id::fullRelease]}) {
    for (const WorkingPart& part : m->working) {
      const auto between = std::count_if(f.compressions.begin(), f.compressions.end(), [&](Time t) {
        return part.kind == Kind::compressionRun && part.from <= t && t <= part.to;
      });
      RC_ASSERT((part.kind != Kind::compressionRun || static_cast<double>(between) == part.n));
    }
  }
  const auto counted = [&](Id id) { return sumOf(f[id], Kind::compressionRun).n; };
  if (f[Id::compressionDepth].value) {
    expectClose(counted(Id::compressionDepth), *f[Id::compressionDepth].denominator, "depths");
  }
  for (const Id id : {Id::compressionDepthInRange, Id::fullRelease}) {
    if (f[id].value) {
      expectClose(counted(id), *f[id].numerator, std::string(measureInfo(id).name));
    }
  }
}

RC_GTEST_PROP(Working, showsThePausesAroundShocks, ()) {
  const Scenario scenario = *reference::scenarios();
  const Figures f = computeFigures(recordOf(scenario), settingsOf(scenario));
  struct Row {
    MeasureId median, worst;
    WorkingKind kind;
    std::optional<Duration> ShockFigures::*length;
  };
  const Row rows[] = {{MeasureId::preShockPauseMedian, MeasureId::preShockPauseWorst,
                       WorkingKind::preShockPause, &ShockFigures::pre},
                      {MeasureId::postShockPauseMedian, MeasureId::postShockPauseWorst,
                       WorkingKind::postShockPause, &ShockFigures::post},
                      {MeasureId::periShockPauseMedian, MeasureId::periShockPauseWorst,
                       WorkingKind::periShockPause, &ShockFigures::peri},
                      {MeasureId::adviceToShockMedian, MeasureId::adviceToShockWorst,
                       WorkingKind::adviceToShock, &ShockFigures::adviceToShock}};
  for (const Row& row : rows) {
    expectClose(sumOf(f[row.worst], row.kind).length, f[row.worst]);
    RC_ASSERT((!f[row.worst].value || sumOf(f[row.worst], row.kind).parts == 1));
    for (const WorkingPart& part : f[row.median].working) {
      const auto shock = std::find_if(f.shocks.begin(), f.shocks.end(), [&](const ShockFigures& s) {
        return s.number == static_cast<int>(part.n.value_or(0));
      });
      RC_ASSERT(shock != f.shocks.end());
      RC_ASSERT(part.from <= shock->t);
      RC_ASSERT(part.to >= shock->t);
      RC_ASSERT(part.to - part.from == ((*shock).*row.length).value_or(Duration{-1}));
      // A pause after a shock begins there; one before it, and the wait for it, end there.
      const bool after = row.kind == WorkingKind::postShockPause;
      const bool around = row.kind == WorkingKind::periShockPause;
      const bool meets = around || (after ? part.from : part.to) == shock->t;
      RC_ASSERT(meets);
    }
  }
}

RC_GTEST_PROP(Working, coverageIsAPartOfTheWhole, ()) {
  const Scenario scenario = *reference::scenarios();
  const Figures f = computeFigures(recordOf(scenario), settingsOf(scenario));
  for (const Coverage& c : f.coverage) {
    RC_ASSERT(c.used >= 0);
    RC_ASSERT(c.used <= c.of);
    if (c.id == MeasureId::compressionRate) {
      RC_ASSERT(f.evidence == Evidence::segments);
      continue;
    }
    expectClose(c.of, f[MeasureId::compressions].value.value_or(0), "compressions covered");
    if (f[c.id].denominator) {
      expectClose(c.used, *f[c.id].denominator, "compressions used");
    }
  }
}

} // namespace
} // namespace afterbeat
