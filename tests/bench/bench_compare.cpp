/// What looking at 100 000 records costs, apart from where they come from: Google Benchmark.
///   bench_compare [benchmark options]
#include "core/compare/filter.h"
#include "core/compare/order.h"
#include "core/compare/over_time.h"
#include "core/compare/spread.h"
#include "core/compare/stages.h"
#include "core/compare/stand_out.h"
#include "samples/season/made_season.h"

#include <benchmark/benchmark.h>

using namespace afterbeat;

namespace {

constexpr std::size_t kRecords = 100'000;

const samples::MadeSeason& made() {
  static const samples::MadeSeason season([] {
    samples::SeasonPlan plan;
    plan.records = kRecords;
    plan.firstDay = std::chrono::year(2006) / 1 / 1;
    plan.slowSite = 3;
    return plan;
  }());
  return season;
}

struct Ready {
  Season season = made().season();
  Chosen all = everything(season);
  Chosen rescues = ofKind(season, all, RecordKind::rescue);
};

const Ready& ready() {
  static const Ready one;
  return one;
}

void filterWords(benchmark::State& state, const char* words) {
  Filter filter;
  filter.words = words;
  for (auto _ : state) {
    benchmark::DoNotOptimize(matching(ready().season, filter));
  }
}

void filterChoices(benchmark::State& state) {
  Filter filter;
  filter.kind = RecordKind::rescue;
  filter.hadShock = true;
  filter.longestPauseCause = PauseCause::noReasonRecorded;
  for (auto _ : state) {
    benchmark::DoNotOptimize(matching(ready().season, filter));
  }
}

void sorting(benchmark::State& state, const Order& order) {
  for (auto _ : state) {
    Chosen chosen = ready().all;
    sortBy(ready().season, chosen, order);
    benchmark::DoNotOptimize(chosen);
  }
}

void spreading(benchmark::State& state, GroupBy by) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        spread(ready().season, ready().rescues, MeasureId::chestCompressionFraction, by));
  }
}

void charting(benchmark::State& state, const OverTimeSettings& settings) {
  for (auto _ : state) {
    const auto chart = overTime(ready().season, ready().rescues, settings);
    benchmark::DoNotOptimize(words(*chart));
  }
}

void staging(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(stages(ready().season, ready().rescues, StagesFrom::call));
  }
}

void standingOut(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(worthALook(ready().season, ready().all, defaultProfile()));
  }
}

template <typename... With>
void add(const char* name, With&&... with) {
  benchmark::RegisterBenchmark(name, std::forward<With>(with)...)->Unit(benchmark::kMillisecond);
}

} // namespace

int main(int argc, char** argv) {
  add("filter/two words", filterWords, "north rescue");
  add("filter/no such word", filterWords, "lighthouse");
  add("filter/choices", filterChoices);
  add("sort/measure", sorting, Order{MeasureId::preShockPauseWorst, true});
  add("sort/site", sorting, Order{Fact::site, false});
  add("sort/file", sorting, Order{Fact::file, true});
  add("sort/id", sorting, Order{Fact::id, false});
  add("sort/day", sorting, Order{Fact::day, true});
  add("chart/spread by site", spreading, GroupBy::site);
  add("chart/spread by quarter", spreading, GroupBy::quarter);
  OverTimeSettings settings{ValueOf{MeasureId::longestPause}};
  settings.steps = {{std::chrono::year(2016) / 1 / 1, "new training from here"}};
  add("chart/run, every record", charting, settings);
  settings.chart = ChartKind::individuals;
  add("chart/individuals, every record", charting, settings);
  settings.period = Period::month;
  settings.subject = CountedShare{MeasureId::compressionRateInRange};
  add("chart/shares by month", charting, settings);
  settings.subject = CountedFor{};
  add("chart/counts by month", charting, settings);
  add("chart/stages", staging);
  add("chart/worth a look", standingOut);
  made(); // before anything is timed
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
