#include "tests/bench/frames.h"

#include <QCoreApplication>

#include <sys/resource.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <limits>

namespace afterbeat::bench {

namespace {

using Clock = std::chrono::steady_clock;

double millisecondsSince(Clock::time_point begin) {
  return std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
}

double atShare(const std::vector<double>& sorted, double share) {
  const auto at = static_cast<std::size_t>(std::ceil(share * static_cast<double>(sorted.size())));
  return sorted[std::clamp<std::size_t>(at, 1, sorted.size()) - 1];
}

} // namespace

void settle() {
  // A step queues a replot, the replot an update, the update a paint event; one turn more for what
  // painting may have queued.
  constexpr int kTurns = 5;
  for (int i = 0; i < kTurns; ++i) {
    QCoreApplication::processEvents();
  }
}

double shown(const Step& does) {
  const auto begin = Clock::now();
  does();
  settle();
  return millisecondsSince(begin);
}

FrameTimes walked(const Walk& walk, int passes, const std::function<bool()>& painted) {
  std::vector<double> least(walk.steps.size(), std::numeric_limits<double>::infinity());
  for (int pass = 0; pass < passes; ++pass) {
    for (std::size_t i = 0; i < walk.steps.size(); ++i) {
      least[i] = std::min(least[i], shown(walk.steps[i]));
      if (!painted()) {
        std::fprintf(stderr, "%s: frame %zu was not painted\n", walk.name.c_str(), i);
        std::exit(1);
      }
    }
  }
  return summary(std::move(least));
}

FrameTimes summary(std::vector<double> milliseconds) {
  std::sort(milliseconds.begin(), milliseconds.end());
  return {milliseconds.size(), atShare(milliseconds, 0.5), atShare(milliseconds, 0.95),
          milliseconds.back()};
}

Watchdog::Watchdog() : thread_([this] { run(); }) {
  while (handled_ == 0) {
    QCoreApplication::processEvents();
  }
  worst_ = 0;
}

Watchdog::~Watchdog() {
  stop_ = true;
  while (!ended_) {
    QCoreApplication::processEvents();
  }
  thread_.join();
}

double Watchdog::worstMilliseconds() {
  for (const int before = handled_; handled_ < before + 2;) {
    QCoreApplication::processEvents();
  }
  return worst_;
}

void Watchdog::run() {
  constexpr std::chrono::milliseconds kBetween{1};
  while (!stop_) {
    std::atomic<bool> handled = false;
    const auto sent = Clock::now();
    QMetaObject::invokeMethod(
        &here_,
        [this, &handled, sent] {
          worst_ = std::max(worst_, millisecondsSince(sent));
          ++handled_;
          handled = true;
          handled.notify_one();
        },
        Qt::QueuedConnection);
    handled.wait(false);
    std::this_thread::sleep_for(kBetween);
  }
  ended_ = true;
}

double peakMemoryMiB() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

} // namespace afterbeat::bench
