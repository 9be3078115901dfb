#include "app/window/compare/report_writing.h"

#include "app/archive/pseudonym_secret.h"
#include "app/papers/season/report_page.h"
#include "app/papers/season/report_pdf.h"
#include "app/papers/season/season_csv.h"
#include "app/papers/season/without_identity.h"
#include "app/window/compare/archive_words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QSaveFile>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

QByteArray bytesFor(const ReportOrder& order, const QString& ending) {
  const bool hidden = order.secret.has_value();
  const Season& whole = order.source->season();
  std::optional<Season> nameless;
  if (hidden) {
    nameless = papers::withoutIdentity(
        whole, papers::Pseudonyms(*order.secret, papers::Words::inLanguage(order.language)));
  }
  const Season& season = nameless ? *nameless : whole;
  if (ending == QLatin1String("csv")) {
    QByteArray bytes;
    papers::writeCsv(season, order.chosen, [&bytes](const std::string& line) {
      bytes.append(line.data(), static_cast<qsizetype>(line.size()));
    });
    return bytes;
  }
  papers::ReportSettings settings;
  settings.language = order.language;
  settings.steps = hidden ? papers::withoutIdentity(order.steps) : order.steps;
  settings.figures = order.source->settings();
  if (hidden) {
    settings.figures.profile = papers::withoutIdentity(std::move(settings.figures.profile));
  }
  settings.withoutIdentity = hidden;
  settings.notRead = order.source->refused().size();
  const auto report = papers::makeSeasonReport(season, order.chosen, settings);
  return ending == QLatin1String("pdf") ? papers::reportAsPdf(report, QPageSize::A4)
                                        : papers::reportAsPage(report);
}

} // namespace

ReportSecret secretFor(const std::optional<archive::ArchivePlace>& place) {
  if (place) {
    const auto kept = archive::Archive::open(*place).and_then(&archive::pseudonymSecret);
    if (kept && static_cast<qsizetype>(kept->size()) >= papers::Pseudonyms::kLeastSecret) {
      return {QByteArray::fromStdString(*kept), true};
    }
  }
  return {QByteArray::fromStdString(archive::newSecret()), false};
}

QString writeReport(const ReportOrder& order, const QString& path) {
  const QString ending = QFileInfo(path).suffix().toLower();
  if (ending != QLatin1String("pdf") && ending != QLatin1String("html") &&
      ending != QLatin1String("csv")) {
    return tr("A report is written as .pdf, .html or .csv: choose one of these endings.");
  }
  try {
    const QByteArray bytes = bytesFor(order, ending);
    QSaveFile file(path);
    if (bytes.isEmpty() || !file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() ||
        !file.commit()) {
      return tr("The report was not written: %1.").arg(file.errorString());
    }
  } catch (const archive::ArchiveFailure& failure) {
    return archiveWords(failure.error);
  }
  return {};
}

} // namespace afterbeat::window
