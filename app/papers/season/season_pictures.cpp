#include "app/papers/season/season_pictures.h"

namespace afterbeat::papers {

namespace {

QString kindName(StatedKind kind) {
  const std::string_view word = kind ? name(*kind) : "unstated";
  return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

QString fileName(StatedKind kind, MeasureId measure, const char* ending) {
  const std::string name(measureInfo(measure).name);
  return QStringLiteral("%1-%2-%3")
      .arg(kindName(kind), QString::fromStdString(name).replace(QLatin1Char('_'), QLatin1Char('-')),
           QLatin1String(ending));
}

void add(std::vector<SeasonPicture>& all, const QString& name, Chart chart) {
  if (!chart.points.empty() || !chart.bars.empty()) {
    all.push_back({name, std::move(chart)});
  }
}

void addMeasure(const Season& season, const Chosen& chosen, StatedKind kind, MeasureId measure,
                const ReportSettings& settings, std::vector<SeasonPicture>& all) {
  const Words words = Words::inLanguage(settings.language);
  if (const auto found = spread(season, chosen, measure, GroupBy::site)) {
    add(all, fileName(kind, measure, "by-site"), spreadChart(season, *found, words));
  }
  if (const auto found = spread(season, chosen, measure, GroupBy::quarter)) {
    add(all, fileName(kind, measure, "by-quarter"), spreadChart(season, *found, words));
  }
}

/// What a chart over time is of, for its file's name.
struct SubjectName {
  static QString of(MeasureId id) {
    const std::string name(measureInfo(id).name);
    return QString::fromStdString(name).replace(QLatin1Char('_'), QLatin1Char('-'));
  }
  QString operator()(const ValueOf& value) const { return of(value.measure); }
  QString operator()(const CountedShare& share) const { return of(share.measure); }
  QString operator()(const CountedFor& counted) const { return of(counted.count); }
  QString operator()(const RecordsWith& with) const { return of(with.measure); }
  QString operator()(const RecordsWithShock&) const { return QStringLiteral("with-a-shock"); }
};

void addOverTime(const Season& season, const Chosen& chosen, StatedKind kind,
                 const ReportSettings& settings, std::vector<SeasonPicture>& all) {
  const Words words = Words::inLanguage(settings.language);
  for (const OverTimeSettings& one : chartsOverTime(settings)) {
    if (const auto found = overTime(season, chosen, one)) {
      add(all,
          QStringLiteral("%1-%2-%3")
              .arg(kindName(kind), std::visit(SubjectName{}, one.subject),
                   one.chart == ChartKind::run ? QLatin1String("over-time")
                                               : QLatin1String("over-time-with-limits")),
          overTimeChart(season, *found, words));
    }
  }
}

} // namespace

std::vector<SeasonPicture> seasonPictures(const Season& season, const Chosen& chosen,
                                          const ReportSettings& settings) {
  const Words words = Words::inLanguage(settings.language);
  std::vector<SeasonPicture> all;
  for (const KindCount& count : kindsOf(season, chosen)) {
    const Chosen one = ofKind(season, chosen, count.kind);
    for (const StagesFrom from : {StagesFrom::call, StagesFrom::powerOn}) {
      const QString begin =
          kindName(count.kind) + (from == StagesFrom::call ? QStringLiteral("-from-call")
                                                           : QStringLiteral("-from-power-on"));
      if (const auto found = stages(season, one, from)) {
        add(all, begin + QStringLiteral("-stages"), stageChart(season, *found, words));
        add(all, begin + QStringLiteral("-records"), stageBarsChart(season, *found, words));
      }
    }
    for (const MeasureId measure : reportMeasures()) {
      addMeasure(season, one, count.kind, measure, settings, all);
    }
    addOverTime(season, one, count.kind, settings, all);
  }
  return all;
}

} // namespace afterbeat::papers
