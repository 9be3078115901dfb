/// The debrief of one record in words: what went well, what to practise, and questions that open a
/// conversation. Chosen by the rules of resources/definitions/debrief.md.
#pragma once

#include "app/papers/debrief_rules.h"
#include "app/papers/words.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace afterbeat::papers {

/// What an item says about its figure.
enum class DebriefKind : std::uint8_t {
  within,  ///< within its target: went well
  beyond,  ///< beyond its target: to practise
  nearest, ///< nothing lies within a target: the nearest to one
  effort,  ///< the best minute; no target
};

/// One thing to speak of. All texts are in the reader's language.
struct DebriefItem {
  DebriefRule rule = DebriefRule::handsOff;
  DebriefKind kind = DebriefKind::within;
  /// "38 s".
  QString figure;
  /// One sentence.
  QString sentence;
  /// "target at most 10 s"; empty for an effort.
  QString target;
  /// "European guidelines 2021 (read in a secondary publication)".
  QString source;
  /// The publication in full; empty for common practice.
  QString citation;
  /// What to show, and from when: "09:15:02".
  Interval moment;
  QString when;
};

struct Debrief {
  /// At most three each; `well` holds the nearest and the effort too.
  std::vector<DebriefItem> well, practise;
  /// A sentence over a column that says what its items are not; empty for the usual.
  QString wellNote, practiseNote;
  /// In the order of asking: how it was, what went well, what to practise, what next.
  QStringList questions;
  /// "The record cannot tell: ..."; empty where nothing is missing.
  QString cannotTell;
  /// Nothing in the record begins a rescue: what to do instead.
  QString nothing;
};

[[nodiscard]] Debrief makeDebrief(const Record& record, const Figures& figures, const Words& say);

/// Headings of the page, in the reader's language.
[[nodiscard]] QString wentWellHeading(const Words& say);
[[nodiscard]] QString practiseHeading(const Words& say);
[[nodiscard]] QString questionsHeading(const Words& say);

/// "target at most 10 s, European guidelines 2021 (...)"; empty without a target.
[[nodiscard]] QString targetLine(const DebriefItem& item);

/// A line of a debrief as it was shown: chosen, reworded or added by the trainer.
struct DebriefLine {
  QString text;
  /// Empty for a line of the trainer's own.
  QString figure, target, when;
};

/// The debrief as it was shown.
struct DebriefShown {
  std::vector<DebriefLine> well, practise;
  QStringList questions;
  QString wellNote, practiseNote, cannotTell, nothing;
};

/// Plain text for an e-mail or the minutes of the evening; says what a drill and what synthetic is.
[[nodiscard]] QString debriefText(const DebriefShown& shown, const Record& record,
                                  const Figures& figures, const Words& say);

/// Header and entries of a record (no channels) without the words that people wrote into it:
/// remarks lose their text, medication and names of rescuers too. What happened and when stays.
[[nodiscard]] Record withoutOwnWords(const Record& record);

} // namespace afterbeat::papers
