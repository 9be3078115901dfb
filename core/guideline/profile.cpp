#include "core/guideline/profile.h"

#include "core/guideline/profile_json.h"
#include "guideline_texts.h"

#include <algorithm>
#include <cassert>

namespace afterbeat {

namespace {

std::vector<Profile> readBuiltIn() {
  std::vector<Profile> profiles;
  for (const std::string_view text : kGuidelineTexts) {
    auto profile = parseProfile(text);
    assert(profile && "a profile that comes with the program must be readable");
    if (profile) {
      profiles.push_back(std::move(*profile));
    }
  }
  return profiles;
}

} // namespace

const std::vector<Profile>& builtInProfiles() {
  static const std::vector<Profile> profiles = readBuiltIn();
  return profiles;
}

const Profile* builtInProfile(std::string_view id) {
  const auto& all = builtInProfiles();
  const auto found =
      std::find_if(all.begin(), all.end(), [id](const Profile& p) { return p.id == id; });
  return found == all.end() ? nullptr : &*found;
}

const Profile& defaultProfile() {
  const Profile* found = builtInProfile("european-2021");
  assert(found != nullptr);
  return *found;
}

std::string_view markWords(SourceMark mark) {
  switch (mark) {
  case SourceMark::read:
    return "read in the source";
  case SourceMark::secondary:
    return "read in a secondary publication";
  case SourceMark::memory:
    break;
  }
  return "from memory, check the source";
}

} // namespace afterbeat
