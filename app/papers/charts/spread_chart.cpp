#include "app/papers/charts/season_chart_parts.h"
#include "core/compare/companions.h"

namespace afterbeat::papers {

namespace {

QString chartTitle(const Spread& spread, const Words& words) {
  const QString measure = titleOf(spread.measure, words);
  switch (spread.by) {
  case GroupBy::site:
    return words(QT_TRANSLATE_NOOP("Papers", "%1 by site")).arg(measure);
  case GroupBy::team:
    return words(QT_TRANSLATE_NOOP("Papers", "%1 by team")).arg(measure);
  case GroupBy::quarter:
    return words(QT_TRANSLATE_NOOP("Papers", "%1 by quarter")).arg(measure);
  case GroupBy::nothing:
    break;
  }
  return measure;
}

/// "23 records, middle 12 s": what a lane holds, in few words.
QString laneNote(const Spread& spread, const SpreadGroup& group, const Words& words) {
  QString note;
  if (group.points.empty()) {
    note = words(QT_TRANSLATE_NOOP("Papers", "no value"));
  } else if (group.tooFew) {
    note = words(QT_TRANSLATE_NOOP("Papers", "%1: points only"))
               .arg(recordCount(group.points.size(), words));
  } else {
    note = words(QT_TRANSLATE_NOOP("Papers", "%1, middle %2"))
               .arg(recordCount(group.points.size(), words),
                    said(amountOf(spread.measure, group.quartiles->median), words));
  }
  if (group.missing.all() > 0) {
    note = words(QT_TRANSLATE_NOOP("Papers", "%1; %2 without value"))
               .arg(note)
               .arg(static_cast<qulonglong>(group.missing.all()));
  }
  return note;
}

/// What must stand beside a share, group by group.
QString besideSentence(const Spread& spread, const SpreadGroup& group, const Words& words) {
  QStringList parts;
  for (const Beside& beside : group.beside) {
    parts << (beside.median
                  ? words(QT_TRANSLATE_NOOP("Papers", "%1, middle of %2: %3"))
                        .arg(titleOf(beside.measure, words), recordCount(beside.records, words),
                             said(amountOf(beside.measure, *beside.median), words))
                  : words(QT_TRANSLATE_NOOP("Papers", "%1: %2, too few for a middle"))
                        .arg(titleOf(beside.measure, words), recordCount(beside.records, words)));
  }
  return parts.isEmpty()
             ? QString()
             : words(QT_TRANSLATE_NOOP("Papers", "%1 – %2."))
                   .arg(groupName(group, spread.by, words), parts.join(QStringLiteral("; ")));
}

void addBand(const Spread& spread, Chart& chart, AxisRange& range) {
  const ReferenceBand* band = referenceBand(spread.measure);
  const auto sentence = referenceWords(spread);
  if (band == nullptr || !sentence) {
    return;
  }
  chart.bands.push_back({band->low, band->high, {}});
  chart.lines.push_back(
      {LineRole::reference,
       {{band->median, -0.5}, {band->median, static_cast<double>(spread.groups.size()) - 0.5}},
       {},
       false});
  range.add(band->high);
  chart.keys.push_back(
      {KeyShape::band, chart.words(QT_TRANSLATE_NOOP("Papers", "middle half, as published"))});
  chart.keys.push_back(
      {KeyShape::reference, chart.words(QT_TRANSLATE_NOOP("Papers", "middle, as published"))});
  chart.sentences << said(*sentence, chart.words);
}

void addGroup(const Spread& spread, std::size_t lane, Chart& chart, AxisRange& range) {
  const SpreadGroup& group = spread.groups[lane];
  for (const SpreadPoint& point : group.points) {
    chart.points.push_back({point.value, static_cast<double>(lane),
                            static_cast<std::uint32_t>(chart.records.size()), 1,
                            PointShape::usual});
    chart.records.push_back(point.place);
    range.add(point.value);
  }
  chart.y.names << groupName(group, spread.by, chart.words);
  chart.y.notes << laneNote(spread, group, chart.words);
  if (group.quartiles && group.interval) {
    chart.summaries.push_back({SummaryKind::interval, static_cast<int>(lane),
                               group.quartiles->median, group.interval->low, group.interval->high});
  }
}

} // namespace

Chart spreadChart(const Season& season, const Spread& spread, const Words& words) {
  Chart chart;
  chart.words = words;
  chart.title = words(QT_TRANSLATE_NOOP("Papers", "%1 (%2)"))
                    .arg(chartTitle(spread, words), kindWords(spread.kind, words));
  chart.x = valueAxis(words, amountKind(spread.measure), titleOf(spread.measure, words));
  chart.y.kind = AxisKind::names;
  chart.sentences = sentences(afterbeat::words(spread), words);
  chart.keys.push_back({KeyShape::usual, words(QT_TRANSLATE_NOOP("Papers", "one record"))});
  AxisRange range;
  for (std::size_t lane = 0; lane < spread.groups.size(); ++lane) {
    addGroup(spread, lane, chart, range);
    const QString beside = besideSentence(spread, spread.groups[lane], words);
    if (!beside.isEmpty()) {
      chart.sentences << beside;
    }
  }
  if (!chart.summaries.empty()) {
    chart.keys.push_back(
        {KeyShape::interval,
         words(QT_TRANSLATE_NOOP("Papers", "middle record, and how far it may be off (95 %)"))});
  }
  addBand(spread, chart, range);
  range.into(chart.x);
  chart.marks = seasonMarks(season, chart.records, words);
  chart.emptyText = words(QT_TRANSLATE_NOOP("Papers", "No record has a value to draw."));
  return chart;
}

} // namespace afterbeat::papers
