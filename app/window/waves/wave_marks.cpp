#include "app/window/waves/wave_marks.h"

#include "app/window/look/figure_words.h"
#include "app/window/waves/paper_grid.h"

#include "app/papers/computed_length.h"
#include "app/papers/rows_paint.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr int kPad = 4;

Interval shownIn(const QCPAxisRect& rect) {
  const QCPRange range = rect.axis(QCPAxis::atBottom)->range();
  return {Time{papers::computedLength(range.lower)}, Time{papers::computedLength(range.upper)}};
}

/// The part of a stretch inside the lane or track, in pixels.
QRectF spanIn(const QCPAxisRect& rect, const Interval& stretch) {
  const double left = std::max<double>(rect.left(), pixelOf(rect, stretch.begin));
  const double right = std::min<double>(rect.right() + 1, pixelOf(rect, stretch.end));
  return {left, static_cast<double>(rect.top()), std::max(0.0, right - left),
          static_cast<double>(rect.height())};
}

/// The longest of the words, longest first, that fits.
QString fitting(const QStringList& words, const QFontMetrics& metrics, double width) {
  for (const QString& text : words) {
    if (metrics.horizontalAdvance(text) <= width) {
      return text;
    }
  }
  return {};
}

/// Whether the kept compression of this index was read off the signals.
bool isDerived(const WaveScene& scene, std::size_t compression) {
  const std::size_t entry = scene.marks->figures->compressionEntries[compression];
  return scene.record->entries[entry].source == Source::derived;
}

struct Flag {
  QRectF area;
  QString text;
};

/// The longest of the words that fits beside `x` without covering others: to its right, else to its
/// left; no text where there is no room.
Flag placeFor(const QStringList& words, double x, const QRect& line, const QFontMetrics& metrics,
              const std::vector<QRectF>& taken) {
  for (const QString& text : words) {
    const double width = metrics.horizontalAdvance(text) + 2 * kPad;
    for (const double left : {x + 1, x - width}) {
      const QRectF area(left, line.top(), width, line.height() - 1);
      if (area.left() >= line.left() && area.right() <= line.right() + 1 &&
          std::none_of(taken.begin(), taken.end(),
                       [&area](const QRectF& other) { return other.intersects(area); })) {
        return {area, text};
      }
    }
  }
  return {};
}

} // namespace

double pixelOf(const QCPAxisRect& rect, Time t) {
  return rect.axis(QCPAxis::atBottom)->coordToPixel(seconds(t));
}

QFont smallFont(const QFont& font, bool bold) {
  QFont result = font;
  result.setPointSizeF(font.pointSizeF() * 0.9);
  result.setBold(bold);
  return result;
}

int laneHeight(const QFont& font, int rhythmLines) {
  return (kLaneLines + rhythmLines) * (QFontMetrics(smallFont(font)).height() + 3) + kPad;
}

QRect laneLine(const WaveScene& scene, int index) {
  const QRect lane = scene.lane->rect();
  const int line = lane.height() / (kLaneLines + scene.rhythms->lines());
  return {lane.left(), lane.top() + index * line, lane.width(), line};
}

QString WaveMarks::asText(const Record& record, const Interval& shown) const {
  QStringList sentences;
  for (const papers::PauseShown& pause : model.pauses) {
    if (pause.stretch.touches(shown)) {
      sentences << QCoreApplication::translate("WaveMarks", "Hands off from %1 for %2.")
                       .arg(momentWords(record, pause.stretch.begin),
                            lengthWords(pause.stretch.length()));
    }
  }
  for (const papers::RowMark& mark : model.marks) {
    if (mark.stretch.touches(shown) && !mark.words.isEmpty()) {
      sentences << QCoreApplication::translate("WaveMarks", "%1 at %2.")
                       .arg(mark.words.front(), momentWords(record, mark.stretch.begin));
    }
  }
  return sentences.join(QLatin1Char(' '));
}

WaveShading::WaveShading(QCustomPlot* plot, const QString& layer, const WaveScene& scene)
    : QCPLayerable(plot, layer), scene_(scene) {}

void WaveShading::draw(QCPPainter* painter) {
  if (!scene_.marks) {
    return;
  }
  painter->setAntialiasing(false);
  for (const TrackFrame& track : scene_.tracks) {
    const Interval shown = shownIn(*track.rect);
    for (const Interval& part : scene_.working) {
      if (part.touches(shown) && part.length() > Duration::zero()) {
        painter->fillRect(spanIn(*track.rect, part), scene_.look.accentSoft);
      }
    }
    if (scene_.paperGrid && isEcg(*track.channel)) {
      drawPaperGrid(*painter, *track.rect, scene_.look);
    }
    hatchPauses(*painter, track, shown);
    for (const Interval& gap : track.gaps) {
      if (!gap.touches(shown)) {
        continue;
      }
      const QRectF area = spanIn(*track.rect, gap);
      painter->fillRect(area, scene_.look.panel);
      painter->setFont(smallFont(scene_.look.rows.font));
      painter->setPen(scene_.look.faintInk);
      const QString text =
          fitting({QCoreApplication::translate("WaveMarks", "nothing was recorded here"),
                   QCoreApplication::translate("WaveMarks", "no data")},
                  QFontMetrics(painter->font()), area.width() - 2 * kPad);
      painter->drawText(area, Qt::AlignCenter, text);
    }
  }
}

void WaveShading::hatchPauses(QCPPainter& painter, const TrackFrame& track,
                              const Interval& shown) const {
  // A pause a few pixels wide is no hatch any more: the lane of words shows it.
  constexpr double kLeastHatched = 6;
  QVector<QRectF> areas;
  for (const papers::PauseShown& pause : scene_.marks->model.pauses) {
    if (pause.stretch.touches(shown)) {
      const QRectF area = spanIn(*track.rect, pause.stretch);
      if (area.width() >= kLeastHatched) {
        areas.append(area);
      }
    }
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(QBrush(scene_.look.waveGrid, Qt::BDiagPattern));
  painter.drawRects(areas);
}

WaveLabels::WaveLabels(QCustomPlot* plot, const QString& layer, const WaveScene& scene)
    : QCPLayerable(plot, layer), scene_(scene) {}

void WaveLabels::draw(QCPPainter* painter) {
  if (!scene_.marks || !scene_.lane) {
    return;
  }
  painter->setAntialiasing(false);
  drawNames(*painter);
  const QRect lane = scene_.lane->rect();
  const auto lineAt = [this](int i) { return laneLine(scene_, i); };
  painter->save();
  painter->setClipRect(QRect(lane.left(), 0, lane.width() + 1, parentPlot()->height()));
  drawLines(*painter, lineAt(0));
  drawBars(*painter, lineAt(1));
  drawHands(*painter, lineAt(2));
  drawRhythms(*painter);
  drawFlags(*painter, lineAt(0));
  painter->restore();
}

void WaveLabels::drawNames(QCPPainter& painter) const {
  const QFont bold = [this] {
    QFont font = scene_.look.rows.font;
    font.setBold(true);
    return font;
  }();
  for (const TrackFrame& track : scene_.tracks) {
    const int left = kPad * 4;
    const int lineHeight = QFontMetrics(bold).height();
    const int top = track.rect->top() + std::max(0, (track.rect->height() - 2 * lineHeight) / 2);
    painter.setFont(bold);
    painter.setPen(scene_.look.ink);
    // A name longer than its room is cut; the plot's tip and the words for ears have all of it.
    const int room = track.rect->left() - left - 3 * kPad * 3;
    painter.drawText(QPointF(left, top + QFontMetrics(bold).ascent()),
                     QFontMetrics(bold).elidedText(track.name, Qt::ElideRight, room));
    if (!track.note.isEmpty()) {
      painter.setFont(smallFont(scene_.look.rows.font));
      const QRect words = track.rect->rect().adjusted(kPad, kPad / 2, -kPad, 0);
      const QString text = QStringLiteral("%1: %2").arg(track.name, track.note);
      const QRect ground = painter.fontMetrics().boundingRect(words, Qt::AlignLeft, text);
      painter.fillRect(ground.adjusted(-1, 0, 1, 0), scene_.look.paper);
      painter.setPen(scene_.look.attention);
      painter.drawText(words, Qt::AlignLeft, text);
    }
  }
}

void WaveLabels::drawHands(QCPPainter& painter, const QRect& line) const {
  const Interval shown = shownIn(*scene_.lane);
  QVector<QRectF> bars;
  std::vector<std::pair<const papers::PauseShown*, QRectF>> written;
  for (const papers::PauseShown& pause : scene_.marks->model.pauses) {
    if (!pause.stretch.touches(shown)) {
      continue;
    }
    QRectF bar = spanIn(*scene_.lane, pause.stretch);
    bar.setTop(line.top() + 1);
    bar.setBottom(line.bottom() - 1);
    bars.append(bar);
    // Not even a digit fits into less.
    constexpr double kLeastWritten = 6 * kPad;
    if (bar.width() >= kLeastWritten) {
      written.emplace_back(&pause, bar);
    }
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(QBrush(scene_.look.rows.hatch, Qt::BDiagPattern));
  painter.drawRects(bars);
  for (const auto& [pause, bar] : written) {
    writeLength(painter, *pause, bar);
  }
  drawCompressions(painter, line);
}

void WaveLabels::writeLength(QCPPainter& painter, const papers::PauseShown& pause,
                             const QRectF& bar) const {
  const Look& look = scene_.look;
  painter.setFont(smallFont(look.rows.font, pause.beyondLimit));
  const QFontMetrics metrics(painter.font());
  const QString length = pause.words.isEmpty() ? QString() : pause.words.front();
  const QString text =
      fitting({QCoreApplication::translate("WaveMarks", "hands off %1").arg(length), length},
              metrics, bar.width() - 4 * kPad);
  if (text.isEmpty()) {
    return;
  }
  const QRectF paper(bar.center().x() - metrics.horizontalAdvance(text) / 2.0 - kPad, bar.top(),
                     metrics.horizontalAdvance(text) + 2 * kPad, bar.height());
  painter.fillRect(paper, look.paper);
  painter.setPen(pause.beyondLimit ? look.attention : look.ink);
  painter.drawText(paper, Qt::AlignCenter, text);
}

/// Single compressions, where they can be told apart.
void WaveLabels::drawCompressions(QCPPainter& painter, const QRect& line) const {
  constexpr double kApart = 3;
  const Interval shown = shownIn(*scene_.lane);
  const double perSecond = line.width() / seconds(shown.length());
  if (perSecond * 0.5 < kApart) {
    return;
  }
  painter.setPen(QPen(scene_.look.rows.handsOn, 1));
  const Figures& figures = *scene_.marks->figures;
  const std::vector<Time>& all = figures.compressions;
  for (auto at = std::lower_bound(all.begin(), all.end(), shown.begin);
       at != all.end() && *at <= shown.end; ++at) {
    const double x = pixelOf(*scene_.lane, *at);
    if (isDerived(scene_, static_cast<std::size_t>(at - all.begin()))) {
      // Two short strokes: read off the signals.
      const double third = (line.height() - 4) / 3.0;
      painter.drawLine(QPointF(x, line.top() + 2), QPointF(x, line.top() + 2 + third));
      painter.drawLine(QPointF(x, line.bottom() - 2 - third), QPointF(x, line.bottom() - 2));
    } else {
      painter.drawLine(QPointF(x, line.top() + 2), QPointF(x, line.bottom() - 2));
    }
  }
}

void WaveLabels::drawBars(QCPPainter& painter, const QRect& line) const {
  const Interval shown = shownIn(*scene_.lane);
  painter.setFont(smallFont(scene_.look.rows.font));
  const QFontMetrics metrics(painter.font());
  double taken = line.left();
  for (const papers::RowMark& mark : scene_.marks->model.marks) {
    if (!papers::isAnalysis(mark.kind) || !mark.stretch.touches(shown)) {
      continue;
    }
    const QRectF span = spanIn(*scene_.lane, mark.stretch);
    papers::paintAnalysisBar(painter,
                             QRectF(span.left(), line.bottom() - 3, std::max(2.0, span.width()), 4),
                             mark.kind, scene_.look.rows, 1);
    const double begin = std::max(span.left(), taken);
    const QString text = begin <= span.right() + kPad
                             ? fitting(mark.words, metrics, line.right() - begin)
                             : QString();
    if (!text.isEmpty()) {
      painter.fillRect(
          QRectF(begin - 1, line.top(), metrics.horizontalAdvance(text) + 2, line.height() - 3),
          scene_.look.paper);
      painter.setPen(scene_.look.ink);
      painter.drawText(QPointF(begin, line.bottom() - 5), text);
      taken = begin + metrics.horizontalAdvance(text) + 2 * kPad;
    }
  }
}

std::vector<const papers::RowMark*> WaveLabels::moments() const {
  const Interval shown = shownIn(*scene_.lane);
  std::vector<const papers::RowMark*> here;
  for (const papers::RowMark& mark : scene_.marks->model.marks) {
    if (!papers::isAnalysis(mark.kind) && mark.stretch.touches(shown)) {
      here.push_back(&mark);
    }
  }
  std::stable_sort(here.begin(), here.end(),
                   [](const auto* a, const auto* b) { return a->importance > b->importance; });
  return here;
}

void WaveLabels::drawLines(QCPPainter& painter, const QRect& line) const {
  const Interval shown = shownIn(*scene_.lane);
  const int bottom =
      scene_.tracks.empty() ? scene_.lane->bottom() : scene_.tracks.back().rect->bottom();
  for (const papers::RowMark* mark : moments()) {
    if (mark->stretch.begin < shown.begin) {
      continue;
    }
    const double x = pixelOf(*scene_.lane, mark->stretch.begin);
    if (papers::isShock(mark->kind)) {
      painter.fillRect(QRectF(x - 1, line.top(), 3, bottom - line.top()), scene_.look.ink);
    } else {
      painter.fillRect(QRectF(x, line.top(), 1, bottom - line.top()), scene_.look.faintInk);
    }
  }
}

void WaveLabels::drawFlags(QCPPainter& painter, const QRect& line) const {
  const Look& look = scene_.look;
  painter.setFont(smallFont(look.rows.font, true));
  std::vector<QRectF> taken;
  // Where hundreds of moments are in view, the most important fill the line.
  constexpr int kMostTried = 200;
  int tried = 0;
  for (const papers::RowMark* mark : moments()) {
    if (++tried > kMostTried) {
      break;
    }
    const bool shock = papers::isShock(mark->kind);
    const double x = std::max<double>(line.left(), pixelOf(*scene_.lane, mark->stretch.begin));
    const auto [flag, text] = placeFor(mark->words, x, line, painter.fontMetrics(), taken);
    if (!text.isEmpty()) {
      painter.fillRect(flag, shock ? look.ink : look.paper);
      painter.setPen(shock ? look.paper : look.ink);
      painter.drawText(flag, Qt::AlignCenter, text);
      taken.push_back(flag.adjusted(-kPad, 0, kPad, 0));
    }
  }
}

} // namespace afterbeat::window
