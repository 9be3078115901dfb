#include "app/papers/computed_length.h"
#include "app/papers/facts.h"
#include "app/papers/sheet_content.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::papers {

namespace {

/// Until when people went on after the last return of circulation, by the device's own record.
struct WentOn {
  std::optional<Time> compressionsUntil, shockAt;
  [[nodiscard]] bool any() const { return compressionsUntil || shockAt; }
};

WentOn wentOnAfter(const Figures& figures, Time returned) {
  WentOn went;
  if (!figures.handsOn.empty() && figures.handsOn.back().end > returned) {
    went.compressionsUntil = figures.handsOn.back().end;
  }
  if (const ShockFigures* shock = lastDelivered(figures); shock && shock->t > returned) {
    went.shockAt = shock->t;
  }
  return went;
}

struct CirculationChange {
  const Entry* entry = nullptr;
  bool returned = false;
};

std::vector<CirculationChange> circulationHistory(const Record& record) {
  std::vector<CirculationChange> history;
  for (const Entry& entry : record.entries) {
    const auto* circulation = entry.complete<entry::Circulation>();
    if (circulation != nullptr && circulation->state && entry.hasTime) {
      history.push_back({&entry, circulation->state == CirculationState::returned});
    }
  }
  return history;
}

QString changeWords(const Record& record, const CirculationChange& change, const Words& say) {
  return (change.returned ? say(QT_TRANSLATE_NOOP("Papers", "returned %1"))
                          : say(QT_TRANSLATE_NOOP("Papers", "lost %1")))
      .arg(momentWords(record, change.entry->t, say));
}

QStringList afterReturn(const Record& record, const Entry& entry, const Words& say) {
  if (record.lastTime && *record.lastTime > entry.t) {
    return {say(QT_TRANSLATE_NOOP("Papers", "no loss recorded after it; the record ends %1"))
                .arg(momentWords(record, *record.lastTime, say))};
  }
  return {say(QT_TRANSLATE_NOOP("Papers", "the record ends there"))};
}

/// A return that the record itself speaks against must not be the loudest word on the page.
void tellDoubtfulReturn(SheetFigure& figure, const Record& record, const CirculationChange& change,
                        const WentOn& went, const Words& say) {
  figure.value = say(QT_TRANSLATE_NOOP("Papers", "unclear"));
  figure.notes << changeWords(record, change, say);
  if (went.compressionsUntil) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "compressions went on until %1"))
                        .arg(momentWords(record, *went.compressionsUntil, say));
  }
  if (went.shockAt) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "shock after it, %1"))
                        .arg(momentWords(record, *went.shockAt, say));
  }
}

/// Earlier changes, the latest two.
QString beforeWords(const Record& record, const std::vector<CirculationChange>& history,
                    const Words& say) {
  constexpr std::size_t kShown = 2;
  QStringList parts;
  const std::size_t last = history.size() - 1;
  const std::size_t first = last > kShown ? last - kShown : 0;
  if (first > 0) {
    parts << QStringLiteral("…");
  }
  for (std::size_t i = first; i < last; ++i) {
    parts << changeWords(record, history[i], say);
  }
  return say(QT_TRANSLATE_NOOP("Papers", "before: %1")).arg(parts.join(QStringLiteral(", ")));
}

} // namespace

QString observerWords(const Entry& entry, const Words& say) {
  return entry.source == Source::observer
             ? say(QT_TRANSLATE_NOOP("Papers", " (noted by an observer)"))
             : QString();
}

QString windowBeginWords(const Record& record, const Figures& figures, const Words& say) {
  const Time begin = figures.window ? figures.window->begin : Time{};
  QString what = say(QT_TRANSLATE_NOOP("Papers", "first compression"));
  for (const Entry& entry : record.entries) {
    if (!entry.hasTime || entry.t != begin) {
      continue;
    }
    const auto* electrodes = entry.complete<entry::Electrodes>();
    if (electrodes != nullptr && electrodes->state == ElectrodeState::attached) {
      what = say(QT_TRANSLATE_NOOP("Papers", "electrodes on"));
      break;
    }
    if (entry.complete<entry::Analysis>() != nullptr) {
      what = say(QT_TRANSLATE_NOOP("Papers", "first analysis"));
    } else if (entry.complete<entry::Shock>() != nullptr) {
      what = say(QT_TRANSLATE_NOOP("Papers", "first shock"));
    }
  }
  return QStringLiteral("%1 (%2)").arg(momentWords(record, begin, say), what);
}

SheetFigure handsOffFigure(const Record& record, const Figures& figures, const Words& say) {
  SheetFigure figure;
  figure.title = say(QT_TRANSLATE_NOOP("Papers", "Hands off the chest"));
  figure.unknown = notRecordedText(say);
  const Measure& share = figures[MeasureId::handsOffFraction];
  if (!share.value) {
    if (share.status == Status::notApplicable) {
      figure.unknown = say(QT_TRANSLATE_NOOP("Papers", "no time to measure it in"));
    }
    return figure;
  }
  const auto length = [&](const std::optional<double>& value) {
    return say.length(computedLength(value.value_or(0)));
  };
  figure.value = say.percent(*share.value);
  if (isPartial(record)) {
    figure.doubt = say(QT_TRANSLATE_NOOP("Papers", "of what was recorded"));
    figure.doubtAfter = true;
  }
  figure.notes
      << say(QT_TRANSLATE_NOOP("Papers", "%1 of the %2 counted"))
             .arg(length(share.numerator), length(share.denominator))
      << say(QT_TRANSLATE_NOOP("Papers", "from %1")).arg(windowBeginWords(record, figures, say));
  return figure;
}

SheetFigure circulationFigure(const Record& record, const Figures& figures, const Words& say) {
  SheetFigure figure;
  figure.title = say(QT_TRANSLATE_NOOP("Papers", "Circulation"));
  figure.unknown = say(QT_TRANSLATE_NOOP("Papers", "return not recorded"));
  const auto history = circulationHistory(record);
  if (!history.empty()) {
    const CirculationChange& last = history.back();
    const bool clock = clockTrust(record) != ClockTrust::none;
    const WentOn went = last.returned ? wentOnAfter(figures, last.entry->t) : WentOn{};
    if (went.any()) {
      tellDoubtfulReturn(figure, record, last, went, say);
    } else if (clock) {
      figure.value = changeWords(record, last, say);
    } else {
      figure.value = last.returned ? say(QT_TRANSLATE_NOOP("Papers", "returned"))
                                   : say(QT_TRANSLATE_NOOP("Papers", "lost"));
      figure.notes << sinceStartWords(record, last.entry->t, say);
    }
    if (last.entry->source == Source::observer) {
      figure.notes << say(QT_TRANSLATE_NOOP("Papers", "noted by an observer"));
    }
    if (last.returned && !went.any()) {
      figure.notes << afterReturn(record, *last.entry, say);
    }
    if (history.size() > 1) {
      figure.notes << beforeWords(record, history, say);
    }
  }
  if (const auto ended = firstMilestone(record, "efforts_ended")) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "efforts ended %1"))
                        .arg(momentWords(record, *ended, say));
  }
  return figure;
}

} // namespace afterbeat::papers
