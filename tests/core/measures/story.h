/// Builds a record in the order a test tells it, in seconds.
#pragma once

#include "core/measures/figures.h"

#include <algorithm>
#include <optional>
#include <string>

namespace afterbeat {

/// A record told entry by entry; `figures` sorts it as a reader would.
class Story {
public:
  static Time at(double s) { return *timeFromSeconds(s); }

  Entry& add(double t, EntryData data, std::optional<double> end = std::nullopt) {
    Entry e;
    e.t = at(t);
    if (end) {
      e.end = at(*end);
    }
    e.data = std::move(data);
    record.entries.push_back(std::move(e));
    return record.entries.back();
  }
  Story& compression(double t, std::optional<double> depthMm = std::nullopt) {
    add(t, entry::Compression{depthMm, {}, {}});
    return *this;
  }
  /// `n` compressions from `first` on, `apart` seconds from one to the next.
  Story& compressions(double first, int n, double apart) {
    for (int i = 0; i < n; ++i) {
      compression(first + i * apart);
    }
    return *this;
  }
  Story& cpr(double from, double to, std::optional<double> ratePerMin = std::nullopt) {
    add(from, entry::Cpr{ratePerMin}, to);
    return *this;
  }
  Story& analysis(double from, double to, Advice advice = Advice::noShock) {
    add(from, entry::Analysis{advice}, to);
    return *this;
  }
  Story& shock(double t, std::optional<double> energyJ = std::nullopt) {
    add(t, entry::Shock{true, energyJ, {}, ""});
    return *this;
  }
  Story& ventilation(double t) {
    add(t, entry::Ventilation{});
    return *this;
  }
  Story& returned(double t) {
    add(t, entry::Circulation{CirculationState::returned});
    return *this;
  }
  Story& lost(double t) {
    add(t, entry::Circulation{CirculationState::lost});
    return *this;
  }
  Story& excluded(double from, double to, ExclusionReason why = ExclusionReason::notObserved) {
    add(from, entry::Excluded{why}, to);
    return *this;
  }
  Story& milestone(double t, const std::string& what) {
    add(t, entry::Milestone{what});
    return *this;
  }

  [[nodiscard]] Figures figures(const FigureSettings& settings = {}) const {
    Record sorted = record;
    std::stable_sort(sorted.entries.begin(), sorted.entries.end(),
                     [](const Entry& a, const Entry& b) { return a.t < b.t; });
    return computeFigures(sorted, settings);
  }

  Record record;
};

} // namespace afterbeat
