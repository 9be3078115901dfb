/// Figures as the JSON object that `measure --json` prints; its schema is
/// resources/format/measure-output.schema.json.
#pragma once

#include "app/cli/derived.h"

#include <nlohmann/json.hpp>

namespace afterbeat::cli {

/// English ids, seconds, fractions 0 to 1; `value` is null unless `status` is ok.
[[nodiscard]] nlohmann::ordered_json figuresJson(const OpenedAndDerived& read,
                                                 const Figures& figures);

} // namespace afterbeat::cli
