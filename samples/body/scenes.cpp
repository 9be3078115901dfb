#include "samples/body/scenes.h"

#include <algorithm>

namespace afterbeat::samples::body {

namespace {

double along(double first, double last, double share) {
  return first + (last - first) * share;
}

/// Plays a scene from its begin to its end.
class Player {
public:
  explicit Player(const Setting& setting) : setting_(setting), dice_(setting.seed * 4 + 3) {}

  void play() {
    drawPauses();
    double s = dice_.between(2, 8);
    while (s < setting_.length - 5) {
      s = runFrom(s);
    }
    if (setting_.ratio == 0) {
      for (double b = dice_.between(3, 8); b < setting_.length - 4;
           b += setting_.breathEvery * std::clamp(1 + 0.15 * dice_.normal(), 0.6, 1.5)) {
        breathe(b);
      }
    }
  }

  std::vector<Press> presses;
  std::vector<Breath> breaths;

private:
  void drawPauses() {
    for (int i = 0; i < setting_.pauses; ++i) {
      const double from = dice_.between(15, setting_.length - 30);
      pauses_.emplace_back(from, from + dice_.between(3, 20));
    }
    std::sort(pauses_.begin(), pauses_.end());
  }

  /// The pause that is due at `s`.
  const std::pair<double, double>* pauseAt(double s) const {
    for (const auto& pause : pauses_) {
      if (pause.first <= s && s < pause.second) {
        return &pause;
      }
    }
    return nullptr;
  }

  const Way& wayAt(double s) const {
    const auto turn = static_cast<std::size_t>(s / setting_.turn);
    return setting_.ways[turn % setting_.ways.size()];
  }

  void breathe(double s) {
    breaths.push_back(
        {s, dice_.between(0.7, 1.2), dice_.between(0.7, 1.3), dice_.between(0.4, 0.9)});
  }

  /// One run; returns where the next may begin.
  double runFrom(double s) {
    const double turnEnd = (std::floor(s / setting_.turn) + 1) * setting_.turn;
    const Way& way = wayAt(s);
    double wobble = 0, last = s;
    for (int n = 0; s < setting_.length - 3; ++n) {
      if (const auto* pause = pauseAt(s)) {
        return std::max(pause->second, last + 2);
      }
      if (setting_.ratio > 0 && n == setting_.ratio) {
        return breaksForBreaths(last);
      }
      if (s >= turnEnd) {
        // A machine does not change hands.
        return setting_.mechanical ? s : last + dice_.between(1.6, 5);
      }
      press(s, way, std::fmod(s, setting_.turn) / setting_.turn);
      last = s;
      const double rate = along(way.rate, way.rateEnd, std::fmod(s, setting_.turn) / setting_.turn);
      // People are slow or quick for a while.
      wobble = 0.8 * wobble + 0.6 * dice_.normal();
      s += std::clamp(60 / rate * (1 + way.unsteady * wobble), 0.3, 1.3);
    }
    return setting_.length;
  }

  void press(double s, const Way& way, double share) {
    const double depth = std::clamp(
        along(way.depth, way.depthEnd, share) + way.depthSpread * dice_.normal(), 15.0, 75.0);
    const double lean = std::clamp(way.lean * (1 + 0.4 * dice_.normal()), 0.0, 0.4 * depth);
    presses.push_back({s, depth, lean, way.stroke});
  }

  /// Two breaths; returns where hands come back.
  double breaksForBreaths(double last) {
    double s = last + dice_.between(0.8, 1.6);
    for (int i = 0; i < 2; ++i) {
      if (s < setting_.length - 3) {
        breathe(s);
      }
      s += dice_.between(1.5, 2.4);
    }
    return s;
  }

  const Setting& setting_;
  Dice dice_;
  std::vector<std::pair<double, double>> pauses_;
};

Truth truthOf(const Setting& setting, const Player& player) {
  Truth truth;
  truth.windowBegin = at(0);
  truth.windowEnd = at(setting.length);
  for (const Press& p : player.presses) {
    Entry entry;
    entry.t = *timeFromSeconds(p.s);
    entry.data = entry::Compression{p.depth, p.lean, {}};
    truth.compressions.push_back(entry);
  }
  for (const Breath& b : player.breaths) {
    truth.breaths.push_back(*timeFromSeconds(b.s));
  }
  Dice dice(setting.seed * 4 + 2);
  TrueRhythm rhythm{truth.windowBegin, truth.windowEnd, setting.heart, 0, 0, false};
  if (setting.heart == RhythmKind::organised) {
    rhythm.rate = dice.between(30, 110);
    rhythm.wide = rhythm.rate < 60;
  } else if (setting.heart == RhythmKind::shockable) {
    rhythm.amplitude = dice.between(0.1, 0.6);
  }
  truth.rhythm = {rhythm};
  return truth;
}

} // namespace

Scene play(const Setting& setting) {
  Player player(setting);
  player.play();
  Scene scene;
  scene.setting = setting;
  scene.truth = truthOf(setting, player);
  scene.window = {scene.truth.windowBegin, scene.truth.windowEnd};
  Body& body = scene.body;
  body = {0,  setting.length, player.presses,          player.breaths, scene.truth.rhythm,
          {}, setting.how,    setting.seed + 1'000'000};
  for (const double travel : travelOf(body.presses)) {
    scene.travel.push_back((1 + setting.how.mattress) * travel);
  }
  for (const auto& off : setting.how.off) {
    scene.padsOff.push_back({at(off.first), at(off.second)});
  }
  scene.acceleration = acceleration(body, setting.acceleration);
  scene.depth = depth(body, setting.depth);
  scene.force = force(body, setting.force);
  scene.impedance = impedance(body, setting.impedance);
  scene.ecg = ecg(body, setting.ecg);
  return scene;
}

double handsOffShare(const std::vector<Time>& compressions, const Interval& window,
                     const std::vector<Interval>& without, Duration threshold) {
  std::vector<Interval> gaps;
  Time last = window.begin;
  const auto gapTo = [&](Time t) {
    if (t - last > threshold) {
      gaps.push_back({last, t});
    }
    last = std::max(last, t);
  };
  for (const Time t : compressions) {
    if (window.holds(t)) {
      gapTo(t);
    }
  }
  gapTo(window.end);
  Duration off{}, whole = window.length() - overlap(window, without);
  for (const auto& gap : gaps) {
    off += gap.length() - overlap(gap, without);
  }
  return whole > Duration{} ? seconds(off) / seconds(whole) : 0;
}

} // namespace afterbeat::samples::body
