/// The place of the waves: what stretch is shown, its tracks, and moving and zooming by key.
#pragma once

#include "app/window/look/figure_words.h"
#include <QKeySequence>
#include <QList>
#include <QWidget>

#include <functional>

class QAction;
class QLabel;
class QMenu;
class QScrollArea;

namespace afterbeat::window {

class ElidedLabel;
class HintWorking;
class Selection;
class Session;
class SuppressedEcgMaker;
class WavesPlot;

class WavesView final : public QWidget {
  Q_OBJECT

public:
  WavesView(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] WavesPlot* plot() const { return plot_; }
  /// The record has waves; otherwise a sentence stands here and little room is needed.
  [[nodiscard]] bool hasTracks() const;
  /// The height at which ECG tracks can be read and every track is in view.
  [[nodiscard]] int goodHeight() const;
  /// The least height with one track that can be read.
  [[nodiscard]] int leastHeight() const;
  /// The stretch in words, as it stands over the tracks.
  [[nodiscard]] QString heading() const;
  [[nodiscard]] QList<QAction*> actions() const { return actions_; }
  /// Ruler and ECG paper.
  [[nodiscard]] QList<QAction*> tools() const { return tools_; }
  /// One checkable entry for each quantity of the open record's channels.
  void fillTracks(QMenu* menu);
  /// Opens the working of the rhythm hint at a moment.
  void showHint(Time t);
  /// The ECG with its compression artefact suppressed, where it is wanted.
  [[nodiscard]] SuppressedEcgMaker& suppressed() const { return *suppressed_; }

signals:
  /// All of the present record's waves in the stretch were painted.
  void painted();
  /// More tracks are shown, or fewer, of the same record.
  void tracksChanged();

protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  [[nodiscard]] int headingHeight() const;
  void makeActions();
  void makeTools();
  void makeTrackActions();
  void offerTracks();
  void chooseTracks();
  void showScale();
  void add(const QString& text, const QList<QKeySequence>& keys, std::function<void()> does);
  void showRecord();
  void showRhythms();
  void showSuppressed();
  void follow();
  void followMeasure();
  void restyle();

  Session& session_;
  /// Clock times of the record shown.
  std::optional<Moments> moments_;
  Selection& selection_;
  static constexpr int kMostTracks = 9;
  QLabel* stretch_;
  ElidedLabel* what_;
  QLabel* none_;
  QLabel* scale_;
  WavesPlot* plot_;
  QScrollArea* scroll_;
  QList<QAction*> actions_, tools_, tracks_;
  QAction* paper_ = nullptr;
  /// Made when it is asked for.
  HintWorking* hintWorking_ = nullptr;
  SuppressedEcgMaker* suppressed_ = nullptr;
};

} // namespace afterbeat::window
