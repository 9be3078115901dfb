/// The charts of a season as pictures of their own.
#pragma once

#include "app/papers/season/season_report.h"

namespace afterbeat::papers {

struct SeasonPicture {
  /// Of letters, digits and "-", fit for a file's name: "rescue-longest-pause-by-site".
  QString name;
  Chart chart;
};

/// Every chart of every kind that has something to draw.
[[nodiscard]] std::vector<SeasonPicture> seasonPictures(const Season& season, const Chosen& chosen,
                                                        const ReportSettings& settings);

} // namespace afterbeat::papers
