/// The ways into a season: a folder, an archive, taking recordings in.
#pragma once

#include <QList>
#include <QObject>
#include <QStringList>

class QAction;
class QWidget;

namespace afterbeat::window {

class ChartView;
class SeasonDesk;

/// Dialogs and what is remembered of them.
class SeasonWays final : public QObject {
  Q_OBJECT

public:
  SeasonWays(SeasonDesk& desk, QWidget* window);
  /// A folder, an archive, a shared archive, taking in: what an empty place offers.
  [[nodiscard]] QList<QAction*> ways() const { return ways_; }
  /// Archives opened lately.
  [[nodiscard]] const QList<QAction*>& recent() const { return recent_; }
  /// What could not be read, with reasons.
  [[nodiscard]] QAction* broken() const { return broken_; }
  /// Opens an archive by what would be typed: a path or `service:NAME`.
  void openTyped(const QString& typed);

signals:
  /// The season's place is to be shown.
  void asked();
  void said(const QString& sentence);

private:
  void askFolder();
  void askArchive();
  void askService();
  void askTakeIn();
  void showBroken();
  void remember();
  void refreshRecent();

  SeasonDesk& desk_;
  QWidget* window_;
  QList<QAction*> ways_, recent_;
  QAction* broken_;
};

} // namespace afterbeat::window
