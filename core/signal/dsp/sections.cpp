#include "core/signal/dsp/sections.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat {

namespace {

/// Samples between two looks for a state that fades towards numbers too small to compute quickly.
constexpr std::size_t kPiece = 4096;
constexpr double kAsGoodAsZero = 1e-200;

/// The value beyond an end: the mirror of `inner` through the point `edge`.
double mirrored(double edge, double inner) {
  return 2 * edge - inner;
}

} // namespace

Cascade::Cascade(std::vector<Section> sections)
    : sections_(std::move(sections)), state_(sections_.size()) {}

void Cascade::settle(double value) {
  for (std::size_t k = 0; k < sections_.size(); ++k) {
    const Section& c = sections_[k];
    const double out = value * (c.b0 + c.b1 + c.b2) / (1 + c.a1 + c.a2);
    state_[k].s2 = c.b2 * value - c.a2 * out;
    state_[k].s1 = c.b1 * value - c.a1 * out + state_[k].s2;
    value = out;
  }
}

/// `kCount` sections at once: they work on neighbouring samples at the same time.
template <std::size_t kCount>
void Cascade::runSome(std::size_t first, std::span<double> values) {
  std::array<Section, kCount> sections{};
  std::array<State, kCount> state{};
  for (std::size_t k = 0; k < kCount; ++k) {
    sections[k] = sections_[first + k];
    state[k] = state_[first + k];
  }
  for (double& value : values) {
    double in = value;
    for (std::size_t k = 0; k < kCount; ++k) {
      in = stepOne(sections[k], state[k], in);
    }
    value = in;
  }
  for (std::size_t k = 0; k < kCount; ++k) {
    for (double* s : {&state[k].s1, &state[k].s2}) {
      *s = std::fabs(*s) < kAsGoodAsZero ? 0 : *s;
    }
    state_[first + k] = state[k];
  }
}

void Cascade::run(std::span<double> values) {
  while (!values.empty()) {
    const auto piece = values.first(std::min(values.size(), kPiece));
    values = values.subspan(piece.size());
    std::size_t k = 0;
    for (; k + 4 <= sections_.size(); k += 4) {
      runSome<4>(k, piece);
    }
    if (sections_.size() - k == 3) {
      runSome<3>(k, piece);
    } else if (sections_.size() - k == 2) {
      runSome<2>(k, piece);
    } else if (sections_.size() - k == 1) {
      runSome<1>(k, piece);
    }
  }
}

void filterBothWays(std::span<const Section> sections, std::span<double> values) {
  if (values.empty() || sections.empty()) {
    return;
  }
  const auto firstOrder = [&](double Section::*last) {
    return std::count_if(sections.begin(), sections.end(),
                         [last](const Section& c) { return c.*last == 0; });
  };
  const auto taps =
      2 * sections.size() + 1 -
      static_cast<std::size_t>(std::min(firstOrder(&Section::b2), firstOrder(&Section::a2)));
  const auto beyond = std::min(3 * taps, values.size() - 1);

  std::vector<double> before(beyond), after(beyond);
  for (std::size_t i = 0; i < beyond; ++i) {
    before[i] = mirrored(values.front(), values[beyond - i]);
    after[i] = mirrored(values.back(), values[values.size() - 2 - i]);
  }
  Cascade filter({sections.begin(), sections.end()});
  filter.settle(before.empty() ? values.front() : before.front());
  filter.run(before);
  filter.run(values);
  filter.run(after);

  filter.settle(after.empty() ? values.back() : after.back());
  std::reverse(after.begin(), after.end());
  filter.run(after);
  std::reverse(values.begin(), values.end());
  filter.run(values);
  std::reverse(values.begin(), values.end());
}

} // namespace afterbeat
