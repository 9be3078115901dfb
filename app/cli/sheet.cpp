#include "app/cli/commands.h"
#include "app/cli/derived.h"
#include "app/papers/handover_sheet.h"

#include <QDateTime>
#include <QFileInfo>
#include <QGuiApplication>

#include <fmt/format.h>

namespace afterbeat::cli {

Exit sheet(const SheetCommand& options, int& argc, char** argv) {
  Exit failure = Exit::fine;
  const auto settings = settingsFrom(options.settings, failure);
  if (!settings) {
    tell(settings.error());
    return failure;
  }
  if (sameFile(options.output, options.file)) {
    tell("The sheet would overwrite the record; choose another name.");
    return Exit::wrongUse;
  }
  const auto read = openAndDerive(options.file, deriveModeFrom(options.derive));
  if (!read) {
    tell(fmt::format("{}: {}", options.file, read.error()));
    return Exit::readOrWriteFailed;
  }
  const Opened* opened = &read->opened;
  Exit exit = tellProblems(options.file, opened->problems);
  const Figures figures = computeFigures(opened->record, *settings);

  qputenv("QT_QPA_PLATFORM", "offscreen");
  // Remarks of the toolkit about its surroundings are no words for the user.
  qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
  const QGuiApplication application(argc, argv);
  papers::SheetOptions sheetOptions;
  sheetOptions.paper = options.paper == "Letter" ? QPageSize::Letter : QPageSize::A4;
  sheetOptions.language = QString::fromStdString(options.language);
  sheetOptions.fileName = QFileInfo(QString::fromStdString(options.file)).fileName();
  sheetOptions.fileSha256 = QString::fromStdString(opened->sha256);
  sheetOptions.printedAt = QDateTime::currentDateTime().toString("yyyy-MM-dd HH:mm");
  QString error;
  if (!papers::writeHandoverPdf(QString::fromStdString(options.output), opened->record, figures,
                                sheetOptions, &error)) {
    tell(fmt::format("{}: {}", options.output, error.toStdString()));
    return Exit::readOrWriteFailed;
  }
  return exit;
}

} // namespace afterbeat::cli
