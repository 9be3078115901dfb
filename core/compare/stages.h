/// Where the time goes: from the call, or from power-on, to the first shock.
#pragma once

#include "core/compare/kinds.h"

#include <array>

namespace afterbeat {

/// The moments between which stages lie, in their usual order.
enum class StageMoment : std::uint8_t {
  call,
  deviceArrived,
  powerOn,
  electrodes,
  firstAnalysis,
  firstShock,
};
inline constexpr std::size_t kStageMoments = 6;

enum class StagesFrom : std::uint8_t { call, powerOn };

/// Few words: "device arrived".
[[nodiscard]] std::string_view name(StageMoment moment);

/// Seconds from the beginning to each moment; empty: the record does not give it.
using MomentTimes = std::array<std::optional<double>, kStageMoments>;

/// From one known moment to the next known one. Where moments between them are missing it holds
/// several stages that nothing divides.
struct Stage {
  StageMoment from = StageMoment::call, to = StageMoment::firstShock;
  double seconds = 0;
  /// Moments between that are not recorded.
  [[nodiscard]] bool divided() const { return static_cast<int>(to) == static_cast<int>(from) + 1; }
};

/// One record's stages. A moment may come before the one it usually follows: its stage is then
/// negative, and drawn as that.
struct RecordStages {
  std::uint32_t place = 0;
  MomentTimes times;
  std::vector<Stage> stages;
  /// Beginning to first shock, where both are known.
  std::optional<double> total;
};

/// One stage over many records.
struct MedianStage {
  StageMoment from = StageMoment::call, to = StageMoment::firstShock;
  /// Seconds of the records that have both its ends.
  std::optional<double> median, low, high;
  std::size_t records = 0;
  /// Of all the time to the first shock, over the records of `Stages::shareRecords`, the part
  /// between these ends. A stage that is short in most records and very long in a few takes a large
  /// part and has a short median. Empty: fewer than five such records.
  std::optional<double> share;
};

struct Stages {
  StagesFrom from = StagesFrom::powerOn;
  StatedKind kind;
  /// Of the chosen records in their order, those with any moment after the beginning.
  std::vector<RecordStages> records;
  /// Neighbouring moments. Medians of stages do not add up to the median of the whole: each stands
  /// on the records that have it.
  std::vector<MedianStage> median;
  MedianStage total;
  /// Those that have the whole, and no negative stage in it: parts would pass 1.
  std::size_t shareRecords = 0;
  /// The part that is in no stage's share, as moments that would divide it are not recorded.
  std::optional<double> undividedShare;
  /// Records that give no moment after the beginning, or no beginning.
  std::size_t leftOpen = 0;
};

/// Refused where the chosen records are of several kinds.
[[nodiscard]] tl::expected<Stages, SeasonRefusal> stages(const Season& season, const Chosen& chosen,
                                                         StagesFrom from);

/// The moments of one record from its measures, where they give them: a moment is found through
/// any chain of measured times that leads to it.
[[nodiscard]] MomentTimes momentTimes(const Season& season, std::uint32_t place, StagesFrom from);

/// Sentences for under the picture: where most time goes, all records added up and in the middle
/// one, then what it shows.
[[nodiscard]] std::vector<Saying> words(const Stages& stages);

} // namespace afterbeat
