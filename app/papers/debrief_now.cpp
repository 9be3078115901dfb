#include "app/papers/debrief_now.h"

#include "app/papers/facts.h"
#include "core/measures/evidence.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

/// Sorted stretches that do not overlap: the one that holds `t`, its end left out.
const Interval* holding(const std::vector<Interval>& many, Time t) {
  const auto after = std::upper_bound(many.begin(), many.end(), t,
                                      [](Time at, const Interval& i) { return at < i.begin; });
  if (after == many.begin() || std::prev(after)->end <= t) {
    return nullptr;
  }
  return &*std::prev(after);
}

QString shockWords(const ShockFigures& shock, const Words& say) {
  if (shock.number > 0) {
    return say(QT_TRANSLATE_NOOP("Papers", "Shock %1")).arg(shock.number);
  }
  return shock.delivered ? say(QT_TRANSLATE_NOOP("Papers", "Shock not given"))
                         : say(QT_TRANSLATE_NOOP("Papers", "Shock: delivery not recorded"));
}

} // namespace

NowTeller::NowTeller(const Record& record, const Figures& figures, Words say)
    : say_(std::move(say)), window_(figures.window), evidence_(figures.evidence),
      threshold_(figures.settings.pauseThreshold), compressions_(figures.compressions),
      circulation_(merged(figures.circulation)) {
  frame_.header = record.header;
  for (const Pause& pause : figures.pauses) {
    pauses_.push_back(pause.stretch);
  }
  for (const NotCounted& stretch : figures.notCounted) {
    if (stretch.why != NotCountedReason::circulationReturned) {
      notCounted_.push_back(stretch);
    }
  }
  for (const ShockFigures& shock : figures.shocks) {
    shocks_.push_back({shock.t, shockWords(shock, say_)});
  }
  for (const std::size_t i : figures.cprEntries) {
    const Entry& entry = record.entries[i];
    stretches_.push_back({spanOf(entry), std::get<entry::Cpr>(entry.data).ratePerMin});
  }
  for (const Entry& entry : record.entries) {
    if (const auto* analysis = entry.complete<entry::Analysis>()) {
      analyses_.push_back({spanOf(entry), analysis->advice});
    } else if (entry.complete<entry::PowerOn>() != nullptr || entry.complete<entry::ClockSet>()) {
      frame_.entries.push_back(entry);
    }
  }
}

QString NowTeller::clockAt(Time t) const {
  return momentWords(frame_, t, say_);
}

/// From the latest compressions: up to four intervals back, none longer than the threshold.
std::optional<double> NowTeller::rateAt(Time t) const {
  constexpr std::ptrdiff_t kIntervals = 4;
  const auto next = std::upper_bound(compressions_.begin(), compressions_.end(), t);
  std::ptrdiff_t n = 0;
  auto last = next;
  if (next != compressions_.begin()) {
    last = std::prev(next);
    auto first = last;
    while (first != compressions_.begin() && n < kIntervals &&
           *first - *std::prev(first) <= threshold_) {
      --first;
      ++n;
    }
    if (n > 0 && t - *last <= threshold_) {
      return 60.0 * static_cast<double>(n) / seconds(*last - *first);
    }
  }
  for (const Rated& rated : stretches_) {
    if (rated.stretch.holds(t)) {
      return rated.rate;
    }
  }
  return std::nullopt;
}

QString NowTeller::analysisAt(Time t) const {
  for (const Analysed& analysis : analyses_) {
    if (analysis.stretch.begin <= t && t < analysis.stretch.end) {
      return say_(QT_TRANSLATE_NOOP("Papers", "analysis"));
    }
    constexpr Duration kAdviceShown{3'000'000};
    if (analysis.stretch.end <= t && t < analysis.stretch.end + kAdviceShown && analysis.advice) {
      switch (*analysis.advice) {
      case Advice::shock:
        return say_(QT_TRANSLATE_NOOP("Papers", "shock advised"));
      case Advice::noShock:
        return say_(QT_TRANSLATE_NOOP("Papers", "no shock advised"));
      case Advice::inconclusive:
        return say_(QT_TRANSLATE_NOOP("Papers", "analysis without result"));
      }
    }
  }
  return {};
}

Now NowTeller::handsAt(Time t) const {
  if (evidence_ == Evidence::none) {
    return {NowKind::unknown, {}, say_(QT_TRANSLATE_NOOP("Papers", "Hands not recorded"))};
  }
  if (const Interval* pause = holding(pauses_, t)) {
    const auto whole = static_cast<long long>(std::floor(seconds(t - pause->begin)));
    // A pause of no length says nothing: the seconds come with the first whole one.
    return {NowKind::handsOff,
            {},
            whole < 1 ? say_(QT_TRANSLATE_NOOP("Papers", "Hands off"))
                      : say_(QT_TRANSLATE_NOOP("Papers", "Hands off for %1 s")).arg(whole)};
  }
  const auto rate = rateAt(t);
  return {NowKind::handsOn,
          {},
          rate ? say_(QT_TRANSLATE_NOOP("Papers", "Hands on, %1 a minute")).arg(say_.number(*rate))
               : say_(QT_TRANSLATE_NOOP("Papers", "Hands on"))};
}

Now NowTeller::at(Time t) const {
  Now now;
  const auto left = std::find_if(notCounted_.begin(), notCounted_.end(), [t](const NotCounted& n) {
    return n.stretch.begin <= t && t < n.stretch.end && n.why != NotCountedReason::beforeWindow &&
           n.why != NotCountedReason::afterWindow;
  });
  if (!window_) {
    now = {NowKind::outside, {}, say_(QT_TRANSLATE_NOOP("Papers", "No activity recorded"))};
  } else if (t < window_->begin) {
    now = {NowKind::outside, {}, say_(QT_TRANSLATE_NOOP("Papers", "Before the first activity"))};
  } else if (t > window_->end) {
    now = {NowKind::outside, {}, say_(QT_TRANSLATE_NOOP("Papers", "After the last activity"))};
  } else if (left != notCounted_.end()) {
    now = {NowKind::notCounted, {}, say_(QT_TRANSLATE_NOOP("Papers", "Not counted"))};
  } else if (holding(circulation_, t) != nullptr) {
    now = {NowKind::circulation, {}, say_(QT_TRANSLATE_NOOP("Papers", "Circulation returned"))};
  } else {
    now = handsAt(t);
  }
  if (const QString analysis = analysisAt(t); !analysis.isEmpty()) {
    now.words += QStringLiteral(", ") + analysis;
  }
  for (const Shocked& shock : shocks_) {
    if (shock.t <= t && t < shock.t + kShockShown) {
      now.kind = NowKind::shock;
      now.words = shock.words;
    }
  }
  now.clock = clockAt(t);
  return now;
}

} // namespace afterbeat::papers
