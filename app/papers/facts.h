/// Facts of a record in the reader's words, shared by everything that writes sentences about one.
#pragma once

#include "app/papers/words.h"
#include "core/measures/figures.h"

#include <QString>

#include <optional>

namespace afterbeat::papers {

/// The moment of the first entry of a type, complete ones only.
template <typename T>
[[nodiscard]] std::optional<Time> firstOf(const Record& record) {
  for (const Entry& entry : record.entries) {
    if (entry.hasTime && entry.complete<T>() != nullptr) {
      return entry.t;
    }
  }
  return std::nullopt;
}
/// The first milestone of this name.
[[nodiscard]] std::optional<Time> firstMilestone(const Record& record, const char* what);
/// The first time the electrodes were attached.
[[nodiscard]] std::optional<Time> firstElectrodes(const Record& record);

/// "09:19:57" where the record's clock can be trusted, else "3 min 5 s after power-on" (or "after
/// the record begins").
[[nodiscard]] QString momentWords(const Record& record, Time t, const Words& say);
/// "3 min 5 s after power-on", whatever the clock says.
[[nodiscard]] QString sinceStartWords(const Record& record, Time t, const Words& say);

/// From one printed moment to another: the difference of what `momentWords` prints, so that a line
/// adds up for whoever checks it (clock times are cut to the second, other lengths rounded).
[[nodiscard]] Duration printedBetween(const Record& record, Time from, Time to);
/// The last switching off, unless the device was switched on again after it.
[[nodiscard]] std::optional<Time> lastPowerOff(const Record& record);

/// How long the device was on, as cards and sheet print it.
struct TimeOnWords {
  /// "4 min 17 s", from ten minutes on "22 min"; empty: not known.
  QString length;
  /// The end was not recorded: it was on at least this long.
  bool atLeast = false;
};
[[nodiscard]] TimeOnWords timeOnWords(const Record& record, const Figures& figures,
                                      const Words& say);
/// The recording broke off, or lines of it were lost: what was counted may be more.
[[nodiscard]] bool isPartial(const Record& record);

/// Why hands were off: "around shock 2", "for an analysis".
[[nodiscard]] QString causeWords(const Pause& pause, const Figures& figures, const Words& say);
/// The longest pause, the first of equals; nothing without one.
[[nodiscard]] const Pause* longestPause(const Figures& figures);

[[nodiscard]] const ShockFigures* firstDelivered(const Figures& figures);
[[nodiscard]] const ShockFigures* lastDelivered(const Figures& figures);

/// What the record can say about the number of shocks.
struct ShockCount {
  /// Empty: not recorded. Zero only where the record covers the whole time the device was on.
  std::optional<int> given;
  /// Shocks whose delivery is not recorded, and shocks advised or charged and not given.
  int unknown = 0, withheld = 0;
  /// The recording broke off: there may be more.
  bool mayBeMore = false;
  /// Lines of the recording were lost: there may be more.
  bool linesLost = false;
  /// Something shows that a defibrillator was recorded.
  bool deviceRecorded = false;
};
/// A figure held against a target.
enum class Verdict : std::uint8_t {
  none, ///< nothing to judge: no value, or a target that is not a limit for this figure
  within,
  below, ///< less than a range asks for
  above, ///< more than a limit or a range allows
};

[[nodiscard]] Verdict verdictIn(const std::optional<double>& value, const Range& range);
/// The compression rate against the profile's range; none where either is missing.
[[nodiscard]] Verdict rateVerdict(const Figures& figures);

/// How many lines of the recording could not be read, now or by an earlier salvage.
[[nodiscard]] int lostLines(const Record& record);

[[nodiscard]] ShockCount countShocks(const Record& record, const Figures& figures);

/// The last moment in a device's recording that broke off: neither closed nor switched off.
[[nodiscard]] std::optional<Time> brokeOffAt(const Record& record, const Figures& figures);

/// The recording reaches from switching on to switching off, or to a proper end.
[[nodiscard]] bool coversDeviceOn(const Record& record);

/// "European guidelines 2021 (from memory, check the source)"; the mark only where not read.
[[nodiscard]] QString sourceWords(const Profile& profile, const Citation& source, const Words& say);
/// "Meaney et al., Circulation 2013 (read in a secondary publication)": where one target comes
/// from, which need not be where its profile comes from. The profile's name for a source without
/// words.
[[nodiscard]] QString citationWords(const Profile& profile, const Citation& source,
                                    const Words& say);
/// Targets that come from the care of adults (the share of hands off, the wait for the first
/// compression) hold: not for a child, whose rescue begins with breaths and gives more of them.
[[nodiscard]] bool adultTargetsHold(const Record& record);
/// "read in a secondary publication", in the reader's language.
[[nodiscard]] QString markText(SourceMark mark, const Words& say);
/// A profile's name in the reader's language where it is one of the program's own.
[[nodiscard]] QString profileText(const Profile& profile, const Words& say);
/// "adult", "child", "infant"; empty for unknown.
[[nodiscard]] QString categoryText(PatientCategory category, const Words& say);

/// "not recorded".
[[nodiscard]] QString notRecordedText(const Words& say);

} // namespace afterbeat::papers
