#include "tests/cli/process.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace afterbeat::test {
namespace {

TEST(Gather, ALogAndAnObserversNotes) {
  const Folder folder;
  folder.write("device.resuslog", sealed(smallRescue()));
  folder.write("notes.csv", "time;what;value;remark\n-1:00;collapse;;\n0:50;ROSC;;pulse felt\n");
  const Ran ran = folder.cli({"gather", "device.resuslog", "notes.csv@2", "-o", "case.resuslog"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(folder.cli({"check", "case.resuslog"}).exit, 0);
  const Ran measured = folder.cli({"measure", "case.resuslog", "--json"});
  const auto figures = nlohmann::json::parse(measured.out);
  for (const auto& measure : figures.at("measures")) {
    if (measure.at("id") == "collapse_to_circulation_returned") {
      EXPECT_EQ(measure.at("value"), 110);
    }
    if (measure.at("id") == "collapse_to_first_shock") {
      EXPECT_EQ(measure.at("value"), 32.5 + 58);
    }
  }
}

TEST(Gather, ASourceThatIsNotThere) {
  const Folder folder;
  const Ran ran = folder.cli({"gather", "nothing.csv", "-o", "case.resuslog"});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_FALSE(folder.has("case.resuslog"));
}

TEST(Gather, AnOffsetThatIsNoNumberIsNamed) {
  const Folder folder;
  folder.write("notes.csv", "time;what\n0:50;shock\n");
  const Ran ran = folder.cli({"gather", "notes.csv@2s", "-o", "case.resuslog"});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_NE(ran.err.find("\"2s\" after the @ is no number of seconds"), std::string::npos)
      << ran.err;
  // A file that has an @ in its name is read as it is called.
  folder.write("crew@pier.csv", "time;what\n0:50;shock\n");
  EXPECT_NE(folder.cli({"gather", "crew@pier.csv", "-o", "case.resuslog"}).exit, 3);
}

TEST(Gather, TheSourceIsNeverTheOutput) {
  const Folder folder;
  const std::string bytes = sealed(smallRescue());
  folder.write("device.resuslog", bytes);
  EXPECT_EQ(folder.cli({"gather", "device.resuslog", "-o", "device.resuslog"}).exit, 2);
  EXPECT_EQ(folder.read("device.resuslog"), bytes);
}

} // namespace
} // namespace afterbeat::test
