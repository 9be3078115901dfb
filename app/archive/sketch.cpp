#include "app/archive/sketch.h"

namespace afterbeat::archive {

namespace {

constexpr char kVersion = 1;
constexpr std::int64_t kTenth = 100'000;
/// More would be no small picture; a file with more was not written by this program.
constexpr std::uint64_t kMost = 100'000;

class Writer {
public:
  void number(std::uint64_t n) {
    while (n >= 0x80) {
      bytes += static_cast<char>((n & 0x7FU) | 0x80U);
      n >>= 7U;
    }
    bytes += static_cast<char>(n);
  }
  /// Moments in order, each as its distance to the one before.
  void moment(Duration t) {
    const std::int64_t tenths = std::max((t.count() + kTenth / 2) / kTenth, last_);
    number(static_cast<std::uint64_t>(tenths - last_));
    last_ = tenths;
  }
  void list(const std::vector<Interval>& stretches) {
    last_ = 0;
    number(stretches.size());
    for (const Interval& one : stretches) {
      moment(one.begin.time_since_epoch());
      moment(one.end.time_since_epoch());
    }
  }
  void list(const std::vector<Duration>& moments) {
    last_ = 0;
    number(moments.size());
    for (const Duration one : moments) {
      moment(one);
    }
  }
  std::string bytes;

private:
  std::int64_t last_ = 0;
};

class Reader {
public:
  explicit Reader(std::string_view bytes) : rest_(bytes) {}
  std::uint64_t number() {
    std::uint64_t n = 0;
    for (unsigned shift = 0; shift < 42 && !rest_.empty(); shift += 7) {
      const auto byte = static_cast<unsigned char>(rest_.front());
      rest_.remove_prefix(1);
      n |= static_cast<std::uint64_t>(byte & 0x7FU) << shift;
      if ((byte & 0x80U) == 0) {
        return n;
      }
    }
    good = false;
    return 0;
  }
  Duration moment() {
    last_ += static_cast<std::int64_t>(number());
    return Duration{last_ * kTenth};
  }
  std::uint64_t count() {
    last_ = 0;
    const std::uint64_t n = number();
    good = good && n <= kMost;
    return good ? n : 0;
  }
  std::vector<Interval> stretches() {
    std::vector<Interval> all(count());
    for (Interval& one : all) {
      one.begin = Time{moment()};
      one.end = Time{moment()};
    }
    return all;
  }
  std::vector<Duration> moments() {
    std::vector<Duration> all(count());
    for (Duration& one : all) {
      one = moment();
    }
    return all;
  }
  [[nodiscard]] bool atEnd() const { return rest_.empty(); }
  bool good = true;

private:
  std::string_view rest_;
  std::int64_t last_ = 0;
};

/// What of a stretch lies in the window, from its begin.
std::optional<Interval> inWindow(const Interval& stretch, const Interval& window) {
  const Time begin = std::max(stretch.begin, window.begin), end = std::min(stretch.end, window.end);
  if (begin > end) {
    return std::nullopt;
  }
  return Interval{Time{begin - window.begin}, Time{end - window.begin}};
}

} // namespace

RowsSketch sketchOf(const Figures& figures) {
  RowsSketch sketch;
  if (!figures.window) {
    return sketch;
  }
  const Interval& window = *figures.window;
  sketch.length = window.length();
  sketch.handsKnown = figures.evidence != Evidence::none;
  const auto add = [&window](std::vector<Interval>& to, const Interval& stretch) {
    if (const auto part = inWindow(stretch, window)) {
      to.push_back(*part);
    }
  };
  for (const Pause& pause : figures.pauses) {
    add(sketch.pauses, pause.stretch);
  }
  for (const Interval& one : figures.circulation) {
    add(sketch.circulation, one);
  }
  for (const NotCounted& one : figures.notCounted) {
    if (one.why == NotCountedReason::notRescue || one.why == NotCountedReason::notTrusted ||
        one.why == NotCountedReason::notObserved) {
      add(sketch.leftOut, one.stretch);
    }
  }
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.delivered == true && shock.t >= window.begin && shock.t <= window.end) {
      sketch.shocks.push_back(shock.t - window.begin);
    }
  }
  return sketch;
}

std::string encode(const RowsSketch& sketch) {
  Writer writer;
  writer.bytes += kVersion;
  writer.bytes += static_cast<char>(sketch.handsKnown ? 1 : 0);
  writer.moment(sketch.length);
  writer.list(sketch.pauses);
  writer.list(sketch.circulation);
  writer.list(sketch.leftOut);
  writer.list(sketch.shocks);
  return std::move(writer.bytes);
}

std::optional<RowsSketch> decode(std::string_view bytes) {
  if (bytes.size() < 2 || bytes.front() != kVersion) {
    return std::nullopt;
  }
  RowsSketch sketch;
  sketch.handsKnown = bytes[1] != 0;
  Reader reader(bytes.substr(2));
  sketch.length = reader.moment();
  sketch.pauses = reader.stretches();
  sketch.circulation = reader.stretches();
  sketch.leftOut = reader.stretches();
  sketch.shocks = reader.moments();
  if (!reader.good || !reader.atEnd()) {
    return std::nullopt;
  }
  return sketch;
}

} // namespace afterbeat::archive
