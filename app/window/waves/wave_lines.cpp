#include "app/window/waves/wave_lines.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat::window {

namespace {

void cover(ColumnSpan& column, double a, double b) {
  column.low = std::min({column.low, a, b});
  column.high = std::max({column.high, a, b});
}

/// The straight line between two points, `from` not right of `to`.
void coverBetween(const QPointF& from, const QPointF& to, std::vector<ColumnSpan>& columns) {
  const auto last = static_cast<double>(columns.size()) - 1;
  const double first = std::max(0.0, std::floor(from.x()));
  const double end = std::min(last, std::floor(to.x()));
  if (first == std::floor(to.x())) {
    if (first <= last) {
      cover(columns[static_cast<std::size_t>(first)], from.y(), to.y());
    }
    return;
  }
  const double slope = (to.y() - from.y()) / (to.x() - from.x());
  for (double c = first; c <= end; ++c) {
    const double left = std::max(from.x(), c), right = std::min(to.x(), c + 1);
    cover(columns[static_cast<std::size_t>(c)], from.y() + (left - from.x()) * slope,
          from.y() + (right - from.x()) * slope);
  }
}

/// Runs of points without a lifted pen.
template <typename Draw>
void forEachRun(const std::vector<QPointF>& points, const Draw& draw) {
  for (std::size_t i = 0; i < points.size();) {
    if (std::isnan(points[i].y())) {
      ++i;
      continue;
    }
    std::size_t end = i;
    while (end < points.size() && !std::isnan(points[end].y())) {
      ++end;
    }
    draw(i, end);
    i = end;
  }
}

} // namespace

void coverColumns(const std::vector<QPointF>& points, std::vector<ColumnSpan>& columns) {
  std::fill(columns.begin(), columns.end(), ColumnSpan{});
  forEachRun(points, [&](std::size_t begin, std::size_t end) {
    if (end - begin == 1) {
      coverBetween(points[begin], points[begin], columns);
    }
    for (std::size_t i = begin + 1; i < end; ++i) {
      coverBetween(points[i - 1], points[i], columns);
    }
  });
}

WaveLines::WaveLines(QCustomPlot* plot, const QString& layer, const WaveScene& scene)
    : QCPLayerable(plot, layer), scene_(scene) {}

void WaveLines::draw(QCPPainter* painter) {
  for (const TrackFrame& track : scene_.tracks) {
    drawTrack(*painter, track);
  }
}

void WaveLines::drawTrack(QCPPainter& painter, const TrackFrame& track) {
  const double ratio = parentPlot()->bufferDevicePixelRatio();
  const QRect area = track.rect->rect();
  const QCPRange time = track.rect->axis(QCPAxis::atBottom)->range();
  const QCPAxis* value = track.rect->axis(QCPAxis::atLeft);
  const double perSecond = area.width() / time.size() * ratio;
  const double zero = (value->coordToPixel(0) - area.top()) * ratio;
  const double perUnit = (value->coordToPixel(1) - value->coordToPixel(0)) * ratio;
  points_.clear();
  for (const TracePoint& point : track.points) {
    points_.emplace_back((point.seconds - time.lower) * perSecond, zero + point.value * perUnit);
  }
  const QSize size(static_cast<int>(std::ceil(area.width() * ratio)),
                   static_cast<int>(std::ceil(area.height() * ratio)));
  columns_.resize(static_cast<std::size_t>(size.width()));
  coverColumns(points_, columns_);
  const Rows rows = paintStrokes(size, track.color, ratio);
  if (rows.count > 0) {
    // In device pixels nothing is scaled, so the image is copied and not resampled.
    painter.save();
    painter.scale(1 / ratio, 1 / ratio);
    const QPoint corner(qRound(area.left() * ratio), qRound(area.top() * ratio) + rows.first);
    painter.drawImage(corner, image_, QRect(0, 0, size.width(), rows.count));
    painter.restore();
  }
}

WaveLines::Rows WaveLines::paintStrokes(const QSize& size, const QColor& color, double thickness) {
  fullFrom_.assign(columns_.size(), size.height());
  fullTo_.assign(columns_.size(), -1);
  int first = size.height(), last = -1;
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    ColumnSpan& span = columns_[c];
    if (span.low > span.high) {
      continue;
    }
    span.low = std::clamp<double>(span.low - thickness / 2, 0, size.height());
    span.high = std::clamp<double>(span.high + thickness / 2, 0, size.height());
    fullFrom_[c] = static_cast<int>(std::ceil(span.low));
    fullTo_[c] = static_cast<int>(span.high) - 1;
    first = std::min(first, static_cast<int>(span.low));
    last = std::max(last, std::min(size.height() - 1, static_cast<int>(span.high)));
  }
  if (first > last) {
    return {};
  }
  if (image_.width() != size.width() || image_.height() < last - first + 1) {
    image_ = QImage(size, QImage::Format_ARGB32_Premultiplied);
  }
  const QRgb ink = qPremultiply(color.rgba());
  for (int y = first; y <= last; ++y) {
    auto* row = reinterpret_cast<QRgb*>(image_.scanLine(y - first));
    const int* from = fullFrom_.data();
    const int* to = fullTo_.data();
    for (std::size_t c = 0; c < fullFrom_.size(); ++c) {
      row[c] = (y >= from[c]) & (y <= to[c]) ? ink : 0U;
    }
  }
  softenEnds(first, last, color);
  return {first, last - first + 1};
}

void WaveLines::softenEnds(int first, int last, const QColor& color) {
  constexpr int kShades = 64;
  std::array<QRgb, kShades + 1> shades{};
  for (int i = 0; i <= kShades; ++i) {
    QColor part = color;
    part.setAlphaF(color.alphaF() * static_cast<float>(i) / kShades);
    shades[static_cast<std::size_t>(i)] = qPremultiply(part.rgba());
  }
  QRgb* pixels = reinterpret_cast<QRgb*>(image_.bits());
  const auto stride = static_cast<std::size_t>(image_.bytesPerLine()) / sizeof(QRgb);
  const auto touch = [&](std::size_t c, int y, double share) {
    if (y >= first && y <= last && share > 0) {
      pixels[static_cast<std::size_t>(y - first) * stride + c] =
          shades[static_cast<std::size_t>(std::lround(share * kShades))];
    }
  };
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    const ColumnSpan& span = columns_[c];
    if (span.low > span.high) {
      continue;
    }
    const double top = std::floor(span.low), bottom = std::floor(span.high);
    if (top == bottom) {
      touch(c, static_cast<int>(top), span.high - span.low);
      continue;
    }
    if (span.low > top) {
      touch(c, static_cast<int>(top), top + 1 - span.low);
    }
    touch(c, static_cast<int>(bottom), span.high - bottom);
  }
}

} // namespace afterbeat::window
