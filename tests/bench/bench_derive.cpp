/// Times what a whole record's waveforms say, and the pyramids that draw them.
///   bench_derive LONG.resuslog [passes]
/// Of the record only ECG, impedance and acceleration are used, and nothing of what its device
/// wrote down about compressions and breaths. Writes an object: least milliseconds of the passes,
/// and the memory that deriving took beyond what was there before, in MiB.
#include "core/resuslog/read_log.h"
#include "core/signal/derive/derive.h"
#include "core/signal/min_max_pyramid.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <fstream>
#include <iostream>
#include <limits>
#include <string>

using namespace afterbeat;

namespace {

template <typename Does>
double leastMilliseconds(int passes, const Does& does) {
  double least = std::numeric_limits<double>::infinity();
  for (int i = 0; i < passes; ++i) {
    const auto begin = std::chrono::steady_clock::now();
    does();
    least = std::min(
        least, std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin)
                   .count());
  }
  return least;
}

/// The kernel's figure of that name, in MiB ("VmRSS", "VmHWM").
double memoryMiB(const std::string& name) {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);) {
    if (line.rfind(name + ":", 0) == 0) {
      return std::stod(line.substr(name.size() + 1)) / 1024;
    }
  }
  return 0;
}

/// What a device that keeps these waveforms alone would have left.
Record wavesOnly(Record record) {
  auto& channels = record.channels;
  channels.erase(std::remove_if(channels.begin(), channels.end(),
                                [](const Channel& channel) {
                                  return channel.quantity != "ecg" &&
                                         channel.quantity != "impedance" &&
                                         channel.quantity != "acceleration";
                                }),
                 channels.end());
  auto& entries = record.entries;
  entries.erase(std::remove_if(entries.begin(), entries.end(),
                               [](const Entry& e) {
                                 return e.complete<entry::Compression>() ||
                                        e.complete<entry::Ventilation>() ||
                                        e.complete<entry::Rhythm>();
                               }),
                entries.end());
  return record;
}

} // namespace

int main(int argc, char** argv) {
  auto log = argc > 1 ? readLogFile(argv[1]) : tl::unexpected(Refusal{});
  if (!log) {
    std::cerr << "bench_derive LONG.resuslog [passes]\n";
    return 2;
  }
  const int passes = argc > 2 ? std::stoi(argv[2]) : 5;
  const std::vector<Channel>& all = log->records.front().record.channels;
  std::size_t samples = 0;
  for (const Channel& channel : all) {
    samples += channel.samples.size();
  }
  const double pyramids = leastMilliseconds(passes, [&all] {
    for (const Channel& channel : all) {
      const MinMaxPyramid pyramid(channel.samples, 2);
    }
  });
  const Record record = wavesOnly(std::move(log->records.front().record));
  log = tl::unexpected(Refusal{});
  std::ofstream("/proc/self/clear_refs") << 5; // the highest figure starts anew
  const double before = memoryMiB("VmRSS");
  std::size_t entries = 0;
  const double once =
      leastMilliseconds(1, [&] { entries = derive(record, DeriveWhat::all()).entries.size(); });
  const double memory = memoryMiB("VmHWM") - before;
  const double derived = std::min(once, leastMilliseconds(passes - 1, [&record] {
                                    static_cast<void>(derive(record, DeriveWhat::all()));
                                  }));
  std::cout << nlohmann::json{{"derive_ms", derived},
                              {"derive_mib", memory},
                              {"entries", entries},
                              {"pyramids_ms", pyramids},
                              {"samples", samples}}
                   .dump()
            << "\n";
  return 0;
}
