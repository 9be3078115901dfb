/// Runs the window's tests with settings of their own; without a display unless one is asked for.
#include <gtest/gtest.h>

#include <QApplication>
#include <QTemporaryDir>
#include <QTimer>

int main(int argc, char** argv) {
  const QTemporaryDir settings;
  qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  testing::InitGoogleTest(&argc, argv);
  QApplication program(argc, argv);
  QApplication::setApplicationName("afterbeat");
  // Inside the event loop, as the program runs: only then do palettes reach the widgets.
  QTimer::singleShot(0, &program, [] { QCoreApplication::exit(RUN_ALL_TESTS()); });
  return QApplication::exec();
}
