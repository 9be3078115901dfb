/// Reads typed values out of an object of the header, nested ones included, and keeps account of
/// what could not be used.
#pragma once

#include "core/record/problem.h"
#include "core/record/wall_clock.h"
#include "core/resuslog/entry_fields.h"
#include "core/resuslog/json_line.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

class HeaderReader {
public:
  /// `path` stands before every key in problems, e.g. "clock.".
  HeaderReader(FlatObject& object, std::string path, int line, std::vector<Problem>& problems)
      : object_(object), path_(std::move(path)), line_(line), problems_(problems) {}

  void text(std::string_view key, std::string& value) {
    if (JsonMember* member = ofKind(key, JsonKind::string)) {
      value = member->text;
    }
  }

  void flag(std::string_view key, bool& value) {
    if (JsonMember* member = ofKind(key, JsonKind::boolean)) {
      value = member->flag;
    }
  }

  /// A number within limits.
  void number(std::string_view key, std::optional<double>& value, Range range) {
    JsonMember* member = ofKind(key, JsonKind::number);
    if (member == nullptr) {
      return;
    }
    if (member->number >= range.least && member->number <= range.most) {
      value = member->number;
    } else {
      wrong(*member);
    }
  }

  void wallTime(std::string_view key, std::optional<WallTime>& value) {
    JsonMember* member = ofKind(key, JsonKind::string);
    if (member != nullptr && !(value = parseWallTime(member->text))) {
      wrong(*member);
    }
  }

  template <typename E>
  void word(std::string_view key, std::optional<E>& value) {
    JsonMember* member = ofKind(key, JsonKind::string);
    if (member == nullptr) {
      return;
    }
    if (const E* known = valueOfWord<E>(member->text)) {
      value = *known;
    } else {
      wrong(*member);
    }
  }

  /// A nested object, read by `read`; what that leaves is kept under the same key.
  void nested(std::string_view key, const std::function<void(HeaderReader&)>& read);

  /// The elements of an array; empty if there is none.
  std::vector<std::string_view> elements(std::string_view key) {
    JsonMember* member = ofKind(key, JsonKind::array);
    return member == nullptr ? std::vector<std::string_view>{} : splitArray(object_.raw(*member));
  }

  /// The member, reported and not taken if it is of another kind.
  JsonMember* ofKind(std::string_view key, JsonKind kind) {
    JsonMember* member = object_.find(key);
    if (member == nullptr) {
      return nullptr;
    }
    member->taken = member->kind == kind;
    if (!member->taken) {
      wrong(*member);
      return nullptr;
    }
    return member;
  }

  void wrong(JsonMember& member);

  /// Everything wrong from here on is of this weight.
  void weigh(Severity severity) { severity_ = severity; }

  /// A required key that is not there.
  void requireAny(std::string_view key);

  /// What nobody took, as spelled.
  std::string rest();

  [[nodiscard]] FlatObject& object() { return object_; }
  [[nodiscard]] int line() const { return line_; }
  [[nodiscard]] std::vector<Problem>& problems() { return problems_; }

private:
  FlatObject& object_;
  std::string path_;
  int line_;
  std::vector<Problem>& problems_;
  Severity severity_ = Severity::warning;
  /// What nested objects left: `"key":{...}`.
  std::string nestedRest_;
};

} // namespace afterbeat
