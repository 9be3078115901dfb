#include "scenes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace afterbeat::scenes {
namespace {
constexpr double kPi = std::numbers::pi;

/// The shape at phase `u` from 0 to 1 of a press, from 0 to 1 and back to 0.
double shapeAt(const Plan& plan, double u) {
  if (u < 0 || u > 1) {
    return 0;
  }
  switch (plan.shape) {
  case Shape::halfSine:
    return u < plan.duty ? std::sin(kPi * u / plan.duty) : 0;
  case Shape::raisedCosine:
    return 0.5 - 0.5 * std::cos(2 * kPi * u);
  case Shape::triangle: {
    const double v = u / plan.duty;
    return v > 1 ? 0 : 1 - std::fabs(2 * v - 1);
  }
  case Shape::sawtooth: {
    // Fast down, slow up.
    const double down = 0.3;
    return u < down ? 0.5 - 0.5 * std::cos(kPi * u / down)
                    : 0.5 + 0.5 * std::cos(kPi * (u - down) / (1 - down));
  }
  case Shape::piston: {
    const double edge = 0.16;
    if (u < edge) {
      return 0.5 - 0.5 * std::cos(kPi * u / edge);
    }
    if (u < 0.5) {
      return 1;
    }
    return u < 0.5 + edge ? 0.5 + 0.5 * std::cos(kPi * (u - 0.5) / edge) : 0;
  }
  }
  return 0;
}

double deepestPhase(const Plan& plan) {
  switch (plan.shape) {
  case Shape::halfSine:
  case Shape::triangle:
    return plan.duty / 2;
  case Shape::raisedCosine:
    return 0.5;
  case Shape::sawtooth:
    return 0.3;
  case Shape::piston:
    return 0.33;
  }
  return 0.5;
}

/// Rounds corners as flesh does: two running means of 40 ms.
void soften(std::vector<double>& values, double rateHz) {
  const auto width =
      std::max<std::size_t>(1, static_cast<std::size_t>(std::lround(0.04 * rateHz)) | 1U);
  for (int pass = 0; pass < 2; ++pass) {
    std::vector<double> sums(values.size() + 1, 0);
    for (std::size_t i = 0; i < values.size(); ++i) {
      sums[i + 1] = sums[i] + values[i];
    }
    for (std::size_t i = 0; i < values.size(); ++i) {
      const std::size_t a = i > width / 2 ? i - width / 2 : 0;
      const std::size_t b = std::min(values.size(), i + width / 2 + 1);
      values[i] = (sums[b] - sums[a]) / static_cast<double>(b - a);
    }
  }
}

} // namespace

/// The truth as the rounded movement has it: depth from the release before, and the middle of the
/// time within 1 % of the deepest point.
void measure(Story& story) {
  const double rateHz = 1000;
  const std::vector<double> depth = chestDepth(story, rateHz);
  for (Press& press : story.presses) {
    const auto a = static_cast<std::size_t>(std::max(0.0, press.onset - 0.05) * rateHz);
    const auto b =
        std::min(depth.size(), static_cast<std::size_t>((press.onset + press.period) * rateHz));
    const auto top = std::max_element(depth.begin() + static_cast<std::ptrdiff_t>(a),
                                      depth.begin() + static_cast<std::ptrdiff_t>(b));
    const auto low = std::min_element(depth.begin() + static_cast<std::ptrdiff_t>(a), top);
    auto i = top, j = top;
    while (i != depth.begin() && *(i - 1) > *top - 0.01 * (*top - *low)) {
      --i;
    }
    while (j + 1 != depth.end() && *(j + 1) > *top - 0.01 * (*top - *low)) {
      ++j;
    }
    press.deepest = static_cast<double>((i - depth.begin()) + (j - depth.begin())) / 2 / rateHz;
    press.depthMm = *top - *low;
  }
}

Story tell(const Plan& plan) {
  Story story{plan, {}, {}};
  std::mt19937 dice(plan.seed);
  std::normal_distribution<double> normal;
  double t = plan.firstAt;
  int inCycle = 0;
  double slow = 0;
  while (t < plan.seconds - plan.lastBefore) {
    const bool second = plan.secondRate > 0 && t > plan.seconds / 2;
    slow = 0.9 * slow + 0.3 * normal(dice);
    const double rate = (second ? plan.secondRate : plan.rate) *
                        (1 + plan.rateSpread * (0.7 * slow + 0.5 * normal(dice)));
    Press press;
    press.period = 60 / rate;
    press.onset = t;
    press.deepest = t + deepestPhase(plan) * press.period;
    const double tired = plan.fatigueMm * std::fmod(t - plan.firstAt, 120) / 60;
    press.plannedMm = std::max(10.0, ((second ? plan.secondDepthMm : plan.depthMm) - tired) *
                                         (1 + plan.depthSpread * normal(dice)));
    press.leaningMm = plan.leaningMm * std::clamp(1 + 0.3 * normal(dice), 0.0, 2.0);
    story.presses.push_back(press);
    t += press.period;
    if (plan.perCycle > 0 && ++inCycle == plan.perCycle) {
      inCycle = 0;
      const double gap = plan.pauseSeconds;
      const double len = std::min(1.7, (gap - 0.4) / 2);
      story.breaths.push_back({t + 0.2, t + 0.2 + 0.45 * len, t + 0.2 + len});
      story.breaths.push_back({t + 0.2 + len, t + 0.2 + 1.45 * len, t + 0.2 + 2 * len});
      t += gap;
    }
  }
  if (plan.perCycle == 0) {
    std::uniform_real_distribution<double> wobble(-0.7, 0.7);
    for (double b = plan.firstAt + 2; b < plan.seconds - plan.lastBefore - 3;
         b += 6 + wobble(dice)) {
      story.breaths.push_back({b, b + 0.9, b + 2.2});
    }
  }
  measure(story);
  return story;
}

std::vector<double> chestDepth(const Story& story, double rateHz) {
  std::vector<double> depth(static_cast<std::size_t>(story.plan.seconds * rateHz), 0);
  for (std::size_t k = 0; k < story.presses.size(); ++k) {
    const Press& press = story.presses[k];
    const double before =
        k > 0 && press.onset - story.presses[k - 1].onset < 1.5 * story.presses[k - 1].period
            ? story.presses[k - 1].leaningMm
            : 0;
    const bool lastOfSeries = k + 1 == story.presses.size() ||
                              story.presses[k + 1].onset - press.onset > 1.5 * press.period;
    const double after = lastOfSeries ? 0 : press.leaningMm;
    const auto first = static_cast<std::size_t>(std::ceil(press.onset * rateHz));
    for (std::size_t i = first; i < depth.size(); ++i) {
      const double u = (static_cast<double>(i) / rateHz - press.onset) / press.period;
      if (u >= 1) {
        break;
      }
      const double level = u < deepestPhase(story.plan) ? before : after;
      depth[i] = level + (press.plannedMm + before - level) * shapeAt(story.plan, u);
    }
  }
  soften(depth, rateHz);
  return depth;
}

std::vector<double> bandNoise(std::size_t count, double rateHz, double rms, double lowHz,
                              double highHz, std::mt19937& dice) {
  std::vector<double> result(count, 0);
  if (rms <= 0) {
    return result;
  }
  // Many sines of random phase, each wandering: a plain and slow way to fill a band evenly.
  std::normal_distribution<double> normal;
  const double a1 = std::exp(-2 * kPi * lowHz / rateHz), a2 = std::exp(-2 * kPi * highHz / rateHz);
  double low1 = 0, low2 = 0, smooth1 = 0, smooth2 = 0, power = 0;
  for (double& x : result) {
    const double w = normal(dice);
    low1 = a1 * low1 + (1 - a1) * w;
    const double h1 = w - low1;
    low2 = a1 * low2 + (1 - a1) * h1;
    const double h2 = h1 - low2;
    smooth1 = a2 * smooth1 + (1 - a2) * h2;
    smooth2 = a2 * smooth2 + (1 - a2) * smooth1;
    x = smooth2;
    power += x * x;
  }
  const double scale = rms / std::sqrt(power / static_cast<double>(count));
  for (double& x : result) {
    x *= scale;
  }
  return result;
}

std::vector<double> acceleration(const Story& story, const AccelerationPlan& how, double rateHz) {
  std::vector<double> depth = chestDepth(story, rateHz);
  std::mt19937 dice(story.plan.seed + 77);
  std::normal_distribution<double> normal;
  const std::vector<double> shake =
      bandNoise(depth.size(), rateHz, how.shaking.rms, how.shaking.lowHz, how.shaking.highHz, dice);
  std::vector<double> result(depth.size(), 9.81);
  const double firstOn = story.presses.empty() ? story.plan.seconds : story.presses.front().onset;
  const double lastOn = story.presses.empty()
                            ? story.plan.seconds
                            : story.presses.back().onset + story.presses.back().period;
  for (std::size_t i = 0; i < depth.size(); ++i) {
    const double t = static_cast<double>(i) / rateHz;
    const double share = t / story.plan.seconds;
    const double tilt =
        (how.tiltFrom + (how.tiltTo - how.tiltFrom) * (0.5 - 0.5 * std::cos(9 * share))) * kPi /
        180;
    double moved = 0;
    if (i > 0 && i + 1 < depth.size()) {
      moved = -(depth[i - 1] - 2 * depth[i] + depth[i + 1]) * rateHz * rateHz / 1000;
    }
    result[i] = 9.81 * std::cos(tilt) + moved + shake[i] + how.noise * normal(dice) +
                how.drift * std::sin(0.05 * t);
  }
  if (how.handled) {
    std::vector<double> hand = bandNoise(depth.size(), rateHz, 3.0, 0.3, 1.5, dice);
    std::vector<double> turn = bandNoise(depth.size(), rateHz, 4.0, 0.1, 0.5, dice);
    for (std::size_t i = 0; i < depth.size(); ++i) {
      const double t = static_cast<double>(i) / rateHz;
      if (t < firstOn - 1.0 || t > lastOn + 1.0) {
        result[i] += hand[i] - std::fabs(turn[i]);
      }
    }
  }
  return result;
}

std::vector<double> impedance(const Story& story, const ImpedancePlan& how, double rateHz) {
  std::mt19937 dice(story.plan.seed + 99);
  std::normal_distribution<double> normal;
  std::uniform_real_distribution<double> uniform(0, 1);
  const auto n = static_cast<std::size_t>(story.plan.seconds * rateHz);
  std::vector<double> press = chestDepth(story, rateHz);
  std::vector<double> result(n, how.base);
  const double usual = story.plan.depthMm;
  double slow = 0;
  const auto lag = static_cast<std::size_t>(how.delay * rateHz);
  for (std::size_t i = 0; i < n; ++i) {
    slow = 0.9995 * slow + 0.004 * normal(dice);
    const double p = i >= lag ? press[i - lag] / usual : 0;
    result[i] += slow * how.pressOhm + how.pressOhm * (p + how.second * std::sin(2 * kPi * p)) +
                 how.noise * how.pressOhm * normal(dice);
  }
  for (const Breath& b : story.breaths) {
    for (auto i = static_cast<std::size_t>(b.begin * rateHz); i < n; ++i) {
      const double t = static_cast<double>(i) / rateHz;
      if (t > b.end) {
        break;
      }
      const double u =
          t < b.top ? (t - b.begin) / (b.top - b.begin) : (b.end - t) / (b.end - b.top);
      result[i] += how.breathOhm * u * u * (3 - 2 * u);
    }
  }
  double step = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (how.steps > 0 && uniform(dice) < how.steps / 60 / rateHz) {
      step += 3 * normal(dice) * how.pressOhm;
    }
    result[i] += step;
  }
  return result;
}

Channel channelOf(const std::string& quantity, const std::string& unit,
                  const std::vector<double>& values, double rateHz, double scale, double offset) {
  Channel channel;
  channel.id = quantity;
  channel.quantity = quantity;
  channel.unit = unit;
  channel.rateHz = rateHz;
  channel.scale = scale;
  channel.offset = offset;
  channel.samples.reserve(values.size());
  for (const double v : values) {
    channel.samples.push_back(std::isnan(v)
                                  ? kMissingSample
                                  : static_cast<std::int16_t>(std::clamp(
                                        std::lround((v - offset) / scale), -32767L, 32767L)));
  }
  channel.blocks.push_back({Time{}, 0, values.size()});
  return channel;
}

Match match(const std::vector<double>& truth, const std::vector<double>& found, double within) {
  Match result;
  result.truth = static_cast<int>(truth.size());
  result.found = static_cast<int>(found.size());
  std::size_t j = 0;
  for (std::size_t i = 0; i < truth.size(); ++i) {
    while (j < found.size() && found[j] < truth[i] - within) {
      ++j;
    }
    if (j < found.size() && found[j] <= truth[i] + within) {
      std::size_t best = j;
      while (best + 1 < found.size() &&
             std::fabs(found[best + 1] - truth[i]) < std::fabs(found[best] - truth[i])) {
        ++best;
      }
      ++result.matched;
      result.errors.push_back(found[best] - truth[i]);
      result.pairs.emplace_back(i, best);
      j = best + 1;
    }
  }
  return result;
}

} // namespace afterbeat::scenes
