// Takes a folder in, a few files from commit to commit, and prints a dot for each commit: to be
// killed on the way.
//   archive_child ARCHIVE FOLDER FILES_IN_STEP
#include "app/archive/take_in.h"

#include <QCoreApplication>

#include <cstdio>
#include <string>

int main(int argc, char** argv) {
  using namespace afterbeat::archive;
  const QCoreApplication app(argc, argv);
  const auto place = ArchivePlace::from(argv[1]);
  const auto archive =
      place ? Archive::openOrCreate(*place) : tl::unexpected(ArchiveError(place.error()));
  if (!archive) {
    std::fprintf(stderr, "%s\n", archive.error().sentence.c_str());
    return 1;
  }
  TakeInOrder order;
  order.sources = {argv[2]};
  order.filesInStep = std::stoul(argv[3]);
  const auto report = takeIn(*archive, order, [](const TakeInProgress&) {
    std::putchar('.');
    std::fflush(stdout);
  });
  if (!report) {
    std::fprintf(stderr, "%s\n", report.error().sentence.c_str());
    return 1;
  }
  return 0;
}
