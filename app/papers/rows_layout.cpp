#include "app/papers/rows_layout.h"
#include "app/papers/rows_lane.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

/// Places the words of one row.
class RowPlacer {
public:
  RowPlacer(const RowsModel& model, const Lettering& lettering, RowsLayout& layout,
            const RowPlace& place)
      : model_(model), lettering_(lettering), layout_(layout), place_(place),
        sizes_(layout.geometry.sizes), row_(model.row(place.index)),
        full_(sizes_.detail == RowDetail::full) {
    for (const RowMark& mark : model.marks) {
      if (model.inRow(place.index, mark.stretch.begin)) {
        marks_.push_back(&mark);
      }
    }
    for (const BandRun& run : model.runs) {
      if (run.stretch.begin >= row_.end) {
        break; // they are in the order of their begins
      }
      if (run.stretch.end > row_.begin) {
        const auto [from, to] = clipped(run.stretch);
        handsOn_.take(from, std::max(to, from + 0.5));
      }
    }
  }

  void placeAll() {
    placeLabels();
    reserveShockBars();
    placeFlags();
    if (full_) {
      placeAnalyses();
      placeCycles();
    }
    placeWordsOfMarks();
    placePauses(true);
    reserveBreaths();
    placePauses(false);
    placeExcluded();
  }

private:
  [[nodiscard]] double x(Time t) const { return layout_.geometry.x(row_, t); }
  [[nodiscard]] double right() const { return layout_.geometry.left + layout_.geometry.width; }
  [[nodiscard]] std::pair<double, double> clipped(const Interval& stretch) const {
    return {std::max(layout_.geometry.left, x(stretch.begin)), std::min(right(), x(stretch.end))};
  }

  void add(TextRole role, const QRectF& box, double textLeft, const QString& text, double size,
           Weight weight) {
    PlacedText placed;
    placed.role = role;
    placed.box = box;
    placed.at = QPointF(textLeft, box.center().y() + lettering_.capHeight(size) / 2);
    placed.text = text;
    placed.size = size;
    placed.weight = weight;
    placed.row = place_.index;
    layout_.texts.push_back(std::move(placed));
  }

  void placeLabels() {
    const RowLabel& label = model_.labels[static_cast<std::size_t>(place_.index)];
    const double edge = layout_.geometry.left - sizes_.text * 0.8;
    const double minutes = lettering_.width(label.minutes, sizes_.text, Weight::bold);
    const double clock = lettering_.width(label.clock, sizes_.small, Weight::regular);
    const double capText = lettering_.capHeight(sizes_.text);
    const double middle = place_.band.center().y();
    const bool twoLines = !oneLineLabels(sizes_, lettering_) && clock > 0;
    const double upper = twoLines ? middle - sizes_.small * kLabelStep : middle;
    const double minutesRight = twoLines || clock <= 0 ? edge : edge - clock - sizes_.small * 0.6;
    add(TextRole::rowMinutes,
        QRectF(minutesRight - minutes, upper - capText / 2 - 0.5, minutes, capText + 1),
        minutesRight - minutes, label.minutes, sizes_.text, Weight::bold);
    if (clock > 0) {
      const double capSmall = lettering_.capHeight(sizes_.small);
      const double lower = twoLines ? middle + sizes_.small * kLabelStep : middle;
      add(TextRole::rowClock, QRectF(edge - clock, lower - capSmall / 2 - 0.5, clock, capSmall + 1),
          edge - clock, label.clock, sizes_.small, Weight::regular);
    }
  }

  /// The lane of flags and remarks: above the band, or the band itself where there is no other.
  Lane& flagLane() { return full_ ? above_ : band_; }
  [[nodiscard]] QRectF flagStrip() const {
    return full_ ? QRectF(place_.band.left(), place_.top + sizes_.small * 0.1, place_.band.width(),
                          sizes_.small * 1.4)
                 : QRectF(place_.band.left(), place_.band.top(), place_.band.width(), sizes_.band);
  }

  void reserveShockBars() {
    for (const RowMark* mark : marks_) {
      if (isShock(mark->kind)) {
        const double at = x(mark->stretch.begin);
        const double half = sizes_.small * 0.2;
        above_.take(at - half, at + half);
        band_.take(at - half, at + half);
      }
    }
  }

  void placeFlags() {
    std::vector<const RowMark*> shocks;
    std::copy_if(marks_.begin(), marks_.end(), std::back_inserter(shocks),
                 [](const RowMark* mark) { return isShock(mark->kind); });
    for (std::size_t i = 0; i < shocks.size(); ++i) {
      const double next = i + 1 < shocks.size() ? x(shocks[i + 1]->stretch.begin) : right();
      placeFlag(*shocks[i], next - sizes_.small * 0.3);
    }
  }

  /// Words that lie on the band must not hide hands on the chest.
  [[nodiscard]] bool mayCover(double from, double to) const {
    return full_ || handsOn_.isFree(from, to);
  }

  /// Whether the pause around a shock keeps room for its seconds beside a flag in the band.
  [[nodiscard]] bool leavesRoomForSeconds(Time shock, double from, double to) const {
    for (const PauseShown& pause : model_.pauses) {
      if (pause.stretch.holds(shock) && hasLargestPart(pause.stretch)) {
        const auto [left, right] = clipped(pause.stretch);
        const double size = pause.beyondLimit ? sizes_.text : sizes_.small;
        const double needed = lettering_.width(pause.words.last(), size, Weight::bold) + size * 0.5;
        return std::max(from - left, right - to) >= needed;
      }
    }
    return true;
  }

  /// A flag hangs to the right of its bar, to the left at the row's end. In the band it hangs on
  /// the hatch before its shock: what follows is worth more than the word.
  void placeFlag(const RowMark& mark, double limit) {
    if (!full_ && placeFlag(mark, limit, true, false)) {
      return;
    }
    // A shock without its word is a blot: it may cover hands on, and last the seconds of its pause.
    if (!placeFlag(mark, limit, false, false) && !placeFlag(mark, limit, !full_, true)) {
      placeFlag(mark, limit, false, true);
    }
  }

  bool placeFlag(const RowMark& mark, double limit, bool keepSeconds, bool overHandsOn) {
    const double at = x(mark.stretch.begin);
    const double half = sizes_.small * 0.2;
    const double pad = sizes_.small * (full_ ? 0.5 : 0.25);
    const QRectF strip = flagStrip();
    const bool given = mark.kind == MarkKind::shockGiven;
    for (const QString& words : mark.words) {
      const double wide = lettering_.width(words, sizes_.small, Weight::bold) + 2 * pad;
      for (const bool toTheRight : {full_, !full_}) {
        const double from = toTheRight ? at : at - wide;
        const double probe = toTheRight ? at + half : from;
        const double probeEnd = toTheRight ? from + wide : at - half;
        const bool inside =
            from >= strip.left() && from + wide <= (toTheRight ? limit : strip.right());
        const bool seconds =
            !keepSeconds || leavesRoomForSeconds(mark.stretch.begin, from, from + wide);
        const bool may = overHandsOn || mayCover(probe, probeEnd);
        if (inside && seconds && may && flagLane().isFree(probe, probeEnd)) {
          flagLane().take(from, from + wide);
          add(given ? TextRole::flagGiven : TextRole::flagHollow,
              QRectF(from, strip.top(), wide, strip.height()), from + pad, words, sizes_.small,
              Weight::bold);
          return true;
        }
      }
    }
    return false;
  }

  /// Words under an analysis reach at most to the next one, so that each keeps its own.
  void placeAnalyses() {
    std::vector<const RowMark*> analyses;
    std::copy_if(marks_.begin(), marks_.end(), std::back_inserter(analyses),
                 [](const RowMark* mark) { return isAnalysis(mark->kind); });
    const double gap = sizes_.small * 0.6;
    const double top = place_.band.bottom() + sizes_.small * 0.84;
    double taken = layout_.geometry.left;
    for (std::size_t i = 0; i < analyses.size(); ++i) {
      const bool last = i + 1 == analyses.size();
      const double limit = last ? right() : x(analyses[i + 1]->stretch.begin) - gap;
      const double begin = x(analyses[i]->stretch.begin);
      // Shorter words where these let a cycle keep its number; the shortest say too little.
      const double corner = nextCorner(analyses[i]->stretch.begin) - gap;
      const QStringList& all = analyses[i]->words;
      const auto fits = [&](const QString& words) {
        return begin + lettering_.width(words, sizes_.small, Weight::regular) <= corner;
      };
      auto first = std::find_if(all.begin(), all.end() - 1, fits);
      for (first = first == all.end() - 1 ? all.begin() : first; first != all.end(); ++first) {
        const QString& words = *first;
        const double wide = lettering_.width(words, sizes_.small, Weight::regular);
        const double from = std::max(taken, std::min(begin, limit - wide));
        // Words may slide left only as far as they still stand under the end of their bar.
        if (from + wide <= limit && from <= begin && from + wide >= begin) {
          add(TextRole::analysis, QRectF(from, top, wide, sizes_.small * 1.2), from, words,
              sizes_.small, Weight::regular);
          below_.take(from, from + wide);
          taken = from + wide + gap;
          break;
        }
      }
    }
  }

  /// Where the next cycle of this row begins.
  [[nodiscard]] double nextCorner(Time t) const {
    for (const CycleShown& cycle : model_.cycles) {
      if (cycle.begin > t && model_.inRow(place_.index, cycle.begin)) {
        return x(cycle.begin);
      }
    }
    return right() + sizes_.small;
  }

  /// A cycle's number beside its corner, where the words of analyses leave room.
  void placeCycles() {
    const double gap = sizes_.small * 0.4;
    const double top = place_.band.bottom() + sizes_.small * 0.84;
    for (const CycleShown& cycle : model_.cycles) {
      if (!model_.inRow(place_.index, cycle.begin)) {
        continue;
      }
      const double from = x(cycle.begin);
      for (const QString& words : cycle.words) {
        const double wide = lettering_.width(words, sizes_.small, Weight::regular);
        if (from + wide <= right() && below_.isFree(from - gap, from + wide + gap)) {
          below_.take(from, from + wide);
          add(TextRole::cycle, QRectF(from, top, wide, sizes_.small * 1.2), from, words,
              sizes_.small, Weight::regular);
          break;
        }
      }
    }
  }

  void placeWordsOfMarks() {
    std::vector<const RowMark*> rest;
    std::copy_if(marks_.begin(), marks_.end(), std::back_inserter(rest), [](const RowMark* mark) {
      return !isShock(mark->kind) && !isAnalysis(mark->kind);
    });
    std::stable_sort(rest.begin(), rest.end(), [](const RowMark* a, const RowMark* b) {
      return a->importance > b->importance;
    });
    for (const RowMark* mark : rest) {
      placeWords(*mark);
    }
  }

  void placeWords(const RowMark& mark) {
    const bool deviceOn = mark.kind == MarkKind::deviceOn;
    const bool circulation = !isRemark(mark.kind) && !deviceOn;
    if (!full_ && isRemark(mark.kind)) {
      return;
    }
    const Weight weight = circulation ? Weight::bold : Weight::regular;
    // The arrow head belongs to the words.
    const double head = deviceOn ? sizes_.small * 1.05 : 0;
    const QRectF strip = flagStrip();
    const double at = x(mark.stretch.begin);
    const double gap = sizes_.small * 0.4;
    QStringList tries = mark.words;
    if (isRemark(mark.kind)) {
      // A long remark is cut rather than lost.
      tries.insert(1,
                   lettering_.elided(mark.words.first(), sizes_.small, weight, sizes_.small * 14));
    }
    for (const QString& words : tries) {
      const double wide = head + lettering_.width(words, sizes_.small, weight);
      for (const double from : {at + (full_ ? 0 : gap), at - wide}) {
        if (!words.isEmpty() && from >= strip.left() && from + wide <= strip.right() &&
            mayCover(from, from + wide) && flagLane().isFree(from - gap, from + wide + gap)) {
          flagLane().take(from - gap, from + wide + gap);
          add(deviceOn      ? TextRole::deviceOn
              : circulation ? TextRole::circulation
                            : TextRole::remark,
              QRectF(from, strip.top(), wide, strip.height()), from + head, words, sizes_.small,
              weight);
          return;
        }
      }
    }
  }

  /// Only the part of a pause in the row that holds most of it carries the number.
  [[nodiscard]] bool hasLargestPart(const Interval& pause) const {
    const auto shown = [&](const Interval& row) {
      return std::min(pause.end, row.end) - std::max(pause.begin, row.begin);
    };
    const Duration here = shown(row_);
    const Interval before{row_.begin - row_.length(), row_.begin};
    const Interval after{row_.end, row_.end + row_.length()};
    return here > shown(before) && here >= shown(after);
  }

  /// Pauses are in time order and do not overlap.
  [[nodiscard]] std::vector<PauseShown>::const_iterator firstPauseAfter(Time t) const {
    return std::partition_point(model_.pauses.begin(), model_.pauses.end(),
                                [t](const PauseShown& pause) { return pause.stretch.end <= t; });
  }

  void placePauses(bool beyond) {
    for (auto at = firstPauseAfter(row_.begin);
         at != model_.pauses.end() && at->stretch.begin < row_.end; ++at) {
      const PauseShown& pause = *at;
      if (pause.beyondLimit != beyond || !hasLargestPart(pause.stretch)) {
        continue;
      }
      const auto [from, to] = clipped(pause.stretch);
      const Weight weight = beyond ? Weight::bold : Weight::regular;
      const double size = beyond ? sizes_.text : sizes_.small;
      for (const QString& words : pause.words) {
        const double wide = lettering_.width(words, size, weight) + size * 0.5;
        if (wide > to - from) {
          continue; // nor would it fit into what is free of this
        }
        const double high = std::min(sizes_.band, lettering_.capHeight(size) + size * 0.5);
        const auto [freeFrom, freeTo] = roomForSeconds(from, to, wide, high);
        if (wide <= freeTo - freeFrom) {
          const double left = (freeFrom + freeTo - wide) / 2;
          const double middle = numberMiddle(high);
          band_.take(left, left + wide);
          add(beyond ? TextRole::pauseBeyond : TextRole::pause,
              QRectF(left, middle - high / 2, wide, high), left + size * 0.25, words, size, weight);
          break;
        }
      }
    }
  }

  /// Beside the remarks' ticks where a number would hide them and there is room.
  [[nodiscard]] std::pair<double, double> roomForSeconds(double from, double to, double wide,
                                                         double high) const {
    const double half = sizes_.small * 0.3;
    if (numberMiddle(high) - high / 2 < place_.band.top() + sizes_.small * 0.4) {
      Lane lane = band_;
      for (const RowMark* mark : marks_) {
        if (isRemark(mark->kind) || mark->kind == MarkKind::circulationLost) {
          const double at = x(mark->stretch.begin);
          lane.take(at - half, at + half);
        }
      }
      const auto room = lane.widestFree(from, to);
      if (room.second - room.first >= wide) {
        return room;
      }
    }
    return band_.widestFree(from, to);
  }

  [[nodiscard]] double breathRadius() const {
    return std::min(sizes_.small * 0.28, sizes_.band * 0.22);
  }
  /// Circles have a strip of their own where the band is high enough for it and a number.
  [[nodiscard]] bool breathsApart() const {
    return sizes_.band >= 4 * breathRadius() + lettering_.capHeight(sizes_.text) * 1.9;
  }
  [[nodiscard]] double numberMiddle(double high) const {
    const double bottom = place_.band.bottom() - (breathsApart() ? 4 * breathRadius() : 0);
    return std::min(bottom - high / 2,
                    std::max(place_.band.center().y(), place_.band.top() + high / 2));
  }

  /// Breaths give way to numbers beyond the limit and to flags, not to other numbers.
  void reserveBreaths() {
    const double radius = breathRadius();
    const double y = place_.band.bottom() - (breathsApart() ? 2 : 1.35) * radius;
    double lastRight = -1e9;
    for (const auto& [t, derived] : model_.breaths) {
      if (t < row_.begin || t >= row_.end) {
        continue;
      }
      const double at = std::clamp(x(t), layout_.geometry.left + radius, right() - radius);
      const bool crowded = at - radius < lastRight;
      if (crowded || (!breathsApart() && !band_.isFree(at - radius, at + radius))) {
        continue;
      }
      lastRight = at + radius;
      layout_.breaths.push_back({QPointF(at, y), radius, derived});
      if (!breathsApart()) {
        band_.take(at - radius * 1.3, at + radius * 1.3);
      }
    }
  }

  void placeExcluded() {
    for (const ExcludedShown& excluded : model_.excluded) {
      if (excluded.stretch.end <= row_.begin || excluded.stretch.begin >= row_.end) {
        continue;
      }
      const auto [from, to] = clipped(excluded.stretch);
      const auto [freeFrom, freeTo] = band_.widestFree(from, to);
      for (const QString& words : excluded.words) {
        const double wide =
            lettering_.width(words, sizes_.small, Weight::regular) + sizes_.small * 0.6;
        if (wide <= freeTo - freeFrom) {
          const double left = (freeFrom + freeTo - wide) / 2;
          const double high = std::min(sizes_.band, sizes_.small * 1.3);
          band_.take(left, left + wide);
          add(TextRole::excluded, QRectF(left, place_.band.center().y() - high / 2, wide, high),
              left + sizes_.small * 0.3, words, sizes_.small, Weight::regular);
          break;
        }
      }
    }
  }

  const RowsModel& model_;
  const Lettering& lettering_;
  RowsLayout& layout_;
  const RowPlace& place_;
  const RowSizes& sizes_;
  Interval row_;
  bool full_;
  std::vector<const RowMark*> marks_;
  Lane above_, band_, below_, handsOn_;
};

} // namespace

RowsLayout layOutRows(const RowsModel& model, const Lettering& lettering, const QRectF& area,
                      const RowsLook& look, bool legend, bool fit) {
  RowsLayout layout;
  layout.geometry = layOutGeometry(model, lettering, area, look, legend && model.span, fit);
  if (!model.span) {
    placeNothing(model, lettering, area, layout);
    return layout;
  }
  for (const RowPlace& place : layout.geometry.rows) {
    RowPlacer(model, lettering, layout, place).placeAll();
  }
  if (!layout.geometry.leftOut.isEmpty()) {
    placeLeftOut(model, lettering, layout);
  }
  if (!layout.geometry.legend.isEmpty()) {
    placeLegend(model, lettering, layout);
  }
  return layout;
}

} // namespace afterbeat::papers
