#include "app/papers/rows.h"
#include "app/papers/rows_model.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace afterbeat::papers {

namespace {

Duration shared(const Interval& a, const Interval& b) {
  return std::max(Duration{0}, std::min(a.end, b.end) - std::max(a.begin, b.begin));
}

bool startsIn(const Interval& row, Time t, bool last) {
  return t >= row.begin && (t < row.end || (last && t == row.end));
}

/// "at 0:53" within the row's own record axis: minutes and seconds from the window's begin.
QString momentWords(const RowsModel& model, Time t) {
  const auto whole = std::max<std::int64_t>(0, (t - model.span->begin).count() / 1'000'000);
  return QStringLiteral("%1:%2").arg(whole / 60).arg(whole % 60, 2, 10, QLatin1Char('0'));
}

QString handsOnWords(const RowsModel& model, const Interval& row) {
  Duration hands{};
  double beats = 0;
  double rated = 0;
  bool derived = false;
  for (const BandRun& run : model.runs) {
    const Duration here = shared(run.stretch, row);
    hands += here;
    derived |= run.derived && here > Duration{0};
    for (const BandPiece& piece : run.pieces) {
      const double length = seconds(shared(piece.stretch, row));
      if (piece.rate && length > 0) {
        rated += length;
        beats += length * *piece.rate / 60;
      }
    }
  }
  const Words& say = model.words;
  if (hands <= Duration{0}) {
    return say(QT_TRANSLATE_NOOP("Papers", "no hands on the chest"));
  }
  const QString words =
      rated <= 0 ? say(QT_TRANSLATE_NOOP("Papers", "hands on for %1")).arg(say.length(hands))
                 : say(QT_TRANSLATE_NOOP("Papers", "hands on for %1, about %2 a minute"))
                       .arg(say.length(hands), say.number(60 * beats / rated));
  return derived ? say(QT_TRANSLATE_NOOP("Papers", "%1, from the signals")).arg(words) : words;
}

QStringList pauseWords(const RowsModel& model, const Interval& row, bool last) {
  QStringList parts;
  const Words& say = model.words;
  for (const PauseShown& pause : model.pauses) {
    if (startsIn(row, pause.stretch.begin, last)) {
      const QString words =
          pause.beyondLimit
              ? say(QT_TRANSLATE_NOOP("Papers", "hands off %1 from %2, beyond the limit"))
              : say(QT_TRANSLATE_NOOP("Papers", "hands off %1 from %2"));
      parts << words.arg(pause.words.first(), momentWords(model, pause.stretch.begin));
    }
  }
  return parts;
}

QStringList otherWords(const RowsModel& model, const Interval& row, bool last) {
  QStringList parts;
  const Words& say = model.words;
  for (const RowMark& mark : model.marks) {
    if (mark.kind == MarkKind::deviceOn && startsIn(row, mark.stretch.begin, last)) {
      parts << mark.words.first();
    } else if (startsIn(row, mark.stretch.begin, last) && !mark.words.isEmpty()) {
      parts << say(QT_TRANSLATE_NOOP("Papers", "%1 at %2"))
                   .arg(mark.words.first(), momentWords(model, mark.stretch.begin));
    }
  }
  for (const CycleShown& cycle : model.cycles) {
    if (startsIn(row, cycle.begin, last)) {
      parts << say(QT_TRANSLATE_NOOP("Papers", "%1 from %2"))
                   .arg(cycle.words.first(), momentWords(model, cycle.begin));
    }
  }
  const auto breaths =
      std::count_if(model.breaths.begin(), model.breaths.end(),
                    [&](const BreathShown& breath) { return startsIn(row, breath.t, last); });
  if (breaths > 0) {
    parts << (breaths == 1 ? say(QT_TRANSLATE_NOOP("Papers", "one breath"))
                           : say(QT_TRANSLATE_NOOP("Papers", "%1 breaths")).arg(breaths));
  }
  for (const ExcludedShown& excluded : model.excluded) {
    if (shared(excluded.stretch, row) > Duration{0}) {
      parts << excluded.words.first();
    }
  }
  return parts;
}

} // namespace

QString RowsPicture::asText() const {
  const RowsModel& model = *model_;
  if (!model.span) {
    return model.words(QT_TRANSLATE_NOOP("Papers",
                                         "Nothing in this record can be drawn as rows: no "
                                         "electrodes, compressions, analysis or shock."));
  }
  QStringList lines;
  for (int i = 0; i < model.rowCount(); ++i) {
    lines << rowAsText(i);
  }
  return lines.join(QLatin1Char('\n'));
}

QString RowsPicture::rowAsText(int index) const {
  const RowsModel& model = *model_;
  if (index < 0 || index >= model.rowCount()) {
    return {};
  }
  const Interval row = model.row(index);
  const bool last = index + 1 == model.rowCount();
  const RowLabel& label = model.labels[static_cast<std::size_t>(index)];
  QStringList parts{handsOnWords(model, row)};
  parts << pauseWords(model, row, last) << otherWords(model, row, last);
  const QString head = label.clock.isEmpty()
                           ? label.minutes
                           : QStringLiteral("%1 (%2)").arg(label.minutes, label.clock);
  return QStringLiteral("%1: %2.").arg(head, parts.join(QStringLiteral("; ")));
}

} // namespace afterbeat::papers
