#include "tests/window/window_fixture.h"

#include <QApplication>
#include <QFile>

namespace afterbeat::window {

WindowTest::WindowTest() : page_(window_.recordPage()) {
  window_.resize(1280, 720);
  window_.show();
  // Without a window manager nobody else makes a window the active one, which shortcuts need.
  QApplication::setActiveWindow(&window_);
}

QString WindowTest::sample(const char* name) {
  return QStringLiteral(AFTERBEAT_SOURCE_DIR "/samples/") + QLatin1String(name);
}

QString WindowTest::fileWith(const char* name, const QByteArray& bytes) const {
  const QString path = folder_.filePath(QLatin1String(name));
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::WriteOnly));
  EXPECT_EQ(file.write(bytes), bytes.size());
  return path;
}

void WindowTest::open(const QString& path) {
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  window_.openFile(path);
  ASSERT_TRUE(complete.wait(kPatience));
  untilHints();
}

void WindowTest::untilHints() {
  QSignalSpy changed(&window_.session(), &Session::hintsChanged);
  ASSERT_TRUE(!window_.session().hintsAwaited() || changed.wait(kPatience));
  // What they change in the picture is painted.
  QCoreApplication::processEvents();
}

void WindowTest::untilFiguresChange(const std::function<void()>& does) {
  QSignalSpy changed(&window_.session(), &Session::figuresChanged);
  does();
  ASSERT_TRUE(changed.count() > 0 || changed.wait(kPatience));
}

QByteArray smallDrill() {
  QByteArray log = R"({"resuslog":"1.0","id":"urn:uuid:0b6f9f3e-5f1c-4c5e-9d65-2f0a1c9c1d10",)"
                   R"("recorded":"2026-04-17T19:05:00+02:00","kind":"drill",)"
                   R"("site":"South boathouse"})"
                   "\n";
  const auto add = [&log](const QString& line) { log += line.toUtf8() + '\n'; };
  add(R"({"t":0,"type":"power_on"})");
  add(R"({"t":5,"type":"electrodes","state":"attached"})");
  for (int i = 0; i < 60; ++i) {
    add(QStringLiteral(R"({"t":%1,"type":"compression","depth_mm":52})").arg(10 + i * 0.55));
  }
  add(R"({"t":50,"type":"analysis","end":56,"advice":"shock"})");
  add(R"({"t":60,"type":"shock","delivered":true,"energy_j":200})");
  for (int i = 0; i < 60; ++i) {
    add(QStringLiteral(R"({"t":%1,"type":"compression","depth_mm":52})").arg(64 + i * 0.55));
    if (i == 30) {
      // Hands off for two seconds: a pause only for thresholds below.
      i += 3;
    }
  }
  add(R"({"t":110,"type":"power_off"})");
  return log;
}

} // namespace afterbeat::window
