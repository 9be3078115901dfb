/// What the rules of the debrief share: making a finding, and minutes as moments to show.
#pragma once

#include "app/papers/debrief_rules.h"

namespace afterbeat::papers::debrief {

/// A finding held against its target and added to `all`, unless the target cannot be compared with.
/// Returns it for more to be noted; null where it was left out.
Finding* add(std::vector<Finding>& all, Finding finding);

/// A figure beside its target, nothing else known yet.
[[nodiscard]] Finding begin(DebriefRule rule, double value, Aim aim, Range target);

/// Whole minutes of the window that hold at least this much time without circulation.
inline constexpr Duration kWholeMinute{60'000'000}, kMostOfAMinute{45'000'000};
[[nodiscard]] std::vector<const MinuteRow*> wholeMinutes(const Figures& figures);

/// Enough time without circulation, and hands recorded, to speak of hands on and off.
[[nodiscard]] bool handsKnown(const Figures& figures);

/// A mean within its range, ranked by the share in range: a mean alone can hide that most of what
/// it was made from lies outside. Does nothing to a finding beyond.
void rankByShare(Finding& finding, double inRange);

/// Rules about hands off, pauses and shocks.
void addPauseFindings(const Record& record, const Figures& figures, std::vector<Finding>& all);
/// Rules about how fast and how deep.
void addQualityFindings(const Record& record, const Figures& figures, std::vector<Finding>& all);

} // namespace afterbeat::papers::debrief
