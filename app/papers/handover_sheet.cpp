#include "app/papers/handover_sheet.h"

#include "app/papers/phrase_words.h"
#include "app/papers/sheet_content.h"
#include "app/papers/sheet_layout.h"
#include "core/bytes/byte_source.h"

#include <QBuffer>
#include <QFontDatabase>
#include <QPainter>
#include <QPdfWriter>

namespace afterbeat::papers {

namespace {

constexpr int kDotsPerInch = 1200;
constexpr double kPointsPerInch = 72;

QByteArray sheetAsPdf(const Record& record, const Figures& figures, const SheetOptions& options) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_4);
  writer.setResolution(kDotsPerInch);
  writer.setPageSize(QPageSize(options.paper));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setTitle(Words::inLanguage(options.language)(QT_TRANSLATE_NOOP("Papers", "Handover")));
  writer.setCreator(QStringLiteral("Afterbeat " AFTERBEAT_VERSION));
  QPainter painter;
  if (!painter.begin(&writer)) {
    return {};
  }
  painter.scale(kDotsPerInch / kPointsPerInch, kDotsPerInch / kPointsPerInch);
  paintHandoverSheet(painter, record, figures, options);
  return painter.end() ? bytes : QByteArray();
}

} // namespace

void paintHandoverSheet(QPainter& painter, const Record& record, const Figures& figures,
                        const SheetOptions& options) {
  const HandoverSheet sheet = layOutHandoverSheet(record, figures, options);
  paintSheet(painter, sheet.page, sheet.rows);
}

HandoverSheet layOutHandoverSheet(const Record& record, const Figures& figures,
                                  const SheetOptions& options) {
  const Words words = Words::inLanguage(options.language);
  const SheetContent content = makeSheetContent(record, figures, options, words);
  RowsPicture rows(record, figures, [words](const char* english) { return words(english); });
  const QSizeF page = QPageSize(options.paper).size(QPageSize::Point);
  return {SheetLayout(content, rows, words, page).made(), std::move(rows)};
}

bool writeHandoverPdf(const QString& path, const Record& record, const Figures& figures,
                      const SheetOptions& options, QString* error) {
  const auto fail = [&](const QString& sentence) {
    if (error != nullptr) {
      *error = sentence;
    }
    return false;
  };
  if (!QFontDatabase::hasFamily(QString::fromLatin1(kPaperFont))) {
    return fail(
        inOwnLanguage(QT_TRANSLATE_NOOP("Papers", "The font “%1” is not installed (Debian package "
                                                  "fonts-inter). The sheet was not written."))
            .arg(QString::fromLatin1(kPaperFont)));
  }
  const QByteArray bytes = sheetAsPdf(record, figures, options);
  if (bytes.isEmpty()) {
    return fail(inOwnLanguage(QT_TRANSLATE_NOOP("Papers", "The sheet could not be painted.")));
  }
  const auto written = replaceFile(path.toStdString(), [&](const ByteSink& sink) {
    return sink({bytes.constData(), static_cast<std::size_t>(bytes.size())});
  });
  if (!written) {
    return fail(inOwnLanguage(QT_TRANSLATE_NOOP("Papers", "The sheet could not be written: %1."))
                    .arg(clauseWords(written.error().what)));
  }
  return true;
}

} // namespace afterbeat::papers
