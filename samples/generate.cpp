// afterbeat-samples: writes the sample records and what is true of them.
#include "core/bytes/byte_source.h"
#include "samples/samples.h"

#include <cstdio>
#include <filesystem>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

namespace {

bool write(const std::filesystem::path& path, const std::string& bytes) {
  if (bytes.empty()) {
    fmt::print(stderr, "{}: could not be made\n", path.string());
    return false;
  }
  const auto done =
      afterbeat::replaceFile(path, [&](const afterbeat::ByteSink& sink) { return sink(bytes); });
  if (!done) {
    fmt::print(stderr, "{}: {}\n", path.string(), done.error().what);
  }
  return done.has_value();
}

} // namespace

int main(int argc, char** argv) {
  CLI::App app{"Writes invented rescues and drills (NAME.resuslog) and what is true of them "
               "(NAME.truth.json)."};
  std::string folder;
  std::uint64_t seed = 1;
  bool withLong = false, withLongest = false;
  app.add_option("OUTDIR", folder, "Folder to write into; made where it is missing")->required();
  app.add_option("--seed", seed, "The same number gives the same bytes")->capture_default_str();
  app.add_flag("--with-long", withLong, "Also the two long records for measuring speed (32 MB)");
  app.add_flag("--with-longest", withLongest,
               "Also three hours of four channels at 500 samples a second (60 MB)");
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return app.exit(error) == 0 ? 0 : 2;
  }
  std::error_code ignored; // writing says what is wrong
  std::filesystem::create_directories(folder, ignored);
  auto samples = afterbeat::samples::smallSamples(seed);
  if (withLong) {
    for (auto& sample : afterbeat::samples::longSamples(seed)) {
      samples.push_back(std::move(sample));
    }
  }
  if (withLongest) {
    samples.push_back(afterbeat::samples::threeHours(seed, 500));
  }
  bool good = true;
  for (const auto& sample : samples) {
    const auto base = std::filesystem::path(folder) / sample.name;
    good = write(base.string() + ".resuslog", logBytes(sample)) && good;
    good = write(base.string() + ".truth.json", truthBytes(sample)) && good;
  }
  return good ? 0 : 3;
}
