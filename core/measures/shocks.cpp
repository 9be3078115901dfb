#include "core/measures/shocks.h"

#include <algorithm>

namespace afterbeat {
namespace {

/// The latest moment of hands on in [from, to]; a stretch that begins at `to` is not before it.
std::optional<Time> latestHandsOn(const std::vector<Interval>& handsOn, Time from, Time to) {
  auto it = std::upper_bound(handsOn.begin(), handsOn.end(), to, [](Time t, const Interval& h) {
    return t < h.begin || (t == h.begin && t < h.end);
  });
  if (it == handsOn.begin()) {
    return std::nullopt;
  }
  const Time latest = std::min((--it)->end, to);
  return latest >= from ? std::optional<Time>{latest} : std::nullopt;
}

/// The earliest moment of hands on in [from, to]; a stretch that ends at `from` is not after it.
std::optional<Time> earliestHandsOn(const std::vector<Interval>& handsOn, Time from, Time to) {
  const auto it =
      std::lower_bound(handsOn.begin(), handsOn.end(), from, [](const Interval& h, Time t) {
        return h.end < t || (h.end == t && h.begin < t);
      });
  if (it == handsOn.end()) {
    return std::nullopt;
  }
  const Time earliest = std::max(it->begin, from);
  return earliest <= to ? std::optional<Time>{earliest} : std::nullopt;
}

/// Pauses around delivered shock `i` of `moments` [P1], [P2]. In a counted stretch that goes on
/// before (after) the shock its own moment is the latest (earliest) of hands on: 0 without a
/// special case.
void fillPausesAround(const std::vector<Time>& moments, std::size_t i, const Figures& figures,
                      ShockFigures& shock) {
  const int arrestIndex = indexHolding(figures.arrest, shock.t);
  if (arrestIndex < 0) {
    return;
  }
  const Interval& arrest = figures.arrest[static_cast<std::size_t>(arrestIndex)];
  const Time from = i > 0 ? std::max(arrest.begin, moments[i - 1]) : arrest.begin;
  const Time to = i + 1 < moments.size() ? std::min(arrest.end, moments[i + 1]) : arrest.end;
  if (const auto before = latestHandsOn(figures.handsOn, from, shock.t)) {
    shock.pre = shock.t - *before;
  }
  if (const auto after = earliestHandsOn(figures.handsOn, shock.t, to)) {
    shock.post = *after - shock.t;
  }
  if (shock.pre && shock.post) {
    shock.peri = *shock.pre + *shock.post;
  }
}

} // namespace

std::vector<std::optional<Time>> adviceUsed(const Record& record) {
  std::vector<const Entry*> analyses;
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::Analysis>() != nullptr) {
      analyses.push_back(&entry);
    }
  }
  std::stable_sort(analyses.begin(), analyses.end(),
                   [](const Entry* a, const Entry* b) { return a->lastTime() < b->lastTime(); });
  std::vector<bool> used(analyses.size(), false);
  std::vector<std::optional<Time>> result;
  for (const Entry& entry : record.entries) {
    const auto* shock = entry.complete<entry::Shock>();
    if (shock == nullptr || !shock->delivered.value_or(false)) {
      continue;
    }
    std::optional<Time> end;
    const auto later = std::upper_bound(analyses.begin(), analyses.end(), entry.t,
                                        [](Time t, const Entry* a) { return t < a->lastTime(); });
    if (later != analyses.begin()) {
      const auto index = static_cast<std::size_t>(later - analyses.begin() - 1);
      const auto* analysis = analyses[index]->complete<entry::Analysis>();
      if (analysis->advice == Advice::shock && !used[index]) {
        used[index] = true;
        end = analyses[index]->lastTime();
      }
    }
    result.push_back(end);
  }
  return result;
}

void fillShocks(const Record& record, Figures& figures) {
  std::vector<Time> moments;
  for (const Entry& entry : record.entries) {
    const auto* shock = std::get_if<entry::Shock>(&entry.data);
    const bool unknown = shock != nullptr && entry.hasTime && !shock->delivered;
    if (shock == nullptr || (entry.incomplete && !unknown)) {
      continue;
    }
    ShockFigures figure;
    figure.t = entry.t;
    figure.delivered = shock->delivered;
    figure.energyJ = shock->energyJ;
    if (shock->delivered.value_or(false)) {
      moments.push_back(entry.t);
      figure.number = static_cast<int>(moments.size());
    }
    figures.shocks.push_back(figure);
  }
  const auto advice = adviceUsed(record);
  for (ShockFigures& shock : figures.shocks) {
    if (shock.number == 0) {
      continue;
    }
    const auto i = static_cast<std::size_t>(shock.number - 1);
    fillPausesAround(moments, i, figures, shock);
    if (advice[i]) {
      shock.adviceToShock = shock.t - *advice[i];
    }
  }
}

} // namespace afterbeat
