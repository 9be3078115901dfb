/// The plain way to zoom in a record's waves, to compare frames with: all samples of a channel in a
/// QCustomPlot graph with the library's adaptive sampling, all channels in one plot of 1900 x 900,
/// over the same stretches as the walk of bench_window. One line of JSON: milliseconds.
#include "core/resuslog/read_log.h"
#include "tests/bench/frames.h"

#include <QApplication>

#include <cstdio>

#include <qcustomplot.h>

using namespace afterbeat;

namespace {

void addGraph(QCustomPlot& plot, const Channel& channel) {
  auto* rect = new QCPAxisRect(&plot);
  plot.plotLayout()->addElement(plot.plotLayout()->rowCount(), 0, rect);
  auto* graph = plot.addGraph(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
  QVector<QCPGraphData> points;
  points.reserve(static_cast<qsizetype>(channel.samples.size()));
  for (const SampleBlock& block : channel.blocks) {
    for (std::size_t i = 0; i < block.count; ++i) {
      points.push_back(
          {seconds(channel.timeOf(block, i)), channel.physical(channel.samples[block.first + i])});
    }
  }
  graph->data()->set(points, true);
  graph->rescaleAxes();
}

} // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argc, argv);
  const auto log = readLogFile(argc > 1 ? argv[1] : "");
  if (!log) {
    return 3;
  }
  QCustomPlot plot;
  plot.resize(1900, 900);
  plot.plotLayout()->clear();
  for (const Channel& channel : log->records.front().record.channels) {
    addGraph(plot, channel);
  }
  plot.show();
  bench::settle();
  bench::Walk walk{"plain zoom", {}};
  constexpr double kLongest = 10800, kNotch = 0.8;
  constexpr int kNotches = 39;
  double length = kLongest;
  for (int i = 0; i < kNotches; ++i) {
    walk.steps.push_back([&plot, length] {
      const double begin = 0.3 * (kLongest - length);
      for (QCPAxisRect* rect : plot.axisRects()) {
        rect->axis(QCPAxis::atBottom)->setRange(begin, begin + length);
      }
      plot.replot(QCustomPlot::rpImmediateRefresh);
    });
    length *= kNotch;
  }
  const bench::FrameTimes times = bench::walked(walk, 2, [] { return true; });
  std::printf("{\"p50\": %.3f, \"p95\": %.3f, \"worst\": %.3f}\n", times.median, times.p95,
              times.worst);
  return 0;
}
