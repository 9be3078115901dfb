#include "core/record/entry.h"

#include <array>
#include <type_traits>

namespace afterbeat {

namespace {

/// The format's words, in the order of the alternatives of EntryData; `Other` speaks for itself.
constexpr std::array<std::string_view, std::variant_size_v<EntryData>> kNames = {
    "",           "power_on",     "power_off",   "clock_set",
    "electrodes", "patient_mode", "analysis",    "charge",
    "shock",      "cpr",          "compression", "ventilation",
    "airway",     "rhythm",       "circulation", "rescuer_change",
    "medication", "milestone",    "excluded",    "prompt",
    "battery",    "pads",         "self_test",   "fault",
    "mark",       "samples",      "unreadable"};

static_assert(std::is_same_v<std::variant_alternative_t<8, EntryData>, entry::Shock>);
static_assert(std::is_same_v<std::variant_alternative_t<18, EntryData>, entry::Excluded>);
static_assert(std::is_same_v<std::variant_alternative_t<25, EntryData>, entry::LostSamples>);

} // namespace

std::string_view typeName(const EntryData& data) {
  if (const auto* other = std::get_if<entry::Other>(&data)) {
    return other->type;
  }
  return data.valueless_by_exception() ? std::string_view{} : kNames[data.index()];
}

bool isStretch(const EntryData& data) {
  return std::holds_alternative<entry::Analysis>(data) ||
         std::holds_alternative<entry::Charge>(data) || std::holds_alternative<entry::Cpr>(data) ||
         std::holds_alternative<entry::Rhythm>(data) ||
         std::holds_alternative<entry::Excluded>(data);
}

} // namespace afterbeat
