// What lies on the chest: accelerometer, depth and force.
#include "samples/body/body.h"

#include <algorithm>

namespace afterbeat::samples::body {

namespace {

constexpr double kGravity = 9.81;

/// Which way is down: the angle between the sensor's axis and the vertical.
class Tilt {
public:
  Tilt(const Body& body, Dice& dice, double rateHz)
      : first_(body.how.tiltFirst), last_(body.how.tiltLast), unsteady_(10, rateHz, dice) {
    const double length = body.to - body.from;
    begin_ = body.from + length * dice.between(0.1, 0.6);
    lasts_ = length * dice.between(0.03, 0.3);
  }
  /// Cosine of the angle, `rocked` degrees further.
  double cosine(double s, double rocked) {
    const double set = first_ + (last_ - first_) * ramp((s - begin_) / lasts_);
    const double degrees = std::clamp(set + 0.4 * unsteady_.next(), 0.0, 30.0) + rocked;
    return sineOfTurns(degrees / 360 + 0.25);
  }

private:
  double first_, last_, begin_, lasts_;
  Walk unsteady_;
};

/// Pushes on the sensor while nobody compresses: it is put in its place, the person is moved.
class Handling {
public:
  Handling(const Body& body, Dice& dice, double rateHz)
      : body_(body), push_(dice.between(0.8, 3), 2, rateHz, dice), strength_(3, rateHz, dice) {}
  double next(double s) {
    while (next_ < body_.presses.size() && body_.presses[next_].s < s) {
      ++next_;
    }
    const double before = next_ > 0 ? s - body_.presses[next_ - 1].s : 1e9;
    const double after = next_ < body_.presses.size() ? body_.presses[next_].s - s : 1e9;
    const double free = ramp((std::min(before, after) - 0.7) / 0.5);
    const double strength = std::max(0.0, strength_.next() - 0.8);
    return body_.how.handling * free * strength * push_.next();
  }

private:
  const Body& body_;
  Resonance push_;
  Walk strength_;
  std::size_t next_ = 0;
};

} // namespace

Channel acceleration(const Body& body, const Sampling& sampling) {
  const Circumstances& how = body.how;
  const double hz = sampling.rateHz;
  Dice dice = diceFor(body, 1);
  const Chest chest(body.presses);
  Chest::Follower follower = chest.follow();
  Tilt tilt(body, dice, hz);
  Vehicle vehicle(hz, dice);
  Handling handling(body, dice, hz);
  Walk zero(20, hz, dice);
  Hiss hiss(hz, hz, dice);
  return channelOf(body, sampling, "acceleration", "m/s2", "Chest acceleration", [&](double s) {
    // The sensor's own filter: the mean over about a sample's length.
    double bend = 0, depth = 0;
    for (const double part : {-1.0 / 3, 0.0, 1.0 / 3}) {
      const Curve c = follower.at(s + part / hz);
      bend += c.bend / 3;
      depth += c.value / 3;
    }
    const double down = tilt.cosine(s, how.rock * depth / 50);
    double felt = kGravity * down - (1 + how.mattress) * bend / 1000;
    if (how.vehicle > 0) {
      felt += how.vehicle * vehicle.next() * down;
    }
    if (how.handling > 0) {
      felt += handling.next(s);
    }
    return felt + how.sensorDrift * zero.next() + how.sensorHiss * hiss.next();
  });
}

Channel depth(const Body& body, const Sampling& sampling) {
  Dice dice = diceFor(body, 2);
  const Chest chest(body.presses);
  Chest::Follower follower = chest.follow();
  Walk zero(15, sampling.rateHz, dice);
  Hiss hiss(sampling.rateHz, sampling.rateHz, dice);
  return channelOf(body, sampling, "depth", "mm", "Chest compression depth", [&](double s) {
    return follower.at(s).value + 0.25 * zero.next() + 0.15 * hiss.next();
  });
}

Channel force(const Body& body, const Sampling& sampling) {
  Dice dice = diceFor(body, 3);
  const Chest chest(body.presses);
  Chest::Follower follower = chest.follow();
  // N/mm, N/mm2 and N s/mm: a chest of middling stiffness that yields with use. From memory.
  double stiff = dice.between(2.5, 5);
  const double harder = dice.between(0.05, 0.12), damping = dice.between(0.05, 0.25);
  const double softer = 1 - 0.0008 / sampling.rateHz;
  Walk zero(15, sampling.rateHz, dice);
  Hiss hiss(sampling.rateHz, sampling.rateHz, dice);
  return channelOf(body, sampling, "force", "N", "Compression force", [&](double s) {
    const Curve c = follower.at(s);
    stiff *= c.value > 5 ? softer : 1;
    const double pushed = c.value * (stiff + harder * c.value) + damping * c.slope;
    return std::max(0.0, pushed) + 1.5 * zero.next() + 1.0 * hiss.next();
  });
}

} // namespace afterbeat::samples::body
