/// The comparison report of a season, or its figures, in a file.
#pragma once

#include "app/window/compare/chart_view.h"

#include <QByteArray>

#include <optional>

namespace afterbeat::window {

/// What the report is made of.
struct ReportOrder {
  SharedSource source;
  Chosen chosen;
  std::vector<MarkedStep> steps;
  /// The language of the window: "en", "de".
  QString language;
  /// Given: without names, serials, ids, files and free text, with pseudonyms made with this
  /// secret.
  std::optional<QByteArray> secret = std::nullopt;
};

/// A secret for pseudonyms.
struct ReportSecret {
  QByteArray bytes;
  /// It is the archive's own: the same pseudonyms in every report.
  bool ofArchive = false;
};

/// The archive's own secret; where there is none to be had, a new one that is kept nowhere. For a
/// worker.
[[nodiscard]] ReportSecret secretFor(const std::optional<archive::ArchivePlace>& place);

/// Writes PDF, HTML (one file) or CSV, by the ending of the path; for a worker. Gives an empty
/// text, or a sentence that says why it was not written.
[[nodiscard]] QString writeReport(const ReportOrder& order, const QString& path);

} // namespace afterbeat::window
