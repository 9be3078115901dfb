#include "importers/wfdb/signal_meaning.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <utility>

namespace afterbeat {
namespace {

std::string lowerCase(std::string_view text) {
  std::string lower{text};
  std::transform(lower.begin(), lower.end(), lower.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return lower;
}

bool holdsAny(std::string_view text, std::initializer_list<std::string_view> words) {
  return std::any_of(words.begin(), words.end(), [&](std::string_view word) {
    return text.find(word) != std::string_view::npos;
  });
}

} // namespace

std::string ucumUnit(std::string_view written) {
  // Left: lower case, as found in published headers.
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 24> kUnits = {{
      {"mv", "mV"},    {"uv", "uV"},      {"\u00b5v", "uV"},  {"\u03bcv", "uV"},
      {"nv", "nV"},    {"v", "V"},        {"mmhg", "mm[Hg]"}, {"ohm", "Ohm"},
      {"ohms", "Ohm"}, {"\u03c9", "Ohm"}, {"mohm", "mOhm"},   {"%", "%"},
      {"bpm", "/min"}, {"g", "[g]"},      {"m/s2", "m/s2"},   {"m/s^2", "m/s2"},
      {"degc", "Cel"}, {"mm", "mm"},      {"cm", "cm"},       {"n", "N"},
      {"kpa", "kPa"},  {"ml", "mL"},      {"l/min", "L/min"}, {"nu", "1"},
  }};
  const auto lower = lowerCase(written);
  for (const auto& [from, to] : kUnits) {
    if (lower == from) {
      return std::string{to};
    }
  }
  std::string braces = "{";
  for (const char c : written) {
    // UCUM annotations hold printable ASCII without braces.
    braces.push_back(c > ' ' && c < 0x7F && c != '{' && c != '}' ? c : '_');
  }
  return braces + "}";
}

std::string quantityOf(std::string_view description, std::string_view ucum) {
  const auto name = lowerCase(description);
  if (ucum == "Ohm" || ucum == "mOhm" || holdsAny(name, {"impedance"})) {
    return "impedance";
  }
  if (holdsAny(name, {"co2", "capno"})) {
    return "capnogram";
  }
  if (holdsAny(name, {"pleth", "ppg"})) {
    return "pleth";
  }
  if (holdsAny(name, {"resp"})) {
    return "respiration";
  }
  if (ucum == "m/s2" || ucum == "[g]" || holdsAny(name, {"accel"})) {
    return "acceleration";
  }
  if (holdsAny(name, {"depth"})) {
    return "depth";
  }
  if (ucum == "N") {
    return "force";
  }
  if (ucum == "mm[Hg]" || ucum == "kPa") {
    return "pressure";
  }
  const bool voltage = ucum == "mV" || ucum == "uV" || ucum == "V" || ucum == "nV";
  return voltage && !holdsAny(name, {"eeg", "emg", "eog", "eda", "gsr"}) ? "ecg" : "other";
}

} // namespace afterbeat
