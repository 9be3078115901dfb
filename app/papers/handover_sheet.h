/// The handover sheet: one page that is put into a crew's hands.
#pragma once

#include "core/measures/figures.h"

#include <QPageSize>
#include <QString>

#include <optional>

class QPagedPaintDevice;
class QPainter;

namespace afterbeat::papers {

/// What people said where there is no recording; nothing of it is required.
struct ToldFigures {
  std::optional<int> minutesOn, shocks;
  /// Clock time as it was said, "09:31"; empty: not said.
  QString lastShockAt;
  PatientCategory setting = PatientCategory::unknown;
};

struct SheetOptions {
  QPageSize::PageSizeId paper = QPageSize::A4;
  /// "en" or "de".
  QString language = "en";
  /// File the record came from (name only), and the hex SHA-256 of its bytes.
  QString fileName, fileSha256;
  /// Text of the moment of printing in the printer's local time, e.g. "2026-03-14 09:31"; empty:
  /// not printed.
  QString printedAt;
  /// There is no recording: the sheet carries these figures, marked as told, and ruled lines.
  std::optional<ToldFigures> told;
};

/// Paints the sheet on the current page of `painter`, whose device has the paper's size. Units:
/// PostScript points; the caller scales.
void paintHandoverSheet(QPainter& painter, const Record& record, const Figures& figures,
                        const SheetOptions& options);

/// Writes the sheet as a one-page PDF/1.4 with the font embedded. False: `error` says why.
[[nodiscard]] bool writeHandoverPdf(const QString& path, const Record& record,
                                    const Figures& figures, const SheetOptions& options,
                                    QString* error);

/// The font family of all paper, from the Debian package fonts-inter.
inline constexpr const char* kPaperFont = "Inter";

} // namespace afterbeat::papers
