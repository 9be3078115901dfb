/// The wave tracks of one stretch, one over the other on one time axis.
#pragma once

#include "app/window/look/pictures_for_ears.h"
#include "app/window/session/load.h"
#include "app/window/signals/suppressed_ecg.h"
#include "app/window/waves/time_ticker.h"
#include "app/window/waves/wave_cursor.h"
#include "app/window/waves/wave_marks.h"

#include <qcustomplot.h>

#include <QSet>

#include <vector>

namespace afterbeat::window {

class Selection;

/// Draws two points a device pixel at most, whatever the stretch. The wheel and two fingers zoom
/// around the pointer, dragging moves, dragging with Shift measures.
class WavesPlot final : public QCustomPlot, public Described {
  Q_OBJECT

public:
  /// "ECG" for "ecg"; a quantity without a word of ours as it stands.
  [[nodiscard]] static QString quantityWords(const QString& quantity);
  explicit WavesPlot(Selection& selection, QWidget* parent = nullptr);
  /// Shows the channels of a record; the copy keeps it alive.
  void show(const Loaded& loaded);
  void clearAll();
  /// The height that is in view: an ECG gets of it what it can before other tracks do.
  void setViewHeight(int height);
  /// The height at which ECG tracks can be read and every other track is whole.
  [[nodiscard]] int goodHeight() const;
  /// The least height with one track that can be read.
  [[nodiscard]] int leastHeight() const;
  /// A track under the one it was made from, labelled; null: none.
  void setSuppressed(std::shared_ptr<const SuppressedEcg> track);
  /// Where that track is; nothing while there is none.
  [[nodiscard]] std::optional<QRect> suppressedTrack() const;
  /// What the signals say about rhythm and shocks; `hints` may be null.
  void setRhythms(std::shared_ptr<const Rhythms> rhythms, std::shared_ptr<const Derived> hints);
  [[nodiscard]] const Rhythms& rhythms() const { return *scene_.rhythms; }
  /// Where a line of the lane is; those of rhythms follow the first three.
  [[nodiscard]] QRect lineOfLane(int index) const { return laneLine(scene_, index); }
  /// What is said about a place that is pointed at.
  [[nodiscard]] QString tipAt(const QPointF& point) const { return window::tipAt(scene_, point); }
  void setWorking(std::vector<Interval> working);
  /// Leaves out the tracks of these quantities ("depth"); never all.
  void setHidden(const QSet<QString>& quantities);
  /// The squares of ECG paper under ECG tracks.
  void setPaperGrid(bool on);
  /// "12 mm/s · 8 mm/mV on this screen"; empty without an ECG or without the squares.
  [[nodiscard]] QString paperScaleText() const;
  /// Zooms so that a second is 25 mm long on this screen.
  void usePaperSpeed();
  /// Measures between two moments of a track; none: takes the ruler away.
  void setRuler(std::optional<Ruler> ruler);
  [[nodiscard]] const std::optional<Ruler>& ruler() const { return scene_.ruler; }
  /// What the ruler says; empty without one.
  [[nodiscard]] QString rulerText() const;
  /// Where the ruler's words stand; never over a track.
  [[nodiscard]] QRectF rulerBox() const { return cursor_.rulerBox(); }
  /// Begins a ruler at the cursor, or at the middle of what is shown.
  void startRuler();
  /// What is written at a track for the moment pointed at: its value there.
  [[nodiscard]] QString valueText(int track) const;
  /// Draws the selection's stretch.
  void follow();
  [[nodiscard]] int trackCount() const { return static_cast<int>(drawn_.size()); }
  /// The line drawn in a track: two points a device pixel at most.
  [[nodiscard]] const std::vector<TracePoint>& points(int track) const;
  /// What is drawn, in words.
  [[nodiscard]] QString asText() const;
  [[nodiscard]] QString spokenDescription() const override { return asText(); }

signals:
  void painted();
  void rulerChanged();
  /// A rhythm hint was clicked at this moment.
  void hintClicked(Time t);

protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  void addLane();
  void addTrack(std::size_t channel, bool first);
  void addSuppressed();
  void showAnew();
  void addFrame(const Channel& source, const Wave& wave, bool first);
  void addTracks();
  void followCursor();
  void moveCursor(double share, bool measuring);
  /// Whether a point takes hold of an end of the ruler, and of which: the first one?
  [[nodiscard]] std::optional<bool> rulerEndAt(const QPointF& point) const;
  [[nodiscard]] std::size_t trackAt(double y) const;
  [[nodiscard]] bool pinch(QEvent* event);
  void setMargins();
  void fitTicks();
  void fitTracks();
  /// Everything but the tracks: the lane of words and the line of clock times.
  [[nodiscard]] int heightAround() const;
  void restyle();
  void feed();
  /// Room for names, units and values beside the tracks.
  [[nodiscard]] int neededLeftMargin() const;
  [[nodiscard]] Time timeAtPixel(double x) const;

  Selection& selection_;
  Loaded loaded_;
  WaveScene scene_;
  /// Beside `scene_.tracks`: what each track is drawn from.
  std::vector<const Wave*> drawn_;
  std::shared_ptr<const SuppressedEcg> suppressed_;
  QSharedPointer<TimeTicker> ticker_;
  WaveCursor cursor_;
  QSet<QString> hidden_;
  /// The left margin of lane and tracks.
  int left_ = 0;
  int viewHeight_ = 0;
  std::optional<double> dragFrom_;
  /// Where the button went down, until it has moved from there.
  std::optional<QPointF> pressedAt_;
  /// Shift was held when the button went down: dragging measures.
  bool measuring_ = false;
  /// What `follow` fed was drawn.
  bool replotted_ = false;
};

} // namespace afterbeat::window
