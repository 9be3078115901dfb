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
  /// Of the model for this window alone, after the rules for organised rhythms.
  double logOdds = 0;
  /// Mean of those of this and the neighbouring usable windows; what decides.
  double smoothedLogOdds = 0;
  /// What keeps the window from being judged at all; `none`: nothing does.
  RhythmReason obstacle = RhythmReason::none;
  /// What makes a judgement doubtful: needles, or noise for more than a little of it.
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
/// Waves that cross zero more often than this a second are no rhythm of a heart; ours.
inline constexpr double kFastestHz = 12;
/// Log-odds nearer to 0 than this are no decision.
inline constexpr double kUndecided = 0.8;
} // namespace rhythm_limits

/// Whether a window shows beats that are alike and slow: at least three, with a median correlation
/// of at least 0.93 and a median distance of at least 60/130 s. Organised, however wide. Ours, with
/// limits set on the recordings named in tests/outside/rhythm.
[[nodiscard]] bool hasSlowLikeBeats(const WindowMeasures& window);

/// Whether a window shows narrow complexes with rest between them, repeating regularly at less than
/// 230/min, however fast: `sharpness` of at least 30/s, `restlessness` below 0.15, correlations of
/// at least 0.6. Ours, likewise.
[[nodiscard]] bool hasNarrowComplexes(const WindowMeasures& window);

/// Whether a window repeats itself so regularly, and so slowly, that it is organised however wide:
/// the more regular the surer the rate. Correlation r of at least 0.8, and a rate below
/// 180 - 150 (1 - r) per minute. Ours, likewise.
[[nodiscard]] bool isSlowAndRegular(const WindowMeasures& window);

/// Whether nearly all of a window is below the asystole limit: the median second is, and no three
/// clear beats, alike and at most 60/min, stand out of it.
[[nodiscard]] bool isFlat(const WindowMeasures& window);

/// Judges consecutive windows of one run (`where`, `measures`, `obstacle` and `doubt` given; the
/// rest is filled in). Waves that rest for a second, below `kAsystoleMv` and a quarter of the
/// largest second, are not called shockable.
void judgeWindows(std::span<RhythmWindow> windows, const RhythmModel& model);

/// Whether a window repeats itself well enough to state that rate for a shockable or wide rhythm.
[[nodiscard]] bool isRegular(const WindowMeasures& window);

/// The rate of an organised window: that of its repeating slopes if they do, else by the beats'
/// median distance; 0: none.
[[nodiscard]] double organisedRate(const WindowMeasures& window);

} // namespace afterbeat
