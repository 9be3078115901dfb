/// The real window over a long record: frames of zooming, moving, selecting and pointing, changes
/// of the threshold, and how long the window's thread is blocked.
///   bench_window LONG.resuslog [benchmark options]
/// Times of frames are counters in ms: p50, p95, worst.
#include "app/window/rows/rows_canvas.h"
#include "app/window/rows/rows_view.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"
#include "app/window/shell/main_window.h"
#include "app/window/shell/places_page.h"
#include "app/window/shell/record_page.h"
#include "app/window/waves/waves_plot.h"
#include "app/window/waves/waves_view.h"
#include "tests/bench/frames.h"

#include <benchmark/benchmark.h>

#include <QAction>
#include <QApplication>
#include <QMouseEvent>
#include <QTemporaryDir>
#include <QTimer>
#include <QWheelEvent>

#include <cmath>
#include <cstdio>

using namespace afterbeat;
using namespace afterbeat::window;
using namespace afterbeat::bench;

namespace {

constexpr int kPasses = 3;
constexpr QSize kSize{1900, 900};

void wheel(QWidget* over, double share, int notches) {
  const QPointF at(over->width() * share, over->height() * 0.5);
  QWheelEvent event(at, over->mapToGlobal(at), {}, {0, notches * 120}, Qt::NoButton, Qt::NoModifier,
                    Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(over, &event);
}

void mouse(QWidget* over, QEvent::Type type, const QPointF& at, bool down) {
  const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
  QMouseEvent event(type, at, over->mapToGlobal(at), button, down ? Qt::LeftButton : Qt::NoButton,
                    Qt::NoModifier);
  QCoreApplication::sendEvent(over, &event);
}

/// The window with a record in it, and what of it was painted since last asked.
class Shown {
public:
  explicit Shown(const QString& path) : path_(path) {
    QObject::connect(plot(), &WavesPlot::painted, plot(), [this] { waves_ = true; });
    QObject::connect(rows(), &RowsCanvas::painted, rows(), [this] { rows_ = true; });
    window_.resize(kSize);
    window_.show();
    open();
  }

  void open() {
    bool complete = false;
    const auto told = QObject::connect(&window_.session(), &Session::figuresChanged, &window_,
                                       [&complete] { complete = true; });
    window_.openFile(path_);
    while (!complete) {
      QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    QObject::disconnect(told);
    // Frames are measured with the hints there, which are drawn as well, not while they are made.
    while (!window_.session().hints()) {
      QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    settle();
  }

  [[nodiscard]] MainWindow& window() { return window_; }
  [[nodiscard]] Selection& selection() { return window_.selection(); }
  [[nodiscard]] WavesPlot* plot() { return window_.recordPage()->waves()->plot(); }
  [[nodiscard]] RowsCanvas* rows() { return window_.recordPage()->rows()->canvas(); }
  [[nodiscard]] bool tookWaves() { return std::exchange(waves_, false); }
  [[nodiscard]] bool tookRows() { return std::exchange(rows_, false); }

private:
  QString path_;
  MainWindow window_;
  bool waves_ = false, rows_ = false;
};

/// From three hours to two seconds and back around three places.
Walk zooming(Shown& shown) {
  Walk walk{"zoom", {}};
  // 0.8 a notch: three hours are two seconds after 39.
  constexpr int kNotches = 39;
  for (const double share : {0.3, 0.55, 0.8}) {
    for (const int direction : {1, -1}) {
      for (int i = 0; i < kNotches; ++i) {
        walk.steps.push_back([&shown, share, direction] { wheel(shown.plot(), share, direction); });
      }
    }
  }
  return walk;
}

/// Dragging the waves at seven lengths.
Walk panning(Shown& shown) {
  Walk walk{"pan", {}};
  constexpr int kFrames = 36;
  for (const double length : {9000.0, 3600.0, 600.0, 120.0, 20.0, 6.0, 2.0}) {
    for (int i = 0; i < kFrames; ++i) {
      walk.steps.push_back([&shown, length, i] {
        QWidget* plot = shown.plot();
        const QPointF at(plot->width() * 0.8 - i * 17.0, plot->height() * 0.5);
        if (i == 0) {
          const Time begin = *timeFromSeconds(900);
          shown.selection().setStretch({begin, begin + Duration{std::llround(length * 1e6)}});
          mouse(plot, QEvent::MouseButtonPress, at, true);
          return;
        }
        mouse(plot, QEvent::MouseMove, at, true);
        if (i == kFrames - 1) {
          mouse(plot, QEvent::MouseButtonRelease, at, false);
        }
      });
    }
  }
  return walk;
}

/// Moves over the rows in view, the button down to select, up to point.
Walk overRows(Shown& shown, bool down) {
  Walk walk{down ? "select" : "cursor", {}};
  constexpr int kFrames = 50;
  for (const int row : {0, 1, 2, 3}) {
    for (int i = 0; i < kFrames; ++i) {
      walk.steps.push_back([&shown, down, row, i] {
        RowsCanvas* rows = shown.rows();
        const QRect place = rows->rowRect(row);
        const QPointF at(place.left() + place.width() * (0.05 + 0.9 * i / kFrames),
                         place.center().y());
        if (i == 0) {
          shown.selection().lookAt(*timeFromSeconds(60 + 120.0 * row)); // brings the row into view
          if (down) {
            mouse(rows, QEvent::MouseButtonPress, at, true);
          }
          return;
        }
        mouse(rows, QEvent::MouseMove, at, down);
        if (i == kFrames - 1 && down) {
          mouse(rows, QEvent::MouseButtonRelease, at, false);
        }
      });
    }
  }
  return walk;
}

void report(benchmark::State& state, const FrameTimes& times) {
  state.SetIterationTime(times.median / 1000);
  state.counters["frames"] = static_cast<double>(times.frames);
  state.counters["p50"] = times.median;
  state.counters["p95"] = times.p95;
  state.counters["worst"] = times.worst;
}

void frames(benchmark::State& state, const Walk& walk, const std::function<bool()>& painted) {
  for (auto _ : state) {
    report(state, walked(walk, kPasses, painted));
  }
}

/// From the choice of a threshold to everything shown anew.
void threshold(benchmark::State& state, Shown& shown, const std::vector<double>& choices) {
  for (auto _ : state) {
    std::vector<double> least(choices.size(), 1e9);
    for (int pass = 0; pass < kPasses; ++pass) {
      for (std::size_t i = 0; i < least.size(); ++i) {
        FigureSettings settings = shown.window().session().settings();
        settings.pauseThreshold = *durationFromSeconds(choices[i]);
        bool changed = false;
        const auto told = QObject::connect(&shown.window().session(), &Session::figuresChanged,
                                           &shown.window(), [&changed] { changed = true; });
        least[i] = std::min(least[i], bench::shown([&] {
                              shown.window().session().setSettings(settings);
                              while (!changed) {
                                QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
                              }
                            }));
        QObject::disconnect(told);
      }
    }
    report(state, summary(least));
  }
}

/// The longest time the window's thread does not answer while something is done; the least of some
/// repetitions.
void blocked(benchmark::State& state, const Step& before, const Step& does) {
  for (auto _ : state) {
    double least = 1e9;
    for (int i = 0; i < kPasses; ++i) {
      before();
      settle();
      Watchdog watchdog;
      does();
      settle();
      least = std::min(least, watchdog.worstMilliseconds());
    }
    report(state, summary({least}));
  }
}

template <typename Does>
void once(const std::string& name, const Does& does) {
  benchmark::RegisterBenchmark(name.c_str(), does)
      ->Iterations(1)
      ->UseManualTime()
      ->Unit(benchmark::kMillisecond);
}

void registerAll(Shown& shown, const std::vector<Walk>& walks) {
  for (const Walk& walk : walks) {
    const bool rows = walk.name == "cursor";
    once("frame/" + walk.name, [&shown, &walk, rows](benchmark::State& state) {
      shown.selection().setStretch(shown.selection().extent());
      settle();
      frames(state, walk, [&shown, rows] {
        const bool waves = shown.tookWaves();
        return shown.tookRows() || (waves && !rows);
      });
    });
  }
  once("threshold/usual", [&shown](benchmark::State& state) {
    threshold(state, shown, {1, 2, 3, 5, 1.5});
  });
  once("memory", [](benchmark::State& state) {
    for (auto _ : state) {
      state.SetIterationTime(0);
    }
    state.counters["peak_mib"] = peakMemoryMiB();
  });
  const QList<QAction*> places = shown.window().places()->actions();
  for (QAction* place : places) {
    QAction* other = place == places.front() ? places.back() : places.front();
    once("blocked/" + place->text().remove(QLatin1Char('&')).toStdString(),
         [&shown, place, other](benchmark::State& state) {
           // Of a record just opened: what a place makes at its first visit counts.
           const Step before = [&shown, other] {
             other->trigger();
             shown.open();
           };
           blocked(state, before, [place] { place->trigger(); });
         });
  }
  once("blocked/Opening", [&shown, places](benchmark::State& state) {
    blocked(
        state, [places] { places.front()->trigger(); }, [&shown] { shown.open(); });
  });
  // Shorter than the time between two compressions: each of thousands is followed by a pause.
  once("threshold/every gap", [&shown](benchmark::State& state) {
    threshold(state, shown, {0.5, 0.51});
  });
}

int measure(int argc, char** argv) {
  Shown shown(QString::fromLocal8Bit(argv[1]));
  const std::vector<Walk> walks{zooming(shown), panning(shown), overRows(shown, true),
                                overRows(shown, false)};
  registerAll(shown, walks);
  int rest = argc - 1;
  argv[1] = argv[0];
  benchmark::Initialize(&rest, argv + 1);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}

} // namespace

int main(int argc, char** argv) {
  if (argc < 2) {
    std::fprintf(stderr, "bench_window LONG.resuslog [benchmark options]\n");
    return 2;
  }
  const QTemporaryDir settings;
  qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
  qputenv("QT_QPA_PLATFORM", "offscreen");
  // Without the wait in which a screen gathers updates: it is not work.
  qputenv("QT_QPA_UPDATE_IDLE_TIME", "0");
  const QApplication program(argc, argv);
  QApplication::setApplicationName(QStringLiteral("afterbeat"));
  int ended = 0;
  QTimer::singleShot(0, &program, [&] {
    ended = measure(argc, argv);
    QCoreApplication::quit();
  });
  QApplication::exec();
  return ended;
}
