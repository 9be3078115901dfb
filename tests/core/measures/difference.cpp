#include "tests/core/measures/difference.h"

#include <algorithm>
#include <cmath>
#include <sstream>
#include <vector>

namespace afterbeat::reference {

namespace {

std::string say(double v) {
  std::ostringstream out;
  out.precision(12);
  out << v;
  return out.str();
}
std::string say(const std::string& s) {
  return s;
}
std::string say(int v) {
  return std::to_string(v);
}
std::string say(std::size_t v) {
  return std::to_string(v);
}
std::string say(bool v) {
  return v ? "true" : "false";
}
std::string say(Time t) {
  return say(seconds(t));
}
std::string say(Duration d) {
  return say(seconds(d));
}
std::string say(const Interval& i) {
  return "[" + say(i.begin) + ", " + say(i.end) + "]";
}
std::string say(Evidence e) {
  return std::string(name(e));
}
std::string say(Status s) {
  return std::string(name(s));
}
std::string say(const Pause& p) {
  return say(p.stretch) + " " + std::string(name(p.cause));
}
std::string say(const NotCounted& n) {
  return say(n.stretch) + " " + std::string(name(n.why));
}

bool same(double a, double b) {
  return std::fabs(a - b) <= 1e-9 * (1 + std::fabs(a));
}
bool same(const Pause& a, const Pause& b) {
  return a.stretch == b.stretch && a.cause == b.cause;
}
bool same(const NotCounted& a, const NotCounted& b) {
  return a.stretch == b.stretch && a.why == b.why;
}
template <typename T>
bool same(const T& a, const T& b) {
  return a == b;
}

/// Keeps the first difference it is told of.
class Finder {
public:
  template <typename T>
  void compare(const std::string& what, const T& expected, const T& got) {
    if (found_.empty() && !same(expected, got)) {
      found_ = what + ": expected " + say(expected) + ", got " + say(got);
    }
  }
  template <typename T>
  void compare(const std::string& what, const std::optional<T>& expected,
               const std::optional<T>& got) {
    if (expected && got) {
      compare(what, *expected, *got);
    } else if (found_.empty() && (expected || got)) {
      found_ = what + ": expected " + (expected ? say(*expected) : "nothing") + ", got " +
               (got ? say(*got) : "nothing");
    }
  }
  template <typename T>
  void compare(const std::string& what, const std::vector<T>& expected, const std::vector<T>& got) {
    for (std::size_t i = 0; i < std::max(expected.size(), got.size()); ++i) {
      const auto at = [&](const std::vector<T>& list) {
        return i < list.size() ? std::optional<T>{list[i]} : std::nullopt;
      };
      compare(what + " " + std::to_string(i), at(expected), at(got));
    }
  }
  [[nodiscard]] const std::string& found() const { return found_; }

private:
  std::string found_;
};

void compareMeasures(Finder& f, const Figures& expected, const Figures& got) {
  f.compare("number of measures", expected.measures.size(), got.measures.size());
  for (std::size_t i = 0; i < std::min(expected.measures.size(), got.measures.size()); ++i) {
    const Measure &e = expected.measures[i], &g = got.measures[i];
    const std::string id(measureInfo(e.id).name);
    f.compare(id + " id", static_cast<int>(e.id), static_cast<int>(g.id));
    f.compare(id + " status", e.status, g.status);
    f.compare(id + " value", e.value, g.value);
    if (e.numerator) {
      f.compare(id + " numerator", e.numerator, g.numerator);
      f.compare(id + " denominator", e.denominator, g.denominator);
    }
  }
}

void compareShocks(Finder& f, const Figures& expected, const Figures& got) {
  f.compare("number of shocks", expected.shocks.size(), got.shocks.size());
  for (std::size_t i = 0; i < std::min(expected.shocks.size(), got.shocks.size()); ++i) {
    const ShockFigures &e = expected.shocks[i], &g = got.shocks[i];
    const std::string what = "shock " + std::to_string(i) + " ";
    f.compare(what + "t", e.t, g.t);
    f.compare(what + "delivered", e.delivered, g.delivered);
    f.compare(what + "energy", e.energyJ, g.energyJ);
    f.compare(what + "pre", e.pre, g.pre);
    f.compare(what + "post", e.post, g.post);
    f.compare(what + "peri", e.peri, g.peri);
    f.compare(what + "advice to shock", e.adviceToShock, g.adviceToShock);
    f.compare(what + "number", e.number, g.number);
  }
}

void compareTables(Finder& f, const Figures& expected, const Figures& got) {
  f.compare("number of minutes", expected.minutes.size(), got.minutes.size());
  for (std::size_t i = 0; i < std::min(expected.minutes.size(), got.minutes.size()); ++i) {
    const MinuteRow &e = expected.minutes[i], &g = got.minutes[i];
    const std::string what = "minute " + std::to_string(i) + " ";
    f.compare(what + "epoch", e.epoch, g.epoch);
    f.compare(what + "arrest", e.arrest, g.arrest);
    f.compare(what + "hands off", e.handsOff, g.handsOff);
    f.compare(what + "compressions", e.compressions, g.compressions);
    f.compare(what + "rate", e.rate, g.rate);
    f.compare(what + "rate in range", e.rateInRange, g.rateInRange);
    f.compare(what + "depth", e.depth, g.depth);
    f.compare(what + "ventilations", e.ventilations, g.ventilations);
    f.compare(what + "shocks", e.shocks, g.shocks);
  }
  f.compare("number of cycles", expected.cycles.size(), got.cycles.size());
  for (std::size_t i = 0; i < std::min(expected.cycles.size(), got.cycles.size()); ++i) {
    const CycleRow &e = expected.cycles[i], &g = got.cycles[i];
    const std::string what = "cycle " + std::to_string(i) + " ";
    f.compare(what + "stretch", e.stretch, g.stretch);
    f.compare(what + "open", e.open, g.open);
    f.compare(what + "hands off", e.handsOff, g.handsOff);
    f.compare(what + "rate", e.rate, g.rate);
  }
}

/// The order of the list is nobody's business.
std::vector<NotCounted> inOrder(std::vector<NotCounted> list) {
  std::sort(list.begin(), list.end(), [](const NotCounted& a, const NotCounted& b) {
    if (a.stretch.begin != b.stretch.begin) {
      return a.stretch.begin < b.stretch.begin;
    }
    return a.stretch.end != b.stretch.end ? a.stretch.end < b.stretch.end : a.why < b.why;
  });
  return list;
}

/// Doubly detected compressions as stated, and whether the wrong setting was noticed.
std::vector<std::string> noticed(const Figures& figures) {
  std::vector<std::string> list;
  for (const Problem& p : figures.notices) {
    if (p.kind == ProblemKind::doubleDetection) {
      list.push_back("doubly detected: " + (p.args.empty() ? "?" : p.args[0]));
    } else if (p.kind == ProblemKind::categoryDiffers &&
               std::find(list.begin(), list.end(), "setting differs") == list.end()) {
      list.emplace_back("setting differs");
    }
  }
  std::sort(list.begin(), list.end());
  return list;
}

} // namespace

std::string firstDifference(const Figures& expected, const Figures& got) {
  Finder f;
  f.compare("evidence", expected.evidence, got.evidence);
  f.compare("kept compression", expected.compressions, got.compressions);
  f.compare("entry of kept compression", expected.compressionEntries, got.compressionEntries);
  f.compare("entry of counted cpr", expected.cprEntries, got.cprEntries);
  f.compare("hands on", expected.handsOn, got.handsOn);
  f.compare("window", expected.window, got.window);
  f.compare("last activity", expected.lastActivity, got.lastActivity);
  f.compare("circulation interval", expected.circulation, got.circulation);
  f.compare("arrest interval", expected.arrest, got.arrest);
  f.compare("excluded length", expected.excludedLength, got.excludedLength);
  f.compare("pause", expected.pauses, got.pauses);
  compareShocks(f, expected, got);
  compareMeasures(f, expected, got);
  compareTables(f, expected, got);
  f.compare("not counted", inOrder(expected.notCounted), inOrder(got.notCounted));
  f.compare("notice", noticed(expected), noticed(got));
  return f.found();
}

} // namespace afterbeat::reference
