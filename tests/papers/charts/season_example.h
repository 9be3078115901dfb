/// Made-up seasons for the tests of charts and reports. No figure stands for anybody.
#pragma once

#include "core/compare/season.h"

namespace afterbeat::test {

/// `count` rescues (every fifth a drill) of an invented lake town over some years: four sites of
/// which one has three records, one site not recorded, pauses that are shorter from spring 2025 on,
/// some figures not recorded. The same for the same count. All are synthetic.
[[nodiscard]] Season exampleSeason(std::size_t count);

} // namespace afterbeat::test
