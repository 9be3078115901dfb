/// What tells a rhythm that a shock ends from one that it does not: published measures of a window
/// of ECG, none of which depends on the recording's scale or polarity.
#pragma once

#include "core/signal/rhythm/bands.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Length of a window and distance from one to the next.
inline constexpr std::size_t kRhythmWindow = 8 * kRhythmSecond;
inline constexpr std::size_t kRhythmStep = 2 * kRhythmSecond;

/// The features that the model weighs. Bands as in `RhythmBands`; sources by year and page, those
/// marked * from memory.
enum class RhythmFeature : std::uint8_t {
  /// What is left when `wide` and itself half a mean period later are added, as a share of both: 0
  /// for a sine, near 1 for a QRS rhythm. Kuo and Dillman, Computers in Cardiology 1978:347-349 *.
  leakage,
  /// How well the slope's course repeats itself after one beat, if the beat is slow (counts in full
  /// up to 110/min, not from 190/min on): autocorrelation of `slope` at its first large peak.
  slowBeats,
  /// Median correlation of the beats with their median: QRS complexes resemble each other. Beats
  /// are peaks of `slope`. After the template of Krasteva and Jekova, Ann Biomed Eng
  /// 2005;33:1758-1766 *.
  likeBeats,
  /// Share of samples of `qrs` at least half as large as the largest of their second. Count 1 of
  /// Jekova and Krasteva, Physiol Meas 2004;25:1167-1178 *.
  count1,
  /// Logarithm of the smallest to the largest peak-to-peak amplitude of the window's seconds in
  /// `narrow`, at least -1.5.
  evenness,
  /// Share of samples of `narrow` above a fifth of the largest in three seconds under a cosine
  /// window, averaged. Threshold crossing sample count: Arafat, Chowdhury and Hasan, Signal Image
  /// Video Process 2011;5:331-343 *.
  tcsc,
  /// Complexity of `narrow`: its slope's mobility to its own. Hjorth, Electroencephalogr Clin
  /// Neurophysiol 1970;29:306-310 *.
  complexity,
  /// The lowest autocorrelation of `wide` at lags from 0.05 to 0.6 s: waves swing to the other
  /// side, complexes do not. Autocorrelation of fibrillation: Chen, Thakor and Mower, Med Biol Eng
  /// Comput 1987;25:241-249 *.
  swing,
  /// Median to 98th percentile of the size of `wide`'s slope: small where there is rest between
  /// complexes. After the slope's baseline content of Irusta et al., Resuscitation
  /// 2012;83:1358-1363 *.
  restlessness,
  /// Autocorrelation of `narrow` at its first large peak, if slow as for `slowBeats`.
  slowRepeat,
};

inline constexpr std::size_t kRhythmFeatures = 10;

/// A feature's name in the trade's words, English; the window translates it.
[[nodiscard]] std::string_view nameOf(RhythmFeature feature);

/// A repetition found by autocorrelation, at lags from 0.16 to 2.5 s (375 to 24/min).
struct Repetition {
  /// Correlation at the first peak that has at least 0.8 of the largest one's; 0: there is none.
  double correlation = 0;
  /// 60 s over that lag.
  double ratePerMin = 0;
};

/// A window, measured.
struct WindowMeasures {
  std::array<double, kRhythmFeatures> features{};
  /// Peak-to-peak amplitude of `wide` in a second, in mV: median, smallest and largest of the
  /// window's.
  double amplitudeMv = 0, smallestMv = 0, largestMv = 0;
  /// Of `wide`, and of `slope`.
  Repetition repeat, slopeRepeat;
  /// Peaks of `slope` that were taken for beats; their rate by the median distance, 0 for fewer
  /// than two.
  int beats = 0;
  double beatRatePerMin = 0;
  /// 98th percentile of the size of `wide`'s slope to `amplitudeMv`: 1/s. Some pi times the
  /// frequency for waves, three times that and more for narrow QRS complexes.
  double sharpness = 0;
  /// Half the crossings of `wide` through zero, a second.
  double crossingHz = 0;

  [[nodiscard]] double of(RhythmFeature feature) const {
    return features[static_cast<std::size_t>(feature)];
  }
};

/// Measures all windows of a signal at `kRhythmRateHz`, none missing: window k begins at sample k x
/// `kRhythmStep`. None for a signal shorter than a window. Time grows with the signal's length.
[[nodiscard]] std::vector<WindowMeasures> measureWindows(std::span<const double> values);

} // namespace afterbeat
