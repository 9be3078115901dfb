/// The least a program does that writes one page with Qt, to compare the handover sheet with.
#include <QGuiApplication>
#include <QPainter>
#include <QPdfWriter>

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  QPdfWriter writer(argc > 1 ? argv[1] : "plain.pdf");
  writer.setPageSize(QPageSize(QPageSize::A4));
  QPainter painter(&writer);
  painter.setFont(QFont("Inter", 12));
  painter.drawText(100, 100, "One line of text");
  return 0;
}
