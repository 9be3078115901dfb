#include "tests/archive/archive_folder.h"

#include "tests/archive/server.h"

#include <gtest/gtest.h>

#include <fstream>

#include <fmt/format.h>

namespace afterbeat::archive::testing {

fs::path samples() {
  return fs::path(AFTERBEAT_SOURCE_DIR) / "samples";
}

fs::path ArchiveFolder::writeLog(const std::string& name, const std::string& id, int shockS) const {
  const fs::path at = path() / name;
  fs::create_directories(at.parent_path());
  std::ofstream out(at);
  out << R"({"resuslog":"1.0",)" << (id.empty() ? "" : R"("id":")" + id + R"(",)")
      << R"("recorded":"2026-03-14T09:12:30+01:00","kind":"rescue","site":"Bathing jetty","synthetic":true})"
      << "\n"
      << R"({"t":0,"type":"power_on"})"
      << "\n"
      << R"({"t":8,"type":"electrodes","state":"attached"})"
      << "\n"
      << R"({"t":20,"type":"cpr","end":50,"rate_per_min":110})"
      << "\n"
      << fmt::format(R"({{"t":{},"type":"shock","delivered":true,"energy_j":200}})", shockS) << "\n"
      << R"({"t":120,"type":"cpr","end":180,"rate_per_min":112})"
      << "\n";
  return at;
}

std::string idOf(int n) {
  return fmt::format("urn:uuid:00000000-0000-4000-8000-{:012}", n);
}

std::string words(Engine engine) {
  return engine == Engine::file ? "file" : "server";
}

ArchivePlace ArchiveFolder::place() const {
  return engine_ == Engine::server ? ArchivePlace{true, "season_keeper"}
                                   : ArchivePlace{false, (path() / "season.afterbeat").string()};
}

Archive ArchiveFolder::openArchive() const {
  if (engine_ == Engine::server) {
    Server::running().empty();
  }
  auto archive = Archive::openOrCreate(place());
  if (!archive) {
    throw std::runtime_error(archive.error().sentence);
  }
  return *archive;
}

TakeInReport take(const Archive& archive, const std::vector<fs::path>& sources, bool keepBytes) {
  TakeInOrder order;
  order.sources = sources;
  order.keepBytes = keepBytes;
  auto report = takeIn(archive, order);
  if (!report) {
    throw std::runtime_error(report.error().sentence);
  }
  return *report;
}

FigureCell cellOf(const Season& season, const std::string& file, MeasureId id) {
  std::optional<FigureCell> found;
  for (std::size_t i = 0; i < season.records.size(); ++i) {
    if (season.records[i].file == file) {
      EXPECT_FALSE(found) << "two records of " << file;
      found = season.column(id)[i];
    }
  }
  if (!found) {
    throw std::runtime_error("no record of " + file);
  }
  return *found;
}

} // namespace afterbeat::archive::testing
