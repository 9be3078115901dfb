#include "tests/cli/process.h"

#include "core/bytes/digest.h"

#include <cstdlib>
#include <fstream>
#include <iterator>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fmt/format.h>

namespace afterbeat::test {
namespace {

std::string contents(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void becomeProgram(const std::vector<std::string>& words, const std::filesystem::path& folder,
                   const std::filesystem::path& out, const std::filesystem::path& err) {
  setenv("TZ", "Asia/Kathmandu", 1);
  setenv("LC_ALL", "de_DE.UTF-8", 1);
  setenv("LOCPATH", AFTERBEAT_LOCALES, 1);
  unsetenv("DISPLAY");
  unsetenv("QT_QPA_PLATFORM");
  const int o = ::open(out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
  const int e = ::open(err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
  std::vector<char*> arguments;
  for (const std::string& word : words) {
    arguments.push_back(const_cast<char*>(word.c_str()));
  }
  arguments.push_back(nullptr);
  if (chdir(folder.c_str()) != 0 || dup2(o, STDOUT_FILENO) < 0 || dup2(e, STDERR_FILENO) < 0) {
    _exit(126);
  }
  execvp(arguments[0], arguments.data());
  _exit(127);
}

} // namespace

Ran runProgram(const std::vector<std::string>& words, const std::filesystem::path& folder) {
  const auto out = folder / ".stdout";
  const auto err = folder / ".stderr";
  const pid_t child = fork();
  if (child == 0) {
    becomeProgram(words, folder, out, err);
  }
  int status = 0;
  waitpid(child, &status, 0);
  Ran ran{WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status), contents(out),
          contents(err)};
  std::filesystem::remove(out);
  std::filesystem::remove(err);
  return ran;
}

Folder::Folder() {
  std::string name = (std::filesystem::temp_directory_path() / "afterbeat-XXXXXX").string();
  path_ = mkdtemp(name.data());
}

Folder::~Folder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

std::string Folder::write(const std::string& name, const std::string& bytes) const {
  std::ofstream(path_ / name, std::ios::binary) << bytes;
  return name;
}

std::string Folder::read(const std::string& name) const {
  return contents(path_ / name);
}

bool Folder::has(const std::string& name) const {
  return std::filesystem::exists(path_ / name);
}

Ran Folder::cli(std::vector<std::string> words) const {
  words.insert(words.begin(), AFTERBEAT_BINARY_DIR "/bin/afterbeat-cli");
  return runProgram(words, path_);
}

std::string sealed(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) {
    text += line + "\n";
  }
  return text + fmt::format("{{\"t\":100,\"type\":\"end\",\"entries\":{},\"sha256\":\"{}\"}}\n",
                            lines.size() - 1, sha256Hex(text));
}

std::vector<std::string> smallRescue() {
  std::vector<std::string> lines{
      R"({"resuslog":"1.0","id":"urn:uuid:6f0a52f4-53bb-4f3e-9a0e-0a4c0f1c2d3e","recorded":"2026-03-14T09:12:30+01:00","kind":"rescue","patient":{"category":"adult"},"site":"Ferry terminal","synthetic":true})",
      R"({"t":0,"type":"power_on"})", R"({"t":5,"type":"electrodes","state":"attached"})"};
  for (int i = 0; i < 30; ++i) {
    lines.push_back(
        fmt::format("{{\"t\":{},\"type\":\"compression\",\"depth_mm\":52}}", 10 + i * 0.5));
  }
  lines.push_back(R"({"t":26,"end":30,"type":"analysis","advice":"shock"})");
  lines.push_back(R"({"t":32.5,"type":"shock","delivered":true,"energy_j":150})");
  for (int i = 0; i < 30; ++i) {
    lines.push_back(
        fmt::format("{{\"t\":{},\"type\":\"compression\",\"depth_mm\":54}}", 34.5 + i * 0.5));
  }
  lines.push_back(R"({"t":60,"type":"power_off"})");
  return lines;
}

} // namespace afterbeat::test
