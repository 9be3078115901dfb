#include "app/papers/rows_model.h"

#include "app/papers/facts.h"
#include "app/papers/rows.h"
#include "app/papers/rows_marks.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace afterbeat::papers {

namespace {

/// Circulation after the window is followed this far.
constexpr Duration kCirculationShown{600'000'000};

template <typename T>
std::optional<Time> lastOf(const Record& record, bool (*wanted)(const T&)) {
  std::optional<Time> last;
  for (const Entry& entry : record.entries) {
    const T* data = entry.complete<T>();
    if (data != nullptr && wanted(*data)) {
      last = last ? std::max(*last, entry.t) : entry.t;
    }
  }
  return last;
}

bool isReturned(const entry::Circulation& c) {
  return c.state == CirculationState::returned;
}
bool isLost(const entry::Circulation& c) {
  return c.state == CirculationState::lost;
}

/// The end of the last stretch with circulation where nothing in the record ends it.
std::optional<Interval> openCirculation(const Record& record, const Figures& figures) {
  const auto returned = lastOf<entry::Circulation>(record, isReturned);
  if (!returned || !record.lastTime || *record.lastTime <= *returned) {
    return std::nullopt;
  }
  const auto lost = lastOf<entry::Circulation>(record, isLost);
  const bool handsOnLater = !figures.handsOn.empty() && figures.handsOn.back().end > *returned;
  const bool shockLater =
      std::any_of(figures.shocks.begin(), figures.shocks.end(), [&](const ShockFigures& shock) {
        return shock.delivered.value_or(false) && shock.t > *returned;
      });
  if ((lost && *lost > *returned) || handsOnLater || shockLater) {
    return std::nullopt;
  }
  return Interval{*returned, *record.lastTime};
}

/// The window, and after it as far as something shown lies there.
Interval shownSpan(const Record& record, const Figures& figures,
                   const std::optional<Interval>& circulation) {
  Interval span = *figures.window;
  for (const ShockFigures& shock : figures.shocks) {
    span.end = std::max(span.end, shock.t);
  }
  if (const auto lost = lastOf<entry::Circulation>(record, isLost)) {
    span.end = std::max(span.end, *lost);
  }
  if (circulation) {
    const Time from = std::max(span.end, circulation->begin);
    span.end = std::max(span.end, std::min(circulation->end, from + kCirculationShown));
  }
  return span;
}

/// One run of compressions, the first and the last by index.
BandRun runOf(const std::vector<Time>& at, std::size_t first, std::size_t last) {
  BandRun run{{at[first], at[last]}, {}, true};
  run.pieces.reserve(last - first);
  for (std::size_t i = first; i < last; ++i) {
    // A mean over three intervals: the band should show the pace, not each beat's jitter.
    const std::size_t from = i > first ? i - 1 : i;
    const std::size_t to = std::min(last, i + 2);
    const double length = seconds(at[to] - at[from]);
    run.pieces.push_back({{at[i], at[i + 1]}, 60.0 * static_cast<double>(to - from) / length});
  }
  return run;
}

void addRuns(RowsModel& model, const Record& record, const Figures& figures) {
  const auto& at = figures.compressions;
  for (std::size_t first = 0; first < at.size();) {
    std::size_t last = first;
    while (last + 1 < at.size() && at[last + 1] - at[last] <= figures.settings.pauseThreshold) {
      ++last;
    }
    model.runs.push_back(runOf(at, first, last));
    model.runs.back().derived =
        record.entries[figures.compressionEntries[first]].source == Source::derived;
    first = last + 1;
  }
  for (const std::size_t index : figures.cprEntries) {
    const Entry& entry = record.entries[index];
    if (const auto* cpr = entry.complete<entry::Cpr>()) {
      const Interval stretch{entry.t, entry.lastTime()};
      model.runs.push_back(
          {stretch, {{stretch, cpr->ratePerMin}}, false, entry.source == Source::derived});
    }
  }
  std::stable_sort(model.runs.begin(), model.runs.end(), [](const BandRun& a, const BandRun& b) {
    return a.stretch.begin < b.stretch.begin;
  });
}

void addPauses(RowsModel& model, const Figures& figures) {
  const QString secondsWords = model.words(QT_TRANSLATE_NOOP("Papers", "%1 s"));
  // Words by what is written, in tenths: a long record has thousands of pauses and few lengths.
  std::map<std::pair<long long, bool>, QStringList> known;
  for (const Pause& pause : figures.pauses) {
    PauseShown shown;
    shown.stretch = pause.stretch;
    const double length = seconds(pause.stretch.length());
    const auto limit = limitFor(figures.settings.profile, pause.cause);
    shown.beyondLimit = limit && length > *limit;
    // A length that rounds to its limit, yet is beyond it, keeps a decimal, or it would seem
    // within.
    const bool close = shown.beyondLimit && std::round(length) <= *limit;
    const long long tenths = close ? std::llround(length * 10) : std::llround(length) * 10;
    QStringList& wording = known[{tenths, close}];
    if (wording.isEmpty()) {
      const QString number = model.words.number(static_cast<double>(tenths) / 10, close ? 1 : 0);
      // Never without its unit: a bare number beside a shock reads as the shock's.
      wording = {secondsWords.arg(number)};
    }
    shown.words = wording;
    model.pauses.push_back(std::move(shown));
  }
}

void addShocks(RowsModel& model, const Figures& figures) {
  const Words& say = model.words;
  for (const ShockFigures& shock : figures.shocks) {
    RowMark mark;
    mark.stretch = {shock.t, shock.t};
    mark.importance = 100;
    if (!shock.delivered) {
      mark.kind = MarkKind::shockUnknown;
      mark.words = {say(QT_TRANSLATE_NOOP("Papers", "shock? delivery not recorded")),
                    say(QT_TRANSLATE_NOOP("Papers", "shock ?"))};
    } else if (!*shock.delivered) {
      mark.kind = MarkKind::shockNotGiven;
      mark.words = {say(QT_TRANSLATE_NOOP("Papers", "shock not given")),
                    say(QT_TRANSLATE_NOOP("Papers", "not given"))};
    } else {
      mark.kind = MarkKind::shockGiven;
      mark.words = {say(QT_TRANSLATE_NOOP("Papers", "shock %1")).arg(shock.number)};
    }
    model.marks.push_back(std::move(mark));
  }
}

QStringList excludedWords(std::optional<ExclusionReason> why, bool derived, const Words& say) {
  const QString plain = say(QT_TRANSLATE_NOOP("Papers", "not counted"));
  if (!why) {
    return {plain};
  }
  switch (*why) {
  case ExclusionReason::notRescue:
    return {say(QT_TRANSLATE_NOOP("Papers", "not counted: not part of the rescue")), plain};
  case ExclusionReason::notTrusted:
    return {say(QT_TRANSLATE_NOOP("Papers", "not counted: recording not trusted")), plain};
  case ExclusionReason::notObserved:
    break;
  }
  return {derived ? say(QT_TRANSLATE_NOOP("Papers", "not counted: no signal shows the hands"))
                  : say(QT_TRANSLATE_NOOP("Papers", "not counted: nobody was watching")),
          plain};
}

/// Since when the device was on as the rows begin.
std::optional<Time> onBefore(const Record& record, Time begin) {
  std::optional<Time> since;
  for (const Entry& entry : record.entries) {
    if (!entry.hasTime || entry.t >= begin) {
      continue;
    }
    if (entry.complete<entry::PowerOff>() != nullptr) {
      since.reset();
    } else if (entry.complete<entry::PowerOn>() != nullptr && !since) {
      since = entry.t;
    }
  }
  return since;
}

void addDeviceOn(RowsModel& model, const Record& record) {
  constexpr Duration kWorthSaying{1'000'000};
  const Time begin = model.span->begin;
  const auto since = onBefore(record, begin);
  if (!since || begin - *since < kWorthSaying) {
    return;
  }
  const QString length = model.words.length(begin - *since);
  RowMark mark;
  mark.kind = MarkKind::deviceOn;
  mark.stretch = {begin, begin};
  mark.importance = 60;
  mark.words = {model.words(QT_TRANSLATE_NOOP("Papers", "device on %1 earlier")).arg(length),
                model.words(QT_TRANSLATE_NOOP("Papers", "on %1 earlier")).arg(length)};
  model.marks.push_back(std::move(mark));
}

void addCycles(RowsModel& model, const Figures& figures) {
  int number = 0;
  for (const CycleRow& cycle : figures.cycles) {
    const QString digits = QString::number(++number);
    model.cycles.push_back(
        {cycle.stretch.begin, {model.words(QT_TRANSLATE_NOOP("Papers", "cycle %1")).arg(digits)}});
  }
}

void addEntries(RowsModel& model, const Record& record) {
  for (const Entry& entry : record.entries) {
    if (!entry.hasTime || entry.incomplete || entry.lastTime() < model.span->begin ||
        entry.t > model.span->end) {
      continue;
    }
    if (entry.complete<entry::Ventilation>() != nullptr) {
      model.breaths.push_back({entry.t, entry.source == Source::derived});
    } else if (const auto* excluded = entry.complete<entry::Excluded>()) {
      model.excluded.push_back(
          {{entry.t, entry.lastTime()},
           excludedWords(excluded->why, entry.source == Source::derived, model.words)});
    } else if (auto mark = markOf(entry, model.words)) {
      model.marks.push_back(std::move(*mark));
    }
  }
  std::stable_sort(model.marks.begin(), model.marks.end(), [](const RowMark& a, const RowMark& b) {
    return a.stretch.begin < b.stretch.begin;
  });
}

void addLabels(RowsModel& model, const Record& record) {
  const auto zero =
      clockTrust(record) != ClockTrust::none ? wallTimeAt(record, Time{}) : std::nullopt;
  const auto on = firstOf<entry::PowerOn>(record);
  for (int i = 0; i < model.rowCount(); ++i) {
    RowLabel label;
    label.minutes = model.words(QT_TRANSLATE_NOOP("Papers", "%1–%2 min")).arg(2 * i).arg(2 * i + 2);
    if (zero) {
      WallTime wall = *zero;
      wall.utc += model.row(i).begin.time_since_epoch();
      label.clock = model.words.clock(wall);
    } else if (on && model.row(i).begin > *on) {
      // The rest of the sheet counts from switching on: each row says where it begins there.
      const long long since = std::llround(seconds(model.row(i).begin - *on));
      label.clock =
          model.words(QT_TRANSLATE_NOOP("Papers", "from %1"))
              .arg(
                  QStringLiteral("%1:%2").arg(since / 60).arg(since % 60, 2, 10, QLatin1Char('0')));
    }
    model.labels.push_back(std::move(label));
  }
}

} // namespace

bool RowsModel::showsTarget() const {
  return corridor && std::any_of(runs.begin(), runs.end(),
                                 [](const BandRun& run) { return run.beats || run.rateKnown(); });
}

int RowsModel::rowCount() const {
  if (!span) {
    return 0;
  }
  const auto length = span->length().count();
  const auto row = rowLength.count();
  return static_cast<int>(std::max<std::int64_t>(1, (length + row - 1) / row));
}

Interval RowsModel::row(int index) const {
  const Time begin = (span ? span->begin : Time{}) + index * rowLength;
  return {begin, begin + rowLength};
}

bool RowsModel::inRow(int index, Time t) const {
  const Interval all = row(index);
  return t >= all.begin && (t < all.end || (index + 1 == rowCount() && t == all.end));
}

std::optional<double> limitFor(const Profile& profile, PauseCause cause) {
  const bool breaths = cause == PauseCause::breaths || cause == PauseCause::breathsLong;
  const auto& target =
      breaths && profile.breathPauseLimit ? profile.breathPauseLimit : profile.pauseLimit;
  return target ? std::optional<double>(target->value) : std::nullopt;
}

RowsModel makeRowsModel(const Record& record, const Figures& figures, Words words) {
  RowsModel model;
  model.words = std::move(words);
  if (!figures.window) {
    return model;
  }
  const Profile& profile = figures.settings.profile;
  const auto circulation = openCirculation(record, figures);
  model.counted = *figures.window;
  model.span = shownSpan(record, figures, circulation);
  if (profile.ratePerMin) {
    model.corridor = profile.ratePerMin->value;
  }
  model.profileName = plainText(profile.name);
  if (profile.pauseLimit) {
    model.pauseLimit = profile.pauseLimit->value;
  }
  model.circulation = figures.circulation;
  if (circulation) {
    model.circulation.push_back(*circulation);
  }
  model.circulation = merged(model.circulation);
  addRuns(model, record, figures);
  addPauses(model, figures);
  addShocks(model, figures);
  addDeviceOn(model, record);
  addCycles(model, figures);
  addEntries(model, record);
  addLabels(model, record);
  if (const auto end = brokeOffAt(record, figures);
      end && model.inRow(model.rowCount() - 1, *end)) {
    // An incomplete entry may have been written after it: nothing that is shown lies beyond.
    model.brokeOff = std::max(*end, model.span->end);
  }
  return model;
}

} // namespace afterbeat::papers
