/// Words for records that are laid side by side.
#pragma once

#include "app/window/compare/beside_load.h"

#include <QString>

namespace afterbeat::window {

/// "A" to "H": how a record is called while it lies beside others.
[[nodiscard]] QString letterOf(std::size_t index);

/// "South boathouse, 5 March 2026, 18:30": where and when, in few words.
[[nodiscard]] QString shortNameOf(const Record& record);

/// "South boathouse", or "place not recorded".
[[nodiscard]] QString placeOf(const Record& record);
/// "5 March 2026, 18:30", or "day not recorded".
[[nodiscard]] QString whenOf(const Record& record);
/// "5 Mar 2026, 18:30".
[[nodiscard]] QString shortWhenOf(const Record& record);

[[nodiscard]] QString kindMarks(const std::optional<RecordKind>& kind, bool synthetic);
/// The kind with the marks of drills and synthetic data: "DRILL · SYNTHETIC".
[[nodiscard]] QString marksOf(const Record& record);

/// The moment's name in the window's language: "first shock".
[[nodiscard]] QString momentName(KeyMoment moment);

/// "28.4 s", or "not recorded"; units as in `measureInfo`.
[[nodiscard]] QString cellWords(MeasureId id, const FigureCell& cell);

/// "+6.2 s", "−12 percentage points", "the same".
[[nodiscard]] QString differenceWords(MeasureId id, double difference);

/// The difference is less than what is shown of it.
[[nodiscard]] bool differsBelowReading(MeasureId id, double difference);

/// A figure's title within a sentence: in a small letter where the language writes it so.
[[nodiscard]] QString titleWithin(MeasureId id);

/// "1 min 12 s after", "0.4 s before" the moment that records are aligned at.
[[nodiscard]] QString offsetWords(double seconds);

/// What differs most, as one sentence that names the kinds where they are mixed; as a few words for
/// one of the records ("call to device arrived, 7 min 11 s"), empty where it has none; and where it
/// is in a record, empty where that is not known.
[[nodiscard]] QString mostWords(const DiffersMost& most, const std::vector<BesideRecord>& records);
[[nodiscard]] QString stretchWords(const DiffersMost& most, std::size_t record);
[[nodiscard]] std::optional<Interval> stretchOf(const DiffersMost& most, const BesideRecord& one);

/// Those that a person asks for first come first, the others follow in their usual order.
[[nodiscard]] std::vector<const FigureRow*> inOrder(const std::vector<FigureRow>& figures);

/// Whether a measure's larger value is the better one, the worse one, or neither: so that "did
/// this drill beat the last?" is answered only where it can be.
enum class Better : std::uint8_t { neither, less, more };
[[nodiscard]] Better betterOf(MeasureId id);

/// The last record against the one before it: in which figures it did better, in which worse; of
/// more than three those that differ most for their size. What reads the same is neither. Of one
/// kind only; empty where nothing can be said.
[[nodiscard]] QString betterWords(const SideBySide& compared);

} // namespace afterbeat::window
