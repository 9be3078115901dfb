/// The table of entry types: their keys, the words their values may be, and what is required. The
/// reader and the writer both walk it, so that they cannot disagree.
#pragma once

#include "core/record/entry.h"
#include "core/record/record.h"

#include <array>
#include <limits>
#include <string>
#include <string_view>
#include <utility>

namespace afterbeat {

/// Whether an entry without the key is incomplete.
enum class Need : bool { optional, required };

/// What a number may be, limits included.
struct Range {
  double least = 0;
  /// No amount in a rescue comes near; sums of such values would be no numbers.
  double most = 1e9;
};

/// The words an enumeration is written in.
template <typename E>
struct Words;

template <typename E>
using WordList = std::pair<std::string_view, E>;

template <>
struct Words<Source> {
  static constexpr std::array<WordList<Source>, 3> list = {
      {{"device", Source::device}, {"observer", Source::observer}, {"derived", Source::derived}}};
};
template <>
struct Words<PatientCategory> {
  static constexpr std::array<WordList<PatientCategory>, 4> list = {
      {{"adult", PatientCategory::adult},
       {"child", PatientCategory::child},
       {"infant", PatientCategory::infant},
       {"unknown", PatientCategory::unknown}}};
};
template <>
struct Words<Advice> {
  static constexpr std::array<WordList<Advice>, 3> list = {
      {{"shock", Advice::shock},
       {"no_shock", Advice::noShock},
       {"inconclusive", Advice::inconclusive}}};
};
template <>
struct Words<ElectrodeState> {
  static constexpr std::array<WordList<ElectrodeState>, 3> list = {
      {{"attached", ElectrodeState::attached},
       {"detached", ElectrodeState::detached},
       {"poor_contact", ElectrodeState::poorContact}}};
};
template <>
struct Words<RhythmKind> {
  static constexpr std::array<WordList<RhythmKind>, 4> list = {
      {{"shockable", RhythmKind::shockable},
       {"organised", RhythmKind::organised},
       {"asystole", RhythmKind::asystole},
       {"unclear", RhythmKind::unclear}}};
};
template <>
struct Words<CirculationState> {
  static constexpr std::array<WordList<CirculationState>, 2> list = {
      {{"returned", CirculationState::returned}, {"lost", CirculationState::lost}}};
};
template <>
struct Words<ExclusionReason> {
  static constexpr std::array<WordList<ExclusionReason>, 3> list = {
      {{"not_rescue", ExclusionReason::notRescue},
       {"not_trusted", ExclusionReason::notTrusted},
       {"not_observed", ExclusionReason::notObserved}}};
};
template <>
struct Words<AirwayDevice> {
  static constexpr std::array<WordList<AirwayDevice>, 4> list = {
      {{"none", AirwayDevice::none},
       {"mask", AirwayDevice::mask},
       {"supraglottic", AirwayDevice::supraglottic},
       {"tube", AirwayDevice::tube}}};
};
template <>
struct Words<RecordKind> {
  static constexpr std::array<WordList<RecordKind>, 3> list = {
      {{"rescue", RecordKind::rescue}, {"drill", RecordKind::drill}, {"test", RecordKind::test}}};
};
template <>
struct Words<ClockState> {
  static constexpr std::array<WordList<ClockState>, 3> list = {
      {{"set", ClockState::set},
       {"unset", ClockState::unset},
       {"zone_unknown", ClockState::zoneUnknown}}};
};
/// A self test's `passed` is written as a word.
template <>
struct Words<bool> {
  static constexpr std::array<WordList<bool>, 2> list = {{{"passed", true}, {"failed", false}}};
};

/// The value a word stands for; null if it is none of them.
template <typename E>
const E* valueOfWord(std::string_view word) {
  for (const auto& [name, value] : Words<E>::list) {
    if (name == word) {
      return &value;
    }
  }
  return nullptr;
}

/// The word for a value; empty if it has none.
template <typename E>
std::string_view wordOfValue(E value) {
  for (const auto& [name, each] : Words<E>::list) {
    if (each == value) {
      return name;
    }
  }
  return {};
}

/// How a text is checked beyond being one.
enum class TextRule : unsigned char { any, wallTime, expiry, base64 };

// visitFields(data, visitor): every key of the type, in the order of the format's table. A visitor
// has number(key, optional<double>&, Need, Range), flag(key, optional<bool>&, Need), word(key,
// optional<E>&, Need) and text(key, string&, Need, TextRule).

template <typename V>
void visitFields(entry::Other& /*e*/, V& /*v*/) {}
template <typename V>
void visitFields(entry::PowerOn& /*e*/, V& /*v*/) {}
template <typename V>
void visitFields(entry::PowerOff& /*e*/, V& /*v*/) {}
template <typename V>
void visitFields(entry::ClockSet& e, V& v) {
  v.text("wall", e.wall, Need::required, TextRule::wallTime);
}
template <typename V>
void visitFields(entry::Electrodes& e, V& v) {
  v.word("state", e.state, Need::required);
  v.number("impedance_ohm", e.impedanceOhm, Need::optional, Range{});
}
template <typename V>
void visitFields(entry::PatientMode& e, V& v) {
  v.word("category", e.category, Need::required);
}
template <typename V>
void visitFields(entry::Analysis& e, V& v) {
  v.word("advice", e.advice, Need::required);
}
template <typename V>
void visitFields(entry::Charge& e, V& v) {
  v.number("energy_j", e.energyJ, Need::optional, Range{});
}
template <typename V>
void visitFields(entry::Shock& e, V& v) {
  v.flag("delivered", e.delivered, Need::required);
  v.number("energy_j", e.energyJ, Need::optional, Range{});
  v.number("impedance_ohm", e.impedanceOhm, Need::optional, Range{});
  v.text("reason", e.reason, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::Cpr& e, V& v) {
  v.number("rate_per_min", e.ratePerMin, Need::optional, Range{});
}
template <typename V>
void visitFields(entry::Compression& e, V& v) {
  v.number("depth_mm", e.depthMm, Need::optional, Range{});
  v.number("leaning_mm", e.leaningMm, Need::optional, Range{});
  v.flag("full_release", e.fullRelease, Need::optional);
}
template <typename V>
void visitFields(entry::Ventilation& e, V& v) {
  v.number("volume_ml", e.volumeMl, Need::optional, Range{});
}
template <typename V>
void visitFields(entry::Airway& e, V& v) {
  v.word("device", e.device, Need::required);
}
template <typename V>
void visitFields(entry::Rhythm& e, V& v) {
  v.word("is", e.is, Need::required);
  v.number("rate_per_min", e.ratePerMin, Need::optional, Range{});
  v.text("reason", e.reason, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::Circulation& e, V& v) {
  v.word("state", e.state, Need::required);
}
template <typename V>
void visitFields(entry::RescuerChange& e, V& v) {
  v.text("text", e.text, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::Medication& e, V& v) {
  v.text("text", e.text, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::Milestone& e, V& v) {
  v.text("what", e.what, Need::required, TextRule::any);
}
template <typename V>
void visitFields(entry::Excluded& e, V& v) {
  v.word("why", e.why, Need::required);
}
template <typename V>
void visitFields(entry::Prompt& e, V& v) {
  v.text("text", e.text, Need::required, TextRule::any);
  v.text("code", e.code, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::Battery& e, V& v) {
  // Either `percent`, or both of the others.
  v.number("percent", e.percent, Need::optional, Range{0, 100});
  v.number("bars", e.bars, Need::optional, Range{});
  v.number("bars_full", e.barsFull, Need::optional, Range{});
}
template <typename V>
void visitFields(entry::Pads& e, V& v) {
  v.text("expires", e.expires, Need::required, TextRule::expiry);
}
template <typename V>
void visitFields(entry::SelfTest& e, V& v) {
  v.word("result", e.passed, Need::required);
  v.text("detail", e.detail, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::Fault& e, V& v) {
  v.text("text", e.text, Need::required, TextRule::any);
  v.text("code", e.code, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::Mark& e, V& v) {
  v.text("text", e.text, Need::required, TextRule::any);
  v.text("author", e.author, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::LostSamples& e, V& v) {
  // `count` and `data` stay as they were spelled.
  v.text("channel", e.channel, Need::optional, TextRule::any);
}
template <typename V>
void visitFields(entry::Unreadable& e, V& v) {
  v.text("base64", e.base64, Need::required, TextRule::base64);
}

} // namespace afterbeat
