#include "core/signal/hands/without_presses.h"

#include "core/signal/hands/alike.h"
#include "core/signal/hands/sum_of_neighbours.h"
#include "core/signal/hands/tops.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat {
namespace {

constexpr std::size_t kHalf = 16;
constexpr std::size_t kPhases = 2 * kHalf + 1;
constexpr std::size_t kNeighbours = 10;
/// Further apart than this are two runs of compressions.
constexpr double kLongestStepSeconds = 1.5;
using Shape = std::array<double, kPhases>;

/// One compression's place in the piece, in samples.
struct Place {
  double top = 0, left = 0, right = 0;
};

Shape shapeAt(std::span<const double> values, const Place& place) {
  Shape shape{};
  for (std::size_t p = 0; p < kPhases; ++p) {
    const double u = static_cast<double>(p) / kHalf - 1;
    shape[p] = valueAt(values, place.top + u * (u < 0 ? place.left : place.right));
  }
  const double first = shape.front(), last = shape.back();
  for (std::size_t p = 0; p < kPhases; ++p) {
    shape[p] -= first + (last - first) * static_cast<double>(p) / (kPhases - 1);
  }
  return shape;
}

/// How much of `sum` (of `count` shapes) is in `own`, as a factor of their mean; between a half and
/// two.
double sizeIn(const Shape& own, const Shape& sum, double count) {
  double ab = 0, bb = 0;
  for (std::size_t p = 0; p < kPhases; ++p) {
    ab += own[p] * sum[p];
    bb += sum[p] * sum[p];
  }
  return bb > 0 ? std::clamp(ab * count / bb, 0.5, 2.0) : 0;
}

void subtract(std::vector<double>& values, const Place& place, const Shape& sum, double factor) {
  const auto from = static_cast<std::size_t>(std::max(0.0, std::ceil(place.top - place.left)));
  const double end = std::min(place.top + place.right, static_cast<double>(values.size() - 1));
  for (std::size_t i = from; static_cast<double>(i) <= end; ++i) {
    const double away = static_cast<double>(i) - place.top;
    const double u = away / (away < 0 ? place.left : place.right);
    values[i] -= factor * valueAt(sum, (u + 1) * kHalf);
  }
}

void takeOut(std::vector<double>& values, std::span<const double> original,
             const std::vector<double>& tops) {
  if (tops.size() < 3) {
    return;
  }
  std::vector<double> steps;
  for (std::size_t k = 1; k < tops.size(); ++k) {
    steps.push_back(tops[k] - tops[k - 1]);
  }
  const double usual = upperMedian(steps);
  std::vector<Place> places;
  std::vector<Shape> shapes;
  for (std::size_t k = 0; k < tops.size(); ++k) {
    const double before = k > 0 ? std::min(steps[k - 1], 1.4 * usual) : usual;
    const double after = k < steps.size() ? std::min(steps[k], 1.4 * usual) : usual;
    places.push_back({tops[k], std::max(2.0, before / 2), std::max(2.0, after / 2)});
    shapes.push_back(shapeAt(original, places.back()));
  }
  eachSumOfNeighbours(shapes, kNeighbours, false,
                      [&](std::size_t k, const Shape& sum, double count) {
                        subtract(values, places[k], sum, sizeIn(shapes[k], sum, count) / count);
                      });
}

} // namespace

std::vector<double> withoutPresses(const Piece& piece, std::span<const Time> compressions) {
  std::vector<double> values = piece.values;
  const SignalView view = piece.view();
  const auto last = static_cast<double>(values.size()) - 1;
  std::vector<double> run;
  for (const Time t : compressions) {
    const double at = view.indexOf(t);
    if (at < 0 || at > last) {
      continue;
    }
    if (!run.empty() && at - run.back() > kLongestStepSeconds * piece.rateHz) {
      takeOut(values, piece.values, run);
      run.clear();
    }
    if (run.empty() || at > run.back() + 0.1 * piece.rateHz) {
      run.push_back(at);
    }
  }
  takeOut(values, piece.values, run);
  return values;
}

} // namespace afterbeat
