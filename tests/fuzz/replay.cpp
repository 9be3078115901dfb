// Runs the fuzz target over a folder of files, and over each of them cut in the middle.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

int main(int count, char** arguments) {
  if (count != 2) {
    std::fprintf(stderr, "usage: resuslog_replay FOLDER\n");
    return 2;
  }
  std::vector<std::filesystem::path> paths;
  for (const auto& each : std::filesystem::directory_iterator(arguments[1])) {
    paths.push_back(each.path());
  }
  std::sort(paths.begin(), paths.end());
  for (const auto& path : paths) {
    std::ifstream stream(path, std::ios::binary);
    const std::string text(std::istreambuf_iterator<char>(stream), {});
    for (const std::size_t size : {text.size(), text.size() / 2, text.size() / 3}) {
      LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), size);
    }
    std::printf("%s\n", path.filename().c_str());
  }
  return paths.empty() ? 1 : 0;
}
