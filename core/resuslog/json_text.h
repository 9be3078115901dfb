/// Writes JSON by hand: keys in the order they are given, numbers as short as they can be.
#pragma once

#include "core/record/time.h"
#include "core/resuslog/json_line.h"

#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Seconds with at most six decimals and no exponent, e.g. "12.345".
[[nodiscard]] std::string secondsText(Duration d);

/// A string literal with its quotes.
[[nodiscard]] std::string jsonString(std::string_view text);

/// The shortest spelling that reads back as the same number.
[[nodiscard]] std::string numberText(double value);

/// An object, key by key.
class ObjectText {
public:
  /// `otherKeys` are members as spelled, added at the end unless the same key was written; where
  /// one of them is an object that is written too, their members are put together.
  explicit ObjectText(std::string_view otherKeys);
  ObjectText(const ObjectText&) = delete;
  ObjectText& operator=(const ObjectText&) = delete;

  void raw(std::string_view key, std::string_view value);
  void text(std::string_view key, std::string_view value) { raw(key, jsonString(value)); }
  /// A text that is left out if empty.
  void textIfAny(std::string_view key, std::string_view value) {
    if (!value.empty()) {
      text(key, value);
    }
  }
  void number(std::string_view key, double value) { raw(key, numberText(value)); }
  void flag(std::string_view key, bool value) { raw(key, value ? "true" : "false"); }

  /// Whether the other members hold that key still.
  [[nodiscard]] bool keeps(std::string_view key) { return other(key) != nullptr; }

  /// An object to be filled and given to `nested`, knowing what else belongs into it.
  [[nodiscard]] ObjectText inner(std::string_view key);
  /// Adds it unless there is nothing in it.
  void nested(std::string_view key, ObjectText& inner);

  /// The whole object.
  [[nodiscard]] std::string close();

private:
  [[nodiscard]] RawMember* other(std::string_view key);

  std::string text_ = "{";
  std::string otherText_;
  std::vector<RawMember> others_;
};

} // namespace afterbeat
