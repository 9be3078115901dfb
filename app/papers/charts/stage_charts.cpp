#include "app/papers/charts/season_chart_parts.h"

#include <algorithm>

namespace afterbeat::papers {

namespace {

QString momentWords(StageMoment moment, const Words& words) {
  return words(std::string(name(moment)).c_str());
}

QString chartTitle(const Stages& stages, const Words& words) {
  return words(stages.from == StagesFrom::call
                   ? QT_TRANSLATE_NOOP("Papers", "From the call to the first shock (%1)")
                   : QT_TRANSLATE_NOOP("Papers", "From device on to the first shock (%1)"))
      .arg(kindWords(stages.kind, words));
}

int firstMoment(const Stages& stages) {
  return static_cast<int>(stages.from == StagesFrom::call ? StageMoment::call
                                                          : StageMoment::powerOn);
}

QString stageName(const Stages& stages, const MedianStage& stage, const Words& words) {
  //: A stage: its number, where it begins and where it ends.
  return words(QT_TRANSLATE_NOOP("Papers", "%1  %2 – %3"))
      .arg(static_cast<int>(stage.from) - firstMoment(stages) + 1)
      .arg(momentWords(stage.from, words), momentWords(stage.to, words));
}

QString stageNote(const MedianStage& stage, std::size_t all, const Words& words) {
  QString note = !stage.median
                     ? (stage.records == 0 ? words(QT_TRANSLATE_NOOP("Papers", "not recorded"))
                                           : words(QT_TRANSLATE_NOOP("Papers", "%1: points only"))
                                                 .arg(recordCount(stage.records, words)))
                     : words(QT_TRANSLATE_NOOP("Papers", "%1, middle %2"))
                           .arg(recordCount(stage.records, words),
                                said(Amount{*stage.median, AmountKind::seconds}, words));
  if (stage.records > 0 && stage.records < all) {
    note = words(QT_TRANSLATE_NOOP("Papers", "%1; %2 without value"))
               .arg(note)
               .arg(static_cast<qulonglong>(all - stage.records));
  }
  return note;
}

Chosen placesOf(const Stages& stages) {
  Chosen places;
  for (const RecordStages& one : stages.records) {
    places.push_back(one.place);
  }
  return places;
}

void addStage(const Stages& stages, const MedianStage& stage, int lane, Chart& chart,
              AxisRange& range) {
  for (std::size_t i = 0; i < stages.records.size(); ++i) {
    const auto& times = stages.records[i].times;
    const auto& from = times[static_cast<std::size_t>(stage.from)];
    const auto& to = times[static_cast<std::size_t>(stage.to)];
    if (from && to) {
      chart.points.push_back({*to - *from, static_cast<double>(lane), static_cast<std::uint32_t>(i),
                              1, PointShape::usual});
      range.add(*to - *from);
    }
  }
  if (stage.median) {
    chart.summaries.push_back(
        {SummaryKind::middleHalf, lane, *stage.median, stage.low, stage.high});
  }
  chart.y.notes << stageNote(stage, stages.records.size(), chart.words);
}

ChartBar barOf(const Stages& stages, const RecordStages& one, const Words& words) {
  ChartBar bar;
  const int first = firstMoment(stages);
  for (const Stage& stage : one.stages) {
    const double from = one.times[static_cast<std::size_t>(stage.from)].value_or(0);
    bar.pieces.push_back({from, from + stage.seconds, static_cast<int>(stage.from) - first,
                          static_cast<int>(stage.to) - first - 1});
  }
  bar.label = one.total ? said(Amount{*one.total, AmountKind::seconds}, words)
                        : words(QT_TRANSLATE_NOOP("Papers", "no first shock recorded"));
  return bar;
}

/// The latest records, the latest first; those without a day last.
std::vector<std::size_t> latest(const Season& season, const Stages& stages, std::size_t most) {
  std::vector<std::size_t> order(stages.records.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    order[i] = i;
  }
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    const auto& one = season.records[stages.records[a].place].day;
    const auto& other = season.records[stages.records[b].place].day;
    return one && other ? *one > *other : one.has_value() && !other.has_value();
  });
  order.resize(std::min(order.size(), most));
  return order;
}

void addStageKeys(const Stages& stages, Chart& chart) {
  bool undivided = false;
  for (const ChartBar& bar : chart.bars) {
    for (const ChartPiece& piece : bar.pieces) {
      undivided = undivided || piece.lastStage > piece.firstStage;
    }
  }
  for (const MedianStage& stage : stages.median) {
    chart.keys.push_back({KeyShape::stage, stageName(stages, stage, chart.words),
                          static_cast<int>(stage.from) - firstMoment(stages)});
  }
  if (undivided) {
    chart.keys.push_back(
        {KeyShape::undivided,
         chart.words(QT_TRANSLATE_NOOP("Papers", "several stages, moments between not recorded"))});
  }
}

} // namespace

Chart stageChart(const Season& season, const Stages& stages, const Words& words) {
  Chart chart;
  chart.words = words;
  chart.title = chartTitle(stages, words);
  chart.x = valueAxis(words, AmountKind::seconds,
                      words(QT_TRANSLATE_NOOP("Papers", "Time a stage took")));
  chart.y.kind = AxisKind::names;
  chart.records = placesOf(stages);
  chart.marks = seasonMarks(season, chart.records, words);
  chart.sentences = sentences(afterbeat::words(stages), words);
  chart.sentences << words(QT_TRANSLATE_NOOP(
      "Papers", "Each record counts once. The middles of the stages do not add up to the middle of "
                "the whole: each stands on the records that have it."));
  AxisRange range;
  for (std::size_t i = 0; i < stages.median.size(); ++i) {
    chart.y.names << stageName(stages, stages.median[i], words);
    addStage(stages, stages.median[i], static_cast<int>(i), chart, range);
  }
  chart.y.names << words(QT_TRANSLATE_NOOP("Papers", "The whole"));
  addStage(stages, stages.total, static_cast<int>(stages.median.size()), chart, range);
  range.into(chart.x);
  chart.keys.push_back({KeyShape::usual, words(QT_TRANSLATE_NOOP("Papers", "one record"))});
  if (!chart.summaries.empty()) {
    chart.keys.push_back(
        {KeyShape::middleHalf,
         words(QT_TRANSLATE_NOOP("Papers", "middle record, and the middle half of all"))});
  }
  chart.emptyText = words(QT_TRANSLATE_NOOP("Papers", "No record gives a moment after the begin."));
  return chart;
}

Chart stageBarsChart(const Season& season, const Stages& stages, const Words& words,
                     std::size_t most) {
  Chart chart;
  chart.words = words;
  chart.title =
      words(QT_TRANSLATE_NOOP("Papers", "%1, record by record")).arg(chartTitle(stages, words));
  chart.x = valueAxis(words, AmountKind::seconds,
                      stages.from == StagesFrom::call
                          ? words(QT_TRANSLATE_NOOP("Papers", "Time since the call"))
                          : words(QT_TRANSLATE_NOOP("Papers", "Time since device on")));
  chart.y.kind = AxisKind::names;
  chart.records = placesOf(stages);
  AxisRange range;
  range.add(0);
  for (const std::size_t i : latest(season, stages, most)) {
    const RecordStages& one = stages.records[i];
    ChartBar bar = barOf(stages, one, words);
    bar.lane = static_cast<int>(chart.bars.size());
    bar.record = static_cast<std::uint32_t>(i);
    for (const ChartPiece& piece : bar.pieces) {
      range.add(piece.from);
      range.add(piece.to);
    }
    const RecordFacts& record = season.records[one.place];
    chart.y.names << (record.day ? words(QT_TRANSLATE_NOOP("Papers", "%1  %2"))
                                       .arg(dayText(record, words), recordName(record, words))
                                 : recordName(record, words));
    chart.bars.push_back(std::move(bar));
  }
  range.into(chart.x);
  chart.marks = seasonMarks(season, chart.records, words);
  addStageKeys(stages, chart);
  chart.sentences << words(QT_TRANSLATE_NOOP(
      "Papers",
      "Each bar is one record, the latest at the top; its pieces are the stages, one after "
      "the other. What is not recorded is left open."));
  if (chart.bars.size() < stages.records.size()) {
    chart.sentences << words(QT_TRANSLATE_NOOP("Papers", "The latest %1 of %2 records are shown."))
                           .arg(static_cast<qulonglong>(chart.bars.size()))
                           .arg(static_cast<qulonglong>(stages.records.size()));
  }
  chart.emptyText = words(QT_TRANSLATE_NOOP("Papers", "No record gives a moment after the begin."));
  return chart;
}

} // namespace afterbeat::papers
