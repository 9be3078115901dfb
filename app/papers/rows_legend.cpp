#include "app/papers/rows_layout.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace afterbeat::papers {

double legendShapeWidth(double size) {
  return size * 2.5;
}

std::vector<LegendItem> legendItems(const RowsModel& model) {
  const Words& say = model.words;
  std::vector<LegendItem> items;
  const auto add = [&](LegendShape shape, const QString& words) {
    items.push_back({shape, words});
  };
  const auto unknownRate = [](const BandRun& run) { return !run.beats && !run.rateKnown(); };
  const bool someUnknown = std::any_of(model.runs.begin(), model.runs.end(), unknownRate);
  const auto isDerived = [](const auto& one) { return one.derived; };
  const auto rated = [&](bool derived) {
    return std::any_of(model.runs.begin(), model.runs.end(), [&](const BandRun& run) {
      return run.derived == derived && !unknownRate(run);
    });
  };
  if (rated(false)) {
    add(LegendShape::handsOn,
        say(QT_TRANSLATE_NOOP("Papers", "hands on; height shows the compression rate")));
  }
  if (rated(true)) {
    add(LegendShape::handsOnDerived,
        say(QT_TRANSLATE_NOOP("Papers", "hands on, from the signals; height shows the rate")));
  }
  if (someUnknown) {
    add(LegendShape::handsOnUnknownRate,
        say(QT_TRANSLATE_NOOP("Papers", "hands on, rate not recorded")));
  }
  if (model.showsTarget()) {
    add(LegendShape::corridor,
        say(QT_TRANSLATE_NOOP("Papers", "target %1–%2 a minute"))
            .arg(say.plainNumber(model.corridor->low), say.plainNumber(model.corridor->high)));
  }
  if (!model.pauses.empty()) {
    add(LegendShape::handsOff, say(QT_TRANSLATE_NOOP("Papers", "hands off, seconds")));
  }
  const bool beyond = std::any_of(model.pauses.begin(), model.pauses.end(),
                                  [](const PauseShown& pause) { return pause.beyondLimit; });
  if (beyond && model.pauseLimit) {
    add(LegendShape::handsOffBeyond, say(QT_TRANSLATE_NOOP("Papers", "longer than %1 s"))
                                         .arg(say.plainNumber(*model.pauseLimit)));
  }
  struct Known {
    MarkKind kind;
    LegendShape shape;
    const char* words;
  };
  static constexpr std::array<Known, 9> kKnown{{
      {MarkKind::shockGiven, LegendShape::shock, QT_TRANSLATE_NOOP("Papers", "shock given")},
      {MarkKind::shockNotGiven, LegendShape::shockNotGiven,
       QT_TRANSLATE_NOOP("Papers", "shock not given")},
      {MarkKind::shockUnknown, LegendShape::shockUnknown,
       QT_TRANSLATE_NOOP("Papers", "not recorded whether given")},
      {MarkKind::analysisShock, LegendShape::analysisShock,
       QT_TRANSLATE_NOOP("Papers", "analysis: shock advised")},
      {MarkKind::analysisNoShock, LegendShape::analysisNoShock,
       QT_TRANSLATE_NOOP("Papers", "analysis: no shock advised")},
      {MarkKind::analysisInconclusive, LegendShape::analysisInconclusive,
       QT_TRANSLATE_NOOP("Papers", "analysis: inconclusive")},
      {MarkKind::remark, LegendShape::remark, QT_TRANSLATE_NOOP("Papers", "remark")},
      {MarkKind::medication, LegendShape::medication, QT_TRANSLATE_NOOP("Papers", "medication")},
      {MarkKind::circulationReturned, LegendShape::circulation,
       QT_TRANSLATE_NOOP("Papers", "circulation returned")},
  }};
  for (const Known& known : kKnown) {
    if (std::any_of(model.marks.begin(), model.marks.end(),
                    [&](const RowMark& mark) { return mark.kind == known.kind; })) {
      add(known.shape, say(known.words));
    }
  }
  if (!std::all_of(model.breaths.begin(), model.breaths.end(), isDerived)) {
    add(LegendShape::breath, say(QT_TRANSLATE_NOOP("Papers", "breath")));
  }
  if (std::any_of(model.breaths.begin(), model.breaths.end(), isDerived)) {
    add(LegendShape::breathDerived, say(QT_TRANSLATE_NOOP("Papers", "breath, from the signals")));
  }
  if (!model.cycles.empty()) {
    add(LegendShape::cycle, say(QT_TRANSLATE_NOOP("Papers", "cycle begins")));
  }
  if (!model.excluded.empty()) {
    add(LegendShape::excluded, say(QT_TRANSLATE_NOOP("Papers", "not counted")));
  }
  if (model.brokeOff) {
    add(LegendShape::brokeOff, say(QT_TRANSLATE_NOOP("Papers", "broke off")));
  }
  return items;
}

void placeLegend(const RowsModel& model, const Lettering& lettering, RowsLayout& layout) {
  const QRectF& room = layout.geometry.legend;
  const double size = layout.geometry.sizes.small;
  double x = room.left();
  double y = room.top() + size * 0.7;
  for (const LegendItem& item : legendItems(model)) {
    const double wide = lettering.width(item.words, size, Weight::regular);
    const double whole = legendShapeWidth(size) + wide;
    if (x > room.left() && x + whole + size * 0.5 > room.right()) {
      x = room.left();
      y += size * kLegendLine;
    }
    PlacedText placed;
    placed.role = TextRole::legend;
    placed.size = size;
    placed.text = lettering.elided(item.words, size, Weight::regular,
                                   room.right() - x - legendShapeWidth(size));
    placed.box = QRectF(x, y, std::min(whole, room.right() - x), size * 1.4);
    placed.at = QPointF(x + legendShapeWidth(size), y + size * 0.7 + lettering.capHeight(size) / 2);
    layout.texts.push_back(placed);
    x += whole + size * 2;
  }
}

void placeLeftOut(const RowsModel& model, const Lettering& lettering, RowsLayout& layout) {
  const RowsGeometry& geometry = layout.geometry;
  const Words& say = model.words;
  const int from = geometry.leftOutFrom * 2;
  const int to = from + geometry.leftOutCount * 2;
  PlacedText placed;
  placed.role = TextRole::leftOut;
  placed.size = geometry.sizes.text;
  const QString words =
      say(QT_TRANSLATE_NOOP("Papers", "Minutes %1 to %2 do not fit on this page: %3 rows are left "
                                      "out. All of them are counted in the figures."))
          .arg(from)
          .arg(to)
          .arg(geometry.leftOutCount);
  placed.text = lettering.elided(words, placed.size, Weight::bold, geometry.leftOut.width());
  placed.weight = Weight::bold;
  placed.box = geometry.leftOut;
  placed.at = QPointF(geometry.leftOut.left(),
                      geometry.leftOut.center().y() + lettering.capHeight(placed.size) / 2);
  layout.texts.push_back(placed);
}

void placeNothing(const RowsModel& model, const Lettering& lettering, const QRectF& area,
                  RowsLayout& layout) {
  PlacedText placed;
  placed.role = TextRole::nothing;
  placed.size = layout.geometry.sizes.text;
  placed.text = lettering.elided(
      model.words(QT_TRANSLATE_NOOP("Papers", "Nothing in this record can be drawn as rows: no "
                                              "electrodes, compressions, analysis or shock.")),
      placed.size, Weight::regular, area.width());
  placed.box = QRectF(area.left(), area.top(), area.width(), placed.size * 2);
  placed.at = QPointF(area.left(), area.top() + placed.size * 1.5);
  if (placed.box.bottom() <= area.bottom()) {
    layout.texts.push_back(placed);
  }
}

} // namespace afterbeat::papers
