#include "app/papers/rows_layout.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

/// Text is never set smaller than what can be read on paper.
constexpr double kSmallestText = 5.5;

/// Lanes that no row of this record needs are not kept free.
RowSizes fullSizes(const RowsModel& model, double text, double band) {
  RowSizes sizes;
  sizes.text = text;
  sizes.small = std::max(std::min(text, kSmallestText), text * 0.88);
  const auto isBelow = [](const RowMark& mark) { return isAnalysis(mark.kind); };
  const auto below = std::count_if(model.marks.begin(), model.marks.end(), isBelow);
  const bool above = static_cast<std::size_t>(below) < model.marks.size();
  sizes.above = sizes.small * (above ? 1.55 : 0.5);
  sizes.band = std::max(band, sizes.small * 1.3);
  sizes.below = sizes.small * (below > 0 || !model.cycles.empty() ? 2.3 : 0.9);
  return sizes;
}

RowSizes denseSizes(double text, double band = 0) {
  RowSizes sizes;
  sizes.detail = RowDetail::dense;
  sizes.text = text;
  sizes.small = text;
  sizes.above = text * 0.16;
  sizes.band = std::max(band, text * 1.2);
  sizes.below = text * 0.62;
  return sizes;
}

double smallestText(double text, const RowsLook& look) {
  return std::min(text, std::max(kSmallestText, text * look.smallestShare));
}

double textSize(const RowsLook& look, const Lettering& lettering) {
  return look.textSize > 0 ? look.textSize : lettering.size();
}

/// From the look's own size down to the smallest readable one, largest first.
std::vector<RowSizes> sizesToTry(const RowsModel& model, double text, const RowsLook& look) {
  const double smallest = smallestText(text, look);
  std::vector<RowSizes> sizes;
  constexpr int kSteps = 8;
  for (int i = 0; i <= kSteps; ++i) {
    const double share = static_cast<double>(i) / kSteps;
    const double size = text + (smallest - text) * share;
    sizes.push_back(fullSizes(model, size, look.rowHeight * size / text));
  }
  const double band = look.rowHeight * smallest / text;
  for (int i = 1; i <= kSteps; ++i) {
    const double share = static_cast<double>(i) / kSteps;
    sizes.push_back(
        fullSizes(model, smallest, band + (std::min(band, smallest * 2) - band) * share));
  }
  for (int i = 0; i <= kSteps; ++i) {
    const double share = static_cast<double>(i) / kSteps;
    const double size = text + (smallest - text) * share;
    sizes.push_back(denseSizes(size, look.rowHeight * 0.8 * (1 - share)));
  }
  return sizes;
}

double labelWidth(const RowsModel& model, const Lettering& lettering, const RowSizes& sizes) {
  double minutes = 0;
  double clock = 0;
  for (const RowLabel& label : model.labels) {
    minutes = std::max(minutes, lettering.width(label.minutes, sizes.text, Weight::bold));
    clock = std::max(clock, lettering.width(label.clock, sizes.small, Weight::regular));
  }
  const double gap = sizes.text * 0.8;
  if (oneLineLabels(sizes, lettering) && clock > 0) {
    return minutes + sizes.small * 0.6 + clock + gap;
  }
  return std::max(minutes, clock) + gap;
}

double legendHeight(const RowsModel& model, const Lettering& lettering, const RowSizes& sizes,
                    double width) {
  double x = 0;
  int lines = 1;
  const double size = sizes.small;
  for (const LegendItem& item : legendItems(model)) {
    const double wide =
        legendShapeWidth(size) + lettering.width(item.words, size, Weight::regular) + size * 2;
    if (x > 0 && x + wide - size * 1.5 > width) {
      x = 0;
      ++lines;
    }
    x += wide;
  }
  return size * 0.7 + lines * size * kLegendLine;
}

double heightOf(const RowsModel& model, const Lettering& lettering, const RowSizes& sizes,
                double width, bool legend) {
  const double rows = model.rowCount() * sizes.pitch();
  return rows + (legend ? legendHeight(model, lettering, sizes, width) : 0);
}

/// The rows that fit, from the begin and from the end.
void leaveOutTheMiddle(RowsGeometry& geometry, int count, double top, double room) {
  const double pitch = geometry.sizes.pitch();
  const double line = geometry.sizes.text * 1.9;
  const int shown = std::max(0, static_cast<int>(std::floor((room - line) / pitch)));
  const int first = std::min(count, (shown + 1) / 2);
  const int last = std::min(count - first, shown / 2);
  geometry.leftOutFrom = first;
  geometry.leftOutCount = count - first - last;
  if (room >= line) {
    geometry.leftOut = QRectF(geometry.left, top + first * pitch, geometry.width, line);
  }
  for (int i = 0; i < first + last; ++i) {
    RowPlace row;
    row.index = i < first ? i : count - last + (i - first);
    row.top = top + i * pitch + (i < first ? 0 : line);
    geometry.rows.push_back(row);
  }
}

} // namespace

bool oneLineLabels(const RowSizes& sizes, const Lettering& lettering) {
  return sizes.band < lettering.capHeight(sizes.text) + 1 + 2 * kLabelStep * sizes.small;
}

double RowsGeometry::x(const Interval& row, Time t) const {
  return left + width * seconds(t - row.begin) / seconds(row.length());
}

const RowPlace* RowsGeometry::place(int index) const {
  const auto found = std::lower_bound(rows.begin(), rows.end(), index,
                                      [](const RowPlace& row, int i) { return row.index < i; });
  return found != rows.end() && found->index == index ? &*found : nullptr;
}

RowsGeometry layOutGeometry(const RowsModel& model, const Lettering& lettering, const QRectF& area,
                            const RowsLook& look, bool legend, bool fit) {
  RowsGeometry geometry;
  const double text = textSize(look, lettering);
  const int count = model.rowCount();
  geometry.sizes = fullSizes(model, text, look.rowHeight);
  if (fit && legend) {
    // Rows are worth more than their legend.
    const RowSizes smallest = denseSizes(smallestText(text, look));
    legend = legendHeight(model, lettering, smallest, area.width()) <= area.height() * 0.4;
  }
  if (fit) {
    for (const RowSizes& sizes : sizesToTry(model, text, look)) {
      geometry.sizes = sizes;
      if (heightOf(model, lettering, sizes, area.width(), legend) <= area.height()) {
        break;
      }
    }
  }
  const RowSizes& sizes = geometry.sizes;
  geometry.left = area.left() + labelWidth(model, lettering, sizes);
  geometry.width = std::max(1.0, area.right() - sizes.small * 0.3 - geometry.left);
  const double legendRoom = legend ? legendHeight(model, lettering, sizes, area.width()) : 0;
  if (fit && count * sizes.pitch() + legendRoom > area.height()) {
    leaveOutTheMiddle(geometry, count, area.top(), area.height() - legendRoom);
  } else {
    for (int i = 0; i < count; ++i) {
      RowPlace row;
      row.index = i;
      row.top = area.top() + i * sizes.pitch();
      geometry.rows.push_back(row);
    }
  }
  geometry.bottom = area.top();
  for (RowPlace& row : geometry.rows) {
    row.bottom = row.top + sizes.pitch();
    row.band = QRectF(geometry.left, row.top + sizes.above, geometry.width, sizes.band);
    geometry.bottom = std::max(geometry.bottom, row.bottom);
  }
  geometry.bottom = std::max(geometry.bottom, geometry.leftOut.bottom());
  if (legend) {
    geometry.legend = QRectF(area.left(), geometry.bottom, area.width(), legendRoom);
    geometry.bottom += legendRoom;
  }
  return geometry;
}

double neededHeight(const RowsModel& model, const Lettering& lettering, double width,
                    const RowsLook& look, bool legend, bool squeezed) {
  const double text = textSize(look, lettering);
  if (model.rowCount() == 0) {
    return text * 2.5;
  }
  const RowSizes sizes =
      squeezed ? denseSizes(smallestText(text, look)) : fullSizes(model, text, look.rowHeight);
  return heightOf(model, lettering, sizes, width, legend);
}

} // namespace afterbeat::papers
