/// Heartbeats (QRS complexes) in an ECG, and the heart rate they make.
#pragma once

#include "core/measures/interval.h"
#include "core/signal/signal_view.h"

#include <optional>
#include <span>
#include <vector>

namespace afterbeat {

/// One QRS complex.
struct Beat {
  /// Its largest deflection between 8 and 20 Hz.
  Time at{};
  /// Root mean square of the ECG between 8 and 20 Hz over the 97 ms around it, in mV.
  double strengthMv = 0;
};

/// The beats of a run of ECG in mV, in time order, whatever their polarity. Rates from 50 Hz; none
/// are found at a lower one. None are found inside missing samples. Whether what stands there is a
/// heart's beat at all is not asked: in fibrillation, noise and compressions it finds "beats" too.
///
/// Where: two moving averages of the squared signal between 8 and 20 Hz, of one complex (97 ms) and
/// of one beat (611 ms), after Elgendi, PLoS ONE 2013;8:e73557 (from memory). Which: a threshold
/// that follows the amplitude, no T wave and no second beat within 200 ms, and a second look at
/// half the threshold into gaps longer than 1.66 beats, after Pan and Tompkins, IEEE Trans Biomed
/// Eng 1985;32:230-236 (from memory); the threshold looks at both sides and is ours.
[[nodiscard]] std::vector<Beat> findBeats(const SignalView& ecg);

/// Beats a minute: 60 s over the median time between neighbouring beats of `where`, its edges
/// included. Nothing for fewer than three beats, or where no neighbours are less than 3 s apart.
[[nodiscard]] std::optional<double> heartRate(std::span<const Beat> beats, const Interval& where);

} // namespace afterbeat
