#include "core/guideline/profile.h"
#include "core/guideline/profile_json.h"

#include <nlohmann/json.hpp>

namespace afterbeat {

namespace {

using Json = nlohmann::ordered_json;

/// Whole numbers without ".0", as a person writes them.
Json numberJson(double value) {
  const auto whole = static_cast<std::int64_t>(value);
  return static_cast<double>(whole) == value ? Json(whole) : Json(value);
}

void cite(Json& object, const Citation& source) {
  object["source"] = source.text;
  for (const auto& [word, mark] : profilejson::kMarks) {
    if (mark == source.mark) {
      object["mark"] = word;
    }
  }
}

void addRange(Json& object, const Range& range) {
  object["low"] = numberJson(range.low);
  object["high"] = numberJson(range.high);
}

Json rangeJson(const Target<Range>& target) {
  Json object;
  addRange(object, target.value);
  cite(object, target.source);
  return object;
}

Json depthJson(const Target<DepthTarget>& target) {
  Json object;
  if (target.value.range) {
    addRange(object, *target.value.range);
  }
  object["words"] = target.value.words;
  cite(object, target.source);
  return object;
}

Json ratioJson(const Target<std::string>& target) {
  Json object{{"value", target.value}};
  cite(object, target.source);
  return object;
}

template <typename T, typename Write>
void addPerCategory(Json& root, const char* key, const std::map<PatientCategory, T>& targets,
                    const Write& write) {
  for (const auto& [word, category] : profilejson::kCategories) {
    const auto found = targets.find(category);
    if (found != targets.end()) {
      root[key][std::string(word)] = write(found->second);
    }
  }
}

} // namespace

std::string profileJson(const Profile& profile) {
  Json root{{"id", profile.id}, {"name", profile.name}};
  if (profile.ratePerMin) {
    root["rate_per_min"] = rangeJson(*profile.ratePerMin);
  }
  addPerCategory(root, "depth_mm", profile.depth, depthJson);
  for (const auto& number : profilejson::kNumberKeys) {
    if (const auto& target = profile.*(number.field)) {
      Json object{{"value", numberJson(target->value)}};
      cite(object, target->source);
      root[std::string(number.key)] = object;
    }
  }
  addPerCategory(root, "ratio", profile.ratio, ratioJson);
  addPerCategory(root, "advanced_airway_breaths_per_min", profile.advancedAirwayBreaths, rangeJson);
  for (const auto& remark : profile.remarks) {
    Json object{{"text", remark.value}};
    cite(object, remark.source);
    root["remarks"].push_back(object);
  }
  return root.dump(2) + "\n";
}

} // namespace afterbeat
