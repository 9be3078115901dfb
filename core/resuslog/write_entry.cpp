#include "core/resuslog/write_log.h"

#include "core/resuslog/entry_fields.h"
#include "core/resuslog/json_text.h"

namespace afterbeat {

namespace {

/// Writes the keys of the entry table.
class FieldWriter {
public:
  FieldWriter(ObjectText& line, bool complete) : line_(line), complete_(complete) {}

  void number(std::string_view key, const std::optional<double>& value, Need /*need*/,
              const Range& /*range*/) {
    if (value) {
      line_.number(key, *value);
    }
  }
  void flag(std::string_view key, const std::optional<bool>& value, Need /*need*/) {
    if (value) {
      line_.flag(key, *value);
    }
  }
  template <typename E>
  void word(std::string_view key, const std::optional<E>& value, Need /*need*/) {
    if (value) {
      line_.text(key, wordOfValue(*value));
    }
  }
  void text(std::string_view key, const std::string& value, Need need, TextRule /*rule*/) {
    // An empty text that the format requires is still one.
    if (!value.empty() || (complete_ && need == Need::required)) {
      line_.text(key, value);
    }
  }

private:
  ObjectText& line_;
  bool complete_;
};

} // namespace

std::string entryLine(const Entry& entry, const Header& header) {
  ObjectText line(entry.otherKeys);
  if (entry.hasTime) {
    line.raw("t", secondsText(entry.t.time_since_epoch()));
  }
  line.textIfAny("type", typeName(entry.data));
  if (entry.neverClosed) {
    line.flag("open", true);
  } else if (entry.end) {
    line.raw("end", secondsText(entry.end->time_since_epoch()));
  }
  FieldWriter fields(line, !entry.incomplete);
  EntryData data = entry.data;
  std::visit([&](auto& each) { visitFields(each, fields); }, data);
  if (entry.source != Source::device) {
    line.text("source", wordOfValue(entry.source));
  }
  if (entry.part >= 0 && static_cast<std::size_t>(entry.part) < header.parts.size()) {
    line.text("part", header.parts[static_cast<std::size_t>(entry.part)].id);
  }
  if (entry.quality) {
    line.number("quality", *entry.quality);
  }
  line.textIfAny("note", entry.note);
  return line.close();
}

} // namespace afterbeat
