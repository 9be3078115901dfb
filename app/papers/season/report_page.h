/// The comparison report as one file that any browser opens without a network.
#pragma once

#include "app/papers/season/season_report.h"

namespace afterbeat::papers {

/// HTML with its style and its charts (SVG) inside; it asks for nothing else, and its own policy
/// forbids the browser to. No script.
[[nodiscard]] QByteArray reportAsPage(const SeasonReport& report);

} // namespace afterbeat::papers
