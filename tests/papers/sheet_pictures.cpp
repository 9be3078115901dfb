/// Writes every variant of the handover sheet as PDF, and as pictures in colour and in grey, into a
/// folder: to be opened and read.
#include "tests/papers/sheet_variants.h"

#include <QDir>
#include <QGuiApplication>
#include <QPainter>
#include <QTextStream>

namespace {

using namespace afterbeat;

bool writeOne(const QDir& folder, const test::SheetVariant& variant, const QString& language) {
  const QString name =
      folder.filePath(QStringLiteral("%1.%2").arg(QString::fromStdString(variant.name), language));
  const Figures figures = computeFigures(variant.record);
  QString error;
  if (!papers::writeHandoverPdf(name + ".pdf", variant.record, figures,
                                test::sheetOptions(variant, language), &error)) {
    QTextStream(stderr) << error << '\n';
    return false;
  }
  constexpr double kPixelsPerPoint = 1.5;
  const papers::HandoverSheet sheet = test::sheetOf(variant, language);
  QImage image((sheet.page.size * kPixelsPerPoint).toSize(), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(kPixelsPerPoint, kPixelsPerPoint);
  papers::paintSheet(painter, sheet.page, sheet.rows);
  painter.end();
  return image.save(name + ".png") &&
         image.convertToFormat(QImage::Format_Grayscale8).save(name + ".grey.png");
}

} // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  if (argc != 2 || !QDir().mkpath(argv[1])) {
    QTextStream(stderr) << "usage: sheet_pictures FOLDER\n";
    return 2;
  }
  const QDir folder(argv[1]);
  for (const auto& variant : test::sheetVariants()) {
    for (const char* language : {"en", "de"}) {
      if (!writeOne(folder, variant, language)) {
        return 1;
      }
    }
  }
  return 0;
}
