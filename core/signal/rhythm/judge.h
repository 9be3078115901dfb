/// From a window's measures to a rhythm, and the reason where there is none.
#pragma once

#include "core/measures/interval.h"
#include "core/record/entry.h"
#include "core/signal/rhythm/model.h"

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Why a stretch is `unclear`.
enum class RhythmReason : std::uint8_t {
  none,
  compressions,
  /// Missing samples, electrodes off or in poor contact.
  electrodes,
  saturation,
  noise,
  pacingSpikes,
  tooShort,
  betweenFibrillationAndAsystole,
  /// The features speak for neither.
  undecided,
  /// Fewer samples a second than `kLowestRhythmRateHz`.
  samplingRate,
};

/// The words of an entry's `reason`, e.g. "chest compressions"; empty for `none`.
[[nodiscard]] std::string_view wordsOf(RhythmReason reason);

/// A window with its working.
struct RhythmWindow {
  Interval where;
  WindowMeasures measures;
  /// Of the model for this window alone, after the rule for slow regular rhythms.
  double logOdds = 0;
  /// Mean of those of this and the neighbouring usable windows; what decides.
  double smoothedLogOdds = 0;
  /// What keeps the window from being judged at all; `none`: nothing does.
  RhythmReason obstacle = RhythmReason::none;
  /// What forbids to call it shockable, and only that: needles or noise.
  RhythmReason doubt = RhythmReason::none;
  /// It looks like a tachycardia or flutter but repeats itself at less than 180/min.
  bool wideAndFast = false;

  RhythmKind is = RhythmKind::unclear;
  RhythmReason reason = RhythmReason::undecided;
};

/// Limits of the judgement.
namespace rhythm_limits {
/// Median peak-to-peak amplitude of a second, between 1 and 30 Hz: below it is asystole, whatever
/// its shape. 0.12 mV: after the limit of fine fibrillation (0.08 to 0.2 mV) in use; common
/// practice, no source.
inline constexpr double kAsystoleMv = 0.12;
/// From it on fibrillation is coarse: Kerber et al., Circulation 1997;95:1677-1682.
inline constexpr double kCoarseMv = 0.2;
/// The rate from which a ventricular tachycardia is shockable; common practice, no source.
inline constexpr double kShockableRatePerMin = 180;
/// Log-odds nearer to 0 than this are no decision.
inline constexpr double kUndecided = 0.8;
} // namespace rhythm_limits

/// Whether a window repeats itself so regularly, and so slowly, that it is organised however wide:
/// the more regular the surer the rate. Correlation r of at least 0.8, and a rate below
/// 180 - 150 (1 - r) per minute. Ours.
[[nodiscard]] bool isSlowAndRegular(const WindowMeasures& window);

/// Judges consecutive windows of one run (`where`, `measures`, `obstacle` and `doubt` given; the
/// rest is filled in).
void judgeWindows(std::span<RhythmWindow> windows, const RhythmModel& model);

/// The rate of an organised window: that of its repeating slopes if they do, else by the beats'
/// median distance; 0: none.
[[nodiscard]] double organisedRate(const WindowMeasures& window);

} // namespace afterbeat
