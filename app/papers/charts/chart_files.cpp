#include "app/papers/charts/chart_files.h"

#include "app/papers/charts/chart_placed.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgGenerator>

#include <cmath>

namespace afterbeat::papers {

namespace {

/// Where the chart lies in a picture of this width: as high as it wants to be.
QRectF areaOf(const Chart& chart, double width, double margin, const ChartLook& look) {
  const double across = width - 2 * margin;
  return {margin, margin, across, std::ceil(chartHeight(chart, across, look))};
}

} // namespace

QByteArray chartAsSvg(const Chart& chart, double width, const ChartLook& look, double margin) {
  const QRectF area = areaOf(chart, width, margin, look);
  const double height = area.height() + 2 * margin;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator svg;
  svg.setOutputDevice(&buffer);
  svg.setSize(QSizeF(width, height).toSize());
  svg.setViewBox(QRectF(0, 0, width, height));
  svg.setResolution(72);
  // Qt writes these two as they are.
  svg.setTitle(chart.title.toHtmlEscaped());
  svg.setDescription(asText(chart).toHtmlEscaped());
  QPainter painter(&svg);
  painter.fillRect(QRectF(0, 0, width, height), look.paper);
  ChartPlaced(std::make_shared<const Chart>(chart), area, look).paint(painter);
  painter.end();
  QString text = QString::fromUtf8(bytes);
  // A reader without the paper's font gets a plain one; sizes are pixels, as the view box's.
  text.replace(QStringLiteral("font-family=\"%1\"").arg(look.font.family()),
               QStringLiteral("font-family=\"%1, system-ui, Helvetica, Arial, sans-serif\"")
                   .arg(look.font.family()));
  static const QRegularExpression millimetres(
      QStringLiteral("<svg width=\"[^\"]*\" height=\"[^\"]*\""));
  text.replace(
      millimetres,
      QStringLiteral("<svg width=\"%1\" height=\"%2\" role=\"img\"").arg(width).arg(height));
  return text.toUtf8();
}

QByteArray chartAsPng(const Chart& chart, double width, const ChartLook& look, double scale) {
  const QRectF area = areaOf(chart, width, kPictureMargin, look);
  const double height = area.height() + 2 * kPictureMargin;
  QImage image((QSizeF(width, height) * scale).toSize(), QImage::Format_RGB32);
  image.fill(look.paper);
  QPainter painter(&image);
  painter.scale(scale, scale);
  ChartPlaced(std::make_shared<const Chart>(chart), area, look).paint(painter);
  painter.end();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

} // namespace afterbeat::papers
