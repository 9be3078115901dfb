#include "samples/body/body.h"

#include <algorithm>

namespace afterbeat::samples::body {

Body bodyOf(const Truth& truth, double from, double to, const Circumstances& how,
            const std::vector<Rescuer>& rescuers, std::uint64_t seed) {
  constexpr double kUsualDepth = 52;
  Body body;
  body.from = from;
  body.to = to;
  body.how = how;
  body.seed = seed;
  body.rhythm = truth.rhythm;
  std::size_t hands = 0;
  for (const auto& entry : truth.compressions) {
    const auto& c = std::get<entry::Compression>(entry.data);
    const double s = seconds(entry.t);
    while (hands < rescuers.size() && rescuers[hands].from <= s) {
      ++hands;
    }
    body.presses.push_back({s, c.depthMm.value_or(kUsualDepth), c.leaningMm.value_or(0),
                            hands > 0 ? rescuers[hands - 1].stroke : Stroke::even});
  }
  Dice dice = diceFor(body, 0);
  for (const Time t : truth.breaths) {
    body.breaths.push_back(
        {seconds(t), dice.between(0.8, 1.15), dice.between(0.8, 1.2), dice.between(0.5, 0.8)});
  }
  std::sort(body.breaths.begin(), body.breaths.end(),
            [](const Breath& a, const Breath& b) { return a.s < b.s; });
  for (const auto& shock : truth.shocks) {
    if (shock.delivered) {
      body.shocks.push_back(seconds(shock.t));
    }
  }
  return body;
}

Dice diceFor(const Body& body, std::uint64_t use) {
  return Dice(body.seed * 64 + use + 1);
}

} // namespace afterbeat::samples::body
