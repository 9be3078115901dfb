/// Makes the archive of the pictures of many records: a season with a slow site and a training, of
/// which the latest records have files, so that they can be opened and laid side by side.
///   look_archive FILE RECORDS FOLDER
#include "samples/season/write_season.h"
#include "tests/archive/made_archive.h"

#include <QCoreApplication>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>

namespace {

constexpr std::size_t kWithFiles = 20;

} // namespace

int main(int argc, char** argv) {
  using namespace afterbeat;
  const QCoreApplication app(argc, argv);
  if (argc != 4) {
    std::fputs("look_archive FILE RECORDS FOLDER\n", stderr);
    return 2;
  }
  samples::SeasonPlan plan;
  plan.records = std::stoul(argv[2]);
  plan.firstDay = std::chrono::year(2006) / 1 / 1;
  plan.slowSite = 3;
  plan.training = std::chrono::year(2019) / 3 / 1;
  try {
    archive::testing::makeArchive({false, argv[1]}, plan, argv[3]);
  } catch (const archive::ArchiveFailure& failure) {
    std::fprintf(stderr, "%s\n", failure.what());
    return 1;
  }
  for (std::size_t i = plan.records - std::min(plan.records, kWithFiles); i < plan.records; ++i) {
    const samples::SeasonFile file = samples::seasonFile(plan, i);
    const std::filesystem::path folder = std::filesystem::path(argv[3]) / std::to_string(i);
    std::filesystem::create_directories(folder);
    std::ofstream(folder / file.name, std::ios::binary) << file.bytes;
  }
  return 0;
}
