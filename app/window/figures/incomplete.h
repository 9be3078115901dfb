/// What a recording does not hold because it broke off or was damaged, for a person who reads its
/// figures.
#pragma once

#include "core/measures/figures.h"

#include <QString>

#include <optional>

namespace afterbeat::window {

struct Incomplete {
  /// The recording stopped without being closed, while the device was on: its last moment.
  std::optional<Time> brokeOffAt;
  /// Lines that could not be read.
  int linesLost = 0;

  [[nodiscard]] bool any() const { return brokeOffAt || linesLost > 0; }
};

[[nodiscard]] Incomplete incompleteOf(const Record& record, const Figures& figures);

/// Plain sentences: what happened, and which figures may therefore be wrong. Empty for a whole one.
[[nodiscard]] QString incompleteWords(const Record& record, const Incomplete& what);

} // namespace afterbeat::window
