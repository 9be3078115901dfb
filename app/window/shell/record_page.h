/// One record, laid out: headline figures, rows, waves, and the panel beside them.
#pragma once

#include <QList>
#include <QWidget>

class QAction;
class QSplitter;

namespace afterbeat::window {

class HeadlineStrip;
class LowerArea;
class ProblemsStrip;
class Replay;
class RowsView;
class Selection;
class Session;
class SidePanel;
class Stepping;
class TablesView;
class WavesView;

/// Puts the places beside each other; what they show they know themselves.
class RecordPage final : public QWidget {
  Q_OBJECT

public:
  RecordPage(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] HeadlineStrip* headlines() const { return headlines_; }
  [[nodiscard]] ProblemsStrip* problemsStrip() const { return problemsStrip_; }
  [[nodiscard]] RowsView* rows() const { return rows_; }
  [[nodiscard]] WavesView* waves() const { return waves_; }
  [[nodiscard]] TablesView* tables() const { return tables_; }
  [[nodiscard]] Stepping* stepping() const { return stepping_; }
  [[nodiscard]] SidePanel* panel() const { return panel_; }
  [[nodiscard]] LowerArea* lower() const { return lower_; }
  /// Moving the keyboard from place to place.
  [[nodiscard]] QAction* nextPlace() const { return nextPlace_; }
  void saveState() const;
  /// The strip of the replay, over the rows from the first time it plays a record.
  void addReplay(Replay& replay);

signals:
  /// Rows, figures and waves of the record were painted.
  void pictureComplete();

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void startRecord();
  void fitWaves();
  /// Gives rows and waves their room, until the user has done so by hand.
  void shareRoom();
  void goToNextPlace();
  void tellComplete();

  Session& session_;
  Selection& selection_;
  SidePanel* panel_;
  HeadlineStrip* headlines_;
  ProblemsStrip* problemsStrip_;
  RowsView* rows_;
  WavesView* waves_;
  TablesView* tables_;
  LowerArea* lower_;
  Stepping* stepping_;
  QSplitter *across_, *down_;
  QAction* nextPlace_;
  /// A record was opened whose figures have not been shown yet.
  bool newRecord_ = false;
  bool sharedByHand_ = false;
  /// The picture of the present figures was not told complete yet.
  bool awaited_ = false;
  bool rowsPainted_ = true, wavesPainted_ = true;
};

} // namespace afterbeat::window
