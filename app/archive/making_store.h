/// Makings as rows.
#pragma once

#include "app/archive/archive.h"
#include "app/archive/database.h"

namespace afterbeat::archive {

/// Those in use first. Without `counted` the number of their records is left at 0.
[[nodiscard]] std::vector<Making> readMakings(Database& database, bool counted);

/// The making with these settings and the present definitions, made and in use; inside a
/// transaction.
std::int64_t storeMaking(Database& database, const MakingSettings& settings);

/// Those to compute new records with: under the present definitions, at least one (the program's
/// own settings). Makings of older definitions leave use and their settings come back under the
/// present ones; newer definitions than the program's are refused. Inside a transaction.
[[nodiscard]] std::vector<Making> makingsToCompute(Database& database);

/// `making`, or where it is 0 the first in use; throws where there is none.
[[nodiscard]] std::int64_t makingOr(Database& database, std::int64_t making);

/// The archive's own numbers of the measures, by `MeasureId`.
[[nodiscard]] std::vector<int> measureNumbers(Database& database);

} // namespace afterbeat::archive
