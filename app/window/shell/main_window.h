/// The window of the program: puts the pages, the menus and the strips together.
#pragma once

#include <QMainWindow>

class QAction;
class QLabel;
class QStackedWidget;

namespace afterbeat::window {

class Appearance;
class ComparePage;
class CompareWays;
class DebriefPage;
class ElidedLabel;
class FigureSettingsActions;
class FileActions;
class FolderPage;
class HandoverActions;
class HandoverPage;
class LoadingPage;
class NoticeBar;
class PlacesPage;
class RecordPage;
class RefusalPage;
class Replay;
class Selection;
class Session;
class Toast;
class WelcomePage;

class MainWindow final : public QMainWindow {
  Q_OBJECT

public:
  MainWindow();
  ~MainWindow() override;

  /// Reads a file and shows it, or says why it cannot. Of a folder: the recordings in it to choose
  /// from, or the only one. Of an archive: its records, in the place for many.
  void openFile(const QString& path);
  /// Several: lists them to choose from.
  void openFiles(const QStringList& paths);
  [[nodiscard]] Session& session() const { return *session_; }
  [[nodiscard]] Selection& selection() const { return *selection_; }
  [[nodiscard]] PlacesPage* places() const { return places_; }
  [[nodiscard]] RecordPage* recordPage() const { return recordPage_; }
  [[nodiscard]] DebriefPage* debriefPage() const { return debriefPage_; }
  [[nodiscard]] Replay& replay() const { return *replay_; }
  [[nodiscard]] RefusalPage* refusalPage() const { return refusalPage_; }
  [[nodiscard]] FolderPage* folderPage() const { return folderPage_; }
  [[nodiscard]] NoticeBar* notices() const { return notices_; }
  [[nodiscard]] Toast* toast() const { return toast_; }
  [[nodiscard]] FileActions* files() const { return files_; }
  [[nodiscard]] HandoverActions& handover() const { return *handover_; }
  [[nodiscard]] HandoverPage* handoverPage() const { return handoverPage_; }
  /// The sheet where there is no recording.
  [[nodiscard]] HandoverPage* toldPage() const { return toldPage_; }
  [[nodiscard]] QAction* withoutRecording() const { return withoutRecording_; }
  [[nodiscard]] FigureSettingsActions& settings() const { return *settings_; }
  [[nodiscard]] ComparePage* comparePage() const { return comparePage_; }
  /// What fills the window: a place of the record, or the page that stands there without one.
  [[nodiscard]] QWidget* currentPage() const;

signals:
  /// The first picture with all data of a file, or the page that says why there is none, was
  /// painted.
  void pictureComplete();

protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void closeEvent(QCloseEvent* event) override;

private:
  void buildPages();
  void buildMenus();
  void buildStatusBar();
  void connectMessages();
  void buildCompare();
  void buildCompareMenu();
  void goToCompare();
  void openFromCompare(const QString& path);
  void putBeside();
  void goToTold();
  void leaveTold();
  void showPage();
  void tellComplete();
  void showTitle();

  Session* session_;
  Selection* selection_;
  Appearance* appearance_;
  FileActions* files_;
  HandoverActions* handover_;
  FigureSettingsActions* settings_;
  QStackedWidget* pages_ = nullptr;
  WelcomePage* welcomePage_ = nullptr;
  LoadingPage* loadingPage_ = nullptr;
  RefusalPage* refusalPage_ = nullptr;
  PlacesPage* places_ = nullptr;
  FolderPage* folderPage_ = nullptr;
  RecordPage* recordPage_ = nullptr;
  DebriefPage* debriefPage_ = nullptr;
  Replay* replay_ = nullptr;
  HandoverPage* handoverPage_ = nullptr;
  HandoverPage* toldPage_ = nullptr;
  QAction* withoutRecording_ = nullptr;
  ComparePage* comparePage_ = nullptr;
  CompareWays* compareWays_ = nullptr;
  /// The record that was opened from among many: closing it leads back to them.
  QString fromCompare_;
  NoticeBar* notices_ = nullptr;
  Toast* toast_ = nullptr;
  /// What stood in the window when the sheet without a recording was asked for.
  QWidget* beforeTold_ = nullptr;
  ElidedLabel* settingsText_ = nullptr;
};

} // namespace afterbeat::window
