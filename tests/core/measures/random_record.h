/// Random records for the comparison with the reference: dense, full of ties and oddities.
#pragma once

#include "core/measures/figures.h"

#include <rapidcheck.h>

#include <iosfwd>
#include <string>
#include <vector>

namespace afterbeat::reference {

/// One thing that happens: small numbers that RapidCheck can shrink, made into entries later.
struct Item {
  int kind = 0;
  /// Place in the record, thousandths of its span.
  int place = 0;
  /// Index of a deviation from the coarse grid, used in fine records.
  int deviation = 0;
  /// Index of a length or spacing.
  int length = 0, spacing = 0;
  /// Number of compressions or breaths of a run.
  int count = 1;
  /// Source, part, state, category: whatever the kind needs.
  int choice = 0, detail = 0;
  /// 0: a required key is missing, in the way `detail` says.
  int flaw = 1;
};

/// A record as chosen numbers, and what the figures are to be computed with.
struct Scenario {
  std::vector<Item> items;
  /// Milliseconds; all times of a coarse record are multiples of `unitMs`.
  int beginMs = 0, spanMs = 10000, unitMs = 500;
  bool fine = false;
  /// Bit n set: items of kind n are left out.
  int without = 0;
  /// All compressions are of one source and no part.
  bool oneStream = false;
  /// Everything but the compressions was noted by a person or derived.
  bool observerOnly = false;
  int patient = 0, threshold = 0, profile = 0;
  bool recordEnd = false, samples = false;
};

[[nodiscard]] rc::Gen<Scenario> scenarios();

/// The record of a scenario, entries sorted by time, ties as found.
[[nodiscard]] Record recordOf(const Scenario& scenario);
[[nodiscard]] FigureSettings settingsOf(const Scenario& scenario);

/// A line for each entry.
[[nodiscard]] std::string asText(const Record& record, const FigureSettings& settings);

std::ostream& operator<<(std::ostream& out, const Scenario& scenario);

} // namespace afterbeat::reference
