// afterbeat-season: writes a season of invented records as event logs.
#include "core/bytes/byte_source.h"
#include "samples/season/write_season.h"

#include <cstdio>
#include <filesystem>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

int main(int argc, char** argv) {
  CLI::App app{
      "Writes a season of invented rescues and drills around the lake, one event log each."};
  afterbeat::samples::SeasonPlan plan;
  std::string folder;
  bool slow = false, training = false;
  app.add_option("OUTDIR", folder, "Folder to write into; made where it is missing")->required();
  app.add_option("--records", plan.records, "How many")->capture_default_str();
  app.add_option("--seed", plan.seed, "The same number gives the same season")
      ->capture_default_str();
  app.add_option("--missing", plan.missing, "Share of what is not recorded, 0 to 1")
      ->capture_default_str()
      ->check(CLI::Range(0.0, 1.0));
  app.add_flag("--slow-site", slow, "At the north boathouse electrodes take 1.8 times as long");
  app.add_flag("--training", training,
               "From 2025-01-01 on shocks follow advice in 0.6 of the time");
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return app.exit(error) == 0 ? 0 : 2;
  }
  plan.slowSite = slow ? 3 : -1;
  if (training) {
    plan.training = std::chrono::year(2025) / 1 / 1;
  }
  std::error_code ignored; // writing says what is wrong
  std::filesystem::create_directories(folder, ignored);
  for (std::size_t i = 0; i < plan.records; ++i) {
    const auto file = seasonFile(plan, i);
    const auto done =
        afterbeat::replaceFile(std::filesystem::path(folder) / file.name,
                               [&](const afterbeat::ByteSink& sink) { return sink(file.bytes); });
    if (!done) {
      fmt::print(stderr, "{}: {}\n", file.name, done.error().what);
      return 3;
    }
  }
  return 0;
}
