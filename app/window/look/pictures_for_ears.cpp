#include "app/window/look/pictures_for_ears.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QStringList>
#include <QWidget>

namespace afterbeat::window {

namespace {

QAccessibleInterface* pictureFor(const QString& className, QObject* object) {
  static const QStringList pictures{
      "afterbeat::window::WavesPlot",
      "afterbeat::window::DebriefRowsCanvas",
      "afterbeat::window::SheetPreview",
  };
  auto* widget = qobject_cast<QWidget*>(object);
  return widget && pictures.contains(className)
             ? new QAccessibleWidget(widget, QAccessible::Graphic)
             : nullptr;
}

} // namespace

void describePictures() {
  static bool done = false;
  if (!done) {
    QAccessible::installFactory(pictureFor);
    done = true;
  }
}

} // namespace afterbeat::window
