#include "app/papers/charts/season_chart_parts.h"
#include "core/compare/companions.h"

#include <algorithm>

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

/// What must stand beside a share, group by group; groups in which all of it has too few records
/// share a sentence.
void addBeside(const Spread& spread, Chart& chart) {
  const Words& words = chart.words;
  QStringList few, titles;
  for (const SpreadGroup& group : spread.groups) {
    QStringList parts;
    bool any = false;
    for (const Beside& beside : group.beside) {
      const QString title = titleOf(beside.measure, words);
      any = any || beside.median.has_value();
      parts << (beside.median ? words(QT_TRANSLATE_NOOP("Papers", "%1, middle of %2: %3"))
                                    .arg(title, recordCount(beside.records, words),
                                         said(amountOf(beside.measure, *beside.median), words))
                              : words(QT_TRANSLATE_NOOP("Papers", "%1: %2, too few for a middle"))
                                    .arg(title, recordCount(beside.records, words)));
      if (!titles.contains(title)) {
        titles << title;
      }
    }
    const QString name = groupName(group, spread.by, words);
    if (any) {
      chart.sentences << words(QT_TRANSLATE_NOOP("Papers", "%1 – %2."))
                             .arg(name, parts.join(QStringLiteral("; ")));
    } else if (!parts.isEmpty()) {
      few << name;
    }
  }
  if (!few.isEmpty()) {
    //: Figures, and the groups that have too few records for a middle of them.
    chart.sentences << words(QT_TRANSLATE_NOOP("Papers", "%1 – too few records for a middle: %2."))
                           .arg(words.list(titles), few.join(QStringLiteral("; ")));
  }
}

/// Where no group was held against another the answer is the middle itself, or why none was.
QStringList answerWithoutComparison(const Spread& spread, const Words& words) {
  if (spread.groups.empty() ||
      std::any_of(spread.groups.begin(), spread.groups.end(),
                  [](const SpreadGroup& group) { return group.against.has_value(); })) {
    return {};
  }
  if (spread.by == GroupBy::quarter) {
    return {words(QT_TRANSLATE_NOOP("Papers", "Quarters are not held against each other here: "
                                              "whether anything changed is asked over time."))};
  }
  if (spread.groups.size() > 1) {
    return {
        words(QT_TRANSLATE_NOOP("Papers", "Too few records to hold one group against another."))};
  }
  const SpreadGroup& all = spread.groups.front();
  if (!all.quartiles || !all.interval) {
    return {words(QT_TRANSLATE_NOOP("Papers", "Too few records for a middle."))};
  }
  const auto value = [&](double one) { return said(amountOf(spread.measure, one), words); };
  return {words(QT_TRANSLATE_NOOP("Papers", "Middle of %1: %2 (may really be %3 to %4)."))
              .arg(recordCount(all.points.size(), words), value(all.quartiles->median),
                   value(all.interval->low), value(all.interval->high))};
}

/// First the answer, then what is missing, then how to read it; lines are explained by the key,
/// which is there only where they are drawn.
void addSentences(const Spread& spread, Chart& chart) {
  chart.sentences << answerWithoutComparison(spread, chart.words)
                  << sentences(afterbeat::words(spread), chart.words)
                  << chart.words(QT_TRANSLATE_NOOP("Papers", "Each record counts once."));
  addBeside(spread, chart);
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
  addSentences(spread, chart);
  chart.keys.push_back({KeyShape::usual, words(QT_TRANSLATE_NOOP("Papers", "one record"))});
  AxisRange range;
  for (std::size_t lane = 0; lane < spread.groups.size(); ++lane) {
    addGroup(spread, lane, chart, range);
  }
  if (!chart.summaries.empty()) {
    chart.keys.push_back(
        {KeyShape::interval,
         words(QT_TRANSLATE_NOOP("Papers",
                                 "middle record, and where the middle may really lie (95 %)"))});
  }
  addBand(spread, chart, range);
  range.into(chart.x);
  chart.marks = seasonMarks(season, chart.records, words);
  chart.emptyText = words(QT_TRANSLATE_NOOP("Papers", "No record has a value to draw."));
  return chart;
}

} // namespace afterbeat::papers
