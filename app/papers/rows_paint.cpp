#include "app/papers/rows_paint.h"

#include <QPaintEngine>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

/// The band's scale reaches below and above the target corridor by multiples of its width.
constexpr double kBelowCorridor = 2.0;
constexpr double kAboveCorridor = 1.5;
/// Without a target: from 40 to 160 a minute.
constexpr Range kScaleWithoutTarget{40, 160};
/// Even the slowest compressions stay visible.
constexpr double kLeastShare = 0.08;

Range scaleOf(const std::optional<Range>& corridor) {
  if (!corridor) {
    return kScaleWithoutTarget;
  }
  const double width = std::max(10.0, corridor->high - corridor->low);
  return {corridor->low - kBelowCorridor * width, corridor->high + kAboveCorridor * width};
}

bool isRaster(const QPainter& painter) {
  return painter.paintEngine() != nullptr && painter.paintEngine()->type() == QPaintEngine::Raster;
}

} // namespace

RowPainter::RowPainter(QPainter& painter, const RowsModel& model, const RowsGeometry& geometry,
                       const RowsLook& look)
    : painter_(painter), model_(model), geometry_(geometry), look_(look),
      raster_(isRaster(painter)), line_(std::max(0.4, geometry.sizes.small * 0.09)) {}

std::optional<RowPainter::Span> RowPainter::span(const Interval& stretch) const {
  if (stretch.end < row_.begin || stretch.begin > row_.end) {
    return std::nullopt;
  }
  const double right = geometry_.left + geometry_.width;
  return Span{std::max(geometry_.left, x(stretch.begin)), std::min(right, x(stretch.end))};
}

std::vector<PauseShown>::const_iterator RowPainter::firstPause() const {
  return std::partition_point(
      model_.pauses.begin(), model_.pauses.end(),
      [this](const PauseShown& pause) { return pause.stretch.end < row_.begin; });
}

double RowPainter::heightOf(double rate) const {
  const Range scale = scaleOf(model_.corridor);
  const double share = (rate - scale.low) / (scale.high - scale.low);
  return place_.band.height() * std::clamp(share, kLeastShare, 1.0);
}

double RowPainter::unknownHeight() const {
  constexpr double kShare = 0.28;
  return place_.band.height() * kShare;
}

void RowPainter::paintRow(const RowPlace& place, const std::vector<Interval>& working) {
  place_ = place;
  row_ = model_.row(place.index);
  paintWorking(working, true);
  paintCorridor();
  paintCorridorLines();
  paintPauses();
  paintHandsOn();
  paintExcluded();
  paintCirculation();
  paintAxis();
  paintCycles();
  paintBrokenEnd();
  paintAnalyses();
  paintRemarks();
  paintShockBars();
  paintWorking(working, false);
}

void RowPainter::paintOver(const RowPlace& place, const RowsOverlay& overlay) {
  place_ = place;
  row_ = model_.row(place.index);
  paintSelected(overlay);
  paintCursor(overlay);
}

/// Colour behind the band, and a bracket under it that shows without colour too.
void RowPainter::paintWorking(const std::vector<Interval>& working, bool behind) {
  for (const Interval& stretch : working) {
    const auto at = span(stretch);
    if (!at) {
      continue;
    }
    if (behind) {
      painter_.fillRect(
          QRectF(at->from, place_.band.top(), std::max(1.0, at->length()), place_.band.height()),
          look_.highlight);
      continue;
    }
    const double y = place_.band.bottom();
    const double thick = std::max(2.0, geometry_.sizes.small * 0.22);
    painter_.fillRect(QRectF(at->from, y - thick / 2, std::max(thick, at->length()), thick),
                      look_.attention);
    for (const double edge : {at->from, std::max(at->from, at->to - line_ * 1.5)}) {
      painter_.fillRect(QRectF(edge, y - thick * 2, line_ * 1.5, thick * 2), look_.attention);
    }
  }
}

void RowPainter::paintAxis() {
  // To the end of all that is drawn, counted or not.
  const auto at = span(model_.covered.value_or(*model_.span));
  if (!at) {
    return;
  }
  painter_.setRenderHint(QPainter::Antialiasing, !raster_);
  const double y = place_.band.bottom();
  const double thick = raster_ ? std::max(1.0, line_) : line_;
  painter_.fillRect(QRectF(at->from, y - thick / 2, at->length(), thick), look_.faintInk);
  for (int i = 0; i <= 6; ++i) {
    const double tick = geometry_.left + geometry_.width * i / 6;
    if (tick >= at->from - 0.01 && tick <= at->to + 0.01) {
      const double length = geometry_.sizes.small * (i % 3 == 0 ? 0.35 : 0.2);
      painter_.fillRect(QRectF(tick - thick / 2, y, thick, length), look_.faintInk);
    }
  }
}

/// Hatched; a frame where too long, open where the pause goes on in the next row.
void RowPainter::paintPauses() {
  const double spacing = std::max(3.5, geometry_.sizes.small * 0.62);
  for (auto pause = firstPause(); pause != model_.pauses.end() && pause->stretch.begin <= row_.end;
       ++pause) {
    const auto at = span(pause->stretch);
    if (!at || at->length() <= 0) {
      continue;
    }
    const QRectF box(at->from, place_.band.top(), at->length(), place_.band.height());
    paintHatch(painter_, box, spacing, look_.hatch, line_ * 0.8, false);
    if (!pause->beyondLimit) {
      continue;
    }
    const double thick = std::max(0.9, line_ * 1.6);
    const double half = thick / 2;
    painter_.setPen(QPen(look_.attention, thick, Qt::SolidLine, Qt::SquareCap));
    painter_.drawLine(QPointF(box.left() + half, box.top() + half),
                      QPointF(box.right() - half, box.top() + half));
    if (pause->stretch.begin >= row_.begin) {
      painter_.drawLine(QPointF(box.left() + half, box.top() + half),
                        QPointF(box.left() + half, box.bottom()));
    }
    if (pause->stretch.end <= row_.end) {
      painter_.drawLine(QPointF(box.right() - half, box.top() + half),
                        QPointF(box.right() - half, box.bottom()));
    }
  }
}

void RowPainter::paintExcluded() {
  for (const ExcludedShown& excluded : model_.excluded) {
    const auto at = span(excluded.stretch);
    if (!at || at->length() <= 0) {
      continue;
    }
    const QRectF box(at->from, place_.band.top(), at->length(), place_.band.height());
    painter_.fillRect(box, look_.paper);
    paintHatch(painter_, box, std::max(4.0, geometry_.sizes.small * 0.75), look_.excluded,
               line_ * 0.8, true);
  }
}

void RowPainter::paintCirculation() {
  const double swing = geometry_.sizes.small * 1.9;
  const double amplitude = place_.band.height() * 0.14;
  const double y = place_.band.center().y();
  for (const Interval& stretch : model_.circulation) {
    const auto at = span(stretch);
    // A piece of less than one swing would look like a fault; its return has a swing of its own.
    if (at && at->length() >= swing) {
      paintWave(painter_, at->from, at->to, y, amplitude, swing, look_.ink, line_ * 1.4);
    }
  }
  // Every return is drawn, on a ground of its own where people pressed on.
  for (const RowMark& mark : model_.marks) {
    if (mark.kind != MarkKind::circulationReturned || !inRow(mark.stretch.begin)) {
      continue;
    }
    const bool drawn = std::any_of(
        model_.circulation.begin(), model_.circulation.end(), [&](const Interval& stretch) {
          const auto at = span(stretch);
          return at && stretch.holds(mark.stretch.begin) && at->length() >= swing;
        });
    if (!drawn) {
      const double right = geometry_.left + geometry_.width - swing;
      const double from = std::max(geometry_.left, std::min(x(mark.stretch.begin), right));
      painter_.fillRect(QRectF(from - line_, y - amplitude * 2, swing + 2 * line_, amplitude * 4),
                        look_.paper);
      paintWave(painter_, from, from + swing, y, amplitude, swing, look_.ink, line_ * 1.4);
    }
  }
}

void RowPainter::paintAnalyses() {
  const double small = geometry_.sizes.small;
  for (const RowMark& mark : model_.marks) {
    const auto at = isAnalysis(mark.kind) ? span(mark.stretch) : std::nullopt;
    if (!at || (mark.stretch.begin == row_.end && place_.index + 1 < model_.rowCount())) {
      continue;
    }
    const double wide = std::max(small * 0.4, at->length());
    const double right = geometry_.left + geometry_.width;
    const bool full = geometry_.sizes.detail == RowDetail::full;
    const QRectF bar(std::min(at->from, right - wide),
                     place_.band.bottom() + small * (full ? 0.46 : 0.16), wide,
                     small * (full ? 0.4 : 0.34));
    paintAnalysisBar(painter_, bar, mark.kind, look_, line_);
  }
}

void RowPainter::paintCycles() {
  for (const CycleShown& cycle : model_.cycles) {
    if (inRow(cycle.begin)) {
      const double right = geometry_.left + geometry_.width - geometry_.sizes.small * 0.5;
      paintCycleCorner(painter_, QPointF(std::min(x(cycle.begin), right), place_.band.bottom()),
                       geometry_.sizes.small, look_.ink, line_);
    }
  }
}

void RowPainter::paintBrokenEnd() {
  if (!model_.brokeOff || !inRow(*model_.brokeOff)) {
    return;
  }
  const double tooth = geometry_.sizes.small * 0.5;
  const double at = std::min(x(*model_.brokeOff), geometry_.left + geometry_.width - tooth);
  paintTornEnd(painter_, at, place_.band.top(), place_.band.bottom() + line_ * 2, tooth, look_,
               line_);
}

void RowPainter::paintShockBars() {
  const RowSizes& sizes = geometry_.sizes;
  const double top =
      sizes.detail == RowDetail::full ? place_.top + sizes.small * 0.1 : place_.band.top();
  for (const RowMark& mark : model_.marks) {
    if (isShock(mark.kind) && inRow(mark.stretch.begin)) {
      const double at = x(mark.stretch.begin);
      const int direction = at + sizes.small > geometry_.left + geometry_.width ? -1 : 1;
      paintShockPole(painter_, QPointF(at, top), place_.band.bottom(), sizes.small, mark.kind,
                     direction, look_, line_);
    }
  }
}

void RowPainter::paintRemarks() {
  for (const RowMark& mark : model_.marks) {
    const bool shown = isRemark(mark.kind) || mark.kind == MarkKind::circulationLost;
    if (!shown || !inRow(mark.stretch.begin)) {
      continue;
    }
    const double small = geometry_.sizes.small;
    const QPointF tip(x(mark.stretch.begin), place_.band.top() + small * 0.35);
    if (mark.kind == MarkKind::medication) {
      paintMedicationSign(painter_, tip, small, look_, line_);
    } else {
      paintRemarkTick(painter_, tip, small, look_.ink);
    }
  }
}

void RowPainter::paintSelected(const RowsOverlay& overlay) {
  const auto at = overlay.selected ? span(*overlay.selected) : std::nullopt;
  if (!at) {
    return;
  }
  // The few pixels by which a stretch reaches into a row it hardly touches would look like a shock.
  constexpr double kLeastPiece = 6;
  const bool whole = overlay.selected->begin >= row_.begin && overlay.selected->end <= row_.end;
  if (!whole && at->length() < kLeastPiece) {
    return;
  }
  painter_.setRenderHint(QPainter::Antialiasing, true);
  painter_.setBrush(Qt::NoBrush);
  painter_.setPen(QPen(look_.ink, line_ * 2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter_.drawRect(QRectF(at->from, place_.band.top() - line_, std::max(2.0, at->length()),
                           place_.band.height() + 2 * line_));
}

/// A line across the row with a small head, in paper's colour beside it so that it shows on all.
void RowPainter::paintCursor(const RowsOverlay& overlay) {
  if (!overlay.cursor || !inRow(*overlay.cursor)) {
    return;
  }
  const double small = geometry_.sizes.small;
  const double half = std::max(0.75, line_ * 0.8);
  const double at = std::clamp(x(*overlay.cursor), geometry_.left + half,
                               geometry_.left + geometry_.width - half);
  const double head = small * 0.36;
  const double top = std::max(place_.top, place_.band.top() - head * 1.6);
  painter_.setRenderHint(QPainter::Antialiasing, true);
  painter_.fillRect(QRectF(at - half * 2, top, half * 4, place_.band.bottom() - top), look_.paper);
  painter_.fillRect(QRectF(at - half, top, half * 2, place_.band.bottom() - top), look_.attention);
  painter_.setPen(QPen(look_.paper, half));
  painter_.setBrush(look_.attention);
  painter_.drawEllipse(QPointF(at, top + head), head, head);
}

} // namespace afterbeat::papers
