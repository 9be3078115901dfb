/// Runs `afterbeat-cli` as a person would, under an awkward time zone and locale.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace afterbeat::test {

struct Ran {
  int exit = -1;
  std::string out, err;
};

/// Runs a program in `folder`, in the zone Asia/Kathmandu (+05:45) and a locale whose decimals are
/// written with a comma.
[[nodiscard]] Ran runProgram(const std::vector<std::string>& words,
                             const std::filesystem::path& folder);

/// A folder of its own for each test, removed at the end.
class Folder {
public:
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }
  /// Writes a file and returns its name.
  std::string write(const std::string& name, const std::string& bytes) const;
  [[nodiscard]] std::string read(const std::string& name) const;
  [[nodiscard]] bool has(const std::string& name) const;
  /// Runs `afterbeat-cli` with these words here.
  [[nodiscard]] Ran cli(std::vector<std::string> words) const;

private:
  std::filesystem::path path_;
};

/// Lines of a log closed by a right `end` line.
[[nodiscard]] std::string sealed(const std::vector<std::string>& lines);

/// A small rescue: 30 compressions 0.5 s apart, a pause of 10 s with an analysis and a shock, 30
/// more.
[[nodiscard]] std::vector<std::string> smallRescue();

} // namespace afterbeat::test
