// hands_report [SCENES] [--worst] [--curves FILE]: how well compressions and breaths are found in
// random scenes, beside the goals, and how errors grow with noise.
#include "tests/outside/hands_score.h"

#include <cstdio>
#include <functional>
#include <map>
#include <string_view>

#include <fmt/format.h>

namespace {

using namespace afterbeat::hands_score;
using namespace afterbeat::samples::body;

void line(const char* what, const CompressionScore& s) {
  fmt::print("  {:<14} {:6d} true  F1 {:.4f}  sens {:.4f}  pred {:.4f}  time {:.0f} ms  rate {:.2f}"
             "  hands-off within 0.02: {:.3f}  judged {:.3f}",
             what, s.counts.truths, s.counts.f1(), s.counts.sensitivity(), s.counts.predictivity(),
             1000 * quantile(s.time, 0.5), mean(s.rate), shareWithin(s.handsOff, 0.02),
             s.length > 0 ? s.judged / s.length : 0);
  if (!s.depth.empty()) {
    fmt::print("  depth {:.2f} mm (95 %: {:.1f})", quantile(s.depth, 0.5), quantile(s.depth, 0.95));
  }
  if (!s.leaning.empty()) {
    fmt::print("  leaning {:.2f} mm (95 %: {:.1f})", quantile(s.leaning, 0.5),
               quantile(s.leaning, 0.95));
  }
  fmt::print("\n");
}

void print(const std::string& name, const Score& s) {
  fmt::print("{}\n", name);
  line("acceleration", s.acceleration);
  line("depth", s.depth);
  line("force", s.force);
  line("impedance", s.impedance);
  line("both", s.both);
  fmt::print("  {:<14} {:6d} true  sens {:.4f}  pred {:.4f}  from the middle of inflation: "
             "median {:+.2f} s\n",
             "breaths", s.breaths.truths, s.breaths.sensitivity(), s.breaths.predictivity(),
             quantile(s.breathTime, 0.5));
}

/// The groups that a scene belongs to.
std::vector<std::string> groupsOf(const Setting& s) {
  static constexpr const char* kStrokes[] = {"even", "thrust", "held", "jab", "piston", "shoulder"};
  std::vector<std::string> groups;
  groups.emplace_back(s.how.vehicle <= 0     ? "vehicle: none"
                      : s.how.vehicle < 0.75 ? "vehicle: below 0.75"
                                             : "vehicle: from 0.75");
  const double hiss = 2 * s.how.ohmHiss / std::fabs(s.how.chestOhm);
  groups.emplace_back(hiss < 0.1 ? "hiss: below a tenth" : "hiss: from a tenth");
  groups.emplace_back(s.how.joltsPerMinute > 0 ? "electrodes pulled" : "electrodes not pulled");
  groups.emplace_back(s.how.handling > 0 ? "sensor handled" : "sensor not handled");
  groups.emplace_back(s.how.mattress > 0 ? "mattress" : "no mattress");
  groups.emplace_back(s.ratio == 0 ? "continuous" : s.ratio == 15 ? "15:2" : "30:2");
  groups.push_back(std::string("stroke: ") + kStrokes[static_cast<int>(s.ways[0].stroke)]);
  const auto slow = [](const Way& w) { return w.rate < 80; };
  const auto fast = [](const Way& w) { return w.rate > 140; };
  const auto shallow = [](const Way& w) { return w.depthEnd < 30; };
  const auto any = [&](const auto& what) {
    return std::any_of(s.ways.begin(), s.ways.end(), what);
  };
  groups.emplace_back(any(slow) ? "rate: below 80" : any(fast) ? "rate: above 140" : "rate: usual");
  groups.emplace_back(any(shallow) ? "depth: below 30 mm" : "depth: from 30 mm");
  return groups;
}

void report(std::uint64_t scenes, bool worst) {
  Score all;
  std::map<std::string, Score> groups;
  for (std::uint64_t seed = 1; seed <= scenes; ++seed) {
    const Setting setting = drawSetting(seed);
    Score one;
    addScene(play(setting), one);
    add(one, all);
    for (const auto& group : groupsOf(setting)) {
      add(one, groups[group]);
    }
    if (worst && (one.acceleration.counts.f1() < 0.97 || one.impedance.counts.f1() < 0.93 ||
                  one.breaths.sensitivity() < 0.85 || one.breaths.predictivity() < 0.85)) {
      fmt::print("{}\n  F1 acceleration {:.3f}, impedance {:.3f}; breaths {:.2f}/{:.2f}\n",
                 told(setting), one.acceleration.counts.f1(), one.impedance.counts.f1(),
                 one.breaths.sensitivity(), one.breaths.predictivity());
    }
  }
  print(fmt::format("{} scenes", scenes), all);
  fmt::print("\n{:<24} {:>7} {:>8} {:>9} {:>8} {:>10} {:>8} {:>10} {:>6} {:>6}\n", "group",
             "accel F1", "depth mm", "hands-off", "imped F1", "hands-off", "both F1", "hands-off",
             "sens", "pred");
  for (const auto& [name, one] : groups) {
    fmt::print("{:<24} {:>7.4f} {:>8.2f} {:>9.3f} {:>8.4f} {:>10.3f} {:>8.4f} {:>10.3f} {:>6.3f} "
               "{:>6.3f}\n",
               name, one.acceleration.counts.f1(), quantile(one.acceleration.depth, 0.5),
               shareWithin(one.acceleration.handsOff, 0.02), one.impedance.counts.f1(),
               shareWithin(one.impedance.handsOff, 0.02), one.both.counts.f1(),
               shareWithin(one.both.handsOff, 0.02), one.breaths.sensitivity(),
               one.breaths.predictivity());
  }
  fmt::print("\n{:<50} {:>8} {:>9}\n", "goal", "goal", "measured");
  for (const Goal& g : goalsOf(all)) {
    fmt::print("{:<50} {}{:>7} {:>9.4f}  {}\n", g.what, g.atLeast ? ">=" : "<=", g.goal, g.measured,
               g.met() ? "met" : "NOT MET");
  }
}

/// One condition at each of some strengths, everything else drawn as ever.
struct Curve {
  const char* name;
  std::vector<double> strengths;
  std::function<void(Setting&, double)> set;
};

std::vector<Curve> curves() {
  const auto ways = [](Setting& s, const auto& change) {
    for (Way& w : s.ways) {
      change(w);
    }
  };
  return {
      {"vehicle_m_s2",
       {0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5},
       [](Setting& s, double x) { s.how.vehicle = x; }},
      {"tilt_change_deg",
       {0, 5, 10, 15, 20, 25, 30},
       [](Setting& s, double x) {
         s.how.tiltFirst = 0;
         s.how.tiltLast = x;
       }},
      {"hiss_share_of_amplitude",
       {0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.75, 1, 1.5},
       [](Setting& s, double x) { s.how.ohmHiss = x * std::fabs(s.how.chestOhm) / 2; }},
      {"pulls_per_minute",
       {0, 1, 2, 4, 8, 12},
       [](Setting& s, double x) { s.how.joltsPerMinute = x; }},
      {"rate_per_min",
       {50, 60, 70, 80, 100, 120, 140, 160, 170},
       [ways](Setting& s, double x) { ways(s, [x](Way& w) { w.rate = w.rateEnd = x; }); }},
      {"depth_mm",
       {15, 20, 25, 30, 40, 50, 60, 70},
       [ways](Setting& s, double x) {
         ways(s, [x](Way& w) {
           w.depth = w.depthEnd = x;
           w.lean = std::min(w.lean, x / 4);
         });
       }},
  };
}

bool writeCurves(const char* path) {
  constexpr std::uint64_t kScenes = 40;
  std::FILE* file = std::fopen(path, "w");
  if (file == nullptr) {
    return false;
  }
  fmt::print(file, "condition,strength,acceleration_f1,acceleration_time_s,acceleration_depth_mm,"
                   "acceleration_depth_95_mm,acceleration_rate_per_min,impedance_f1,"
                   "impedance_rate_per_min,breath_sensitivity,breath_predictivity,"
                   "hands_off_acceleration,hands_off_impedance,both_f1,hands_off_both\n");
  for (const Curve& curve : curves()) {
    for (const double x : curve.strengths) {
      Score s;
      for (std::uint64_t seed = 1; seed <= kScenes; ++seed) {
        Setting setting = drawSetting(10'000 + seed);
        curve.set(setting, x);
        addScene(play(setting), s);
      }
      fmt::print(file,
                 "{},{},{:.4f},{:.4f},{:.3f},{:.2f},{:.3f},{:.4f},{:.3f},{:.4f},{:.4f},{:.3f},"
                 "{:.3f},{:.4f},{:.3f}\n",
                 curve.name, x, s.acceleration.counts.f1(), quantile(s.acceleration.time, 0.5),
                 quantile(s.acceleration.depth, 0.5), quantile(s.acceleration.depth, 0.95),
                 mean(s.acceleration.rate), s.impedance.counts.f1(), mean(s.impedance.rate),
                 s.breaths.sensitivity(), s.breaths.predictivity(),
                 shareWithin(s.acceleration.handsOff, 0.02),
                 shareWithin(s.impedance.handsOff, 0.02), s.both.counts.f1(),
                 shareWithin(s.both.handsOff, 0.02));
    }
  }
  return std::fclose(file) == 0;
}

} // namespace

int main(int argc, char** argv) {
  std::uint64_t scenes = 500;
  bool worst = false;
  for (int i = 1; i < argc; ++i) {
    const std::string_view word = argv[i];
    if (word == "--worst") {
      worst = true;
    } else if (word == "--curves" && i + 1 < argc) {
      return writeCurves(argv[i + 1]) ? 0 : 3;
    } else {
      scenes = std::strtoull(argv[i], nullptr, 10);
    }
  }
  report(scenes, worst);
  return 0;
}
