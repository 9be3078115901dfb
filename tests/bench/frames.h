/// Timing what a window shows: frames, and how long its thread is blocked.
#pragma once

#include <QObject>

#include <atomic>
#include <chrono>
#include <functional>
#include <string>
#include <thread>
#include <vector>

namespace afterbeat::bench {

/// One thing a user does, e.g. one notch of the wheel.
using Step = std::function<void()>;

/// Steps that can be walked again and again with the same pictures.
struct Walk {
  std::string name;
  std::vector<Step> steps;
};

/// Milliseconds of a walk's frames.
struct FrameTimes {
  std::size_t frames = 0;
  double median = 0, p95 = 0, worst = 0;
};

/// Handles everything that is due until nothing more is: then what was done is on the screen.
void settle();

/// Milliseconds from the begin of `does` until all of it is shown.
[[nodiscard]] double shown(const Step& does);

/// Walks `passes` times. A frame counts with the least of its passes, so that what other programs
/// do meanwhile takes no part; `painted` after each frame false: the program ends with 1.
[[nodiscard]] FrameTimes walked(const Walk& walk, int passes, const std::function<bool()>& painted);
/// From one time for each frame.
[[nodiscard]] FrameTimes summary(std::vector<double> milliseconds);

/// How long an event waits at worst until the window's thread handles it. Sends one event after the
/// other from a thread of its own while it lives.
class Watchdog {
public:
  Watchdog();
  ~Watchdog();
  Watchdog(const Watchdog&) = delete;
  Watchdog& operator=(const Watchdog&) = delete;
  /// Waits for the event that is under way.
  [[nodiscard]] double worstMilliseconds();

private:
  void run();

  QObject here_;
  double worst_ = 0;
  int handled_ = 0;
  std::atomic<bool> stop_ = false;
  std::atomic<bool> ended_ = false;
  std::thread thread_;
};

/// Peak resident memory of this process, MiB.
[[nodiscard]] double peakMemoryMiB();

} // namespace afterbeat::bench
