/// The comparison report as values: what is said, page by page, before it is set as PDF or HTML.
#pragma once

#include "app/papers/charts/season_charts.h"
#include "core/guideline/profile.h"

#include <memory>
#include <variant>

namespace afterbeat::papers {

struct ReportTable {
  QString caption;
  /// The first column names the row; all others are set to the right.
  QStringList head;
  std::vector<QStringList> rows;
  /// What no record has, with how many records; said after the table.
  QStringList without;
};

/// Lines that belong together; `head` is bold.
struct ReportList {
  QString head;
  QStringList lines;
};

using ReportBlock = std::variant<QString, ReportTable, ReportList, std::shared_ptr<const Chart>>;

/// Begins on a new page of its own.
struct ReportSection {
  /// 1: a kind's season at a glance; 2: a site of it.
  int level = 1;
  QString title;
  QStringList marks;
  std::vector<ReportBlock> blocks;
};

struct SeasonReport {
  Words words{};
  QString title;
  QStringList marks;
  /// Before the first section: what this is about, and how to read it.
  QStringList about;
  std::vector<ReportSection> sections;
  /// At the end: how it was made, with sources.
  QStringList method;
  /// Under each page.
  QString footer;

  /// The words in reading order, a line each; a chart as its own text.
  [[nodiscard]] QString asText() const;
};

struct ReportSettings {
  QString language = "en";
  std::vector<MarkedStep> steps;
  /// What the figures were computed with.
  FigureSettings figures;
  /// Said where identities were taken away.
  bool withoutIdentity = false;
  /// Sources that could not be read, and are in no figure.
  std::size_t notRead = 0;
};

/// What the report draws over time: the longest pause of each record, of each month where days were
/// taken away, with the marked steps.
[[nodiscard]] OverTimeSettings reportOverTime(const ReportSettings& settings);

/// Drills, rescues, tests and records of no stated kind each have a part of their own; in each the
/// season at a glance comes first, then a page for each site, in the order of names.
[[nodiscard]] SeasonReport makeSeasonReport(const Season& season, const Chosen& chosen,
                                            const ReportSettings& settings);

/// The measures that a table of a report shows, in its order; a share that never stands alone is
/// followed by those that must stand beside it.
[[nodiscard]] const std::vector<MeasureId>& reportMeasures();

} // namespace afterbeat::papers
