#include "app/window/waves/wave_cursor.h"

#include "app/window/look/figure_words.h"
#include "core/signal/trace.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr int kPad = 4;

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

QString withUnit(const QString& number, const QString& unit) {
  return unit.isEmpty() ? number : QStringLiteral("%1 %2").arg(number, unit);
}

/// With a true minus, and no nought below zero.
QString signedNumber(double value, int decimals) {
  const double scale = std::pow(10.0, decimals);
  const double rounded = std::round(value * scale) / scale;
  return rounded < 0 ? QStringLiteral("\u2212") + words().number(-rounded, decimals)
                     : words().number(std::fabs(rounded), decimals);
}

/// A box with words, framed, kept within the left and right edge of `line`.
QRectF boxAt(double middle, const QString& text, const QFontMetrics& metrics, const QRect& line) {
  const double width = metrics.horizontalAdvance(text) + 3 * kPad;
  const double left = std::clamp<double>(middle - width / 2, line.left(),
                                         std::max<double>(line.left(), line.right() + 1 - width));
  return {left, static_cast<double>(line.top()), width, static_cast<double>(line.height())};
}

void drawBox(QPainter& painter, const QRectF& box, const QString& text, const Look& look) {
  painter.fillRect(box, look.paper);
  painter.setPen(QPen(look.ink, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(box.adjusted(0, 0, -1, -1));
  painter.drawText(box, Qt::AlignCenter, text);
}

} // namespace

QString valueWords(const TrackFrame& track, Time t) {
  const auto value = valueAt(*track.channel, t);
  return value ? withUnit(signedNumber(*value, track.decimals), track.unit) : tr("no signal");
}

QString rulerWords(const Ruler& ruler, const TrackFrame& track) {
  const double length = std::fabs(seconds(ruler.to - ruler.from));
  QStringList parts{tr("%1 s").arg(words().number(length, length < 1 ? 3 : (length < 10 ? 2 : 1)))};
  constexpr double kShortest = 0.1, kLongest = 60;
  if (length >= kShortest && length <= kLongest) {
    parts << tr("%1 a minute").arg(words().number(60 / length, length > 6 ? 1 : 0));
  }
  const auto from = valueAt(*track.channel, ruler.from), to = valueAt(*track.channel, ruler.to);
  parts << (from && to ? withUnit(signedNumber(*to - *from, track.decimals), track.unit)
                       : tr("no signal at one end"));
  return parts.join(QStringLiteral("  ·  "));
}

void WaveCursor::paint(QPainter& painter) {
  rulerBox_ = {};
  if (!scene_.lane || scene_.tracks.empty()) {
    return;
  }
  drawUnits(painter);
  drawCursor(painter);
  drawRuler(painter);
}

std::optional<Time> WaveCursor::inView() const {
  const QCPRange range = scene_.lane->axis(QCPAxis::atBottom)->range();
  return scene_.cursor && range.contains(seconds(*scene_.cursor)) ? scene_.cursor : std::nullopt;
}

/// The line of clock times between the lane and the first track.
QRect WaveCursor::axisLine() const {
  const QRect lane = scene_.lane->rect();
  const int bottom = scene_.tracks.front().rect->rect().top();
  return {lane.left(), lane.bottom() + 2, lane.width(), bottom - lane.bottom() - 4};
}

void WaveCursor::drawUnits(QPainter& painter) const {
  QFont name = scene_.look.rows.font;
  name.setBold(true);
  const int nameHeight = QFontMetrics(name).height();
  const auto cursor = inView();
  painter.setFont(smallFont(scene_.look.rows.font, cursor.has_value()));
  painter.setPen(cursor ? scene_.look.ink : scene_.look.faintInk);
  for (const TrackFrame& track : scene_.tracks) {
    const int top = track.rect->top() + std::max(0, (track.rect->height() - 2 * nameHeight) / 2);
    painter.drawText(QPointF(kPad * 4, top + nameHeight + painter.fontMetrics().ascent()),
                     cursor ? valueWords(track, *cursor) : track.unit);
  }
}

void WaveCursor::drawCursor(QPainter& painter) const {
  const auto cursor = inView();
  if (!cursor) {
    return;
  }
  const double x = pixelOf(*scene_.lane, *cursor);
  painter.setPen(QPen(scene_.look.accent, 1));
  painter.drawLine(QPointF(x, axisLine().bottom()),
                   QPointF(x, scene_.tracks.back().rect->rect().bottom()));
  painter.setFont(smallFont(scene_.look.rows.font, true));
  const QString when = momentWords(*scene_.record, *cursor, true);
  drawBox(painter, boxAt(x, when, painter.fontMetrics(), axisLine()), when, scene_.look);
}

void WaveCursor::drawRuler(QPainter& painter) {
  if (!scene_.ruler || scene_.ruler->track >= scene_.tracks.size()) {
    return;
  }
  const TrackFrame& track = scene_.tracks[scene_.ruler->track];
  const QRect room = track.rect->rect();
  const QCPAxis& value = *track.rect->axis(QCPAxis::atLeft);
  painter.save();
  painter.setClipRect(
      QRect(room.left(), 0, room.width() + 1, scene_.tracks.back().rect->rect().bottom() + 1));
  painter.setPen(QPen(scene_.look.attention, 2));
  const double xs[] = {pixelOf(*track.rect, scene_.ruler->from),
                       pixelOf(*track.rect, scene_.ruler->to)};
  constexpr double kEnd = 5;
  const Time ends[] = {scene_.ruler->from, scene_.ruler->to};
  for (int i = 0; i < 2; ++i) {
    painter.drawLine(QPointF(xs[i], room.top()), QPointF(xs[i], room.bottom()));
    if (const auto at = valueAt(*track.channel, ends[i])) {
      const double y = value.coordToPixel(*at);
      painter.drawLine(QPointF(xs[i] - kEnd, y), QPointF(xs[i] + kEnd, y));
    }
  }
  painter.drawLine(QPointF(xs[0], room.top()), QPointF(xs[1], room.top()));
  painter.restore();
  painter.setFont(smallFont(scene_.look.rows.font, true));
  const QString text = rulerWords(*scene_.ruler, track);
  rulerBox_ = boxAt((xs[0] + xs[1]) / 2, text, painter.fontMetrics(), axisLine());
  drawBox(painter, rulerBox_, text, scene_.look);
}

} // namespace afterbeat::window
