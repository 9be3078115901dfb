// The published schemas, by valijson: what a writer may write passes, every listed slip fails.
#include "core/measures/figures.h"

#include <filesystem>
#include <fstream>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

namespace afterbeat {
namespace {

using nlohmann::json;

const std::string kSource = AFTERBEAT_SOURCE_DIR;

std::string fileText(const std::string& path) {
  std::ifstream file(kSource + "/" + path, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

/// Complete lines of a file; what follows the last line end is a line only half written.
std::vector<std::string> lines(const std::string& path) {
  std::istringstream text(fileText(path));
  std::vector<std::string> list;
  for (std::string line; std::getline(text, line) && !text.eof();) {
    list.push_back(line);
  }
  return list;
}

class Checker {
public:
  explicit Checker(const std::string& path) {
    const json document = json::parse(fileText(path));
    valijson::adapters::NlohmannJsonAdapter adapter(document);
    valijson::SchemaParser().populateSchema(adapter, schema_);
  }
  /// Empty if the value is valid, else why it is not.
  std::string fault(const json& value) const {
    valijson::Validator validator;
    valijson::ValidationResults results;
    if (validator.validate(schema_, valijson::adapters::NlohmannJsonAdapter(value), &results)) {
      return {};
    }
    valijson::ValidationResults::Error error;
    return results.popError(error) ? error.description : "not valid";
  }

private:
  valijson::Schema schema_;
};

const Checker& lineChecker() {
  static const Checker checker("resources/format/resus-log-1.0.schema.json");
  return checker;
}

const Checker& figuresChecker() {
  static const Checker checker("resources/format/measure-output.schema.json");
  return checker;
}

const Checker& checkerFor(const std::string& file) {
  return file == "measure-output" ? figuresChecker() : lineChecker();
}

class Right : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Lines, Right, testing::Values("header", "entry", "measure-output"));

TEST_P(Right, IsAccepted) {
  const auto cases = lines(std::string("tests/core/format/right/") + GetParam() + ".jsonl");
  EXPECT_GE(cases.size(), 5U);
  for (const auto& line : cases) {
    const json one = json::parse(line);
    EXPECT_EQ(checkerFor(GetParam()).fault(one.at("line")), "") << one.at("why");
  }
}

class Wrong : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Lines, Wrong,
                         testing::Values("header", "entry", "line", "measure-output"));

TEST_P(Wrong, IsRefused) {
  const auto cases = lines(std::string("tests/core/format/wrong/") + GetParam() + ".jsonl");
  EXPECT_GE(cases.size(), 4U);
  for (const auto& line : cases) {
    const json one = json::parse(line);
    EXPECT_NE(checkerFor(GetParam()).fault(one.at("line")), "") << one.at("why");
  }
}

TEST(Schema, HoldsForEveryLineOfEverySample) {
  int files = 0;
  for (const auto& file : std::filesystem::directory_iterator(kSource + "/samples")) {
    if (file.path().extension() != ".resuslog") {
      continue;
    }
    ++files;
    int number = 0;
    for (const auto& line : lines("samples/" + file.path().filename().string())) {
      ++number;
      ASSERT_EQ(lineChecker().fault(json::parse(line)), "")
          << file.path().filename() << ":" << number;
    }
    EXPECT_GT(number, 10);
  }
  EXPECT_GE(files, 8);
}

// The list in the schema is the list in the program: a new measure is published, or this fails.
TEST(MeasureSchema, KnowsEveryMeasureAndItsUnit) {
  const json schema = json::parse(fileText("resources/format/measure-output.schema.json"));
  const json& measure = schema.at("definitions").at("measure").at("properties");
  std::vector<std::string> names;
  for (std::size_t i = 0; i < static_cast<std::size_t>(MeasureId::count_); ++i) {
    const MeasureInfo& info = measureInfo(static_cast<MeasureId>(i));
    names.emplace_back(info.name);
    EXPECT_THAT(measure.at("unit").at("enum").get<std::vector<std::string>>(),
                testing::Contains(std::string(info.unit)));
  }
  EXPECT_EQ(measure.at("id").at("enum").get<std::vector<std::string>>(), names);
}

} // namespace
} // namespace afterbeat
