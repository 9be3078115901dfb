/// The plain way to show a record's waves: every channel in a QCustomPlot of its own, with the
/// library's adaptive sampling. Ends after the first complete picture.
#include "core/resuslog/read_log.h"

#include <QApplication>
#include <QTimer>
#include <QVBoxLayout>
#include <QWidget>

#include <qcustomplot.h>

using namespace afterbeat;

namespace {

void addPlot(QVBoxLayout& layout, const Channel& channel) {
  auto* plot = new QCustomPlot;
  plot->addGraph();
  QVector<double> x;
  QVector<double> y;
  for (const SampleBlock& block : channel.blocks) {
    for (std::size_t i = 0; i < block.count; ++i) {
      x.push_back(seconds(channel.timeOf(block, i)));
      y.push_back(channel.physical(channel.samples[block.first + i]));
    }
  }
  plot->graph()->setData(x, y, true);
  plot->rescaleAxes();
  layout.addWidget(plot);
}

} // namespace

int main(int argc, char** argv) {
  const QApplication application(argc, argv);
  const auto log = readLogFile(argc > 1 ? argv[1] : "");
  if (!log) {
    return 3;
  }
  QWidget window;
  QVBoxLayout layout(&window);
  for (const Channel& channel : log->records.front().record.channels) {
    addPlot(layout, channel);
  }
  window.resize(1280, 800);
  window.show();
  QTimer::singleShot(0, [&window] {
    window.repaint();
    QApplication::quit();
  });
  return QApplication::exec();
}
