/// Runs the window's tests with settings of their own; without a display unless one is asked for.
#include "app/window/look/remembered.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QTemporaryDir>
#include <QTimer>

namespace {

/// What one test chose is no other's start.
class OwnSettings final : public testing::EmptyTestEventListener {
  void OnTestStart(const testing::TestInfo&) override {
    for (const char* key : {"pause_threshold_s", "window_end", "profile", "own_profile"}) {
      afterbeat::window::remembered::setText(QLatin1String(key), {});
    }
  }
};

} // namespace

int main(int argc, char** argv) {
  const QTemporaryDir settings;
  qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  testing::InitGoogleTest(&argc, argv);
  testing::UnitTest::GetInstance()->listeners().Append(new OwnSettings);
  QApplication program(argc, argv);
  QApplication::setApplicationName("afterbeat");
  // Inside the event loop, as the program runs: only then do palettes reach the widgets.
  QTimer::singleShot(0, &program, [] { QCoreApplication::exit(RUN_ALL_TESTS()); });
  return QApplication::exec();
}
