#include "app/window/compare/compare_page.h"
#include "app/window/look/language.h"
#include "app/window/look/tour.h"
#include "app/window/shell/main_window.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QLocale>

#include <cstdio>

namespace {

/// Help and version need no display.
bool asksForWords(int argc, char** argv) {
  for (int i = 1; i < argc; ++i) {
    const QByteArray word(argv[i]);
    if (word == "-h" || word == "--help" || word == "--help-all" || word == "-v" ||
        word == "--version") {
      return true;
    }
  }
  return false;
}

} // namespace

int main(int argc, char** argv) {
  if (asksForWords(argc, argv)) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  QApplication program(argc, argv);
  QApplication::setApplicationName(QStringLiteral("afterbeat"));
  QApplication::setApplicationDisplayName(QStringLiteral("Afterbeat"));
  QApplication::setApplicationVersion(QStringLiteral(AFTERBEAT_VERSION));
  QApplication::setDesktopFileName(QStringLiteral("afterbeat"));
  QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/afterbeat.png")));
  using namespace afterbeat::window;
  speak(languageFor(LanguageActions::chosen(), QLocale::system().uiLanguages()));

  QCommandLineParser parser;
  parser.setApplicationDescription(QCoreApplication::translate(
      "main", "Shows what was recorded during a cardiac-arrest rescue or drill."));
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument(
      QStringLiteral("file"),
      QCoreApplication::translate("main", "Recording, folder or archive to open; several "
                                          "recordings are listed."),
      QStringLiteral("[file...]"));
  QCommandLineOption quit(QStringLiteral("quit-after-picture"));
  quit.setFlags(QCommandLineOption::HiddenFromHelp);
  parser.addOption(quit);
  QCommandLineOption table(QStringLiteral("quit-after-table"));
  table.setFlags(QCommandLineOption::HiddenFromHelp);
  parser.addOption(table);
  QCommandLineOption tour(QStringLiteral("tour"), QString(), QStringLiteral("script"));
  tour.setFlags(QCommandLineOption::HiddenFromHelp);
  parser.addOption(tour);
  parser.process(program);

  MainWindow window;
  if (parser.isSet(quit)) {
    QObject::connect(&window, &MainWindow::pictureComplete, &program, &QApplication::quit);
  }
  if (parser.isSet(table)) {
    QObject::connect(window.comparePage(), &ComparePage::tablePainted, &program, [](bool whole) {
      std::puts(whole ? "all records" : "latest records");
      std::fflush(stdout);
      if (whole) {
        QApplication::quit();
      }
    });
  }
  const QStringList files = parser.positionalArguments();
  window.openFiles(files);
  window.show();
  if (parser.isSet(tour)) {
    new Tour(window, parser.value(tour), &program);
  }
  return QApplication::exec();
}
