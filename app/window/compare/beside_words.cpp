#include "app/window/compare/beside_words.h"

#include "app/papers/said.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
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

QString differenceWords(MeasureId id, double difference) {
  const bool share = amountKind(id) == AmountKind::share;
  const QString size =
      share ? tr("%1 percentage points").arg(words().number(std::fabs(difference) * 100, 0))
            : cellWords(id, {std::fabs(difference), Status::ok});
  const QString nothing =
      share ? tr("%1 percentage points").arg(words().number(0, 0)) : cellWords(id, {0, Status::ok});
  if (size == nothing) {
    return tr("the same");
  }
  return (difference > 0 ? QStringLiteral("+") : QStringLiteral("−")) + size;
}

QString offsetWords(double seconds) {
  const QString length = lengthWords(Duration{std::llround(std::fabs(seconds) * 1e6)});
  if (length == lengthWords(Duration{})) {
    return tr("here");
  }
  return seconds > 0 ? tr("%1 after").arg(length) : tr("%1 before").arg(length);
}

QString mostWords(const DiffersMost& most, const std::vector<BesideRecord>& records) {
  std::vector<std::string> names;
  for (std::size_t i = 0; i < records.size(); ++i) {
    names.push_back(letterOf(i).toStdString());
  }
  return papers::said(afterbeat::words(most, names), words());
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
    return largestPart(figures[MeasureId::preShockPauseWorst]);
  case DiffersMost::What::postShockPause:
    return largestPart(figures[MeasureId::postShockPauseWorst]);
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

/// Names beyond these are counted.
constexpr qsizetype kNamed = 4;

QString namesWords(QStringList names) {
  if (names.isEmpty()) {
    return tr("no figure");
  }
  if (names.size() > kNamed + 1) {
    const auto more = names.size() - kNamed;
    names = names.mid(0, kNamed);
    names << tr("%1 more").arg(more);
  }
  return words().list(names);
}

} // namespace

QString betterWords(const SideBySide& compared) {
  const std::size_t count = compared.offsets.size();
  if (compared.mixedKinds || count < 2) {
    return {};
  }
  QStringList better, worse;
  for (const FigureRow* row : inOrder(compared.figures)) {
    const FigureCell &before = row->cells[count - 2], &now = row->cells[count - 1];
    const Better wanted = betterOf(row->measure);
    if (wanted == Better::neither || !before.ok() || !now.ok()) {
      continue;
    }
    const double gain = (now.value - before.value) * (wanted == Better::more ? 1 : -1);
    // What reads the same is called the same.
    if (cellWords(row->measure, before) != cellWords(row->measure, now)) {
      (gain > 0 ? better : worse) << titleWords(row->measure);
    }
  }
  if (better.isEmpty() && worse.isEmpty()) {
    return {};
  }
  return tr("%1 against %2 – better: %3; worse: %4.")
      .arg(letterOf(count - 1), letterOf(count - 2), namesWords(better), namesWords(worse));
}

} // namespace afterbeat::window
