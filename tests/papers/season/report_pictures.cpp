/// The comparison report as PDF and HTML, for the eye: report_pictures FOLDER
#include "app/papers/season/report_page.h"
#include "app/papers/season/report_pdf.h"
#include "app/papers/season/without_identity.h"
#include "core/compare/filter.h"
#include "tests/papers/charts/season_example.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>

#include <cstdio>

namespace {

using namespace afterbeat;
using namespace afterbeat::papers;

void write(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) {
    std::fprintf(stderr, "%s could not be written\n", qPrintable(path));
  }
}

void writeReport(const QString& path, const Season& season, const ReportSettings& settings) {
  const SeasonReport report = makeSeasonReport(season, everything(season), settings);
  write(path + ".pdf", reportAsPdf(report, QPageSize::A4));
  write(path + ".html", reportAsPage(report));
}

} // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  if (argc != 2 || !QDir().mkpath(QString::fromLocal8Bit(argv[1]))) {
    std::fprintf(stderr, "report_pictures FOLDER\n");
    return 2;
  }
  const QString folder = QString::fromLocal8Bit(argv[1]);
  using namespace std::chrono;
  ReportSettings settings;
  settings.steps.push_back({sys_days{2025y / April / 1}, "new training from here"});
  for (const std::size_t count : {0U, 1U, 4U, 40U, 400U}) {
    writeReport(QStringLiteral("%1/en-%2").arg(folder).arg(count), test::exampleSeason(count),
                settings);
  }
  settings.language = QStringLiteral("de");
  settings.withoutIdentity = true;
  settings.steps.clear();
  writeReport(folder + "/de-400",
              withoutIdentity(test::exampleSeason(400), Pseudonyms("0123456789abcdef")), settings);
  return 0;
}
