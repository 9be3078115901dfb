#include "core/resuslog/json_line.h"

#include <algorithm>
#include <cstring>
#include <set>

#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <simdjson.h>

namespace afterbeat {

namespace {

static_assert(ObjectParser::kPadding >= simdjson::SIMDJSON_PADDING);

constexpr EnglishText kTooDeep = inEnglish("Importers", "it is nested deeper than 64 levels");
constexpr EnglishText kNoJson =
    inEnglish("Importers", "it is cut off or holds something else than an entry");
constexpr EnglishText kNoObject = inEnglish("Importers", "it is not an object in braces");
constexpr EnglishText kNumber = inEnglish("Importers", "a number in it is too large");

Phrase twice(std::string_view key) {
  return phrase(inEnglish("Importers", "it holds the key “%1” twice"), key.substr(0, 60));
}

/// Walks valid JSON by its spelling.
class Scanner {
public:
  explicit Scanner(std::string_view text) : text_(text) {}

  void skipSpace() {
    while (at_ < text_.size() && std::strchr(" \t\r\n", text_[at_]) != nullptr) {
      ++at_;
    }
  }
  [[nodiscard]] bool atEnd() const { return at_ >= text_.size(); }
  [[nodiscard]] char peek() const { return atEnd() ? '\0' : text_[at_]; }
  void skip() { ++at_; }

  /// One value of any kind, or a key.
  std::string_view value() {
    const std::size_t from = at_;
    int depth = 0;
    while (!atEnd()) {
      const char c = text_[at_];
      if (c == '"') {
        skipString();
        if (depth == 0) {
          break;
        }
        continue;
      }
      const bool opens = c == '{' || c == '[';
      const bool closes = c == '}' || c == ']';
      if (depth == 0 && (closes || c == ',' || c == ':' || isSpace(c))) {
        break;
      }
      depth += opens ? 1 : 0;
      depth -= closes ? 1 : 0;
      ++at_;
      if (closes && depth == 0) {
        break;
      }
    }
    return text_.substr(from, at_ - from);
  }

private:
  static bool isSpace(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }
  void skipString() {
    ++at_;
    while (!atEnd() && text_[at_] != '"') {
      at_ += text_[at_] == '\\' ? 2 : 1;
    }
    at_ = std::min(at_ + 1, text_.size());
  }

  std::string_view text_;
  std::size_t at_ = 0;
};

/// Looks through everything the parser found for keys given twice and for depth.
class Inspector {
public:
  /// Why the value is refused; nothing if it is not.
  std::optional<Phrase> inspect(simdjson::dom::element root) {
    keys_.clear();
    return inspect(root, 1);
  }

private:
  std::optional<Phrase> inspect(simdjson::dom::element value, int level) {
    if (value.is_object()) {
      return level > kDeepestLevel ? phrase(kTooDeep) : inspectObject(value.get_object(), level);
    }
    if (value.is_array()) {
      if (level > kDeepestLevel) {
        return phrase(kTooDeep);
      }
      const simdjson::dom::array elements = value.get_array();
      for (const auto element : elements) {
        if (auto why = inspect(element, level + 1)) {
          return why;
        }
      }
    }
    return std::nullopt;
  }

  std::optional<Phrase> inspectObject(simdjson::dom::object object, int level) {
    const std::size_t base = keys_.size();
    for (const auto member : object) {
      keys_.push_back(member.key);
      if (auto why = inspect(member.value, level + 1)) {
        return why;
      }
    }
    const auto begin = keys_.begin() + static_cast<std::ptrdiff_t>(base);
    std::sort(begin, keys_.end());
    const auto same = std::adjacent_find(begin, keys_.end());
    if (same != keys_.end()) {
      return twice(*same);
    }
    keys_.resize(base);
    return std::nullopt;
  }

  /// The keys of all objects around the current value, the innermost last.
  std::vector<std::string_view> keys_;
};

JsonMember memberOf(std::string_view key, simdjson::dom::element value) {
  JsonMember member;
  member.key = key;
  switch (value.type()) {
  case simdjson::dom::element_type::ARRAY:
    member.kind = JsonKind::array;
    break;
  case simdjson::dom::element_type::OBJECT:
    member.kind = JsonKind::object;
    break;
  case simdjson::dom::element_type::INT64:
  case simdjson::dom::element_type::UINT64:
  case simdjson::dom::element_type::DOUBLE:
    member.kind = JsonKind::number;
    member.number = value.get_double().value();
    break;
  case simdjson::dom::element_type::STRING:
    member.kind = JsonKind::string;
    member.text = value.get_string().value();
    break;
  case simdjson::dom::element_type::BOOL:
    member.kind = JsonKind::boolean;
    member.flag = value.get_bool().value();
    break;
  case simdjson::dom::element_type::NULL_VALUE:
    break;
  }
  return member;
}

/// The slow, patient parser's listener: same rules as the quick one's, and integers of any length.
class PatientListener final : public nlohmann::json_sax<nlohmann::json> {
public:
  PatientListener(std::vector<JsonMember>& members, std::deque<std::string>& strings)
      : members_(members), strings_(strings) {}

  std::optional<Phrase> why;

  bool null() override { return add({}); }
  bool boolean(bool value) override { return add({{}, JsonKind::boolean, value, false, 0, {}}); }
  bool number_integer(number_integer_t value) override {
    return number(static_cast<double>(value));
  }
  bool number_unsigned(number_unsigned_t value) override {
    return number(static_cast<double>(value));
  }
  bool number_float(number_float_t value, const string_t& /*spelled*/) override {
    return number(value);
  }
  bool string(string_t& value) override {
    if (keys_.size() != 1 || inArray_ != 0) {
      return add({});
    }
    strings_.push_back(value);
    return add({{}, JsonKind::string, false, false, 0, strings_.back()});
  }
  bool binary(binary_t& /*value*/) override { return refuse(kNoJson); }
  bool start_object(std::size_t /*size*/) override {
    add({{}, JsonKind::object, false, false, 0, {}});
    keys_.emplace_back();
    return enter();
  }
  bool key(string_t& value) override {
    if (!keys_.back().insert(value).second) {
      return refuse(twice(value));
    }
    if (level_ == 1) {
      strings_.push_back(value);
      key_ = strings_.back();
    }
    return true;
  }
  bool end_object() override {
    keys_.pop_back();
    --level_;
    return true;
  }
  bool start_array(std::size_t /*size*/) override {
    if (level_ == 0) {
      return refuse(kNoObject);
    }
    add({{}, JsonKind::array, false, false, 0, {}});
    ++inArray_;
    return enter();
  }
  bool end_array() override {
    --inArray_;
    --level_;
    return true;
  }
  bool parse_error(std::size_t /*position*/, const std::string& /*token*/,
                   const nlohmann::detail::exception& error) override {
    constexpr int kNumberOverflow = 406;
    return refuse(error.id == kNumberOverflow ? kNumber : kNoJson);
  }

private:
  bool number(double value) { return add({{}, JsonKind::number, false, false, value, {}}); }
  /// Keeps what belongs to the outermost object.
  bool add(JsonMember member) {
    if (level_ == 0) {
      return member.kind == JsonKind::object || refuse(kNoObject);
    }
    if (level_ == 1) {
      member.key = key_;
      members_.push_back(member);
    }
    return true;
  }
  bool enter() { return ++level_ <= kDeepestLevel || refuse(kTooDeep); }
  bool refuse(EnglishText clause) { return refuse(phrase(clause)); }
  bool refuse(Phrase clause) {
    why = std::move(clause);
    return false;
  }

  std::vector<JsonMember>& members_;
  std::deque<std::string>& strings_;
  std::vector<std::set<std::string>> keys_;
  std::string_view key_;
  int level_ = 0;
  int inArray_ = 0;
};

/// The quick parser lets half of a surrogate pair pass in an escape; the patient one does not.
bool mayHoldSurrogates(std::string_view text) {
  return std::memchr(text.data(), '\\', text.size()) != nullptr &&
         (text.find("\\ud") != std::string_view::npos ||
          text.find("\\uD") != std::string_view::npos);
}

EnglishText clauseFor(simdjson::error_code code, std::string_view text) {
  if (text.find('\0') != std::string_view::npos) {
    return inEnglish("Importers",
                     "it holds empty bytes, as are left when power fails while writing");
  }
  switch (code) {
  case simdjson::UTF8_ERROR:
    return inEnglish("Importers", "it is not text in UTF-8");
  case simdjson::DEPTH_ERROR:
    return kTooDeep;
  default:
    return kNoJson;
  }
}

} // namespace

std::vector<RawMember> splitObject(std::string_view object) {
  std::vector<RawMember> members;
  Scanner scan(object);
  scan.skipSpace();
  scan.skip();
  for (scan.skipSpace(); !scan.atEnd() && scan.peek() != '}'; scan.skipSpace()) {
    RawMember member;
    member.key = scan.value();
    scan.skipSpace();
    scan.skip(); // the colon
    scan.skipSpace();
    member.value = scan.value();
    members.push_back(member);
    scan.skipSpace();
    if (scan.peek() != ',') {
      break;
    }
    scan.skip();
  }
  return members;
}

std::vector<std::string_view> splitArray(std::string_view array) {
  std::vector<std::string_view> elements;
  Scanner scan(array);
  scan.skipSpace();
  scan.skip();
  for (scan.skipSpace(); !scan.atEnd() && scan.peek() != ']'; scan.skipSpace()) {
    elements.push_back(scan.value());
    scan.skipSpace();
    if (scan.peek() != ',') {
      break;
    }
    scan.skip();
  }
  return elements;
}

JsonMember* FlatObject::find(std::string_view key) {
  const auto found = std::find_if(members_.begin(), members_.end(),
                                  [&](const JsonMember& member) { return member.key == key; });
  return found == members_.end() ? nullptr : &*found;
}

std::string_view FlatObject::raw(const JsonMember& member) {
  if (raw_.empty()) {
    raw_ = splitObject(text_);
  }
  return raw_[static_cast<std::size_t>(&member - members_.data())].value;
}

std::string FlatObject::rest() {
  std::string text;
  for (const JsonMember& member : members_) {
    if (member.taken) {
      continue;
    }
    const auto value = raw(member);
    const auto key = raw_[static_cast<std::size_t>(&member - members_.data())].key;
    text.append(text.empty() ? "" : ",").append(key).append(":").append(value);
  }
  return text;
}

struct ObjectParser::Fast {
  simdjson::dom::parser parser;
  Inspector inspector;
};

ObjectParser::ObjectParser() : fast_(std::make_unique<Fast>()) {}
ObjectParser::~ObjectParser() = default;

tl::expected<FlatObject*, Phrase> ObjectParser::parsePadded(std::string_view text) {
  constexpr std::size_t kLargeLine = std::size_t{1} << 20U;
  if (fast_->parser.capacity() > kLargeLine && text.size() < kLargeLine) {
    // A rare large line must not hold its memory for the rest of the file.
    fast_ = std::make_unique<Fast>();
  }
  object_.text_ = text;
  object_.members_.clear();
  object_.raw_.clear();
  simdjson::dom::element root;
  const auto code = fast_->parser.parse(text.data(), text.size(), false).get(root);
  const bool numberTrouble = code == simdjson::NUMBER_ERROR; // overflow, or over 64 bits
  if (numberTrouble || (code == simdjson::SUCCESS && mayHoldSurrogates(text))) {
    if (auto why = parseSlowly(text)) {
      return tl::unexpected(std::move(*why));
    }
    return &object_;
  }
  if (code != simdjson::SUCCESS) {
    return tl::unexpected(phrase(clauseFor(code, text)));
  }
  if (!root.is_object()) {
    return tl::unexpected(phrase(kNoObject));
  }
  if (auto why = fast_->inspector.inspect(root)) {
    return tl::unexpected(std::move(*why));
  }
  const simdjson::dom::object members = root.get_object();
  for (const auto member : members) {
    object_.members_.push_back(memberOf(member.key, member.value));
  }
  return &object_;
}

tl::expected<FlatObject*, Phrase> ObjectParser::parse(std::string_view text) {
  const std::size_t length = text.size();
  std::string copy;
  copy.reserve(length + kPadding);
  copy.append(text).append(kPadding, ' ');
  copy_ = std::move(copy);
  return parsePadded(std::string_view(copy_).substr(0, length));
}

std::optional<Phrase> ObjectParser::parseSlowly(std::string_view text) {
  // The patient parser takes an empty byte for the end and skips a byte order mark.
  if (text.find('\0') != std::string_view::npos || text.substr(0, 3) == "\xEF\xBB\xBF") {
    return phrase(kNoJson);
  }
  strings_.clear();
  object_.members_.clear();
  PatientListener listener(object_.members_, strings_);
  if (!nlohmann::json::sax_parse(text.begin(), text.end(), &listener)) {
    return listener.why ? listener.why : phrase(kNoJson);
  }
  return std::nullopt;
}

} // namespace afterbeat
