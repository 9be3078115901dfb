/// Frames of the rows in the real widget: pointing, selecting, scrolling. Google Benchmark; run
/// with the offscreen platform, pixel ratio by QT_SCALE_FACTOR.
///   bench_rows LONG.resuslog [benchmark options]
#include "app/window/rows/rows_view.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QEventLoop>
#include <QScrollBar>

#include <iostream>

using namespace afterbeat;
using namespace afterbeat::window;

namespace {

struct Stage {
  Session session;
  Selection selection;
  RowsView view{session, selection};

  /// Whether the record could be opened.
  bool open(const QString& path) {
    QEventLoop wait;
    QObject::connect(&session, &Session::stateChanged, &wait, &QEventLoop::quit);
    session.open(path);
    while (session.state() == Session::State::loading) {
      wait.exec();
    }
    if (session.state() != Session::State::ready) {
      return false;
    }
    selection.setExtent(extentOf(session.record(), session.figures()));
    selection.setMeasure(MeasureId::handsOffFraction);
    view.resize(1900, 900);
    view.show();
    QApplication::processEvents();
    return true;
  }
  /// All that the change asked to be painted.
  void frame() {
    QApplication::processEvents();
    // The platform would put frames together; every change is to have its own.
    QEvent now(QEvent::UpdateRequest);
    QCoreApplication::sendEvent(&view, &now);
  }
};

/// Says with the result how often the rows were painted for one change: fewer than once, and the
/// time is not that of a frame.
class Frames {
public:
  Frames(benchmark::State& state, Stage& stage) : state_(state) {
    connection_ = QObject::connect(stage.view.canvas(), &RowsCanvas::painted, [this] { ++count_; });
  }
  Frames(const Frames&) = delete;
  Frames& operator=(const Frames&) = delete;
  ~Frames() {
    QObject::disconnect(connection_);
    state_.counters["frames"] =
        benchmark::Counter(static_cast<double>(count_), benchmark::Counter::kAvgIterations);
  }

private:
  benchmark::State& state_;
  QMetaObject::Connection connection_;
  std::int64_t count_ = 0;
};

/// A frame for each of 600 moments through the rescue, which `choose` points at or selects.
void stepping(benchmark::State& state, Stage* stage, void (*choose)(Selection&, Time)) {
  const Time begin = stage->session.figures().window->begin;
  Frames frames(state, *stage);
  std::int64_t i = 0;
  for (auto _ : state) {
    choose(stage->selection, begin + Duration{(++i % 600) * 970'000});
    stage->frame();
  }
}

void pointing(benchmark::State& state, Stage* stage) {
  stepping(state, stage, [](Selection& selection, Time t) { selection.setCursor(t); });
}

void selecting(benchmark::State& state, Stage* stage) {
  stepping(state, stage, [](Selection& selection, Time t) { selection.lookAt(t); });
}

void scrolling(benchmark::State& state, Stage* stage) {
  QScrollBar* bar = stage->view.verticalScrollBar();
  Frames frames(state, *stage);
  int i = 0;
  for (auto _ : state) {
    bar->setValue((++i * 61) % std::max(1, bar->maximum()));
    stage->frame();
  }
}

} // namespace

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  if (argc < 2) {
    std::cerr << "bench_rows LONG.resuslog\n";
    return 2;
  }
  Stage stage;
  if (!stage.open(QString::fromLocal8Bit(argv[1]))) {
    std::cerr << "no record\n";
    return 3;
  }
  const auto add = [&stage](const char* name, void (*run)(benchmark::State&, Stage*)) {
    benchmark::RegisterBenchmark(name, run, &stage)->Unit(benchmark::kMillisecond);
  };
  add("rows/pointing", pointing);
  add("rows/selecting", selecting);
  add("rows/scrolling", scrolling);
  int rest = argc - 1;
  argv[1] = argv[0];
  benchmark::Initialize(&rest, argv + 1);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
