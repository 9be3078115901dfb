/// From a record's waveforms to derived entries: what the signals say, as far as they can be
/// trusted.
#pragma once

#include "core/record/record.h"
#include "core/signal/ecg/shock_rhythm.h"
#include "core/signal/findings.h"
#include "core/signal/rhythm/hints.h"

#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Kinds of entries that can be derived.
struct DeriveWhat {
  bool compressions = false;
  bool ventilations = false;
  bool rhythm = false;

  [[nodiscard]] bool any() const { return compressions || ventilations || rhythm; }
  [[nodiscard]] static DeriveWhat all() { return {true, true, true}; }
  friend bool operator==(const DeriveWhat&, const DeriveWhat&) = default;
};

/// Whether derived entries are used.
enum class DeriveMode : std::uint8_t {
  /// A kind is derived where the record holds none of it, neither from a device nor derived before;
  /// for compressions, `cpr` stretches from a device count as well.
  automatic,
  never,
  /// Every kind is derived; of compressions those of a device still count first where both are.
  always,
};

/// "auto", "never", "always".
[[nodiscard]] std::string_view name(DeriveMode mode);
/// `automatic` for any other word.
[[nodiscard]] DeriveMode deriveModeFrom(std::string_view word);

/// Of these kinds those that a channel of the record might tell.
[[nodiscard]] DeriveWhat whatSignalsMightTell(const Record& record, DeriveWhat what);

/// The kinds to derive from this record.
[[nodiscard]] DeriveWhat whatToDerive(const Record& record, DeriveMode mode);

/// How much of a record a derived kind rests on.
struct SignalCoverage {
  /// Names of the channels, the one trusted most first.
  std::vector<std::string> channels;
  /// From the first sample of these channels to the last, and how much of it could be judged.
  Duration length{}, judged{};

  /// 0 to 1; 0 without a length.
  [[nodiscard]] double share() const {
    return length.count() > 0
               ? static_cast<double>(judged.count()) / static_cast<double>(length.count())
               : 0;
  }
};

/// What the signals of a record say.
struct Derived {
  /// What was asked for.
  DeriveWhat what;
  /// `compression`, `ventilation`, `rhythm` and `excluded` (not observed) entries, source derived,
  /// in time order.
  std::vector<Entry> entries;
  /// Per kind; empty: not asked for, or no channel that could tell it.
  std::optional<SignalCoverage> compressions, ventilations, rhythm;
  /// The ECG channel the hints were read from, by index.
  std::optional<std::size_t> ecg;
  /// What is wrong with it.
  std::vector<FaultyStretch> ecgFaults;
  /// The working of the hints.
  std::vector<RhythmWindow> windows;
  /// What the ECG says around every delivered shock, in time order.
  std::vector<ShockRhythm> shocks;

  [[nodiscard]] bool empty() const { return entries.empty(); }
};

/// Derives. Compressions come from depth, acceleration, force or impedance, the better evidence
/// first; stretches between the first and the last sign of the rescue that no channel could judge
/// become `excluded: not_observed`, never hands off. Hints take the compressions of the record, or
/// those just derived. Needs the samples.
[[nodiscard]] Derived derive(const Record& record, const DeriveWhat& what);

/// Puts derived entries into the record, in place of those of the same kinds that were derived
/// before.
void addDerived(Record& record, const Derived& derived);

/// The same record as a log of its own: derived entries added, a new id made from the old one and
/// `what`, and where it comes from (`sha256` of the file it was read from, and the number of its
/// errors).
void makeDerivedLog(Record& record, const Derived& derived, const std::string& sha256,
                    std::size_t errors);

} // namespace afterbeat
