// A report as plain text.
#include "app/papers/season/season_report.h"

namespace afterbeat::papers {

namespace {

struct BlockText {
  QStringList& lines;
  void operator()(const QString& paragraph) const { lines << paragraph; }
  void operator()(const ReportTable& table) const {
    lines << QStringLiteral("[table] ") + table.caption;
    lines << table.head.join(QStringLiteral(" | "));
    for (const QStringList& row : table.rows) {
      lines << row.join(QStringLiteral(" | "));
    }
  }
  void operator()(const ReportList& list) const {
    lines << QStringLiteral("[list] ") + list.head;
    lines << list.lines;
  }
  void operator()(const std::shared_ptr<const Chart>& chart) const {
    lines << QStringLiteral("[chart] ") + papers::asText(*chart);
  }
};

} // namespace

QString SeasonReport::asText() const {
  QStringList lines{QStringLiteral("# ") + title};
  lines << marks << about;
  for (const ReportSection& section : sections) {
    lines << QString(section.level + 1, QLatin1Char('#')) + QLatin1Char(' ') + section.title;
    lines << section.marks;
    for (const ReportBlock& block : section.blocks) {
      std::visit(BlockText{lines}, block);
    }
  }
  lines << method << footer;
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

} // namespace afterbeat::papers
