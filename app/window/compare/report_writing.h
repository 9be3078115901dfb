/// The comparison report of a season, or its figures, in a file.
#pragma once

#include "app/window/compare/chart_view.h"

namespace afterbeat::window {

/// What the report is made of.
struct ReportOrder {
  SharedSource source;
  Chosen chosen;
  std::vector<MarkedStep> steps;
  Profile profile;
  /// The language of the window: "en", "de".
  QString language;
};

/// Writes PDF, HTML (one file) or CSV, by the ending of the path; for a worker. Gives an empty
/// text, or a sentence that says why it was not written.
[[nodiscard]] QString writeReport(const ReportOrder& order, const QString& path);

} // namespace afterbeat::window
