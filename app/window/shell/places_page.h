/// One open record and its places: what is open stands at the top with the switch between the
/// places beside it; below it the chosen place.
#pragma once

#include <QKeySequence>
#include <QList>
#include <QWidget>

class QAction;
class QActionGroup;
class QHBoxLayout;
class QStackedWidget;

namespace afterbeat::window {

class HeaderStrip;
class IncompleteStrip;
class Session;

class PlacesPage final : public QWidget {
  Q_OBJECT

public:
  explicit PlacesPage(Session& session, QWidget* parent = nullptr);
  [[nodiscard]] HeaderStrip* header() const { return header_; }
  /// What is missing from a recording that is not whole; over every place.
  [[nodiscard]] IncompleteStrip* incomplete() const { return incomplete_; }
  /// Adds a place at the end of the switch. `key` names it in what is remembered: the place of the
  /// last use is shown again. `action` is the menu's text for going there.
  void addPlace(QWidget* place, const QString& key, const QString& name, const QString& action,
                const QKeySequence& shortcut);
  /// A widget at the right of the switch, there for every place.
  void addToHeader(QWidget* widget);
  /// A button at the end of the switch that leads out of the record.
  void addWayOut(QAction* action);
  /// Goes to a place that was added.
  void goTo(QWidget* place);
  [[nodiscard]] QWidget* place() const;
  /// One for each place, in their order.
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }

signals:
  void placeChanged();

private:
  void markChosen();

  HeaderStrip* header_;
  IncompleteStrip* incomplete_;
  QHBoxLayout* switch_;
  QStackedWidget* stack_;
  QActionGroup* group_;
  QList<QAction*> actions_;
};

} // namespace afterbeat::window
