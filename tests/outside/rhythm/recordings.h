/// Windows of the public recordings with the rhythm that their labels name.
///
/// MIT-BIH Malignant Ventricular Arrhythmia Database (vfdb; Greenwald 1986, doi:10.13026/C22P44),
/// Creighton University Ventricular Tachyarrhythmia Database (cudb; Nolle et al., Computers in
/// Cardiology 1986;13:515-518) and record 100 of the MIT-BIH Arrhythmia Database (mitdb; Moody and
/// Mark, IEEE Eng Med Biol Mag 2001;20(3):45-50), by way of PhysioNet (Goldberger et al.,
/// Circulation 2000;101(23):e215-e220).
#pragma once

#include "core/signal/rhythm/judge.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace afterbeat {

/// What a window is scored as.
enum class RhythmClass : std::uint8_t {
  /// Labelled fibrillation or flutter, at least 0.2 mV.
  fibrillation,
  /// The same, below 0.2 mV.
  fineFibrillation,
  /// Labelled ventricular tachycardia, measured at 180/min or more, or slower.
  fastTachycardia,
  slowTachycardia,
  /// Labelled N or NSR.
  normal,
  /// Every other rhythm that is not shocked.
  otherOrganised,
  noise,
  asystole,
  /// cudb before the first fibrillation, where every beat is marked and the rate is below 150/min.
  beatsMarked,
  /// Two labels, or none.
  unscored,
};

/// One window of 8 s of one signal of a recording.
struct LabelledWindow {
  double beginS = 0;
  std::string label;
  RhythmClass scored = RhythmClass::unscored;
  /// In a stretch whose label is disputed.
  bool disputed = false;
  RhythmWindow window;
};

/// One signal of a recording.
struct LabelledSignal {
  std::string database, record;
  int signal = 0;
  std::vector<LabelledWindow> windows;

  /// Records 418 and 419 of vfdb, whose labels are disputed throughout.
  [[nodiscard]] bool doubtful() const { return record == "418" || record == "419"; }
};

/// All signals below `ecg`, in the order of their names. Reads and measures; judges nothing.
[[nodiscard]] std::vector<LabelledSignal> labelledSignals(const std::filesystem::path& ecg);

} // namespace afterbeat
