/// One line of an event log, as understood: what happened, when, according to whom.
#pragma once

#include "core/record/time.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace afterbeat {

/// Who an entry comes from.
enum class Source : std::uint8_t { device, observer, derived };

/// The patient the record, or the device's setting, speaks of.
enum class PatientCategory : std::uint8_t { unknown, adult, child, infant };

/// What a rhythm analysis advised.
enum class Advice : std::uint8_t { shock, noShock, inconclusive };

/// State of the defibrillation electrodes.
enum class ElectrodeState : std::uint8_t { attached, detached, poorContact };

/// A rhythm as judged by a person or hinted by a program.
enum class RhythmKind : std::uint8_t { shockable, organised, asystole, unclear };

/// Spontaneous circulation, as judged on scene.
enum class CirculationState : std::uint8_t { returned, lost };

/// Why a stretch counts in no figure.
enum class ExclusionReason : std::uint8_t { notRescue, notTrusted, notObserved };

/// What keeps the airway open.
enum class AirwayDevice : std::uint8_t { none, mask, supraglottic, tube };

/// The payload of each entry type. Optionals that the format requires are empty only in an
/// incomplete entry. Units are in the names.
namespace entry {
/// A type this program does not know; the whole line is in `Entry::otherKeys`.
struct Other {
  std::string type;
};
struct PowerOn {};
struct PowerOff {};
/// The device clock was set to `wall` (RFC 3339) at this moment.
struct ClockSet {
  std::string wall;
};
struct Electrodes {
  std::optional<ElectrodeState> state;
  std::optional<double> impedanceOhm;
};
struct PatientMode {
  std::optional<PatientCategory> category;
};
/// Stretch: one rhythm analysis by the device.
struct Analysis {
  std::optional<Advice> advice;
};
/// Stretch: the device charges.
struct Charge {
  std::optional<double> energyJ;
};
/// `delivered` false: advised or charged and not given; empty: delivery unknown.
struct Shock {
  std::optional<bool> delivered;
  std::optional<double> energyJ;
  std::optional<double> impedanceOhm;
  std::string reason;
};
/// Stretch: continuous chest compressions where single ones are not recorded.
struct Cpr {
  std::optional<double> ratePerMin;
};
/// One chest compression at its deepest point.
struct Compression {
  std::optional<double> depthMm;
  std::optional<double> leaningMm;
  std::optional<bool> fullRelease;
};
struct Ventilation {
  std::optional<double> volumeMl;
};
struct Airway {
  std::optional<AirwayDevice> device;
};
/// Stretch.
struct Rhythm {
  std::optional<RhythmKind> is;
  std::optional<double> ratePerMin;
  std::string reason;
};
struct Circulation {
  std::optional<CirculationState> state;
};
struct RescuerChange {
  std::string text;
};
struct Medication {
  std::string text;
};
/// A time known from outside the device: `collapse`, `call_received`, ... or a word of its own.
struct Milestone {
  std::string what;
};
/// Stretch that counts in no figure.
struct Excluded {
  std::optional<ExclusionReason> why;
};
struct Prompt {
  std::string text;
  std::string code;
};
struct Battery {
  std::optional<double> percent;
  std::optional<double> bars;
  std::optional<double> barsFull;
};
struct Pads {
  std::string expires;
};
struct SelfTest {
  std::optional<bool> passed;
  std::string detail;
};
struct Fault {
  std::string text;
  std::string code;
};
struct Mark {
  std::string text;
  std::string author;
};
/// A block of samples that could not be used (unknown channel, wrong count, bad base64). Usable
/// blocks are in `Channel`, not among the entries.
struct LostSamples {
  std::string channel;
};
/// A line an earlier salvage could not read.
struct Unreadable {
  std::string base64;
};
} // namespace entry

using EntryData =
    std::variant<entry::Other, entry::PowerOn, entry::PowerOff, entry::ClockSet, entry::Electrodes,
                 entry::PatientMode, entry::Analysis, entry::Charge, entry::Shock, entry::Cpr,
                 entry::Compression, entry::Ventilation, entry::Airway, entry::Rhythm,
                 entry::Circulation, entry::RescuerChange, entry::Medication, entry::Milestone,
                 entry::Excluded, entry::Prompt, entry::Battery, entry::Pads, entry::SelfTest,
                 entry::Fault, entry::Mark, entry::LostSamples, entry::Unreadable>;

/// One entry of a record.
struct Entry {
  /// When it happened, or when the stretch began. Meaningless where `hasTime` is false.
  Time t{};
  /// Where the stretch ended; for a moment, empty. A stretch that was never closed carries the
  /// last time in the file here and `neverClosed`.
  std::optional<Time> end;
  EntryData data;
  /// The index of `part` in `Header::parts`; -1: none named.
  int part = -1;
  /// The line it was read from, counted from 1; 0 for an entry made in memory.
  int line = 0;
  Source source = Source::device;
  bool hasTime = true;
  /// A required key is missing or unusable: kept and shown, in no figure.
  bool incomplete = false;
  /// Written with `open: true` and never closed.
  bool neverClosed = false;
  /// How far the writer trusts it, 0 to 1.
  std::optional<double> quality;
  std::string note;
  /// Keys this program does not know, or whose value it could not use, as they stood in the line:
  /// `"key":value` joined by commas, no braces. Empty for most entries.
  std::string otherKeys;

  /// The payload if it is of this type, and the entry is complete; otherwise null.
  template <typename T>
  [[nodiscard]] const T* complete() const {
    return incomplete ? nullptr : std::get_if<T>(&data);
  }
  /// End of a stretch, the moment itself otherwise.
  [[nodiscard]] Time lastTime() const { return end ? *end : t; }
};

/// The format's word for the entry's type, e.g. "power_on".
[[nodiscard]] std::string_view typeName(const EntryData& data);

/// Whether entries of this type are stretches with an end.
[[nodiscard]] bool isStretch(const EntryData& data);

} // namespace afterbeat
