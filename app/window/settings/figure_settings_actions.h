/// What the figures are computed with, as choices in a menu: pause threshold, end of the window,
/// guideline profile.
#pragma once

#include "core/measures/figures.h"

#include <QList>
#include <QObject>

class QAction;
class QActionGroup;
class QMenu;
class QWidget;

namespace afterbeat::window {

class Session;

class FigureSettingsActions final : public QObject {
  Q_OBJECT

public:
  FigureSettingsActions(Session& session, QWidget* parent);
  /// Puts the three submenus into a menu.
  void fill(QMenu* menu);
  /// Uses a profile of the user's own; false: `error` is a sentence, and nothing changed.
  bool useProfileFile(const QString& path, QString* error);
  /// "Pauses longer than 1.5 s · European guidelines 2021 · to the last activity".
  [[nodiscard]] QString asText() const;

signals:
  void problem(const QString& sentence);

private:
  QAction* add(QList<QAction*>& into, QActionGroup* group, const QString& text, const QString& key);
  void makeThresholds();
  void makeWindowEnds();
  void makeProfiles();
  void setThreshold(Duration threshold);
  void askThreshold();
  void askProfile();
  void setProfile(const Profile& profile);
  void markChosen();
  /// What was chosen when the program ran last.
  void recall();
  void remember() const;
  /// Puts a profile of the user's own into the menu.
  void offerOwn(const Profile& profile);

  Session& session_;
  QWidget* window_;
  QList<QAction*> thresholds_, ends_, profiles_;
  QAction* own_ = nullptr;
  std::optional<Profile> ownProfile_;
};

} // namespace afterbeat::window
