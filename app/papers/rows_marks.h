/// What of a record becomes a mark in the rows.
#pragma once

#include "app/papers/rows_model.h"

namespace afterbeat::papers {

/// The mark of an entry, with its words; shocks, which have numbers, apart. Empty: it has none.
[[nodiscard]] std::optional<RowMark> markOf(const Entry& entry, const Words& say);

} // namespace afterbeat::papers
