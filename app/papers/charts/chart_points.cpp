#include "app/papers/charts/chart_layout.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace afterbeat::papers {

namespace {

/// With more in one lane no pile of points is tried.
constexpr std::size_t kMostInPile = 4000;
constexpr int kShades = 5;

/// Points of each lane, by x.
using Lanes = std::vector<std::vector<std::uint32_t>>;

Lanes lanesOf(const Chart& chart) {
  Lanes lanes(static_cast<std::size_t>(chart.y.names.size()));
  for (std::uint32_t i = 0; i < chart.points.size(); ++i) {
    const auto lane = static_cast<std::size_t>(std::max(0L, std::lround(chart.points[i].y)));
    if (lane < lanes.size()) {
      lanes[lane].push_back(i);
    }
  }
  return lanes;
}

double pileRoom(const Chart& chart, const ChartLayout& layout, int lane) {
  return layout.laneFloor(lane, !chart.summaries.empty()) - layout.lane(lane).top() -
         0.2 * layout.size;
}

/// How points of a lane are piled up.
struct Pile {
  /// Of a point, in sizes of the text.
  double radius = 0;
  /// From one level to the next, in points: below 1 they overlap as coins do, and each is seen.
  double apart = 1;
};

/// Large points that overlap are seen better than small ones that do not.
constexpr Pile kPiles[] = {{0.32, 1},    {0.26, 1},    {0.26, 0.65},
                           {0.25, 0.48}, {0.24, 0.36}, {0.18, 0.48}};

/// Piles the points up so that none hides another, each at its own value; false: no room.
bool pileUp(const Chart& chart, ChartLayout& layout, const Lanes& lanes, const Pile& pile) {
  layout.points.assign(chart.points.size(), {});
  const double radius = pile.radius * layout.size;
  const double apart = 2 * radius + 0.08 * layout.size, up = pile.apart * apart;
  for (std::size_t lane = 0; lane < lanes.size(); ++lane) {
    const int index = static_cast<int>(lane);
    const double floor = layout.laneFloor(index, !chart.summaries.empty());
    const auto levels =
        1 + static_cast<std::size_t>(std::max(0.0, (pileRoom(chart, layout, index) - apart) / up));
    std::vector<double> lastAt(levels, -1e9);
    for (const std::uint32_t i : lanes[lane]) {
      const double x = layout.xAt(chart.points[i].x);
      const auto free = std::find_if(lastAt.begin(), lastAt.end(),
                                     [&](double last) { return x - last >= apart; });
      if (free == lastAt.end()) {
        layout.points.clear();
        return false;
      }
      *free = x;
      layout.points[i] = {x, floor - radius - up * static_cast<double>(free - lastAt.begin())};
    }
  }
  layout.radius = radius;
  return true;
}

/// Columns over each lane, all lanes to one scale.
void columns(const Chart& chart, ChartLayout& layout, const Lanes& lanes) {
  const double wide = 0.35 * layout.size;
  const auto places = static_cast<std::size_t>(std::ceil(layout.plot.width() / wide)) + 1;
  std::vector<std::uint32_t> counts(places * lanes.size());
  layout.amountOf.assign(chart.points.size(), 0);
  for (std::size_t lane = 0; lane < lanes.size(); ++lane) {
    for (const std::uint32_t i : lanes[lane]) {
      const double at = (layout.xAt(chart.points[i].x) - layout.plot.left()) / wide;
      const auto place = std::min(static_cast<std::size_t>(std::max(0.0, at)), places - 1);
      layout.amountOf[i] = static_cast<std::uint32_t>(lane * places + place);
      ++counts[layout.amountOf[i]];
    }
  }
  const std::uint32_t most = *std::max_element(counts.begin(), counts.end());
  for (std::size_t k = 0; k < counts.size(); ++k) {
    const int lane = static_cast<int>(k / places);
    const double room = pileRoom(chart, layout, lane);
    // A single record is seen as well.
    const double high = counts[k] == 0 ? 0 : std::max(0.12 * layout.size, room * counts[k] / most);
    const double x = layout.plot.left() + static_cast<double>(k % places) * wide;
    layout.amounts.push_back(
        {{x, layout.laneFloor(lane, !chart.summaries.empty()) - high, wide, high}, counts[k]});
  }
}

void placeInLanes(const Chart& chart, ChartLayout& layout) {
  Lanes lanes = lanesOf(chart);
  const bool few = std::all_of(lanes.begin(), lanes.end(),
                               [](const auto& lane) { return lane.size() <= kMostInPile; });
  if (few) {
    for (auto& lane : lanes) {
      std::sort(lane.begin(), lane.end(), [&](std::uint32_t a, std::uint32_t b) {
        return chart.points[a].x != chart.points[b].x ? chart.points[a].x < chart.points[b].x
                                                      : a < b;
      });
    }
    for (const Pile& pile : kPiles) {
      if (pileUp(chart, layout, lanes, pile)) {
        return;
      }
    }
  }
  columns(chart, layout, lanes);
}

/// Whether more than a fifth of the points lie under at least three others.
bool hideEachOther(const std::vector<std::uint32_t>& cellOf,
                   const std::vector<std::uint32_t>& counts) {
  std::size_t hidden = 0;
  for (const std::uint32_t cell : cellOf) {
    hidden += counts[cell] > 3 ? 1 : 0;
  }
  return cellOf.size() > 200 && hidden * 5 > cellOf.size();
}

void placeFreely(const Chart& chart, ChartLayout& layout) {
  // Cells fill the plot and end with it: one beyond an axis would look like another value.
  const auto cells = [&layout](double length) {
    return static_cast<std::size_t>(std::max(1L, std::lround(length / (0.4 * layout.size))));
  };
  const std::size_t across = cells(layout.plot.width()), down = cells(layout.plot.height());
  const double wide = layout.plot.width() / static_cast<double>(across);
  const double high = layout.plot.height() / static_cast<double>(down);
  layout.radius = (chart.points.size() > 300 ? 0.22 : 0.3) * layout.size;
  layout.points.reserve(chart.points.size());
  layout.amountOf.reserve(chart.points.size());
  std::vector<std::uint32_t> counts(across * down);
  for (const ChartPoint& point : chart.points) {
    const QPointF at(layout.xAt(point.x), layout.yAt(point.y, false));
    const auto column = std::min(
        static_cast<std::size_t>(std::max(0.0, (at.x() - layout.plot.left()) / wide)), across - 1);
    const auto row = std::min(
        static_cast<std::size_t>(std::max(0.0, (at.y() - layout.plot.top()) / high)), down - 1);
    layout.points.push_back(at);
    layout.amountOf.push_back(static_cast<std::uint32_t>(row * across + column));
    ++counts[layout.amountOf.back()];
  }
  if (!hideEachOther(layout.amountOf, counts)) {
    layout.amountOf.clear();
    return;
  }
  layout.points.clear();
  const double most = std::log(1.0 + *std::max_element(counts.begin(), counts.end()));
  for (std::size_t k = 0; k < counts.size(); ++k) {
    const double share = std::log(1.0 + counts[k]) / most;
    layout.amounts.push_back(
        {QRectF(layout.plot.left() + static_cast<double>(k % across) * wide,
                layout.plot.top() + static_cast<double>(k / across) * high, wide, high),
         counts[k], std::clamp(static_cast<int>(std::ceil(share * kShades)), 1, kShades)});
  }
}

} // namespace

void placePoints(const Chart& chart, ChartLayout& layout) {
  if (chart.points.empty()) {
    return;
  }
  if (chart.lanes()) {
    placeInLanes(chart, layout);
  } else {
    placeFreely(chart, layout);
  }
}

} // namespace afterbeat::papers
