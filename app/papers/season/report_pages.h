/// The report set in pages: where every line, rule and chart stands, in PostScript points.
#pragma once

#include "app/papers/charts/chart_layout.h"
#include "app/papers/season/season_report.h"

#include <QLineF>

namespace afterbeat::papers {

struct ReportLine {
  QString text;
  QPointF at;
  double size = 9;
  Weight weight = Weight::regular;
  bool faint = false;
};

struct ReportChartPlace {
  std::shared_ptr<const Chart> chart;
  QRectF box;
};

struct ReportPage {
  std::vector<ReportLine> lines;
  std::vector<QLineF> rules;
  std::vector<QRectF> frames;
  std::vector<ReportChartPlace> charts;
};

/// Sections begin on new pages; what does not fit goes on to a page that repeats the section's
/// title. A table's row or a chart is never broken.
[[nodiscard]] std::vector<ReportPage> setInPages(const SeasonReport& report, const QSizeF& size,
                                                 const Lettering& lettering);

} // namespace afterbeat::papers
