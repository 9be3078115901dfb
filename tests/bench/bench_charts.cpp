/// What making and painting the charts of 100 000 records costs: Google Benchmark.
///   bench_charts [benchmark options]
#include "app/papers/charts/chart_placed.h"
#include "app/papers/charts/season_charts.h"
#include "core/compare/filter.h"
#include "samples/season/made_season.h"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <benchmark/benchmark.h>

using namespace afterbeat;
using namespace afterbeat::papers;

namespace {

struct Ready {
  Ready() {
    samples::SeasonPlan plan;
    plan.records = 100'000;
    plan.firstDay = std::chrono::year(2006) / 1 / 1;
    made = std::make_unique<samples::MadeSeason>(plan);
    season = made->season();
    rescues = ofKind(season, everything(season), RecordKind::rescue);
  }
  std::unique_ptr<samples::MadeSeason> made;
  Season season;
  Chosen rescues;
};

const Ready& ready() {
  static const Ready one;
  return one;
}

/// From the result to the last pixel of a chart as wide as a window.
template <typename MakeChart>
void charting(benchmark::State& state, const MakeChart& make) {
  QImage image(1200, 800, QImage::Format_RGB32);
  for (auto _ : state) {
    const auto chart = std::make_shared<const Chart>(make());
    QPainter painter(&image);
    ChartPlaced(chart, QRectF(0, 0, 1200, 800), ChartLook::screenLight()).paint(painter);
    benchmark::DoNotOptimize(image.bits());
  }
}

void bySite(benchmark::State& state) {
  charting(state, [] {
    const auto found =
        *spread(ready().season, ready().rescues, MeasureId::longestPause, GroupBy::site);
    return spreadChart(ready().season, found, Words{});
  });
}

void alongTime(benchmark::State& state) {
  OverTimeSettings settings;
  settings.subject = ValueOf{MeasureId::longestPause};
  charting(state, [&] {
    return overTimeChart(ready().season, *overTime(ready().season, ready().rescues, settings),
                         Words{});
  });
}

void byStage(benchmark::State& state) {
  charting(state, [] {
    return stageChart(ready().season, *stages(ready().season, ready().rescues, StagesFrom::call),
                      Words{});
  });
}

void recordBars(benchmark::State& state) {
  charting(state, [] {
    return stageBarsChart(ready().season,
                          *stages(ready().season, ready().rescues, StagesFrom::call), Words{});
  });
}

} // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  benchmark::DoNotOptimize(ready());
  const auto add = [](const char* name, void (*run)(benchmark::State&)) {
    benchmark::RegisterBenchmark(name, run)->Unit(benchmark::kMillisecond);
  };
  add("painted/longest pause by site", bySite);
  add("painted/longest pause over time", alongTime);
  add("painted/stages", byStage);
  add("painted/stages, record by record", recordBars);
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
