/// Counts what the hints say about labelled windows.
#pragma once

#include "recordings.h"

#include <optional>
#include <string>
#include <vector>

namespace afterbeat {

/// What the model that judges a window has not seen.
enum class HeldOut : std::uint8_t { record, database };

/// Judges every window by a model fitted without its record, or its whole database.
void crossValidate(std::vector<LabelledSignal>& signals, HeldOut heldOut = HeldOut::record);

/// Which windows are counted.
struct Selection {
  /// Empty: all.
  std::string database{};
  bool withDoubtful = false;
  bool withDisputed = true;
  /// Only the first signal of each recording: leads of one heart are not independent.
  bool firstSignalOnly = true;
};

/// What was said about the windows of one class.
struct Score {
  int shockable = 0, organised = 0, asystole = 0, unclear = 0;
  int records = 0;

  [[nodiscard]] int all() const { return shockable + organised + asystole + unclear; }
  [[nodiscard]] int decided() const { return all() - unclear; }
  void add(const Score& other);
};

/// Whether windows of this class ought to be called shockable.
[[nodiscard]] bool oughtToBeShockable(RhythmClass scored);

/// The score of a class.
[[nodiscard]] Score scoreOf(const std::vector<LabelledSignal>& signals, RhythmClass scored,
                            const Selection& selection);

/// Percent of the decided windows, or of all of them, that are called right; nothing for none.
[[nodiscard]] std::optional<double> percentOfDecided(const Score& score, bool shockable);
[[nodiscard]] std::optional<double> percentOfAll(const Score& score, bool shockable);
[[nodiscard]] double percentUnclear(const Score& score);

/// The 5th and the 95th percentile of `percentOfDecided` when records are drawn with replacement,
/// 2000 times.
struct Limits {
  double low = 0, high = 0;
};
[[nodiscard]] std::optional<Limits> limitsOf(const std::vector<LabelledSignal>& signals,
                                             RhythmClass scored, const Selection& selection);

/// Windows below the asystole limit, whatever their label, that can be judged.
[[nodiscard]] Score scoreOfFlat(const std::vector<LabelledSignal>& signals);

} // namespace afterbeat
