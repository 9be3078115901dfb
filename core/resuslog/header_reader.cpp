#include "core/resuslog/header_reader.h"

#include "core/resuslog/read_entry.h"

namespace afterbeat {

void HeaderReader::nested(std::string_view key, const std::function<void(HeaderReader&)>& read) {
  JsonMember* member = ofKind(key, JsonKind::object);
  if (member == nullptr) {
    return;
  }
  ObjectParser parser;
  const auto object = parser.parse(object_.raw(*member));
  if (!object) {
    wrong(*member); // cannot be: the whole line was read already
    return;
  }
  HeaderReader inner(**object, path_ + std::string(key) + ".", line_, problems_);
  read(inner);
  if (const std::string left = inner.rest(); !left.empty()) {
    nestedRest_ += (nestedRest_.empty() ? "\"" : ",\"") + std::string(key) + "\":{" + left + "}";
  }
}

void HeaderReader::wrong(JsonMember& member) {
  member.taken = false;
  problems_.push_back({line_,
                       severity_,
                       ProblemKind::wrongHeaderValue,
                       {path_ + std::string(member.key), spelledBriefly(object_.raw(member))}});
}

void HeaderReader::requireAny(std::string_view key) {
  if (object_.find(key) == nullptr) {
    problems_.push_back(
        {line_, severity_, ProblemKind::missingHeaderKey, {path_ + std::string(key)}});
  }
}

std::string HeaderReader::rest() {
  std::string text = object_.rest();
  if (!text.empty() && !nestedRest_.empty()) {
    text += ',';
  }
  return text + nestedRest_;
}

} // namespace afterbeat
