/// A season and what was found in it as JSON; format: resources/format/compare-output.schema.json.
#pragma once

#include "app/papers/season/season_report.h"

#include <nlohmann/json.hpp>

namespace afterbeat::cli {

[[nodiscard]] nlohmann::ordered_json seasonJson(const Season& season, const Chosen& chosen,
                                                const papers::ReportSettings& settings);

} // namespace afterbeat::cli
