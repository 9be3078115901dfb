#include "app/window/look/pictures_for_ears.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QStringList>
#include <QWidget>

namespace afterbeat::window {

namespace {

/// Asks the widget for its description where it has one of its own.
class SpokenPicture final : public QAccessibleWidget {
public:
  explicit SpokenPicture(QWidget* widget) : QAccessibleWidget(widget, QAccessible::Graphic) {}
  [[nodiscard]] QString text(QAccessible::Text kind) const override {
    const auto* described = dynamic_cast<const Described*>(widget());
    return kind == QAccessible::Description && described ? described->spokenDescription()
                                                         : QAccessibleWidget::text(kind);
  }
};

QAccessibleInterface* pictureFor(const QString& className, QObject* object) {
  static const QStringList pictures{
      "afterbeat::window::WavesPlot",    "afterbeat::window::DebriefRowsCanvas",
      "afterbeat::window::SheetPreview", "afterbeat::window::BesideCanvas",
      "afterbeat::window::ChartCanvas",
  };
  auto* widget = qobject_cast<QWidget*>(object);
  return widget && pictures.contains(className) ? new SpokenPicture(widget) : nullptr;
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
