#include "core/record/entry.h"

#include <set>
#include <string>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

template <std::size_t... I>
std::vector<EntryData> oneOfEach(std::index_sequence<I...> /*all*/) {
  return {EntryData{std::in_place_index<I>}...};
}

TEST(Entry, everyTypeHasItsOwnWord) {
  std::set<std::string> words;
  for (const EntryData& data :
       oneOfEach(std::make_index_sequence<std::variant_size_v<EntryData>>())) {
    if (!std::holds_alternative<entry::Other>(data)) {
      EXPECT_FALSE(typeName(data).empty());
      EXPECT_TRUE(words.insert(std::string(typeName(data))).second) << typeName(data);
    }
  }
  EXPECT_EQ(words.size(), std::variant_size_v<EntryData> - 1);
}

TEST(Entry, wordsAreTheFormatsOwn) {
  EXPECT_EQ(typeName(entry::PowerOn{}), "power_on");
  EXPECT_EQ(typeName(entry::ClockSet{}), "clock_set");
  EXPECT_EQ(typeName(entry::PatientMode{}), "patient_mode");
  EXPECT_EQ(typeName(entry::RescuerChange{}), "rescuer_change");
  EXPECT_EQ(typeName(entry::SelfTest{}), "self_test");
  EXPECT_EQ(typeName(entry::Unreadable{}), "unreadable");
  EXPECT_EQ(typeName(entry::LostSamples{}), "samples");
  EXPECT_EQ(typeName(entry::Other{"x_ray"}), "x_ray");
}

TEST(Entry, stretchesAreTheFiveTypesWithAnEnd) {
  int stretches = 0;
  for (const EntryData& data :
       oneOfEach(std::make_index_sequence<std::variant_size_v<EntryData>>())) {
    stretches += isStretch(data) ? 1 : 0;
  }
  EXPECT_EQ(stretches, 5);
  EXPECT_TRUE(isStretch(entry::Analysis{}));
  EXPECT_TRUE(isStretch(entry::Charge{}));
  EXPECT_TRUE(isStretch(entry::Cpr{}));
  EXPECT_TRUE(isStretch(entry::Rhythm{}));
  EXPECT_TRUE(isStretch(entry::Excluded{}));
}

} // namespace
} // namespace afterbeat
