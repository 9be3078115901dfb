#include "app/papers/charts/chart_layout.h"

#include <algorithm>

namespace afterbeat::papers {

namespace {

class LabelPlacer {
public:
  LabelPlacer(const Chart& chart, const Lettering& lettering, ChartLayout& layout)
      : chart_(chart), lettering_(lettering), layout_(layout) {}

  void placeAll() {
    if (chart_.lanes()) {
      placeTopLabels();
    } else {
      placeRightLabels();
    }
    double last = -1e9;
    for (const ChartMark& mark : chart_.dayMarks) {
      const double wide = std::min(width(mark.label), layout_.plot.width());
      const double at = layout_.xAt(mark.x), gap = 0.3 * size();
      // To the right of its line; to the left where it would pass the edge.
      const bool fits = at + gap + wide <= layout_.area.right();
      const double x = std::max(fits ? at + gap : at - gap - wide, layout_.plot.left());
      if (x > last) {
        add(ChartTextRole::label, cut(mark.label, wide + 1),
            {x, layout_.plot.top() - 0.4 * size()});
        last = x + wide + size() / 2;
      }
    }
  }

private:
  [[nodiscard]] double size() const { return layout_.size; }

  void add(ChartTextRole role, const QString& text, const QPointF& at) {
    layout_.texts.push_back({role, text, at, size(), Weight::regular});
  }

  double width(const QString& text) const {
    return lettering_.width(text, size(), Weight::regular);
  }

  QString cut(const QString& text, double room) const {
    return lettering_.elided(text, size(), Weight::regular, room);
  }

  /// Along the line, above or below it, the first place where the label lies on no point; above its
  /// beginning where there is none.
  [[nodiscard]] QPointF freePlace(const ChartLine& line) const {
    const double y = layout_.yAt(line.corners.front().y(), false);
    const double from = layout_.xAt(line.corners.front().x()) + 0.3 * size();
    const double to = layout_.xAt(line.corners.back().x()) - width(line.label);
    for (double x = from; x <= std::max(from, to); x += size()) {
      for (const double base : {y - 0.4 * size(), y + 1.2 * size()}) {
        const QRectF box(x - 0.4 * size(), base - 1.1 * size(), width(line.label) + 0.8 * size(),
                         1.6 * size());
        const bool taken =
            std::any_of(chart_.points.begin(), chart_.points.end(), [&](const ChartPoint& point) {
              return box.contains(layout_.xAt(point.x), layout_.yAt(point.y, false));
            });
        if (!taken) {
          return {x, base};
        }
      }
    }
    return {from, y - 0.4 * size()};
  }

  void placeTopLabels() {
    double last = layout_.plot.left() - 1;
    const auto place = [&](double value, const QString& label) {
      const double wide = width(label);
      const double x = std::clamp(layout_.xAt(value), layout_.plot.left(),
                                  std::max(layout_.plot.left(), layout_.area.right() - wide));
      if (!label.isEmpty() && x > last) {
        add(ChartTextRole::label, cut(label, layout_.area.right() - x),
            {x, layout_.plot.top() - 0.4 * size()});
        last = x + wide + size() / 2;
      }
    };
    for (const ChartBand& band : chart_.bands) {
      place(band.from, band.label);
    }
    for (const ChartLine& line : chart_.lines) {
      if (!line.corners.empty()) {
        place(line.corners.front().x(), line.label);
      }
    }
  }

  void placeRightLabels() {
    struct Label {
      double y;
      QString text;
    };
    std::vector<Label> labels;
    for (const ChartLine& line : chart_.lines) {
      if (line.label.isEmpty() || line.corners.empty()) {
        continue;
      }
      if (line.labelAtBegin) {
        add(ChartTextRole::inside, line.label, freePlace(line));
      } else {
        labels.push_back({layout_.yAt(line.corners.back().y(), false), line.label});
      }
    }
    for (const ChartBand& band : chart_.bands) {
      if (!band.label.isEmpty()) {
        labels.push_back({layout_.yAt((band.from + band.to) / 2, false), band.label});
      }
    }
    std::stable_sort(labels.begin(), labels.end(),
                     [](const Label& a, const Label& b) { return a.y < b.y; });
    double least = -1e9;
    for (Label& label : labels) {
      label.y = std::max(label.y, least);
      least = label.y + 1.2 * size();
      add(ChartTextRole::label,
          cut(label.text, layout_.area.right() - layout_.plot.right() - 0.4 * size()),
          {layout_.plot.right() + 0.5 * size(), label.y + 0.36 * size()});
    }
  }

  const Chart& chart_;
  const Lettering& lettering_;
  ChartLayout& layout_;
};

} // namespace

void placeChartLabels(const Chart& chart, const Lettering& lettering, ChartLayout& layout) {
  LabelPlacer(chart, lettering, layout).placeAll();
}

} // namespace afterbeat::papers
