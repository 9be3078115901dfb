#include "core/guideline/profile.h"
#include "core/guideline/profile_json.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <set>

#include <nlohmann/json.hpp>

namespace afterbeat {

namespace {

using nlohmann::json;
using profilejson::kCategories;
using profilejson::kMarks;
using profilejson::kNumberKeys;

/// The longest profile that is read; a real one has a few kilobytes.
constexpr std::size_t kLongestText = 1 << 20;

std::string inQuotes(std::string_view text) {
  return '"' + std::string(text) + '"';
}

/// A value as it stands in the file, shortened so that it fits a sentence.
std::string shown(const json& value) {
  constexpr std::size_t kLongest = 40;
  std::string text = value.dump(-1, ' ', true);
  return text.size() <= kLongest ? text : text.substr(0, kLongest) + "...";
}

std::string listed(std::initializer_list<std::string_view> words) {
  std::string text;
  for (const auto word : words) {
    text += (text.empty() ? "" : ", ") + inQuotes(word);
  }
  return text;
}

/// Walks a profile's JSON and keeps the first thing that is wrong; after that, what the functions
/// return no longer matters.
class ProfileReader {
public:
  /// Without parts: nothing is wrong.
  [[nodiscard]] const Phrase& error() const { return error_; }

  Profile profile(const json& root) {
    Profile p;
    if (!isObject(root, "")) {
      return p;
    }
    p.id = text(root, "", "id");
    p.name = text(root, "", "name");
    for (const auto& [key, value] : root.items()) {
      if (error_.parts.empty()) {
        readKey(p, key, value);
      }
    }
    return p;
  }

private:
  template <typename... Values>
  void fail(EnglishText text, const Values&... values) {
    if (error_.parts.empty()) {
      error_ = phrase(text, values...);
    }
  }

  static std::string join(std::string_view path, std::string_view key) {
    return path.empty() ? std::string(key) : std::string(path) + "." + std::string(key);
  }

  void readKey(Profile& p, const std::string& key, const json& value) {
    if (key == "id" || key == "name" || key == "comment") {
      return;
    }
    const auto number = std::find_if(kNumberKeys.begin(), kNumberKeys.end(),
                                     [&](const auto& k) { return k.key == key; });
    if (number != kNumberKeys.end()) {
      p.*(number->field) = numberTarget(value, key, number->low, number->high);
    } else if (key == "rate_per_min") {
      p.ratePerMin = rangeTarget(value, key, 1, 400);
    } else if (key == "depth_mm") {
      perCategory(value, key, [&](PatientCategory c, const json& v, const std::string& path) {
        p.depth[c] = depthTarget(v, path);
      });
    } else if (key == "ratio") {
      perCategory(value, key, [&](PatientCategory c, const json& v, const std::string& path) {
        p.ratio[c] = ratioTarget(v, path);
      });
    } else if (key == "advanced_airway_breaths_per_min") {
      perCategory(value, key, [&](PatientCategory c, const json& v, const std::string& path) {
        p.advancedAirwayBreaths[c] = rangeTarget(v, path, 1, 100);
      });
    } else if (key == "remarks") {
      p.remarks = remarks(value, key);
    } else {
      fail(inEnglish("Importers", "\"%1\" is not a key of a guideline profile."), key);
    }
  }

  bool isObject(const json& value, std::string_view path) {
    if (value.is_object()) {
      return true;
    }
    if (path.empty()) {
      fail(inEnglish("Importers", "A guideline profile must be one JSON object, in braces."));
    } else {
      fail(inEnglish("Importers", "\"%1\" must be an object, in braces, but is %2."), path,
           shown(value));
    }
    return false;
  }

  void onlyKeys(const json& object, std::string_view path,
                std::initializer_list<std::string_view> known) {
    for (const auto& [key, value] : object.items()) {
      if (key != "comment" && std::find(known.begin(), known.end(), key) == known.end()) {
        fail(inEnglish("Importers", "\"%1\" is not a known key; here there can be %2."),
             join(path, key), listed(known));
      }
    }
  }

  std::string text(const json& object, std::string_view path, const char* key) {
    const auto found = object.find(key);
    if (found == object.end()) {
      fail(inEnglish("Importers", "\"%1\" is missing."), join(path, key));
      return {};
    }
    const auto* words = found->get_ptr<const std::string*>();
    if (words == nullptr || words->find_first_not_of(" \t\r\n") == std::string::npos) {
      fail(inEnglish("Importers", "\"%1\" must be a text with something in it, but is %2."),
           join(path, key), shown(*found));
      return {};
    }
    return *words;
  }

  double number(const json& object, std::string_view path, const char* key, int low, int high) {
    const auto found = object.find(key);
    if (found == object.end()) {
      fail(inEnglish("Importers", "\"%1\" is missing."), join(path, key));
      return low;
    }
    if (!found->is_number()) {
      fail(inEnglish("Importers", "\"%1\" must be a number, but is %2."), join(path, key),
           shown(*found));
      return low;
    }
    const auto value = found->get<double>();
    if (!(value >= low && value <= high)) {
      fail(inEnglish("Importers", "\"%1\" must be from %2 to %3, but is %4."), join(path, key), low,
           high, shown(*found));
      return low;
    }
    return value;
  }

  Citation citation(const json& object, std::string_view path) {
    Citation c{text(object, path, "source"), SourceMark::memory};
    const auto found = object.find("mark");
    if (found == object.end()) {
      return c;
    }
    const auto mark = std::find_if(kMarks.begin(), kMarks.end(),
                                   [&](const auto& m) { return *found == json(m.first); });
    if (mark == kMarks.end()) {
      fail(inEnglish("Importers",
                     "\"%1\" must be \"read\", \"secondary\" or \"memory\", but is %2."),
           join(path, "mark"), shown(*found));
      return c;
    }
    c.mark = mark->second;
    return c;
  }

  Target<double> numberTarget(const json& value, const std::string& path, int low, int high) {
    if (!isObject(value, path)) {
      return {};
    }
    onlyKeys(value, path, {"value", "source", "mark"});
    return {number(value, path, "value", low, high), citation(value, path)};
  }

  Range range(const json& value, const std::string& path, int low, int high) {
    const Range r{number(value, path, "low", low, high), number(value, path, "high", low, high)};
    if (r.low > r.high) {
      fail(inEnglish("Importers", "\"%1\" is larger than \"%2\"."), join(path, "low"),
           join(path, "high"));
    }
    return r;
  }

  Target<Range> rangeTarget(const json& value, const std::string& path, int low, int high) {
    if (!isObject(value, path)) {
      return {};
    }
    onlyKeys(value, path, {"low", "high", "source", "mark"});
    return {range(value, path, low, high), citation(value, path)};
  }

  Target<DepthTarget> depthTarget(const json& value, const std::string& path) {
    if (!isObject(value, path)) {
      return {};
    }
    onlyKeys(value, path, {"words", "low", "high", "source", "mark"});
    DepthTarget depth;
    depth.words = text(value, path, "words");
    if (value.contains("low") || value.contains("high")) {
      depth.range = range(value, path, 0, 200);
    }
    return {depth, citation(value, path)};
  }

  Target<std::string> ratioTarget(const json& value, const std::string& path) {
    if (!isObject(value, path)) {
      return {};
    }
    onlyKeys(value, path, {"value", "source", "mark"});
    const std::string ratio = text(value, path, "value");
    const auto colon = ratio.find(':');
    const bool digits = std::all_of(ratio.begin(), ratio.end(),
                                    [](char c) { return c == ':' || (c >= '0' && c <= '9'); });
    if (!digits || colon == std::string::npos || colon == 0 || colon + 1 == ratio.size() ||
        ratio.find(':', colon + 1) != std::string::npos) {
      fail(inEnglish("Importers", "\"%1\" must be two numbers like \"30:2\", but is %2."),
           join(path, "value"), shown(value.contains("value") ? value["value"] : json()));
    }
    return {ratio, citation(value, path)};
  }

  template <typename Take>
  void perCategory(const json& value, const std::string& path, const Take& take) {
    if (!isObject(value, path)) {
      return;
    }
    onlyKeys(value, path, {"adult", "child", "infant"});
    for (const auto& [word, category] : kCategories) {
      const auto found = value.find(std::string(word));
      if (found != value.end()) {
        take(category, *found, join(path, word));
      }
    }
  }

  std::vector<Target<std::string>> remarks(const json& value, const std::string& path) {
    std::vector<Target<std::string>> list;
    if (!value.is_array()) {
      fail(inEnglish("Importers", "\"%1\" must be a list, in square brackets, but is %2."), path,
           shown(value));
      return list;
    }
    for (std::size_t i = 0; i < value.size(); ++i) {
      const std::string place = path + "[" + std::to_string(i + 1) + "]";
      if (!isObject(value[i], place)) {
        return list;
      }
      onlyKeys(value[i], place, {"text", "source", "mark"});
      list.push_back({text(value[i], place, "text"), citation(value[i], place)});
    }
    return list;
  }

  Phrase error_;
};

/// Notices a key that stands twice in one object: JSON readers keep one of them silently, and a
/// person who edits a file would not see which.
class RepeatedKeys {
public:
  bool operator()(int /*depth*/, json::parse_event_t event, json& parsed) {
    if (event == json::parse_event_t::object_start) {
      open_.emplace_back();
    } else if (event == json::parse_event_t::object_end) {
      open_.pop_back();
    } else if (event == json::parse_event_t::key) {
      const auto& key = parsed.get_ref<const std::string&>();
      if (!open_.back().insert(key).second && repeated.empty()) {
        repeated = key;
      }
    }
    return true;
  }

  std::string repeated;

private:
  std::vector<std::set<std::string>> open_;
};

std::size_t lineOf(std::string_view text, std::size_t byte) {
  const auto upTo = text.substr(0, std::min(byte, text.size()));
  return 1 + static_cast<std::size_t>(std::count(upTo.begin(), upTo.end(), '\n'));
}

} // namespace

tl::expected<Profile, Phrase> parseProfile(std::string_view text) {
  if (text.size() > kLongestText) {
    return tl::unexpected(
        phrase(inEnglish("Importers", "This is too long for a guideline profile.")));
  }
  RepeatedKeys keys;
  json root;
  try {
    root = json::parse(text.begin(), text.end(), std::ref(keys));
  } catch (const json::parse_error& error) {
    return tl::unexpected(phrase(inEnglish("Importers", "This is not valid JSON, from line %1 on."),
                                 lineOf(text, error.byte)));
  } catch (const json::exception&) {
    return tl::unexpected(phrase(inEnglish("Importers", "A number in this profile is too large.")));
  }
  if (!keys.repeated.empty()) {
    return tl::unexpected(
        phrase(inEnglish("Importers", "\"%1\" stands twice in the same braces."), keys.repeated));
  }
  ProfileReader reader;
  Profile profile = reader.profile(root);
  if (!reader.error().parts.empty()) {
    return tl::unexpected(reader.error());
  }
  return profile;
}

} // namespace afterbeat
