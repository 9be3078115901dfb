#include "core/resuslog/json_text.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace afterbeat {

std::string secondsText(Duration d) {
  const auto micros = d.count();
  // The smallest value has no positive counterpart; unsigned arithmetic does not mind.
  const auto size =
      micros < 0 ? 0 - static_cast<std::uint64_t>(micros) : static_cast<std::uint64_t>(micros);
  std::string text =
      fmt::format("{}{}.{:06}", micros < 0 ? "-" : "", size / 1000000, size % 1000000);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') {
    text.pop_back();
  }
  return text;
}

std::string jsonString(std::string_view text) {
  return nlohmann::json(text).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::string numberText(double value) {
  return std::isfinite(value) ? fmt::format("{}", value) : std::string("null");
}

ObjectText::ObjectText(std::string_view otherKeys) {
  if (!otherKeys.empty()) {
    otherText_ = fmt::format("{{{}}}", otherKeys);
    others_ = splitObject(otherText_);
  }
}

void ObjectText::raw(std::string_view key, std::string_view value) {
  text_.append(text_.size() > 1 ? "," : "").append(jsonString(key)).append(":").append(value);
  if (RawMember* same = other(key)) {
    same->key = {};
  }
}

RawMember* ObjectText::other(std::string_view key) {
  const auto found = std::find_if(others_.begin(), others_.end(), [&](const RawMember& member) {
    return member.key.size() == key.size() + 2 && member.key.substr(1, key.size()) == key;
  });
  return found == others_.end() ? nullptr : &*found;
}

ObjectText ObjectText::inner(std::string_view key) {
  const RawMember* same = other(key);
  if (same == nullptr || same->value.size() < 2 || same->value.front() != '{') {
    return ObjectText({});
  }
  return ObjectText(same->value.substr(1, same->value.size() - 2));
}

void ObjectText::nested(std::string_view key, ObjectText& inner) {
  if (const std::string text = inner.close(); text.size() > 2) {
    raw(key, text);
  }
}

std::string ObjectText::close() {
  for (const RawMember& member : others_) {
    if (!member.key.empty()) {
      text_.append(text_.size() > 1 ? "," : "").append(member.key).append(":").append(member.value);
    }
  }
  others_.clear();
  return text_ + "}";
}

} // namespace afterbeat
