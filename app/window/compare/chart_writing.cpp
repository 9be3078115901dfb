#include "app/window/compare/chart_writing.h"

#include "app/papers/charts/chart_files.h"
#include "app/papers/charts/chart_placed.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace afterbeat::window {

namespace {

/// Width of a chart in its own units, and points on paper.
constexpr double kWidth = 900, kPointsAcross = 540;

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

QByteArray asPdf(const papers::Chart& chart) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  const papers::ChartLook look = papers::ChartLook::paperLook();
  const double height = papers::chartHeight(chart, kPointsAcross, look);
  QPdfWriter pdf(&buffer);
  pdf.setTitle(chart.title);
  pdf.setCreator(QStringLiteral("Afterbeat"));
  pdf.setPageSize(QPageSize(QSizeF(kPointsAcross + 40, height + 40), QPageSize::Point));
  pdf.setPageMargins(QMarginsF());
  QPainter painter(&pdf);
  painter.scale(pdf.resolution() / 72.0, pdf.resolution() / 72.0);
  const papers::ChartPlaced placed(std::make_shared<const papers::Chart>(chart),
                                   QRectF(20, 20, kPointsAcross, height), look);
  placed.paint(painter);
  painter.end();
  return bytes;
}

QByteArray bytesFor(const papers::Chart& chart, const QString& ending) {
  const papers::ChartLook look = papers::ChartLook::screenLight();
  if (ending == QLatin1String("svg")) {
    return papers::chartAsSvg(chart, kWidth, look);
  }
  return ending == QLatin1String("png") ? papers::chartAsPng(chart, kWidth, look, 2) : asPdf(chart);
}

} // namespace

QString writeChart(const papers::Chart& chart, const QString& path) {
  const QString ending = QFileInfo(path).suffix().toLower();
  if (ending != QLatin1String("svg") && ending != QLatin1String("png") &&
      ending != QLatin1String("pdf")) {
    return tr("A chart is written as .svg, .png or .pdf: choose one of these endings.");
  }
  QSaveFile file(path);
  const QByteArray bytes = bytesFor(chart, ending);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
    return tr("The chart was not written: %1.").arg(file.errorString());
  }
  return {};
}

} // namespace afterbeat::window
