/// The comparison report on paper.
#pragma once

#include "app/papers/season/season_report.h"

#include <QPageSize>

namespace afterbeat::papers {

struct ReportPages;

/// As PDF 1.4 with the font embedded; empty if it could not be painted.
[[nodiscard]] QByteArray reportAsPdf(const SeasonReport& report, QPageSize::PageSizeId paper);

/// What stands on each page, in reading order; for tests.
[[nodiscard]] QString reportPagesAsText(const SeasonReport& report, QPageSize::PageSizeId paper);

} // namespace afterbeat::papers
