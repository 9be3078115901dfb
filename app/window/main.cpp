#include "app/window/shell/main_window.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>

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

  QCommandLineParser parser;
  parser.setApplicationDescription(QCoreApplication::translate(
      "main", "Shows what was recorded during a cardiac-arrest rescue or drill."));
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument(QStringLiteral("file"),
                               QCoreApplication::translate("main", "Recording to open."),
                               QStringLiteral("[file]"));
  QCommandLineOption quit(QStringLiteral("quit-after-picture"));
  quit.setFlags(QCommandLineOption::HiddenFromHelp);
  parser.addOption(quit);
  parser.process(program);

  afterbeat::window::MainWindow window;
  if (parser.isSet(quit)) {
    QObject::connect(&window, &afterbeat::window::MainWindow::pictureComplete, &program,
                     &QApplication::quit);
  }
  const QStringList files = parser.positionalArguments();
  if (!files.isEmpty()) {
    window.openFile(files.front());
  }
  window.show();
  return QApplication::exec();
}
