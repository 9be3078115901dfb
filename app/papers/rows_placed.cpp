#include "app/papers/rows.h"
#include "app/papers/rows_layout.h"
#include "app/papers/rows_model.h"
#include "app/papers/rows_paint.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

/// For each row the stretches that reach into it or touch it, in the order given: a working may
/// have thousands, of which a row shows few.
std::vector<std::vector<Interval>> byRow(const RowsModel& model,
                                         const std::vector<Interval>& stretches) {
  std::vector<std::vector<Interval>> rows(static_cast<std::size_t>(model.rowCount()));
  if (rows.empty()) {
    return rows;
  }
  const auto last = static_cast<std::int64_t>(rows.size()) - 1;
  const Time begin = model.row(0).begin;
  for (const Interval& stretch : stretches) {
    // One row to either side, as what ends where a row begins touches both.
    const std::int64_t from = (stretch.begin - begin) / model.rowLength - 1;
    const std::int64_t to = (stretch.end - begin) / model.rowLength + 1;
    for (auto i = std::max<std::int64_t>(0, from); i <= std::min(last, to); ++i) {
      const Interval row = model.row(static_cast<int>(i));
      if (stretch.end >= row.begin && stretch.begin <= row.end) {
        rows[static_cast<std::size_t>(i)].push_back(stretch);
      }
    }
  }
  return rows;
}

} // namespace

RowsPlaced::RowsPlaced(const RowsPicture& picture, const QRectF& area, const RowsLook& look,
                       bool legend, bool fit)
    : model_(picture.model_), look_(look),
      layout_(std::make_shared<const RowsLayout>(
          layOutRows(*model_, Lettering(look.font), area, look, legend, fit))) {}

void RowsPlaced::paint(QPainter& painter, const std::vector<Interval>& working) const {
  painter.save();
  // What a scrolled view does not show need not be painted.
  const bool clipped = painter.hasClipping();
  const QRectF shown = painter.clipBoundingRect();
  const RowsGeometry& geometry = layout_->geometry;
  RowPainter rows(painter, *model_, geometry, look_);
  const auto workingOfRows = byRow(*model_, working);
  for (const RowPlace& place : geometry.rows) {
    if (!clipped || (place.bottom >= shown.top() && place.top <= shown.bottom())) {
      rows.paintRow(place, workingOfRows[static_cast<std::size_t>(place.index)]);
    }
  }
  paintBreaths(painter, *layout_, look_, clipped ? shown : QRectF());
  paintTexts(painter, *model_, *layout_, look_, clipped ? shown : QRectF());
  painter.restore();
}

void RowsPlaced::paintOverlay(QPainter& painter, const RowsOverlay& overlay) const {
  if (!overlay.selected && !overlay.cursor) {
    return;
  }
  painter.save();
  RowPainter rows(painter, *model_, layout_->geometry, look_);
  for (const RowPlace& place : layout_->geometry.rows) {
    const Interval row = model_->row(place.index);
    const bool selected = overlay.selected && overlay.selected->begin <= row.end &&
                          overlay.selected->end >= row.begin;
    if (selected || (overlay.cursor && model_->inRow(place.index, *overlay.cursor))) {
      rows.paintOver(place, overlay);
    }
  }
  painter.restore();
}

std::vector<QRectF> RowsPlaced::touched(const RowsOverlay& overlay) const {
  std::vector<QRectF> all;
  const RowsGeometry& geometry = layout_->geometry;
  const double room = geometry.sizes.small * 0.5 + 2;
  for (const RowPlace& place : geometry.rows) {
    const Interval row = model_->row(place.index);
    const auto add = [&](Time from, Time to) {
      const double left = std::max(geometry.left, geometry.x(row, from)) - room;
      const double right = std::min(geometry.left + geometry.width, geometry.x(row, to)) + room;
      all.emplace_back(left, place.band.top() - room * 1.5, right - left,
                       place.band.height() + room * 2.5);
    };
    if (overlay.selected && overlay.selected->begin <= row.end &&
        overlay.selected->end >= row.begin) {
      add(overlay.selected->begin, overlay.selected->end);
    }
    if (overlay.cursor && model_->inRow(place.index, *overlay.cursor)) {
      add(*overlay.cursor, *overlay.cursor);
    }
  }
  return all;
}

std::optional<Time> RowsPlaced::timeAt(const QPointF& point) const {
  const RowsGeometry& geometry = layout_->geometry;
  if (!model_->span || point.x() < geometry.left || point.x() > geometry.left + geometry.width) {
    return std::nullopt;
  }
  const auto row =
      std::find_if(geometry.rows.begin(), geometry.rows.end(), [&](const RowPlace& place) {
        return point.y() >= place.top && point.y() < place.bottom;
      });
  if (row == geometry.rows.end()) {
    return std::nullopt;
  }
  const double share = (point.x() - geometry.left) / geometry.width;
  const auto length = static_cast<double>(model_->rowLength.count());
  const Time t = model_->row(row->index).begin + Duration{std::llround(share * length)};
  return t <= model_->span->end ? std::optional<Time>(t) : std::nullopt;
}

QRectF RowsPlaced::rowRect(int index) const {
  const RowPlace* place = model_->span ? layout_->geometry.place(index) : nullptr;
  return place != nullptr ? place->band : QRectF();
}

} // namespace afterbeat::papers
