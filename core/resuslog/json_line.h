/// One line of a log as a JSON object (RFC 8259), read strictly: no key twice, at most 64 levels.
#pragma once

#include "core/record/phrase.h"

#include <cstddef>
#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace afterbeat {

/// The deepest nesting a line may have; the object itself is level 1.
inline constexpr int kDeepestLevel = 64;

enum class JsonKind : unsigned char { null, boolean, number, string, array, object };

/// One key of an object with its value. What the views point at lives as long as the parse that
/// gave it.
struct JsonMember {
  std::string_view key;
  JsonKind kind = JsonKind::null;
  bool flag = false;
  /// Somebody understood it; what nobody takes is written back as it was.
  bool taken = false;
  double number = 0;
  /// A string's characters, unescaped.
  std::string_view text;
};

/// A key and a value as they are spelled, the key with its quotes.
struct RawMember {
  std::string_view key;
  std::string_view value;
};

/// The members of an object; the text must be valid JSON.
[[nodiscard]] std::vector<RawMember> splitObject(std::string_view object);

/// The elements of an array; the text must be valid JSON.
[[nodiscard]] std::vector<std::string_view> splitArray(std::string_view array);

/// An object's own keys; nested values by their spelling alone.
class FlatObject {
public:
  /// The member of that name; null if there is none.
  [[nodiscard]] JsonMember* find(std::string_view key);
  /// The spelling of a member's value.
  [[nodiscard]] std::string_view raw(const JsonMember& member);
  /// The members nobody took, as spelled: `"key":value` joined by commas.
  [[nodiscard]] std::string rest();
  /// The whole object as spelled.
  [[nodiscard]] std::string_view text() const { return text_; }

private:
  friend class ObjectParser;
  std::string_view text_;
  std::vector<JsonMember> members_;
  /// Spellings are looked for only where one is asked for: nearly never.
  std::vector<RawMember> raw_;
};

/// Reads one object after another; each is good until the next is read.
class ObjectParser {
public:
  ObjectParser();
  ~ObjectParser();
  ObjectParser(const ObjectParser&) = delete;
  ObjectParser& operator=(const ObjectParser&) = delete;

  /// Bytes that must be readable after a text given to `parsePadded`, whatever they hold.
  static constexpr std::size_t kPadding = 64;

  /// Reads an object, or says in a short clause why the text is none. The text must stay, and
  /// `kPadding` bytes after it must be readable.
  [[nodiscard]] tl::expected<FlatObject*, Phrase> parsePadded(std::string_view text);

  /// The same for any text; a copy is kept.
  [[nodiscard]] tl::expected<FlatObject*, Phrase> parse(std::string_view text);

private:
  struct Fast;
  [[nodiscard]] std::optional<Phrase> parseSlowly(std::string_view text);

  std::unique_ptr<Fast> fast_;
  FlatObject object_;
  std::string copy_;
  /// Characters of the slow way; a deque, so that views stay good.
  std::deque<std::string> strings_;
};

} // namespace afterbeat
