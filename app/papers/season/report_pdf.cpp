#include "app/papers/season/report_pdf.h"

#include "app/papers/charts/chart_placed.h"
#include "app/papers/handover_sheet.h"
#include "app/papers/season/report_pages.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

namespace afterbeat::papers {

namespace {

constexpr int kDotsPerInch = 1200;
constexpr double kPointsPerInch = 72;

Lettering paperLettering() {
  QFont font(QString::fromLatin1(kPaperFont));
  font.setPixelSize(10);
  return Lettering(font);
}

void paintPage(QPainter& painter, const ReportPage& page, const Lettering& lettering) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(QColor(0x8C, 0x93, 0x99), 0.4));
  for (const QLineF& rule : page.rules) {
    painter.drawLine(rule);
  }
  painter.setPen(QPen(Qt::black, 0.9, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  for (const QRectF& frame : page.frames) {
    painter.drawRect(frame);
  }
  for (const ReportLine& line : page.lines) {
    lettering.paint(painter, line.at, line.text, line.size, line.weight,
                    line.faint ? QColor(0x40, 0x46, 0x4B) : QColor(Qt::black));
  }
  for (const ReportChartPlace& place : page.charts) {
    ChartPlaced(place.chart, place.box, ChartLook::paperLook()).paint(painter);
  }
  painter.restore();
}

QSizeF sizeOf(QPageSize::PageSizeId paper) {
  return QPageSize(paper).size(QPageSize::Point);
}

} // namespace

QByteArray reportAsPdf(const SeasonReport& report, QPageSize::PageSizeId paper) {
  const Lettering lettering = paperLettering();
  const auto pages = setInPages(report, sizeOf(paper), lettering);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_4);
  writer.setResolution(kDotsPerInch);
  writer.setPageSize(QPageSize(paper));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setTitle(report.title);
  writer.setCreator(QStringLiteral("Afterbeat " AFTERBEAT_VERSION));
  QPainter painter;
  if (!painter.begin(&writer)) {
    return {};
  }
  painter.scale(kDotsPerInch / kPointsPerInch, kDotsPerInch / kPointsPerInch);
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i > 0 && !writer.newPage()) {
      return {};
    }
    paintPage(painter, pages[i], lettering);
  }
  return painter.end() ? bytes : QByteArray();
}

QString reportPagesAsText(const SeasonReport& report, QPageSize::PageSizeId paper) {
  const Lettering lettering = paperLettering();
  QStringList lines;
  int number = 0;
  for (const ReportPage& page : setInPages(report, sizeOf(paper), lettering)) {
    lines << QStringLiteral("=== %1").arg(++number);
    for (const ReportLine& line : page.lines) {
      lines << line.text;
    }
    for (const ReportChartPlace& place : page.charts) {
      lines << QStringLiteral("[chart] ") + place.chart->title;
    }
  }
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

} // namespace afterbeat::papers
