#include "core/resuslog/read_entry.h"

#include "core/bytes/digest.h"
#include "core/resuslog/entry_fields.h"

#include <algorithm>
#include <functional>
#include <unordered_map>

#include <fmt/format.h>

namespace afterbeat {

namespace {

/// A payload of each type this program knows, by the format's word.
const std::unordered_map<std::string_view, EntryData>& knownTypes() {
  static const auto types = [] {
    std::unordered_map<std::string_view, EntryData> map;
    const auto add = [&]<std::size_t... I>(std::index_sequence<I...> /*indices*/) {
      (map.emplace(typeName(EntryData{std::in_place_index<I + 1>}),
                   EntryData{std::in_place_index<I + 1>}),
       ...);
    };
    add(std::make_index_sequence<std::variant_size_v<EntryData> - 1>());
    return map;
  }();
  return types;
}

bool isExpiry(const std::string& text) {
  const bool month = text.size() == 7;
  return parseWallTime(text + (month ? "-01T00:00:00Z" : "T00:00:00Z")).has_value();
}

bool follows(TextRule rule, const std::string& text) {
  switch (rule) {
  case TextRule::wallTime:
    return parseWallTime(text).has_value();
  case TextRule::expiry:
    return isExpiry(text);
  case TextRule::base64:
    return base64Decode(text).has_value();
  case TextRule::any:
    break;
  }
  return true;
}

/// Reads the keys of the entry table out of an object.
class FieldReader {
public:
  FieldReader(FlatObject& object, EntryRead& into) : object_(object), into_(into) {}

  void number(std::string_view key, std::optional<double>& value, Need need, Range range) {
    JsonMember* member = object_.find(key);
    if (member != nullptr && member->kind == JsonKind::number && member->number >= range.least &&
        member->number <= range.most) {
      value = member->number;
      member->taken = true;
      return;
    }
    missed(key, member, need);
  }

  void flag(std::string_view key, std::optional<bool>& value, Need need) {
    JsonMember* member = object_.find(key);
    if (member != nullptr && member->kind == JsonKind::boolean) {
      value = member->flag;
      member->taken = true;
      return;
    }
    missed(key, member, need);
  }

  template <typename E>
  void word(std::string_view key, std::optional<E>& value, Need need) {
    JsonMember* member = object_.find(key);
    if (member != nullptr && member->kind == JsonKind::string) {
      if (const E* known = valueOfWord<E>(member->text)) {
        value = *known;
        member->taken = true;
        return;
      }
    }
    missed(key, member, need);
  }

  void text(std::string_view key, std::string& value, Need need, TextRule rule) {
    JsonMember* member = object_.find(key);
    if (member != nullptr && member->kind == JsonKind::string) {
      value = member->text;
      if (follows(rule, value)) {
        member->taken = true;
        return;
      }
      value.clear();
    }
    missed(key, member, need);
  }

  /// `t` or `end`: nothing if it is absent, no number, or too large.
  std::optional<Time> time(std::string_view key) {
    JsonMember* member = object_.find(key);
    if (member == nullptr) {
      return std::nullopt;
    }
    if (member->kind != JsonKind::number) {
      say(Severity::warning, ProblemKind::wrongValue, key, spelled(*member));
      return std::nullopt;
    }
    const auto t = timeFromSeconds(member->number);
    if (!t) {
      say(Severity::error, ProblemKind::valueOutOfRange, key, spelled(*member));
      return std::nullopt;
    }
    member->taken = true;
    return t;
  }

  /// A key of another kind of value: looked at, not taken.
  void wrong(std::string_view key, const JsonMember& member) {
    say(Severity::warning, ProblemKind::wrongValue, key, spelled(member));
  }

  void missing(std::string_view key) {
    into_.entry.incomplete = true;
    if (key == "delivered") {
      into_.problems.push_back(
          {into_.entry.line, Severity::warning, ProblemKind::deliveryUnknown, {}});
      return;
    }
    say(Severity::error, ProblemKind::missingKey, typeName(into_.entry.data), std::string(key));
  }

  void say(Severity severity, ProblemKind kind, std::string_view first, std::string second) {
    into_.problems.push_back(
        {into_.entry.line, severity, kind, {std::string(first), std::move(second)}});
  }

private:
  std::string spelled(const JsonMember& member) { return spelledBriefly(object_.raw(member)); }

  void missed(std::string_view key, const JsonMember* member, Need need) {
    if (member != nullptr) {
      wrong(key, *member);
    }
    if (need == Need::required) {
      missing(key);
    }
  }

  FlatObject& object_;
  EntryRead& into_;
};

void readType(FlatObject& object, FieldReader& fields, Entry& entry) {
  JsonMember* type = object.find("type");
  if (type == nullptr || type->kind != JsonKind::string) {
    entry.data = entry::Other{};
    if (type != nullptr) {
      fields.wrong("type", *type);
    }
    entry.incomplete = true;
    fields.say(Severity::error, ProblemKind::missingKey, "line", "type");
    return;
  }
  type->taken = true;
  const auto known = knownTypes().find(type->text);
  entry.data = known != knownTypes().end() ? known->second
                                           : EntryData{entry::Other{std::string(type->text)}};
}

/// `end` and `open`, for the types that have them.
void readStretch(FlatObject& object, FieldReader& fields, EntryRead& read) {
  Entry& entry = read.entry;
  const auto end = fields.time("end");
  if (end && entry.hasTime && *end < entry.t) {
    entry.incomplete = true;
    object.find("end")->taken = false;
    fields.say(Severity::error, ProblemKind::endBeforeBegin, typeName(entry.data), {});
  } else if (end) {
    entry.end = end;
  }
  if (!isStretch(entry.data)) {
    return; // a type from elsewhere: nothing more is known of it
  }
  JsonMember* open = object.find("open");
  if (open != nullptr && open->kind != JsonKind::boolean) {
    fields.wrong("open", *open);
  } else if (open != nullptr) {
    open->taken = true;
    read.open = open->flag && !end;
  }
  if (!end && !read.open) {
    fields.missing("end");
  }
}

void readPart(FlatObject& object, FieldReader& fields, Entry& entry, const Header& header) {
  JsonMember* part = object.find("part");
  if (part == nullptr) {
    return;
  }
  const auto named =
      std::find_if(header.parts.begin(), header.parts.end(), [&](const PartFacts& p) {
        return part->kind == JsonKind::string && p.id == part->text;
      });
  if (named == header.parts.end()) {
    fields.wrong("part", *part);
    return;
  }
  entry.part = static_cast<int>(named - header.parts.begin());
  part->taken = true;
}

/// What any entry may carry.
void readCommon(FlatObject& object, FieldReader& fields, Entry& entry, const Header& header) {
  std::optional<Source> source;
  fields.word("source", source, Need::optional);
  entry.source = source.value_or(Source::device);
  readPart(object, fields, entry, header);
  fields.number("quality", entry.quality, Need::optional, Range{0, 1});
  fields.text("note", entry.note, Need::optional, TextRule::any);
}

void checkBattery(FieldReader& fields, const Entry& entry) {
  const auto* battery = std::get_if<entry::Battery>(&entry.data);
  if (battery != nullptr && !battery->percent && !(battery->bars && battery->barsFull)) {
    fields.missing(battery->bars ? "bars_full" : "percent");
  }
}

} // namespace

std::string spelledBriefly(std::string_view raw) {
  constexpr std::size_t kMost = 200;
  if (raw.size() <= kMost) {
    return std::string(raw);
  }
  std::size_t cut = kMost;
  while (cut > 0 && (static_cast<unsigned char>(raw[cut]) & 0xC0U) == 0x80U) {
    --cut;
  }
  return std::string(raw.substr(0, cut)) + "…";
}

EntryRead readEntry(FlatObject& object, const Header& header, int line) {
  EntryRead read;
  Entry& entry = read.entry;
  entry.line = line;
  FieldReader fields(object, read);
  readType(object, fields, entry);
  if (const auto t = fields.time("t")) {
    entry.t = *t;
  } else {
    entry.hasTime = false;
    fields.missing("t");
  }
  if (isStretch(entry.data) || std::holds_alternative<entry::Other>(entry.data)) {
    readStretch(object, fields, read);
  }
  std::visit([&](auto& data) { visitFields(data, fields); }, entry.data);
  checkBattery(fields, entry);
  readCommon(object, fields, entry, header);
  if (!std::holds_alternative<entry::LostSamples>(entry.data)) {
    entry.otherKeys = object.rest();
  }
  return read;
}

} // namespace afterbeat
