// What the defibrillation pads pick up: impedance and ECG.
#include "samples/body/body.h"
#include "samples/body/heart.h"

#include <algorithm>
#include <limits>

namespace afterbeat::samples::body {

namespace {

constexpr double kRailMv = 10;

/// Whether electrodes are off, along a time that does not go backwards.
class Off {
public:
  explicit Off(const Circumstances& how) : off_(how.off) {}
  bool at(double s) {
    while (next_ < off_.size() && off_[next_].second <= s) {
      ++next_;
    }
    return next_ < off_.size() && off_[next_].first <= s;
  }

private:
  const std::vector<std::pair<double, double>>& off_;
  std::size_t next_ = 0;
};

/// Seconds since the latest shock; large before the first.
class SinceShock {
public:
  explicit SinceShock(const std::vector<double>& shocks) : shocks_(shocks) {}
  double at(double s) {
    while (next_ < shocks_.size() && shocks_[next_] <= s) {
      ++next_;
    }
    return next_ > 0 ? s - shocks_[next_ - 1] : 1e9;
  }

private:
  const std::vector<double>& shocks_;
  std::size_t next_ = 0;
};

/// Air in the lungs: flows in evenly and leaves by itself, a share of the usual breath.
class Lungs {
public:
  Lungs(const std::vector<Breath>& breaths, double rateHz) : breaths_(breaths), rateHz_(rateHz) {}
  double next(double s) {
    while (next_ < breaths_.size() && breaths_[next_].s <= s) {
      ++next_;
    }
    double flow = 0;
    if (next_ > 0) {
      const Breath& b = breaths_[next_ - 1];
      flow = s < b.full() ? b.size / b.inflation : -air_ / b.emptying;
    }
    // Tubes and chest wall take the corners off the flow.
    flow_ += std::min(1.0, 14 / rateHz_) * (flow - flow_);
    air_ = std::max(0.0, air_ + flow_ / rateHz_);
    return air_;
  }

private:
  const std::vector<Breath>& breaths_;
  double rateHz_, flow_ = 0, air_ = 0;
  std::size_t next_ = 0;
};

/// What a compression does to the ECG: a mix of depth, speed and acceleration whose shares wander.
class Artefact {
public:
  Artefact(const Body& body, double rateHz)
      : dice_(diceFor(body, 6)), chest_(body.presses), follower_(chest_.follow()),
        size_(body.how.artefactMv), rateHz_(rateHz), withDepth_(dice_.between(0.3, 0.7)),
        withSpeed_(dice_.between(-0.6, 0.6)), withBend_(dice_.between(-0.25, 0.25)),
        strength_(8, rateHz, dice_), depthWalk_(12, rateHz, dice_), speedWalk_(12, rateHz, dice_) {}
  double next(double s) {
    const Curve c = follower_.at(s);
    const double strength = std::max(0.2, 1 + 0.2 * strength_.next());
    const double depth = withDepth_ * (1 + 0.25 * depthWalk_.next());
    const double speed = withSpeed_ + 0.12 * speedWalk_.next();
    // 50 mm at 110 a minute: 290 mm/s, 3300 mm/s2.
    const double now = size_ * strength *
                       (depth * c.value / 50 + speed * c.slope / 290 + withBend_ * c.bend / 3300);
    value_ += std::min(1.0, 90 / rateHz_) * (now - value_);
    return value_;
  }

private:
  Dice dice_;
  Chest chest_;
  Chest::Follower follower_;
  double size_, rateHz_, withDepth_, withSpeed_, withBend_, value_ = 0;
  Walk strength_, depthWalk_, speedWalk_;
};

/// What a shock leaves: a third of a second at the rails, then a baseline that comes back.
class Afterglow {
public:
  Afterglow(const Body& body, double rateHz)
      : since_(body.shocks), dice_(diceFor(body, 7)), fast_(std::max(0.0, 1 - 1 / (0.25 * rateHz))),
        slow_(std::max(0.0, 1 - 1 / (2.2 * rateHz))) {}
  double next(double s) {
    const double since = since_.at(s);
    if (since < 0.36) {
      quick_ = -dice_.between(3, 5);
      long_ = dice_.between(0.6, 1.3);
      return since < 0.22 ? 2 * kRailMv : -2 * kRailMv;
    }
    quick_ *= fast_;
    long_ *= slow_;
    return quick_ + long_;
  }

private:
  SinceShock since_;
  Dice dice_;
  double fast_, slow_, quick_ = 0, long_ = 0;
};

} // namespace

Channel impedance(const Body& body, const Sampling& sampling) {
  const Circumstances& how = body.how;
  const double hz = sampling.rateHz;
  Dice dice = diceFor(body, 4), joltDice = diceFor(body, 8);
  const auto jolts = joltsBetween(body.from, body.to, how.joltsPerMinute, joltDice);
  const Chest chest(body.presses);
  Chest::Follower near = chest.follow(), echo = chest.follow();
  Lungs lungs(body.breaths, hz);
  Jolted jolted(jolts, hz);
  Hiss hiss(25, hz, dice);
  Walk wander(8, hz, dice), strength(10, hz, dice);
  Pulse pulse(body);
  Off off(how);
  SinceShock sinceShock(body.shocks);
  double afterShock = 0;
  return channelOf(body, sampling, "impedance", "Ohm", "Chest impedance, pads", [&](double s) {
    const double p = near.at(s - how.chestLag).value / 50;
    const double e = echo.at(s - how.chestLag - 0.15).value / 50;
    const double chestPart =
        how.chestOhm * (1 + 0.08 * strength.next()) * (0.8 * p + 0.2 * p * p + how.chestEcho * e);
    const double lungPart = how.breathOhm * lungs.next(s);
    const double rest = how.baseOhm + how.ohmWander * wander.next() + how.ohmHiss * hiss.next() +
                        how.joltOhm * jolted.next(s) -
                        (how.pulseOhm > 0 ? how.pulseOhm * pulse.at(s) : 0);
    const double since = sinceShock.at(s);
    afterShock = since < 0.3 ? 4 : afterShock * (1 - 0.35 / hz);
    if (off.at(s)) {
      return how.offIsMissing ? std::numeric_limits<double>::quiet_NaN() : 1e6;
    }
    return rest + chestPart + lungPart - afterShock;
  });
}

Channel ecg(const Body& body, const Sampling& sampling) {
  const Circumstances& how = body.how;
  const double hz = sampling.rateHz;
  Dice dice = diceFor(body, 5), joltDice = diceFor(body, 8);
  const auto jolts = joltsBetween(body.from, body.to, how.joltsPerMinute, joltDice);
  Heart heart(body, hz);
  Artefact artefact(body, hz);
  Afterglow afterglow(body, hz);
  Jolted jolted(jolts, hz);
  Walk wander(3, hz, dice);
  Hiss hiss(hz, hz, dice);
  Off off(how);
  const double mainsHz = 50 + dice.between(-0.05, 0.05);
  return channelOf(body, sampling, "ecg", "mV", "ECG, pads", [&](double s) {
    const double mains = sineOfTurns(s * mainsHz);
    const double mv = heart.next(s) + artefact.next(s) + afterglow.next(s) +
                      how.joltMv * jolted.next(s) + how.ecgWander * wander.next() +
                      how.ecgHiss * hiss.next() + how.mains * mains;
    if (off.at(s)) {
      return how.offIsMissing ? std::numeric_limits<double>::quiet_NaN()
                              : std::clamp(8 + 4 * mains, -kRailMv, kRailMv);
    }
    return std::clamp(mv, -kRailMv, kRailMv);
  });
}

std::vector<double> compressionArtefact(const Body& body, double rateHz) {
  Artefact artefact(body, rateHz);
  const auto count = static_cast<std::size_t>(std::floor((body.to - body.from) * rateHz));
  std::vector<double> values(count);
  for (std::size_t i = 0; i < count; ++i) {
    values[i] = artefact.next(body.from + static_cast<double>(i) / rateHz);
  }
  return values;
}

} // namespace afterbeat::samples::body
