/// Rescues and drills never meet in one figure: whoever makes one asks for records of one kind.
#pragma once

#include "core/compare/saying.h"
#include "core/compare/season.h"

#include <tl/expected.hpp>

namespace afterbeat {

/// A record's kind; empty where the record does not say, which is a kind of its own.
using StatedKind = std::optional<RecordKind>;

struct KindCount {
  StatedKind kind;
  std::size_t records = 0;
  friend bool operator==(const KindCount&, const KindCount&) = default;
};

/// Kinds among the chosen records, rescues first, those that do not say last; none with 0. Records
/// without figures (`hasFigures`) are left out here and in `ofKind`, so that they are in no figure;
/// `withoutFigures` counts them.
[[nodiscard]] std::vector<KindCount> kindsOf(const Season& season, const Chosen& chosen);

/// The chosen records of one kind, in their order.
[[nodiscard]] Chosen ofKind(const Season& season, const Chosen& chosen, StatedKind kind);

/// How many of the chosen have no figures under the settings in use.
[[nodiscard]] std::size_t withoutFigures(const Season& season, const Chosen& chosen);

/// Why a figure of many records was not made.
struct SeasonRefusal {
  enum class Why : std::uint8_t {
    /// `kinds` says which.
    mixedKinds,
    /// The measure is no share, or the archive does not hold what its shares were made of.
    noCounts,
  };
  Why why = Why::mixedKinds;
  std::vector<KindCount> kinds;
};

[[nodiscard]] Saying words(const SeasonRefusal& refusal);

/// The one kind of all chosen records; refused where there are several. Nothing chosen: no kind
/// stated.
[[nodiscard]] tl::expected<StatedKind, SeasonRefusal> oneKind(const Season& season,
                                                              const Chosen& chosen);

/// How many of the chosen records have no value, and why. Never dropped silently: every figure of
/// many carries this.
struct Missing {
  std::size_t notRecorded = 0, notApplicable = 0;
  [[nodiscard]] std::size_t all() const { return notRecorded + notApplicable; }
  void add(Status status);
  friend bool operator==(const Missing&, const Missing&) = default;
};

/// With fewer values there are points and no summary.
inline constexpr std::size_t kLeastForSummary = 5;

} // namespace afterbeat
