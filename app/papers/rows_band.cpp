#include "app/papers/rows_paint.h"

#include <QBrush>
#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

/// A compression gets a line of its own from this width on.
constexpr double kSeparatorRoomScreen = 3.0;
constexpr double kSeparatorRoomPaper = 1.8;
/// Height of a band in text sizes from which the corridor's limits are dotted.
constexpr double kLeastForDots = 1.9;
/// Pieces narrower than this are drawn together.
constexpr double kColumn = 0.75;

/// Dots on a transparent ground, two of five pixels.
QBrush dotPattern(const QColor& color) {
  QImage pattern(5, 1, QImage::Format_ARGB32_Premultiplied);
  pattern.fill(Qt::transparent);
  pattern.setPixelColor(0, 0, color);
  pattern.setPixelColor(1, 0, color);
  return QBrush(pattern);
}

} // namespace

/// Where compressions are wanted: what counts, without circulation and without pauses, whose hatch
/// and seconds the lines would run through.
std::vector<RowPainter::Span> RowPainter::corridorSpans() const {
  std::vector<Interval> without = model_.circulation;
  for (auto pause = firstPause(); pause != model_.pauses.end() && pause->stretch.begin <= row_.end;
       ++pause) {
    without.push_back(pause->stretch);
  }
  std::vector<Span> spans;
  Time from = model_.counted.begin;
  const auto add = [&](Time to) {
    const auto at = to > from ? span({from, to}) : std::nullopt;
    if (at && at->length() > 0) {
      spans.push_back(*at);
    }
  };
  for (const Interval& stretch : merged(std::move(without))) {
    add(std::min(stretch.begin, model_.counted.end));
    from = std::max(from, stretch.end);
  }
  add(model_.counted.end);
  return spans;
}

QColor derivedGround(const RowsLook& look) {
  constexpr double kInk = 0.28;
  const auto mixed = [&](double ink, double paper) { return kInk * ink + (1 - kInk) * paper; };
  return QColor::fromRgbF(static_cast<float>(mixed(look.handsOn.redF(), look.paper.redF())),
                          static_cast<float>(mixed(look.handsOn.greenF(), look.paper.greenF())),
                          static_cast<float>(mixed(look.handsOn.blueF(), look.paper.blueF())));
}

void RowPainter::paintCorridor() {
  if (!model_.showsTarget()) {
    return;
  }
  for (const Span& at : corridorSpans()) {
    paintCorridor(at);
  }
}

void RowPainter::paintCorridor(const Span& at) {
  const double low = place_.band.bottom() - heightOf(model_.corridor->low);
  const double high = place_.band.bottom() - heightOf(model_.corridor->high);
  painter_.fillRect(QRectF(at.from, high, at.length(), low - high), look_.target);
  if (corridorHeights().empty()) {
    // A tint alone is lost without colour: quiet lines behind the band keep the limits.
    const double thick = raster_ ? 1.0 : line_ * 0.8;
    painter_.setRenderHint(QPainter::Antialiasing, !raster_);
    for (const double y : {low, high}) {
      painter_.fillRect(QRectF(at.from, y - thick / 2, at.length(), thick), look_.hatch);
    }
  }
}

/// Dots along the limits of the corridor; `over`: in paper's colour, where a band hides them.
void RowPainter::paintDots(double from, double to, double y, bool over) {
  constexpr double kPeriod = 4.5;
  const QColor color = over ? look_.paper : look_.hatch;
  painter_.setRenderHint(QPainter::Antialiasing, !raster_);
  if (raster_) {
    // One fill of a pattern is much faster than a dashed pen, and sharp.
    const double thick = std::max(1.0, line_);
    painter_.fillRect(QRectF(from, y - thick / 2, to - from, thick), dotPattern(color));
    return;
  }
  QPen dots(color, line_, Qt::CustomDashLine, Qt::FlatCap);
  dots.setDashPattern({1.5, kPeriod - 1.5});
  // One raster for all pieces of a row.
  dots.setDashOffset(std::fmod((from - geometry_.left) / line_, kPeriod));
  painter_.setPen(dots);
  painter_.drawLine(QPointF(from, y), QPointF(to, y));
}

std::vector<double> RowPainter::corridorHeights() const {
  // In a low band dots would hide more than they tell.
  if (!model_.showsTarget() || place_.band.height() < kLeastForDots * geometry_.sizes.small) {
    return {};
  }
  return {heightOf(model_.corridor->low), heightOf(model_.corridor->high)};
}

void RowPainter::paintCorridorLines() {
  for (const double height : corridorHeights()) {
    for (const Span& at : corridorSpans()) {
      paintDots(at.from, at.to, place_.band.bottom() - height, false);
    }
  }
}

/// The corridor's dots where a stepped band rises above them.
void RowPainter::paintDotsOver(const QPolygonF& steps) {
  const double base = place_.band.bottom();
  for (const double height : corridorHeights()) {
    const double y = base - height;
    double from = 0;
    bool open = false;
    for (qsizetype i = 0; i + 1 < steps.size(); ++i) {
      const bool above = steps[i].y() < y - line_ && steps[i + 1].y() < y - line_;
      if (above && !open) {
        from = steps[i].x();
      } else if (!above && open && steps[i].x() > from) {
        paintDots(from, steps[i].x(), y, true);
      }
      open = above;
    }
  }
}

void RowPainter::paintHandsOn() {
  for (const BandRun& run : model_.runs) {
    if (run.stretch.begin > row_.end) {
      break;
    }
    const auto at = span(run.stretch);
    if (!at) {
      continue;
    }
    if (run.pieces.empty() || at->length() < line_) {
      const double thick = raster_ ? 1.0 : line_;
      painter_.setRenderHint(QPainter::Antialiasing, !raster_);
      const double height = run.rateKnown() ? heightOf(*run.pieces.front().rate) : unknownHeight();
      painter_.fillRect(QRectF(std::min(at->from, geometry_.left + geometry_.width - thick),
                               place_.band.bottom() - height, thick, height),
                        look_.handsOn);
    } else if (!run.rateKnown()) {
      paintUnknownRate(*at);
    } else {
      paintRun(run);
      paintSeparators(run);
    }
  }
}

/// The first piece of a run that reaches into the row.
std::size_t RowPainter::firstPiece(const BandRun& run) const {
  const auto found =
      std::lower_bound(run.pieces.begin(), run.pieces.end(), row_.begin,
                       [](const BandPiece& piece, Time t) { return piece.stretch.end <= t; });
  return static_cast<std::size_t>(found - run.pieces.begin());
}

/// A run as one stepped shape; pieces narrower than a column are drawn together with their mean.
void RowPainter::paintRun(const BandRun& run) {
  const double base = place_.band.bottom();
  QPolygonF steps;
  double columnFrom = 0;
  double area = 0;
  double right = 0;
  bool open = false;
  const auto close = [&] {
    const double y = base - area / (right - columnFrom);
    steps << QPointF(columnFrom, y) << QPointF(right, y);
    open = false;
  };
  for (std::size_t i = firstPiece(run); i < run.pieces.size(); ++i) {
    const BandPiece& piece = run.pieces[i];
    if (piece.stretch.begin >= row_.end) {
      break;
    }
    const auto at = span(piece.stretch);
    if (!at || at->length() <= 0) {
      continue;
    }
    if (!open) {
      columnFrom = at->from;
      area = 0;
      open = true;
    }
    right = at->to;
    area += at->length() * heightOf(*piece.rate);
    if (right - columnFrom >= kColumn) {
      close();
    }
  }
  if (open && right > columnFrom) {
    close();
  }
  if (steps.isEmpty()) {
    return;
  }
  steps.prepend(QPointF(steps.first().x(), base));
  steps << QPointF(right, base);
  painter_.setRenderHint(QPainter::Antialiasing, !raster_);
  painter_.setPen(Qt::NoPen);
  painter_.setBrush(run.derived ? derivedGround(look_) : look_.handsOn);
  painter_.drawPolygon(steps);
  if (run.derived) {
    painter_.setPen(QPen(look_.handsOn, line_ * 1.4, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolyline(steps);
  }
  paintDotsOver(steps);
}

/// Every compression as a line of paper in the band, where there is room.
void RowPainter::paintSeparators(const BandRun& run) {
  if (!run.beats || place_.band.height() < kLeastForDots * geometry_.sizes.small) {
    return;
  }
  const double room = raster_ ? kSeparatorRoomScreen : kSeparatorRoomPaper;
  painter_.setRenderHint(QPainter::Antialiasing, !raster_);
  for (std::size_t i = firstPiece(run); i < run.pieces.size(); ++i) {
    const BandPiece& piece = run.pieces[i];
    if (piece.stretch.begin >= row_.end) {
      break;
    }
    const double from = x(piece.stretch.begin);
    const double wide = x(piece.stretch.end) - from;
    if (i == 0 || wide < room || from < geometry_.left) {
      continue;
    }
    const double thick = raster_ ? 1.0 : wide * 0.16;
    painter_.fillRect(QRectF(from, place_.band.top(), thick, place_.band.height() - line_),
                      look_.paper);
  }
}

/// Lines across instead of a solid band: hands on, and nobody knows how fast. Below the target
/// corridor, so that its height cannot be taken for a rate within.
void RowPainter::paintUnknownRate(const Span& at) {
  const double height = unknownHeight();
  const QRectF box(at.from, place_.band.bottom() - height, at.length(), height);
  painter_.setRenderHint(QPainter::Antialiasing, true);
  painter_.setPen(QPen(look_.handsOn, line_, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter_.setBrush(Qt::NoBrush);
  QList<QLineF> lines;
  for (double y = box.top() + line_ * 2.4; y < box.bottom(); y += line_ * 2.4) {
    lines.append(QLineF(box.left(), y, box.right(), y));
  }
  painter_.drawLines(lines);
  painter_.drawRect(box.adjusted(line_ / 2, line_ / 2, -line_ / 2, 0));
}

} // namespace afterbeat::papers
