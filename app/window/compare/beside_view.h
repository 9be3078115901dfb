/// Two to eight records side by side: who they are, what differs most, their rows under each other,
/// their moments and figures.
#pragma once

#include "app/window/compare/beside_picture.h"

#include <QThreadPool>
#include <QWidget>

class QAction;
class QComboBox;
class QGridLayout;
class QLabel;
class QScrollArea;
class QSplitter;
class QTableView;

namespace afterbeat::window {

class BesideCanvas;
class BesideEmpty;
class BesideLegend;
class BesideName;
class BesideTable;
class Session;

class BesideView final : public QWidget {
  Q_OBJECT

public:
  explicit BesideView(Session& session, QWidget* parent = nullptr);
  ~BesideView() override;

  /// Reads files and shows them; what was shown before stays in view until they are read.
  void open(const QStringList& paths);
  void stop();
  [[nodiscard]] bool busy() const { return watch_ != nullptr; }
  /// Files that were read, of those to be read.
  [[nodiscard]] int done() const { return watch_ ? watch_->done.load() : 0; }
  [[nodiscard]] int toRead() const { return toRead_; }
  [[nodiscard]] const Beside& beside() const { return beside_; }
  [[nodiscard]] const SideBySide& compared() const { return compared_; }
  [[nodiscard]] BesideCanvas* canvas() const { return canvas_; }
  [[nodiscard]] BesideEmpty* empty() const { return empty_; }
  [[nodiscard]] BesideLegend* legend() const { return legend_; }
  [[nodiscard]] QTableView* table() const { return table_; }
  [[nodiscard]] QComboBox* alignment() const { return alignment_; }
  [[nodiscard]] QComboBox* rowLength() const { return rowLength_; }
  [[nodiscard]] QString sentence() const;
  [[nodiscard]] QString asText() const;
  /// Next alignment, next length of a row.
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }

signals:
  /// Reading began, or ended (also by `stop`).
  void busyChanged();
  /// What was read is shown.
  void shown();
  void wanted(const QString& path);
  /// Nothing lies there, and the two latest of a kind and site are to.
  void latestWanted();

protected:
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;
  /// The picture takes the keys; a focus proxy would hide what stands before it from Tab.
  void focusInEvent(QFocusEvent* event) override;

private:
  void start(int files, std::function<Beside(BesideWatch&)> work);
  void finish(const std::shared_ptr<BesideWatch>& watch, Beside beside);
  void compare();
  void fillAlignment();
  void showNames();
  void showSentences();
  void showRows();
  void shareRoom();
  void seeAligned();
  [[nodiscard]] BesideOrder order() const;
  void fitTable();
  void restyle();
  [[nodiscard]] QString notInRows() const;
  QAction* cycle(const QString& text, const QKeySequence& key, QComboBox* box);

  Session& session_;
  Beside beside_;
  SideBySide compared_;
  std::optional<KeyMoment> wantedMoment_;
  /// The length of a row was chosen; else it follows the records.
  bool lengthChosen_ = false;
  QGridLayout* names_;
  QList<BesideName*> nameButtons_;
  QLabel *most_, *better_, *notes_;
  QComboBox *alignment_, *rowLength_;
  BesideCanvas* canvas_;
  BesideLegend* legend_;
  BesideEmpty* empty_;
  QWidget* filled_;
  QScrollArea* scroll_;
  BesideTable* model_;
  QTableView* table_;
  QSplitter* parts_;
  QList<QAction*> actions_;
  std::shared_ptr<BesideWatch> watch_;
  int toRead_ = 0;
  /// Last: waits for a worker while everything else still stands.
  QThreadPool pool_;
};

} // namespace afterbeat::window
