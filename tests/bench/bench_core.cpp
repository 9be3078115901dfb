/// Reading and measuring inside the process, without starting it: Google Benchmark.
///   bench_core EVENTS.resuslog LONG.resuslog [benchmark options]
#include "core/measures/figures.h"
#include "core/resuslog/read_log.h"

#include <benchmark/benchmark.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>
#include <iterator>
#include <sstream>

using namespace afterbeat;

namespace {

std::string contents(const char* path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void reading(benchmark::State& state, const std::string& bytes) {
  for (auto _ : state) {
    MemorySource source(bytes);
    auto log = readLog(source);
    benchmark::DoNotOptimize(log);
  }
  state.SetBytesProcessed(static_cast<std::int64_t>(bytes.size()) *
                          static_cast<std::int64_t>(state.iterations()));
}

void plainReading(benchmark::State& state, const std::string& bytes) {
  for (auto _ : state) {
    std::istringstream in(bytes);
    std::string line;
    while (std::getline(in, line)) {
      auto object = nlohmann::json::parse(line);
      benchmark::DoNotOptimize(object);
    }
  }
  state.SetBytesProcessed(static_cast<std::int64_t>(bytes.size()) *
                          static_cast<std::int64_t>(state.iterations()));
}

void measuring(benchmark::State& state, const std::string& bytes) {
  MemorySource source(bytes);
  const auto log = readLog(source);
  for (auto _ : state) {
    auto figures = computeFigures(log->records.front().record);
    benchmark::DoNotOptimize(figures);
  }
}

} // namespace

int main(int argc, char** argv) {
  if (argc < 3) {
    std::cerr << "bench_core EVENTS.resuslog LONG.resuslog\n";
    return 2;
  }
  const std::string events = contents(argv[1]);
  const std::string samples = contents(argv[2]);
  benchmark::RegisterBenchmark("read/events", reading, events)->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("read/events/nlohmann_alone", plainReading, events)
      ->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("read/3h", reading, samples)->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("read/3h/nlohmann_alone", plainReading, samples)
      ->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("figures/events", measuring, events)->Unit(benchmark::kMillisecond);
  int rest = argc - 2;
  argv[2] = argv[0];
  benchmark::Initialize(&rest, argv + 2);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
