#include "app/papers/charts/season_chart_parts.h"

#include <QDate>
#include <QLocale>

#include <algorithm>

namespace afterbeat::papers {

ChartAxis valueAxis(const Words& words, AmountKind kind, const QString& title) {
  ChartAxis axis;
  axis.title = title;
  switch (kind) {
  case AmountKind::share:
    axis.kind = AxisKind::share;
    axis.most = 1;
    break;
  case AmountKind::seconds:
    axis.kind = AxisKind::seconds;
    break;
  case AmountKind::perMinute:
    axis.title = words(QT_TRANSLATE_NOOP("Papers", "%1, per minute")).arg(title);
    return axis;
  case AmountKind::millimetres:
    axis.title = words(QT_TRANSLATE_NOOP("Papers", "%1, millimetres")).arg(title);
    return axis;
  case AmountKind::joules:
    axis.title = words(QT_TRANSLATE_NOOP("Papers", "%1, joules")).arg(title);
    break;
  case AmountKind::count:
  case AmountKind::plain:
    break;
  }
  axis.least = 0;
  return axis;
}

void AxisRange::add(double value) {
  from_ = std::min(from_.value_or(value), value);
  to_ = std::max(to_.value_or(value), value);
}

void AxisRange::into(ChartAxis& axis) const {
  axis.from = from_.value_or(0);
  axis.to = to_.value_or(1);
  if (axis.least) {
    // A length of time is below 0 where a moment came before the one it usually follows.
    axis.least = std::min(*axis.least, axis.from);
    axis.from = *axis.least;
  }
}

QStringList sentences(const std::vector<Saying>& sayings, const Words& words) {
  QStringList all;
  for (const Saying& saying : sayings) {
    all << said(saying, words);
  }
  return all;
}

QString dayText(std::chrono::sys_days day, const Words& words) {
  ChartAxis days;
  days.kind = AxisKind::days;
  return valueText(words, days, static_cast<double>(day.time_since_epoch().count()));
}

QString monthText(std::chrono::sys_days day, const Words& words) {
  return QLocale(words.language())
      .toString(QDate(1970, 1, 1).addDays(day.time_since_epoch().count()),
                QStringLiteral("MMM yyyy"));
}

QString dayText(const RecordFacts& record, const Words& words) {
  return record.monthOnly ? monthText(*record.day, words) : dayText(*record.day, words);
}

QString kindWords(StatedKind kind, const Words& words) {
  if (!kind) {
    return words(QT_TRANSLATE_NOOP("Papers", "records of no stated kind"));
  }
  switch (*kind) {
  case RecordKind::rescue:
    return words(QT_TRANSLATE_NOOP("Papers", "rescues"));
  case RecordKind::drill:
    return words(QT_TRANSLATE_NOOP("Papers", "drills"));
  default:
    return words(QT_TRANSLATE_NOOP("Papers", "tests"));
  }
}

QString recordCount(std::size_t records, const Words& words) {
  return records == 1 ? words(QT_TRANSLATE_NOOP("Papers", "1 record"))
                      : words(QT_TRANSLATE_NOOP("Papers", "%1 records"))
                            .arg(static_cast<qulonglong>(records));
}

QStringList seasonMarks(const Season& season, const Chosen& chosen, const Words& words) {
  bool drill = false, test = false, synthetic = false;
  for (const std::uint32_t place : chosen) {
    const RecordFacts& record = season.records[place];
    drill = drill || record.kind == RecordKind::drill;
    test = test || record.kind == RecordKind::test;
    synthetic = synthetic || record.synthetic;
  }
  QStringList marks;
  if (drill) {
    marks << words(QT_TRANSLATE_NOOP("Papers", "DRILL"));
  }
  if (test) {
    marks << words(QT_TRANSLATE_NOOP("Papers", "TEST"));
  }
  if (synthetic) {
    marks << words(QT_TRANSLATE_NOOP("Papers", "SYNTHETIC"));
  }
  return marks;
}

QString recordName(const RecordFacts& record, const Words& words) {
  if (!record.file.empty()) {
    return plainText(record.file);
  }
  if (!record.id.empty()) {
    return plainText(record.id);
  }
  return record.day ? dayText(record, words)
                    : words(QT_TRANSLATE_NOOP("Papers", "record without a name"));
}

QString groupName(const SpreadGroup& group, GroupBy by, const Words& words) {
  if (by == GroupBy::quarter) {
    //: First the quarter (1 to 4), then the year.
    return group.quarter ? words(QT_TRANSLATE_NOOP("Papers", "Quarter %1, %2"))
                               .arg(group.quarter->number)
                               .arg(group.quarter->year)
                         : words(QT_TRANSLATE_NOOP("Papers", "Day not recorded"));
  }
  if (!group.name.empty()) {
    return plainText(group.name);
  }
  switch (by) {
  case GroupBy::site:
    return words(QT_TRANSLATE_NOOP("Papers", "Site not recorded"));
  case GroupBy::team:
    return words(QT_TRANSLATE_NOOP("Papers", "Team not recorded"));
  default:
    return words(QT_TRANSLATE_NOOP("Papers", "All records"));
  }
}

} // namespace afterbeat::papers
