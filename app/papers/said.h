/// The core's sentences about many records, in a reader's language.
#pragma once

#include "app/papers/words.h"
#include "core/compare/saying.h"

namespace afterbeat::papers {

/// A number as it stands in a sentence: "12.5 s", "84 %", "111 a minute".
[[nodiscard]] QString said(const Amount& amount, const Words& say);
/// The sentence with its parts; what a record or the user wrote is shown as plain text.
[[nodiscard]] QString said(const Saying& saying, const Words& say);
/// One after the other, with a space between.
[[nodiscard]] QString said(const std::vector<Saying>& sayings, const Words& say);
/// The title of a measure.
[[nodiscard]] QString titleOf(MeasureId id, const Words& say);
/// How a measure is defined, in one sentence.
[[nodiscard]] QString definitionOf(MeasureId id, const Words& say);
/// Where the definition comes from and how sure that is, in one sentence.
[[nodiscard]] QString sourceOf(MeasureId id, const Words& say);

/// What figures were computed with: "Pauses longer than 1.5 s · European guidelines 2021 · to the
/// last activity".
[[nodiscard]] QString settingsOf(const FigureSettings& settings, const Words& say);

} // namespace afterbeat::papers
