#include "core/signal/hands/pulses.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace afterbeat {
namespace {

/// Spread (of the natural logarithm) of the ratio of neighbouring intervals and heights.
constexpr double kIntervalSpread = 0.13;
constexpr double kHeightSpread = 0.30;
/// What a perfect match gains and what the worst loses.
constexpr double kIntervalGain = 1.4, kIntervalLoss = 3.0;
constexpr double kHeightGain = 0.7, kHeightLoss = 2.0;
constexpr double kHeightAlone = 0.8;
constexpr double kSkipLoss = 4.0;
constexpr std::size_t kBefore = 6;

double likeness(double ratio, double spread, double gain, double loss) {
  const double x = std::log(ratio) / spread;
  return std::max(gain - x * x / 2, -loss);
}

/// A predecessor of a pulse, and the best series that ends with this pair.
struct Pair {
  std::size_t from = 0;
  double interval = 0;
  double skipped = 0;
  double score = -std::numeric_limits<double>::infinity();
  /// Which pair of `from` comes before; -1: the series begins with `from`.
  int back = -1;
};

struct Node {
  std::array<Pair, kBefore> pairs;
  std::size_t count = 0;
};

class Tracker {
public:
  Tracker(std::span<const Pulse> pulses, const SeriesRules& rules)
      : pulses_(pulses), rules_(rules), nodes_(pulses.size()), total_(pulses.size() + 1, 0),
        ended_(pulses.size() + 1, -1), free_(pulses.size(), 0) {
    const auto apart = static_cast<std::size_t>(rules.shortest * rules.rateHz);
    for (std::size_t i = 0, from = 0; i < pulses.size(); ++i) {
      while (pulses[from].top + apart <= pulses[i].top) {
        ++from;
      }
      free_[i] = from;
    }
  }

  SeriesFound run() {
    for (std::size_t i = 0; i < pulses_.size(); ++i) {
      link(i);
      total_[i + 1] = total_[i];
      for (std::size_t p = 0; p < nodes_[i].count; ++p) {
        if (nodes_[i].pairs[p].score > total_[i + 1]) {
          total_[i + 1] = nodes_[i].pairs[p].score;
          ended_[i + 1] = static_cast<int>(p);
        }
      }
    }
    return {collect(), total_.back()};
  }

private:
  [[nodiscard]] double alone(std::size_t i) const {
    const double x = std::log(pulses_[i].height / (pulses_[i].fairHeight > 0 ? pulses_[i].fairHeight
                                                                             : rules_.fairHeight));
    return std::clamp(kHeightAlone * x, -3.0, kHeightAlone) + pulses_[i].worth;
  }

  /// What leaving out the pulses between `j` and `i` costs.
  [[nodiscard]] double skipping(std::size_t j, std::size_t i) const {
    const double usual = std::min(pulses_[j].height, pulses_[i].height);
    double cost = 0;
    for (std::size_t m = j + 1; m < i; ++m) {
      if (pulses_[m].look != pulses_[i].look) {
        continue;
      }
      const double share = std::min(1.0, pulses_[m].height / usual);
      cost += kSkipLoss * share * share;
    }
    return cost;
  }

  void link(std::size_t i) {
    Node& node = nodes_[i];
    for (std::size_t j = i; j-- > 0 && node.count < kBefore;) {
      const double interval = static_cast<double>(pulses_[i].top - pulses_[j].top) / rules_.rateHz;
      if (interval > rules_.longest) {
        break;
      }
      if (interval < rules_.shortest || pulses_[j].look != pulses_[i].look) {
        continue;
      }
      Pair pair{j, interval, skipping(j, i), 0, -1};
      score(pair, i);
      node.pairs[node.count++] = pair;
    }
  }

  void score(Pair& pair, std::size_t i) {
    const std::size_t j = pair.from;
    const double here =
        alone(i) - pair.skipped +
        likeness(pulses_[i].height / pulses_[j].height, kHeightSpread, kHeightGain, kHeightLoss);
    pair.score = total_[free_[j]] - rules_.least + alone(j) + here;
    const Node& before = nodes_[j];
    for (std::size_t p = 0; p < before.count; ++p) {
      const double steady = likeness(pair.interval / before.pairs[p].interval, kIntervalSpread,
                                     kIntervalGain, kIntervalLoss);
      const double candidate = before.pairs[p].score + here + steady;
      if (candidate > pair.score) {
        pair.score = candidate;
        pair.back = static_cast<int>(p);
      }
    }
  }

  std::vector<Series> collect() const {
    std::vector<Series> result;
    std::size_t i = pulses_.size();
    while (i > 0) {
      if (ended_[i] < 0) {
        --i;
        continue;
      }
      Series series;
      std::size_t at = i - 1;
      int p = ended_[i];
      series.push_back(at);
      while (p >= 0) {
        const Pair& pair = nodes_[at].pairs[static_cast<std::size_t>(p)];
        at = pair.from;
        p = pair.back;
        series.push_back(at);
      }
      std::reverse(series.begin(), series.end());
      i = free_[series.front()];
      result.push_back(std::move(series));
    }
    std::reverse(result.begin(), result.end());
    return result;
  }

  std::span<const Pulse> pulses_;
  const SeriesRules& rules_;
  std::vector<Node> nodes_;
  /// The best that ends before pulse `i`, and which pair ended at pulse `i - 1`; -1: none.
  std::vector<double> total_;
  std::vector<int> ended_;
  /// How many pulses lie before each and far enough from it to be the end of another series.
  std::vector<std::size_t> free_;
};

} // namespace

std::vector<Pulse> joined(std::span<const std::vector<Pulse>> looks) {
  std::vector<Pulse> result;
  for (std::size_t look = 0; look < looks.size(); ++look) {
    const auto before = static_cast<std::ptrdiff_t>(result.size());
    result.insert(result.end(), looks[look].begin(), looks[look].end());
    for (auto pulse = result.begin() + before; pulse != result.end(); ++pulse) {
      pulse->look = look;
    }
    std::inplace_merge(result.begin(), result.begin() + before, result.end(),
                       [](const Pulse& a, const Pulse& b) { return a.top < b.top; });
  }
  return result;
}

std::vector<Pulse> findPulses(std::span<const double> signal, double least) {
  std::vector<Pulse> pulses;
  if (signal.size() < 3) {
    return pulses;
  }
  std::size_t low = 0, high = 0;
  bool rising = true;
  Pulse pulse;
  bool open = false;
  for (std::size_t i = 1; i < signal.size(); ++i) {
    if (rising) {
      if (signal[i] > signal[high]) {
        high = i;
      } else if (signal[i] <= signal[high] - least && signal[high] - signal[low] >= least) {
        pulse = Pulse{high, low, i, 0, 0, 0, 0};
        open = true;
        rising = false;
        low = i;
      } else if (signal[i] < signal[low]) {
        low = high = i;
      }
    } else {
      if (signal[i] < signal[low]) {
        low = i;
      }
      if (signal[i] >= signal[low] + least || i + 1 == signal.size()) {
        pulse.after = low;
        pulse.height = signal[pulse.top] - (signal[pulse.before] + signal[low]) / 2;
        pulses.push_back(pulse);
        open = false;
        rising = true;
        high = i;
      }
    }
  }
  if (open) {
    pulse.after = low;
    pulse.height = signal[pulse.top] - (signal[pulse.before] + signal[low]) / 2;
    pulses.push_back(pulse);
  }
  return pulses;
}

SeriesFound findSeries(std::span<const Pulse> pulses, const SeriesRules& rules) {
  return Tracker(pulses, rules).run();
}

} // namespace afterbeat
