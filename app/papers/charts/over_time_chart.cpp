#include "app/papers/charts/season_chart_parts.h"

#include <algorithm>

namespace afterbeat::papers {

namespace {

/// A line through more points only hides them.
constexpr std::size_t kMostJoined = 300;

double dayNumber(std::chrono::sys_days day) {
  return static_cast<double>(day.time_since_epoch().count());
}

AmountKind kindOf(const OverTime& overTime) {
  if (const auto* of = std::get_if<ValueOf>(&overTime.settings.subject)) {
    return amountKind(of->measure);
  }
  return overTime.chart == ChartKind::shares ? AmountKind::share : AmountKind::plain;
}

struct SubjectWords {
  const Words& words;
  QString operator()(const ValueOf& of) const { return titleOf(of.measure, words); }
  QString operator()(const RecordsWith& with) const {
    return words(with.atLeast ? QT_TRANSLATE_NOOP("Papers", "Share of records with %2 or more: %1")
                              : QT_TRANSLATE_NOOP("Papers", "Share of records below %2: %1"))
        .arg(titleOf(with.measure, words), said(amountOf(with.measure, with.limit), words));
  }
  QString operator()(const RecordsWithShock&) const {
    return words(QT_TRANSLATE_NOOP("Papers", "Share of records with a shock"));
  }
  QString operator()(const CountedShare& share) const { return titleOf(share.measure, words); }
  QString operator()(const CountedFor& counted) const {
    return words(QT_TRANSLATE_NOOP("Papers", "%1 for every %2"))
        .arg(titleOf(counted.count, words), said(amountOf(counted.exposure, counted.per), words));
  }
};

class Maker {
public:
  Maker(const Season& season, const OverTime& overTime, const Words& words)
      : season_(season), overTime_(overTime) {
    chart_.words = words;
  }

  Chart made() {
    const Words& words = chart_.words;
    const QString subject = std::visit(SubjectWords{words}, overTime_.settings.subject);
    chart_.title = words(QT_TRANSLATE_NOOP("Papers", "%1 over time (%2)"))
                       .arg(subject, kindWords(overTime_.kind, words));
    chart_.y = valueAxis(words, kindOf(overTime_), subject);
    chart_.x.kind = AxisKind::days;
    chart_.records = overTime_.records;
    addSentences();
    chart_.emptyText = words(QT_TRANSLATE_NOOP("Papers", "No record has a day and a value."));
    chart_.marks = seasonMarks(season_, overTime_.records, words);
    addPoints();
    addSignals();
    addThrough();
    for (std::size_t i = 0; i < overTime_.segments.size(); ++i) {
      addCentre(i);
      addLimits(i);
    }
    addKeys();
    addSteps();
    range_.into(chart_.y);
    days();
    return std::move(chart_);
  }

private:
  [[nodiscard]] double xOf(const TimePoint& point) const {
    return (dayNumber(point.firstDay) + dayNumber(point.lastDay)) / 2;
  }
  [[nodiscard]] bool each() const { return overTime_.settings.period == Period::record; }

  [[nodiscard]] bool tooFew(std::size_t segment) const {
    const ChartSegment& one = overTime_.segments[segment];
    return one.lastPoint + 1 - one.firstPoint < kLeastForSummary;
  }

  void addSentences() {
    bool line = false, few = false;
    for (std::size_t i = 0; i < overTime_.segments.size(); ++i) {
      (tooFew(i) ? few : line) = true;
    }
    std::vector<Saying> sayings = afterbeat::words(overTime_);
    if (!line) {
      // No line is drawn that could be explained.
      std::erase_if(sayings,
                    [](const Saying& saying) { return saying.english.starts_with("The line is"); });
    }
    chart_.sentences = sentences(sayings, chart_.words);
    if (few) {
      chart_.sentences << chart_.words(
          QT_TRANSLATE_NOOP("Papers", "Fewer than five points: they are drawn without a line."));
    }
  }

  void addPoints() {
    for (const TimePoint& point : overTime_.points) {
      const bool weak = !each() && point.recordCount < kLeastForSummary;
      hasWeak_ = hasWeak_ || weak;
      chart_.points.push_back({xOf(point), point.value, point.firstRecord, point.recordCount,
                               weak ? PointShape::weak : PointShape::usual});
      range_.add(point.value);
    }
  }

  void addSignals() {
    for (const ChartSignal& signal : overTime_.signals) {
      if (signal.hit.rule == SignalRule::fewCrossings) {
        continue; // all points of it
      }
      for (std::size_t i = signal.hit.first; i <= signal.hit.last; ++i) {
        chart_.points[i].shape = PointShape::signal;
        hasSignal_ = true;
      }
    }
  }

  void addKeys() {
    const Words& words = chart_.words;
    chart_.keys.push_back(
        {KeyShape::usual, each() ? words(QT_TRANSLATE_NOOP("Papers", "one record"))
                                 : words(QT_TRANSLATE_NOOP("Papers", "the records of a time"))});
    const bool centre =
        std::any_of(chart_.lines.begin(), chart_.lines.end(),
                    [](const ChartLine& line) { return line.role == LineRole::centre; });
    if (centre) {
      chart_.keys.push_back(
          {KeyShape::centre, overTime_.chart == ChartKind::run
                                 ? words(QT_TRANSLATE_NOOP("Papers", "middle of the points"))
                                 : words(QT_TRANSLATE_NOOP("Papers", "mean"))});
    }
    if (std::any_of(overTime_.points.begin(), overTime_.points.end(),
                    [](const TimePoint& point) { return point.upper || point.lower; })) {
      chart_.keys.push_back(
          {KeyShape::limit, words(QT_TRANSLATE_NOOP("Papers", "limits of what chance explains"))});
    }
    if (hasWeak_) {
      chart_.keys.push_back(
          {KeyShape::weak, words(QT_TRANSLATE_NOOP("Papers", "fewer than five records"))});
    }
    if (hasSignal_) {
      chart_.keys.push_back(
          {KeyShape::signal, words(QT_TRANSLATE_NOOP("Papers", "more than chance explains"))});
    }
  }

  void addThrough() {
    if (overTime_.points.size() > kMostJoined || overTime_.points.size() < kLeastForSummary) {
      return;
    }
    ChartLine line{LineRole::through, {}, {}, false};
    for (const TimePoint& point : overTime_.points) {
      line.corners.emplace_back(xOf(point), point.value);
    }
    chart_.lines.insert(chart_.lines.begin(), line);
  }

  /// Where a segment begins and ends on the axis: at its step, or at its outermost points.
  [[nodiscard]] std::pair<double, double> stretch(std::size_t index) const {
    const ChartSegment& segment = overTime_.segments[index];
    const double from = segment.step ? dayNumber(overTime_.settings.steps[*segment.step].day)
                                     : xOf(overTime_.points[segment.firstPoint]);
    double to = xOf(overTime_.points[segment.lastPoint]);
    if (index + 1 < overTime_.segments.size() && overTime_.segments[index + 1].step) {
      to = dayNumber(overTime_.settings.steps[*overTime_.segments[index + 1].step].day);
    }
    return {from, to};
  }

  void addCentre(std::size_t index) {
    if (tooFew(index)) {
      return;
    }
    const Words& words = chart_.words;
    const double centre = overTime_.segments[index].centre;
    const auto [from, to] = stretch(index);
    const char* const english = overTime_.chart == ChartKind::run
                                    ? QT_TRANSLATE_NOOP("Papers", "middle %1")
                                    : QT_TRANSLATE_NOOP("Papers", "mean %1");
    chart_.lines.push_back({LineRole::centre,
                            {{from, centre}, {to, centre}},
                            words(english).arg(said(Amount{centre, kindOf(overTime_)}, words)),
                            index + 1 < overTime_.segments.size()});
    range_.add(centre);
  }

  void addLimits(std::size_t index) {
    const ChartSegment& segment = overTime_.segments[index];
    const auto [from, to] = stretch(index);
    for (const bool upper : {false, true}) {
      ChartLine line{LineRole::limit, {}, {}, index + 1 < overTime_.segments.size()};
      for (std::size_t i = segment.firstPoint; i <= segment.lastPoint; ++i) {
        const auto limit = upper ? overTime_.points[i].upper : overTime_.points[i].lower;
        if (!limit) {
          continue;
        }
        const double x = i == segment.firstPoint ? from : xOf(overTime_.points[i]);
        if (line.corners.empty() || line.corners.back().y() != *limit) {
          if (!line.corners.empty()) {
            line.corners.emplace_back(x, line.corners.back().y());
          }
          line.corners.emplace_back(x, *limit);
        }
        range_.add(*limit);
      }
      if (line.corners.empty()) {
        continue;
      }
      line.corners.emplace_back(to, line.corners.back().y());
      if (!line.labelAtBegin) {
        line.label =
            chart_
                .words(upper ? QT_TRANSLATE_NOOP("Papers", "upper limit %1")
                             : QT_TRANSLATE_NOOP("Papers", "lower limit %1"))
                .arg(said(Amount{line.corners.back().y(), kindOf(overTime_)}, chart_.words));
      }
      line.labelAtBegin = false;
      chart_.lines.push_back(line);
    }
  }

  void addSteps() {
    for (const MarkedStep& step : overTime_.settings.steps) {
      const QString label = plainText(step.words);
      chart_.dayMarks.push_back(
          {dayNumber(step.day),
           label.isEmpty() ? chart_.words(QT_TRANSLATE_NOOP("Papers", "marked day")) : label});
    }
  }

  void days() {
    AxisRange range;
    for (const ChartPoint& point : chart_.points) {
      range.add(point.x);
    }
    for (const ChartMark& mark : chart_.dayMarks) {
      range.add(mark.x);
    }
    range.into(chart_.x);
    // Points at the edge are seen whole.
    const double margin = std::max(1.0, 0.015 * (chart_.x.to - chart_.x.from));
    chart_.x.from -= margin;
    chart_.x.to += margin;
  }

  const Season& season_;
  const OverTime& overTime_;
  Chart chart_;
  AxisRange range_;
  bool hasWeak_ = false, hasSignal_ = false;
};

} // namespace

Chart overTimeChart(const Season& season, const OverTime& overTime, const Words& words) {
  return Maker(season, overTime, words).made();
}

} // namespace afterbeat::papers
