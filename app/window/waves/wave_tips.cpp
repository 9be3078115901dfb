/// The lane's lines of rhythms, and what is said about the place that is pointed at.
#include "app/window/look/figure_words.h"
#include "app/window/signals/rhythm_strip.h"
#include "app/window/signals/shock_words.h"
#include "app/window/waves/wave_marks.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr int kPad = 4;
/// A shock this near is meant.
constexpr double kReachPixels = 6;

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

Interval shownIn(const WaveScene& scene) {
  const QCPRange range = scene.lane->axis(QCPAxis::atBottom)->range();
  return {timeFromSeconds(range.lower).value_or(Time{}),
          timeFromSeconds(range.upper).value_or(Time{})};
}

Time timeAt(const WaveScene& scene, double x) {
  return timeFromSeconds(scene.lane->axis(QCPAxis::atBottom)->pixelToCoord(x)).value_or(Time{});
}

Duration reachOf(const WaveScene& scene) {
  const double pixels = std::max(1, scene.lane->rect().width());
  return Duration{
      std::llround(static_cast<double>(shownIn(scene).length().count()) * kReachPixels / pixels)};
}

QString shockTipAt(const WaveScene& scene, Time t) {
  if (!scene.hints) {
    return {};
  }
  const PointedAt there = pointedAt(*scene.marks->figures, t, reachOf(scene));
  for (const ShockFigures& shock : scene.marks->figures->shocks) {
    if (std::chrono::abs(shock.t - t) > reachOf(scene)) {
      continue;
    }
    if (const ShockRhythm* judged = judgedAt(scene.hints->shocks, shock.t)) {
      return there.what + QLatin1Char('\n') + shockTip(*judged);
    }
  }
  return {};
}

/// Where the compressions around a moment come from, if from the signals.
QString handsTipAt(const WaveScene& scene, Time t) {
  const std::vector<Time>& all = scene.marks->figures->compressions;
  const auto after = std::lower_bound(all.begin(), all.end(), t);
  if (after == all.end() || after == all.begin()) {
    return {};
  }
  constexpr Duration kSameSeries{2'000'000};
  const auto index = static_cast<std::size_t>(after - all.begin());
  const Entry& entry = scene.record->entries[scene.marks->figures->compressionEntries[index]];
  if (entry.source != Source::derived || *after - *(after - 1) > kSameSeries) {
    return {};
  }
  return tr("hands on, derived from the signals");
}

QString awaitedWords() {
  return tr("rhythm hints are being made …");
}

} // namespace

const RhythmStretch* rhythmAt(const WaveScene& scene, const QPointF& point) {
  if (!scene.lane) {
    return nullptr;
  }
  int index = kLaneLines;
  for (const RhythmLine* line : {&scene.rhythms->recorded, &scene.rhythms->hints}) {
    if (!line->empty() && QRectF(laneLine(scene, index++)).contains(point)) {
      return line->at(timeAt(scene, point.x()));
    }
  }
  return nullptr;
}

QString tipAt(const WaveScene& scene, const QPointF& point) {
  if (!scene.lane || !scene.marks || point.x() < scene.lane->rect().left()) {
    return {};
  }
  if (const RhythmStretch* rhythm = rhythmAt(scene, point)) {
    const QString tip = stretchTip(*scene.record, *rhythm);
    return rhythm->isHint() ? tip + QLatin1Char('\n') + tr("Click for its working") : tip;
  }
  const Time t = timeAt(scene, point.x());
  const QString shock = shockTipAt(scene, t);
  return shock.isEmpty() && QRectF(laneLine(scene, kLaneLines - 1)).contains(point)
             ? handsTipAt(scene, t)
             : shock;
}

void WaveLabels::drawRhythms(QCPPainter& painter) const {
  painter.setFont(smallFont(scene_.look.rows.font));
  int index = kLaneLines;
  const Interval shown = shownIn(scene_);
  for (const RhythmLine* line : {&scene_.rhythms->recorded, &scene_.rhythms->hints}) {
    if (!line->empty()) {
      paintRhythms(painter, *line, {laneLine(scene_, index++), shown}, scene_.look);
    }
  }
  if (scene_.rhythms->awaited) {
    painter.setPen(scene_.look.faintInk);
    painter.drawText(laneLine(scene_, index).adjusted(kPad, 0, 0, 0),
                     Qt::AlignLeft | Qt::AlignVCenter, awaitedWords());
  }
}

} // namespace afterbeat::window
