#include "app/window/compare/beside_words.h"

#include "app/papers/said.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QCoreApplication>
#include <QDate>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat::window {

namespace {

QString tr(const char* english, const char* about = nullptr) {
  return QCoreApplication::translate("afterbeat::window", english, about);
}

const char* nameText(KeyMoment moment) {
  switch (moment) {
  case KeyMoment::collapse:
    return QT_TRANSLATE_NOOP("afterbeat::window", "collapse");
  case KeyMoment::call:
    return QT_TRANSLATE_NOOP("afterbeat::window", "call");
  case KeyMoment::deviceArrived:
    return QT_TRANSLATE_NOOP("afterbeat::window", "device arrived");
  case KeyMoment::powerOn:
    return QT_TRANSLATE_NOOP("afterbeat::window", "device on");
  case KeyMoment::firstHandsOn:
    return QT_TRANSLATE_NOOP("afterbeat::window", "first compressions");
  case KeyMoment::electrodes:
    return QT_TRANSLATE_NOOP("afterbeat::window", "electrodes attached");
  case KeyMoment::firstAnalysis:
    return QT_TRANSLATE_NOOP("afterbeat::window", "first analysis");
  case KeyMoment::firstShock:
    return QT_TRANSLATE_NOOP("afterbeat::window", "first shock");
  case KeyMoment::circulationReturned:
    return QT_TRANSLATE_NOOP("afterbeat::window", "circulation returned");
  }
  return "";
}

std::optional<Interval> largestPart(const Measure& measure) {
  std::optional<Interval> largest;
  for (const WorkingPart& part : measure.working) {
    const Interval stretch{part.from, part.to};
    if (!largest || stretch.length() > largest->length()) {
      largest = stretch;
    }
  }
  return largest;
}

/// The pause before or after the first shock, which is what is compared, not the longest of them.
std::optional<Interval> shockPause(const Figures& figures, bool before) {
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.number == 1) {
      const std::optional<Duration> length = before ? shock.pre : shock.post;
      return !length  ? std::nullopt
             : before ? std::optional(Interval{shock.t - *length, shock.t})
                      : std::optional(Interval{shock.t, shock.t + *length});
    }
  }
  return std::nullopt;
}

/// These come first, in the order in which a person asks; the others follow in their usual one.
constexpr std::array kFirst{
    MeasureId::timeOn,
    MeasureId::shocksDelivered,
    MeasureId::powerOnToFirstShock,
    MeasureId::handsOffFraction,
    MeasureId::arrestTime,
    MeasureId::longestPause,
    MeasureId::preShockPauseWorst,
    MeasureId::postShockPauseWorst,
    MeasureId::compressionRate,
    MeasureId::compressionRateInRange,
};

} // namespace

QString letterOf(std::size_t index) {
  return QString(QChar(static_cast<char16_t>(u'A' + index)));
}

QString shortNameOf(const Record& record) {
  QStringList parts;
  if (!record.header.site.empty()) {
    parts << papers::plainText(record.header.site);
  }
  parts << whenOf(record);
  return parts.join(QStringLiteral(", "));
}

QString placeOf(const Record& record) {
  return record.header.site.empty() ? tr("place not recorded")
                                    : papers::plainText(record.header.site);
}

QString whenOf(const Record& record) {
  const auto wall = wallTimeAt(record, Time{});
  return wall ? QStringLiteral("%1, %2").arg(words().date(*wall), words().clock(*wall).left(5))
              : tr("day not recorded");
}

QString shortWhenOf(const Record& record) {
  const auto wall = wallTimeAt(record, Time{});
  if (!wall) {
    return tr("day not recorded");
  }
  const auto day = std::chrono::floor<std::chrono::days>(wall->local());
  return QStringLiteral("%1, %2").arg(
      QLocale(words().language())
          .toString(QDate(1970, 1, 1).addDays(day.time_since_epoch().count()),
                    //: A day in short: "5 Mar 2026".
                    tr("d MMM yyyy")),
      words().clock(*wall).left(5));
}

QString kindMarks(const std::optional<RecordKind>& kind, bool synthetic) {
  const QString marked = kind == RecordKind::drill ? tr("DRILL") : kindWords(kind);
  return synthetic ? QStringLiteral("%1 · %2").arg(marked, tr("SYNTHETIC")) : marked;
}

QString marksOf(const Record& record) {
  return kindMarks(record.header.kind, record.header.synthetic);
}

QString momentName(KeyMoment moment) {
  return tr(nameText(moment));
}

QString cellWords(MeasureId id, const FigureCell& cell) {
  Measure measure;
  measure.id = id;
  measure.status = cell.status;
  if (cell.ok()) {
    measure.value = cell.value;
  }
  return valueWords(measure);
}

namespace {

/// Without a sign.
QString sizeWords(MeasureId id, double difference) {
  return amountKind(id) == AmountKind::share
             ? tr("%1 percentage points").arg(words().number(std::fabs(difference) * 100, 0))
             : cellWords(id, {std::fabs(difference), Status::ok});
}

} // namespace

bool differsBelowReading(MeasureId id, double difference) {
  return sizeWords(id, difference) == sizeWords(id, 0);
}

QString differenceWords(MeasureId id, double difference) {
  if (differsBelowReading(id, difference)) {
    return tr("the same");
  }
  return (difference > 0 ? QStringLiteral("+") : QStringLiteral("−")) + sizeWords(id, difference);
}

QString offsetWords(double seconds) {
  const QString length = lengthWords(Duration{std::llround(std::fabs(seconds) * 1e6)});
  if (length == lengthWords(Duration{})) {
    return tr("here");
  }
  return seconds > 0 ? tr("%1 after").arg(length) : tr("%1 before").arg(length);
}

QString mostWords(const DiffersMost& most, const std::vector<BesideRecord>& records) {
  const auto kind = [&](std::size_t i) { return records[i].record->header.kind; };
  bool mixed = false;
  for (std::size_t i = 1; i < records.size(); ++i) {
    mixed = mixed || kind(i) != kind(0);
  }
  std::vector<std::string> names;
  for (std::size_t i = 0; i < records.size(); ++i) {
    names.push_back(
        (mixed ? QStringLiteral("%1 (%2)").arg(letterOf(i), kindWords(kind(i))) : letterOf(i))
            .toStdString());
  }
  return papers::said(afterbeat::words(most, names), words());
}

QString stretchWords(const DiffersMost& most, std::size_t record) {
  if (!most.seconds[record]) {
    return {};
  }
  const double length = *most.seconds[record];
  const QString told = lengthWords(Duration{std::llround(std::fabs(length) * 1e6)});
  switch (most.what) {
  case DiffersMost::What::stage:
    break;
  case DiffersMost::What::preShockPause:
    return tr("pause before the first shock, %1").arg(told);
  case DiffersMost::What::postShockPause:
    return tr("pause after the first shock, %1").arg(told);
  case DiffersMost::What::longestPause:
    return tr("longest pause, %1").arg(told);
  }
  const bool back = length < 0;
  return tr("%1 to %2, %3")
      .arg(momentName(back ? most.to : most.from), momentName(back ? most.from : most.to), told);
}

std::optional<Interval> stretchOf(const DiffersMost& most, const BesideRecord& one) {
  const Figures& figures = *one.figures;
  switch (most.what) {
  case DiffersMost::What::stage: {
    const KeyTimes times = keyTimes({one.record.get(), one.figures.get()});
    const auto from = times[static_cast<std::size_t>(most.from)];
    const auto to = times[static_cast<std::size_t>(most.to)];
    if (!from || !to) {
      return std::nullopt;
    }
    return Interval{std::min(*from, *to), std::max(*from, *to)};
  }
  case DiffersMost::What::preShockPause:
    return shockPause(figures, true);
  case DiffersMost::What::postShockPause:
    return shockPause(figures, false);
  case DiffersMost::What::longestPause:
    return largestPart(figures[MeasureId::longestPause]);
  }
  return std::nullopt;
}

std::vector<const FigureRow*> inOrder(const std::vector<FigureRow>& figures) {
  std::vector<const FigureRow*> all;
  for (const FigureRow& row : figures) {
    all.push_back(&row);
  }
  const auto placeOf = [](const FigureRow* row) {
    return std::find(kFirst.begin(), kFirst.end(), row->measure) - kFirst.begin();
  };
  std::stable_sort(all.begin(), all.end(),
                   [&](const FigureRow* a, const FigureRow* b) { return placeOf(a) < placeOf(b); });
  return all;
}

Better betterOf(MeasureId id) {
  using enum MeasureId;
  switch (id) {
  case longestPause:
  case pausesOverLimit:
  case preShockPauseMedian:
  case preShockPauseWorst:
  case postShockPauseMedian:
  case postShockPauseWorst:
  case periShockPauseMedian:
  case periShockPauseWorst:
  case adviceToShockMedian:
  case adviceToShockWorst:
  case powerOnToFirstShock:
  case electrodesToFirstShock:
  case powerOnToElectrodes:
  case powerOnToFirstHandsOn:
  case electrodesToFirstAnalysis:
    return Better::less;
  case compressionRateInRange:
  case compressionDepthInRange:
  case fullRelease:
    return Better::more;
  default:
    return Better::neither;
  }
}

namespace {

/// Of more figures those that differ most for their size are named.
constexpr std::size_t kNamed = 3;

struct Moved {
  MeasureId measure = MeasureId::arrestTime;
  /// Of the larger of the two values.
  double share = 0;
};

QString namesWords(std::vector<Moved> moved, const QString& some, const QString& many,
                   const QString& none) {
  if (moved.empty()) {
    return none;
  }
  const std::size_t all = moved.size();
  if (all > kNamed) {
    std::stable_sort(moved.begin(), moved.end(),
                     [](const Moved& a, const Moved& b) { return a.share > b.share; });
    moved.resize(kNamed);
  }
  QStringList names;
  for (const Moved& one : moved) {
    names << titleWithin(one.measure);
  }
  return all > kNamed ? many.arg(words().list(names)).arg(static_cast<qulonglong>(all))
                      : some.arg(words().list(names));
}

} // namespace

QString titleWithin(MeasureId id) {
  QString title = titleWords(id);
  //: Whether a figure's title begins in a small letter within a sentence: "yes" or "no".
  const bool small = tr("yes", "small letter within a sentence") == QStringLiteral("yes");
  if (small && title.size() > 1 && title[1].isLower()) {
    title[0] = title[0].toLower();
  }
  return title;
}

QString betterWords(const SideBySide& compared) {
  const std::size_t count = compared.offsets.size();
  if (compared.mixedKinds || count < 2) {
    return {};
  }
  std::vector<Moved> better, worse;
  for (const FigureRow* row : inOrder(compared.figures)) {
    const FigureCell &before = row->cells[count - 2], &now = row->cells[count - 1];
    const Better wanted = betterOf(row->measure);
    if (wanted == Better::neither || !before.ok() || !now.ok()) {
      continue;
    }
    const double more = now.value - before.value;
    // What reads the same is called the same.
    if (cellWords(row->measure, before) != cellWords(row->measure, now) &&
        !differsBelowReading(row->measure, more)) {
      const double size = std::max(std::fabs(before.value), std::fabs(now.value));
      ((more > 0) == (wanted == Better::more) ? better : worse)
          .push_back({row->measure, std::fabs(more) / size});
    }
  }
  if (better.empty() && worse.empty()) {
    return {};
  }
  return tr("%1 against %2 – %3; %4.")
      .arg(letterOf(count - 1), letterOf(count - 2),
           namesWords(better, tr("better: %1"), tr("better in %2 figures, most of all %1"),
                      tr("better: no figure")),
           namesWords(worse, tr("worse: %1"), tr("worse in %2 figures, most of all %1"),
                      tr("worse: no figure")));
}

} // namespace afterbeat::window
