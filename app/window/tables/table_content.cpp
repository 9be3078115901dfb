#include "app/window/tables/table_content.h"

#include "app/papers/rows_model.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/signals/rhythms.h"
#include "app/window/signals/shock_words.h"

#include <QCoreApplication>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

TableCell word(const QString& text) {
  return {text, {}, true};
}

TableCell missing() {
  return {tr("not recorded"), {}, false};
}

TableCell number(std::optional<double> value, int decimals) {
  return value ? TableCell{words().number(*value, decimals), value, true} : missing();
}

TableCell count(std::optional<int> value) {
  return value ? number(static_cast<double>(*value), 0) : missing();
}

TableCell length(std::optional<Duration> value) {
  return value ? number(seconds(*value), 1) : missing();
}

TableCell share(std::optional<double> value) {
  return value ? TableCell{words().percent(*value), value, true} : missing();
}

/// The begin, by the clock where there is one, else on the record's own axis.
TableCell moment(const Moments& moments, Time t) {
  return {moments.hasClock() ? moments.clock(t, false) : Moments::onRecord(t, false), seconds(t),
          true};
}

QString momentTitle(const Moments& moments) {
  return moments.hasClock() ? tr("clock") : tr("on record");
}

TableContent minutes(const Moments& moments, const Figures& figures) {
  const QString perMinute = tr("a minute");
  TableContent table;
  table.columns = {{tr("minute"), {}, true},        {momentTitle(moments), {}, true},
                   {tr("counted"), tr("s"), true},  {tr("hands off"), tr("s"), true},
                   {tr("compressions"), {}, true},  {tr("rate"), perMinute, true},
                   {tr("in range"), tr("%"), true}, {tr("depth"), tr("mm"), true},
                   {tr("breaths"), {}, true},       {tr("shocks"), {}, true}};
  int index = 0;
  for (const MinuteRow& row : figures.minutes) {
    const QString what = tr("minute %1").arg(++index);
    table.rows.push_back(
        {row.epoch,
         what,
         {TableCell{QString::number(index), index, true}, moment(moments, row.epoch.begin),
          length(row.arrest), length(row.handsOff), count(row.compressions), number(row.rate, 0),
          share(row.rateInRange), number(row.depth, 1), count(row.ventilations),
          count(row.shocks)}});
  }
  table.none = tr("No minute of a rescue is in this record.");
  return table;
}

TableContent cycles(const Moments& moments, const Figures& figures) {
  TableContent table;
  table.columns = {{tr("cycle"), {}, true},
                   {momentTitle(moments), {}, true},
                   {tr("length"), tr("s"), true},
                   {tr("hands off"), tr("s"), true},
                   {tr("share hands off"), tr("%"), true},
                   {tr("rate"), tr("a minute"), true},
                   {tr("between"), {}, false}};
  for (std::size_t i = 0; i < figures.cycles.size(); ++i) {
    const CycleRow& row = figures.cycles[i];
    const double all = seconds(row.stretch.length());
    const QString between = !row.open ? tr("two analyses")
                            : i == 0  ? tr("begin and first analysis")
                                      : tr("last analysis and end");
    const int index = static_cast<int>(i) + 1;
    std::optional<double> off;
    if (row.handsOff && all > 0) {
      off = seconds(*row.handsOff) / all;
    }
    table.rows.push_back({row.stretch,
                          tr("cycle %1").arg(index),
                          {TableCell{QString::number(index), index, true},
                           moment(moments, row.stretch.begin), length(row.stretch.length()),
                           length(row.handsOff), share(off), number(row.rate, 0), word(between)}});
  }
  table.none = tr("No analysis is in this record, so it has no cycles.");
  return table;
}

TableContent pauses(const Moments& moments, const Figures& figures) {
  TableContent table;
  table.columns = {{tr("pause"), {}, true},       {momentTitle(moments), {}, true},
                   {tr("length"), tr("s"), true}, {tr("why"), {}, false},
                   {tr("limit"), tr("s"), true},  {tr("against the limit"), {}, false}};
  int index = 0;
  for (const Pause& pause : figures.pauses) {
    const double length = seconds(pause.stretch.length());
    const auto limit = papers::limitFor(figures.settings.profile, pause.cause);
    const QString why = causeWords(pause, figures);
    table.rows.push_back({pause.stretch,
                          tr("pause of %1: %2").arg(lengthWords(pause.stretch.length()), why),
                          {TableCell{QString::number(++index), index, true},
                           moment(moments, pause.stretch.begin), number(length, 1), word(why),
                           limit ? TableCell{words().plainNumber(*limit), limit, true}
                                 : TableCell{tr("no limit"), {}, false},
                           word(!limit            ? QString()
                                : length > *limit ? tr("longer")
                                                  : tr("within"))}});
  }
  table.none = figures.evidence == Evidence::none
                   ? tr("No compressions are recorded, so pauses are not known.")
                   : tr("No hands-off stretch is longer than %1 s.")
                         .arg(words().plainNumber(seconds(figures.settings.pauseThreshold)));
  return table;
}

/// A length that only a shock that was given has.
TableCell around(const ShockFigures& shock, const std::optional<Duration>& value) {
  return shock.number > 0 ? (value ? length(value) : TableCell{tr("not known"), {}, false})
                          : TableCell{QStringLiteral("–"), {}, false};
}

TableContent shocks(const Moments& moments, const Figures& figures) {
  TableContent table;
  table.columns = {{tr("shock"), {}, true},
                   {momentTitle(moments), {}, true},
                   {tr("given"), {}, false},
                   {tr("energy"), tr("J"), true},
                   {tr("hands off before"), tr("s"), true},
                   {tr("hands off after"), tr("s"), true},
                   {tr("before and after"), tr("s"), true},
                   {tr("advice to shock"), tr("s"), true}};
  for (const ShockFigures& shock : figures.shocks) {
    const Interval reach{shock.t - shock.pre.value_or(Duration{}),
                         shock.t + shock.post.value_or(Duration{})};
    const QString what = pointedAt(figures, shock.t, Duration{0}).what;
    const QString given = !shock.delivered   ? tr("not recorded")
                          : *shock.delivered ? tr("yes")
                                             : tr("no");
    table.rows.push_back(
        {reach,
         what,
         {shock.number > 0 ? TableCell{QString::number(shock.number), shock.number, true}
                           : TableCell{QStringLiteral("–"), {}, false},
          moment(moments, shock.t), TableCell{given, {}, shock.delivered.has_value()},
          shock.energyJ ? TableCell{words().plainNumber(*shock.energyJ), shock.energyJ, true}
                        : missing(),
          around(shock, shock.pre), around(shock, shock.post), around(shock, shock.peri),
          around(shock, shock.adviceToShock)}});
  }
  table.none = figures[MeasureId::shocksDelivered].status == Status::ok
                   ? tr("No shock is in this record.")
                   : tr("Shocks: not recorded.");
  return table;
}

/// What became of the fibrillation, as short as a column wants it.
TableCell afterCell(const ShockRhythm& shock) {
  switch (shock.after) {
  case AfterShock::ended:
    return word(tr("ended within 5 s"));
  case AfterShock::wentOn:
    return word(tr("went on"));
  case AfterShock::notKnown:
    break;
  }
  return {afterShockWords(shock), {}, false};
}

/// What the ECG shows around each shock that was given: hints, with their caution under them.
TableContent ecgAtShocks(const Moments& moments, const Figures& figures, const Derived* hints) {
  TableContent table;
  table.columns = {{tr("shock"), {}, true},          {momentTitle(moments), {}, true},
                   {tr("hint: before"), {}, false},  {tr("amplitude"), tr("mV"), true},
                   {tr("dominant"), tr("Hz"), true}, {tr("AMSA"), tr("mV·Hz"), true},
                   {tr("fibrillation"), {}, false},  {tr("hint: then"), {}, false}};
  const TableCell none{QStringLiteral("–"), {}, false};
  for (const ShockFigures& given : figures.shocks) {
    const ShockRhythm* shock = hints ? judgedAt(hints->shocks, given.t) : nullptr;
    if (!shock || given.number <= 0) {
      continue;
    }
    const auto figure = [&](double Fibrillation::*what, int decimals) {
      return shock->before ? number((*shock->before).*what, decimals) : none;
    };
    constexpr Duration kBefore{10'000'000}, kAfter{15'000'000};
    table.rows.push_back(
        {{given.t - kBefore, given.t + kAfter},
         pointedAt(figures, given.t, Duration{0}).what,
         {TableCell{QString::number(given.number), given.number, true}, moment(moments, given.t),
          TableCell{beforeShockWords(*shock), {}, shock->before.has_value()},
          figure(&Fibrillation::amplitudeMv, 2), figure(&Fibrillation::dominantHz, 1),
          figure(&Fibrillation::amsaMvHz, 1), afterCell(*shock),
          TableCell{followedWords(*shock), {}, shock->followed.has_value()}}});
  }
  table.caution = tr("Derived from the ECG. %1.").arg(cautionWords());
  table.none =
      tr("The signals tell nothing about shocks here: no shock was given, no ECG shows it, "
         "or no hints are made from the signals.");
  return table;
}

} // namespace

TableContent tableContent(TableKind kind, const Record& record, const Figures& figures,
                          const Derived* hints) {
  const Moments moments(record);
  switch (kind) {
  case TableKind::minutes:
    return minutes(moments, figures);
  case TableKind::cycles:
    return cycles(moments, figures);
  case TableKind::pauses:
    return pauses(moments, figures);
  case TableKind::shocks:
    return shocks(moments, figures);
  case TableKind::ecgAtShocks:
    break;
  }
  return ecgAtShocks(moments, figures, hints);
}

} // namespace afterbeat::window
