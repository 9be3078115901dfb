#include "app/papers/charts/chart_ticks.h"

#include <QDate>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat::papers {

namespace {

const QDate kZero(1970, 1, 1);

QDate dateOf(double day) {
  return kZero.addDays(static_cast<qint64>(std::floor(day)));
}

double dayOf(const QDate& date) {
  return static_cast<double>(kZero.daysTo(date));
}

/// 1, 2 or 5 times a power of ten, not below `least`.
double roundStep(double least) {
  const double power = std::pow(10.0, std::floor(std::log10(least)));
  for (const double factor : {1.0, 2.0, 5.0}) {
    if (factor * power >= least * (1 - 1e-9)) {
      return factor * power;
    }
  }
  return 10 * power;
}

double timeStep(double least) {
  static constexpr std::array kSteps{1.0,   2.0,   5.0,   10.0,  15.0,   30.0,   60.0,
                                     120.0, 180.0, 300.0, 600.0, 1200.0, 1800.0, 3600.0};
  if (least <= 1) {
    return roundStep(least);
  }
  const auto* const at = std::lower_bound(kSteps.begin(), kSteps.end(), least * (1 - 1e-9));
  return at != kSteps.end() ? *at : 3600 * roundStep(least / 3600);
}

int decimalsOf(double step) {
  int decimals = 0;
  for (double at = step; decimals < 6 && std::fabs(at - std::round(at)) > 1e-6; at *= 10) {
    ++decimals;
  }
  return decimals;
}

QString secondsText(const Words& words, double value, double step) {
  if (step < 1) {
    //: Seconds of an axis.
    return words(QT_TRANSLATE_NOOP("Papers", "%1 s")).arg(words.number(value, decimalsOf(step)));
  }
  return words.length(Duration{std::llround(value) * 1'000'000});
}

QString tickText(const Words& words, const ChartAxis& axis, double value, double step) {
  switch (axis.kind) {
  case AxisKind::share:
    return words(QT_TRANSLATE_NOOP("Papers", "%1 %"))
        .arg(words.number(value * 100, decimalsOf(step * 100)));
  case AxisKind::seconds:
    return secondsText(words, value, step);
  default:
    return words.number(value, decimalsOf(step));
  }
}

TickedAxis numberTicks(const Words& words, const ChartAxis& axis, int most) {
  const double span = axis.to > axis.from ? axis.to - axis.from : std::max(1.0, axis.from);
  const double least = span / std::max(most, 2);
  const double step = axis.kind == AxisKind::seconds ? timeStep(least) : roundStep(least);
  TickedAxis made;
  auto first = std::floor(axis.from / step + 1e-9);
  auto last = std::ceil((axis.from + span) / step - 1e-9);
  if (axis.least) {
    first = std::max(first, std::floor(*axis.least / step + 1e-9));
  }
  if (axis.most) {
    last = std::min(last, std::ceil(*axis.most / step - 1e-9));
  }
  made.from = first * step;
  made.to = std::max(last, first + 1) * step;
  for (double i = first; i <= std::max(last, first + 1); ++i) {
    made.ticks.push_back({i * step, tickText(words, axis, i * step, step)});
  }
  return made;
}

/// Steps of whole days, or of months from 28 on.
struct DayStep {
  int months = 0, days = 0;
  [[nodiscard]] double length() const { return days + 30.4 * months; }
};

QDate stepBegin(const QDate& date, const DayStep& step) {
  if (step.months == 0) {
    return date;
  }
  const int month = date.year() * 12 + date.month() - 1;
  const int begin = month - month % step.months;
  return {begin / 12, begin % 12 + 1, 1};
}

TickedAxis dayTicks(const Words& words, const ChartAxis& axis, int most) {
  static constexpr std::array<DayStep, 12> kSteps{{{0, 1},
                                                   {0, 2},
                                                   {0, 7},
                                                   {0, 14},
                                                   {1, 0},
                                                   {2, 0},
                                                   {3, 0},
                                                   {6, 0},
                                                   {12, 0},
                                                   {24, 0},
                                                   {60, 0},
                                                   {120, 0}}};
  const double span = std::max(1.0, axis.to - axis.from);
  DayStep step = kSteps.back();
  for (const DayStep& candidate : kSteps) {
    if (span / candidate.length() <= std::max(most, 2)) {
      step = candidate;
      break;
    }
  }
  TickedAxis made{axis.from, std::max(axis.to, axis.from + 1), {}};
  const QLocale locale(words.language());
  //: Days and months on an axis (Qt's letters).
  const QString dayFormat = words(QT_TRANSLATE_NOOP("Papers", "d MMM yyyy"));
  const QString format = step.months == 0        ? dayFormat
                         : step.months % 12 == 0 ? QStringLiteral("yyyy")
                                                 : QStringLiteral("MMM yyyy");
  for (QDate at = stepBegin(dateOf(axis.from), step); dayOf(at) <= made.to;
       at = step.months > 0 ? at.addMonths(step.months) : at.addDays(step.days)) {
    if (dayOf(at) >= made.from) {
      made.ticks.push_back({dayOf(at), locale.toString(at, format)});
    }
  }
  return made;
}

} // namespace

TickedAxis tickedAxis(const Words& words, const ChartAxis& axis, int most) {
  switch (axis.kind) {
  case AxisKind::days:
    return dayTicks(words, axis, most);
  case AxisKind::names:
    return {-0.5, static_cast<double>(axis.names.size()) - 0.5, {}};
  default:
    return numberTicks(words, axis, most);
  }
}

QString valueText(const Words& words, const ChartAxis& axis, double value) {
  switch (axis.kind) {
  case AxisKind::share: {
    const double percent = value * 100;
    const bool fine = (percent > 0 && percent < 10) || (percent > 90 && percent < 100);
    return words(QT_TRANSLATE_NOOP("Papers", "%1 %")).arg(words.number(percent, fine ? 1 : 0));
  }
  case AxisKind::seconds:
    return std::fabs(value) < 60
               ? words(QT_TRANSLATE_NOOP("Papers", "%1 s"))
                     .arg(words.number(value, std::fabs(value - std::round(value)) < 0.05 ? 0 : 1))
               : words.length(Duration{std::llround(value) * 1'000'000});
  case AxisKind::days:
    return QLocale(words.language())
        .toString(dateOf(value), words(QT_TRANSLATE_NOOP("Papers", "d MMM yyyy")));
  case AxisKind::names: {
    const auto lane = static_cast<qsizetype>(std::lround(value));
    return lane >= 0 && lane < axis.names.size() ? axis.names[lane] : QString();
  }
  case AxisKind::number:
    break;
  }
  return words.number(value, std::fabs(value - std::round(value)) < 0.05 ? 0 : 1);
}

} // namespace afterbeat::papers
