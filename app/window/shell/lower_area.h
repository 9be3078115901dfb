/// The area under the rows: the waves of the selected stretch, and whatever else is looked at in
/// breadth.
#pragma once

#include <QKeySequence>
#include <QList>
#include <QTabWidget>

class QAction;

namespace afterbeat::window {

class LowerArea final : public QTabWidget {
  Q_OBJECT

public:
  explicit LowerArea(QWidget* parent = nullptr);
  /// Adds a page with an action that shows it. The tabs appear with the second page.
  void addPage(QWidget* page, const QString& name, const QString& text,
               const QKeySequence& shortcut);
  /// One for each page, in their order.
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }

private:
  QList<QAction*> actions_;
};

} // namespace afterbeat::window
