/// Every chart as pictures, for the eye: chart_pictures FOLDER
#include "app/papers/charts/chart_files.h"
#include "app/papers/charts/season_charts.h"
#include "core/compare/filter.h"
#include "tests/papers/charts/season_example.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QImage>

#include <cstdio>

namespace {

using namespace afterbeat;
using namespace afterbeat::papers;

void write(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) {
    std::fprintf(stderr, "%s could not be written\n", qPrintable(path));
  }
}

void writeAll(const QString& name, const Chart& chart) {
  QElapsedTimer timer;
  timer.start();
  write(name + "-light.png", chartAsPng(chart, 900, ChartLook::screenLight(), 1));
  std::printf("%s: %lld ms\n", qPrintable(name), static_cast<long long>(timer.elapsed()));
  write(name + "-dark.png", chartAsPng(chart, 900, ChartLook::screenDark(), 1));
  write(name + ".svg", chartAsSvg(chart, 900, ChartLook::screenLight()));
  ChartLook paper = ChartLook::paperLook();
  const QImage print = QImage::fromData(chartAsPng(chart, 520, paper, 2));
  print.convertToFormat(QImage::Format_Grayscale8).save(name + "-grey.png");
}

void writeSeason(const QString& folder, std::size_t count, const Words& words) {
  const Season season = test::exampleSeason(count);
  const Chosen rescues = ofKind(season, everything(season), RecordKind::rescue);
  const QString name = QStringLiteral("%1/%2-%3-").arg(folder, words.language()).arg(count);
  writeAll(name + "site",
           spreadChart(season,
                       *spread(season, rescues, MeasureId::preShockPauseMedian, GroupBy::site),
                       words));
  writeAll(name + "share",
           spreadChart(season,
                       *spread(season, rescues, MeasureId::handsOffFraction, GroupBy::quarter),
                       words));
  OverTimeSettings settings;
  settings.subject = ValueOf{MeasureId::longestPause};
  writeAll(name + "run", overTimeChart(season, *overTime(season, rescues, settings), words));
  using namespace std::chrono;
  settings.steps.push_back({sys_days{2025y / April / 1}, "new training from here"});
  settings.chart = ChartKind::individuals;
  settings.period = Period::month;
  writeAll(name + "months", overTimeChart(season, *overTime(season, rescues, settings), words));
  settings.subject = RecordsWithShock{};
  settings.period = Period::quarter;
  writeAll(name + "shares", overTimeChart(season, *overTime(season, rescues, settings), words));
  const Stages found = *stages(season, rescues, StagesFrom::call);
  writeAll(name + "stages", stageChart(season, found, words));
  writeAll(name + "bars", stageBarsChart(season, found, words));
}

} // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  if (argc != 2 || !QDir().mkpath(QString::fromLocal8Bit(argv[1]))) {
    std::fprintf(stderr, "chart_pictures FOLDER\n");
    return 2;
  }
  const QString folder = QString::fromLocal8Bit(argv[1]);
  for (const std::size_t count : {0U, 1U, 4U, 40U, 400U, 100'000U}) {
    writeSeason(folder, count, Words{});
  }
  writeSeason(folder, 400, Words::inLanguage(QStringLiteral("de")));
  return 0;
}
