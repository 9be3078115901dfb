#include "app/window/signals/rhythms.h"

#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

/// The core's reasons, here for their translation.
[[maybe_unused]] constexpr std::array kReasons{
    QT_TRANSLATE_NOOP("afterbeat::window", "chest compressions"),
    QT_TRANSLATE_NOOP("afterbeat::window", "electrodes"),
    QT_TRANSLATE_NOOP("afterbeat::window", "saturation"),
    QT_TRANSLATE_NOOP("afterbeat::window", "noise"),
    QT_TRANSLATE_NOOP("afterbeat::window", "pacing spikes"),
    QT_TRANSLATE_NOOP("afterbeat::window", "too short"),
    QT_TRANSLATE_NOOP("afterbeat::window", "between fibrillation and asystole"),
    QT_TRANSLATE_NOOP("afterbeat::window", "neither clearly shockable nor clearly not"),
    QT_TRANSLATE_NOOP("afterbeat::window", "too few samples a second")};

QString sourceWord(Source source) {
  switch (source) {
  case Source::device:
    return tr("device: %1");
  case Source::observer:
    return tr("noted: %1");
  case Source::derived:
    break;
  }
  return tr("hint: %1");
}

QString withRate(const RhythmStretch& stretch) {
  const QString kind = rhythmWords(stretch.kind);
  return stretch.ratePerMin ? QStringLiteral("%1 %2").arg(kind, words().number(*stretch.ratePerMin))
                            : kind;
}

RhythmStretch shownOf(const Entry& entry, const entry::Rhythm& rhythm) {
  return {{entry.t, entry.lastTime()},
          *rhythm.is,
          rhythm.ratePerMin,
          rhythm.reason,
          entry.source,
          entry.quality};
}

bool sayTheSame(const RhythmStretch& a, const RhythmStretch& b) {
  return a.kind == b.kind && a.source == b.source && a.reason == b.reason;
}

/// "hint: shockable, hint: unclear (chest compressions)": each once, the first few.
QString wordsWithin(const RhythmLine& line, const Interval& shown) {
  constexpr std::size_t kMost = 6;
  std::vector<const RhythmStretch*> different;
  const auto [first, last] = line.within(shown);
  for (std::size_t i = first; i < last && different.size() < kMost; ++i) {
    const RhythmStretch& one = line.all()[i];
    const bool inView = one.where.end > shown.begin && one.where.begin < shown.end;
    if (inView && std::none_of(different.begin(), different.end(),
                               [&](const auto* other) { return sayTheSame(*other, one); })) {
      different.push_back(&one);
    }
  }
  QStringList said;
  for (const RhythmStretch* one : different) {
    QString words = sourceWord(one->source).arg(rhythmWords(one->kind));
    if (!one->reason.empty()) {
      words += QStringLiteral(" (%1)").arg(rhythmReasonWords(one->reason));
    }
    said << words;
  }
  return said.join(QStringLiteral(", "));
}

} // namespace

RhythmLine::RhythmLine(std::vector<RhythmStretch> stretches) : stretches_(std::move(stretches)) {
  std::stable_sort(stretches_.begin(), stretches_.end(),
                   [](const auto& a, const auto& b) { return a.where.begin < b.where.begin; });
  ends_.reserve(stretches_.size());
  for (const RhythmStretch& one : stretches_) {
    ends_.push_back(ends_.empty() ? one.where.end : std::max(ends_.back(), one.where.end));
  }
}

std::pair<std::size_t, std::size_t> RhythmLine::within(const Interval& shown) const {
  const auto first = std::lower_bound(ends_.begin(), ends_.end(), shown.begin);
  const auto last =
      std::upper_bound(stretches_.begin(), stretches_.end(), shown.end,
                       [](Time t, const RhythmStretch& one) { return t < one.where.begin; });
  const auto from = static_cast<std::size_t>(first - ends_.begin());
  const auto to = static_cast<std::size_t>(last - stretches_.begin());
  return {from, std::max(from, to)};
}

const RhythmStretch* RhythmLine::at(Time t) const {
  const auto [first, last] = within({t, t});
  for (std::size_t i = last; i > first; --i) {
    const Interval& where = stretches_[i - 1].where;
    if (where.begin <= t && t <= where.end) {
      return &stretches_[i - 1];
    }
  }
  return nullptr;
}

Rhythms rhythmsOf(const Record& record, const Derived* hints, bool awaited) {
  std::vector<RhythmStretch> recorded, derived;
  for (const Entry& entry : record.entries) {
    if (const auto* rhythm = entry.complete<entry::Rhythm>()) {
      auto& into = entry.source == Source::derived ? derived : recorded;
      into.push_back(shownOf(entry, *rhythm));
    }
  }
  if (hints || awaited) {
    derived.clear();
  }
  if (hints) {
    for (const Entry& entry : hints->entries) {
      if (const auto* rhythm = entry.complete<entry::Rhythm>()) {
        derived.push_back(shownOf(entry, *rhythm));
      }
    }
  }
  return {RhythmLine(std::move(recorded)), RhythmLine(std::move(derived)), awaited};
}

QString rhythmWords(RhythmKind kind) {
  switch (kind) {
  case RhythmKind::shockable:
    return tr("shockable");
  case RhythmKind::organised:
    return tr("organised");
  case RhythmKind::asystole:
    return tr("asystole");
  case RhythmKind::unclear:
    break;
  }
  return tr("unclear");
}

QString rhythmReasonWords(const std::string& reason) {
  static const std::string kFast = "wide and fast, ", kPerMinute = " per minute";
  if (reason.starts_with(kFast) && reason.ends_with(kPerMinute)) {
    const std::string rate =
        reason.substr(kFast.size(), reason.size() - kFast.size() - kPerMinute.size());
    return tr("wide and fast, %1 a minute").arg(QString::fromStdString(rate));
  }
  return QCoreApplication::translate("afterbeat::window", reason.c_str());
}

QString stretchWords(const RhythmStretch& stretch) {
  return sourceWord(stretch.source).arg(withRate(stretch));
}

QStringList shortening(const RhythmStretch& stretch) {
  QStringList words;
  if (!stretch.reason.empty()) {
    words << QStringLiteral("%1 (%2)").arg(stretchWords(stretch),
                                           rhythmReasonWords(stretch.reason));
  }
  return words << stretchWords(stretch) << withRate(stretch) << rhythmWords(stretch.kind);
}

QString cautionWords() {
  return tr("A reviewer's aid, not a diagnosis");
}

QString stretchTip(const Record& record, const RhythmStretch& stretch) {
  QStringList lines{sourceWord(stretch.source).arg(rhythmWords(stretch.kind))};
  if (stretch.ratePerMin) {
    lines.front() += QStringLiteral(", ");
    lines.front() += tr("%1 a minute").arg(words().number(*stretch.ratePerMin));
  }
  if (!stretch.reason.empty()) {
    lines << rhythmReasonWords(stretch.reason);
  }
  lines << tr("%1 to %2, %3")
               .arg(momentWords(record, stretch.where.begin),
                    momentWords(record, stretch.where.end), lengthWords(stretch.where.length()));
  if (stretch.isHint()) {
    lines << (stretch.quality ? tr("derived from the ECG, quality %1 of 1")
                                    .arg(words().number(*stretch.quality, 2))
                              : tr("derived from the ECG"))
          << cautionWords();
  }
  return lines.join(QLatin1Char('\n'));
}

QString rhythmsIn(const Rhythms& rhythms, const Interval& shown) {
  QStringList parts;
  // The caution comes first: what is last is cut off where room is short.
  if (const QString hints = wordsWithin(rhythms.hints, shown); !hints.isEmpty()) {
    parts << cautionWords() + QStringLiteral(": ") + hints;
  }
  parts << wordsWithin(rhythms.recorded, shown);
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

} // namespace afterbeat::window
