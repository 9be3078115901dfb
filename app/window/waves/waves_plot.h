/// The wave tracks of one stretch, one over the other on one time axis.
#pragma once

#include "app/window/session/load.h"
#include "app/window/waves/time_ticker.h"
#include "app/window/waves/wave_marks.h"

#include <qcustomplot.h>

#include <vector>

namespace afterbeat::window {

class Selection;

/// Draws two points a device pixel at most, whatever the stretch. The wheel zooms around the
/// pointer, dragging moves.
class WavesPlot final : public QCustomPlot {
  Q_OBJECT

public:
  explicit WavesPlot(Selection& selection, QWidget* parent = nullptr);
  /// Shows the channels of a record; the copy keeps it alive.
  void show(const Loaded& loaded);
  void clearAll();
  void setWorking(std::vector<Interval> working);
  /// Draws the selection's stretch.
  void follow();
  [[nodiscard]] int trackCount() const { return static_cast<int>(tracks_.size()); }
  /// Points handed to the plot for a track.
  [[nodiscard]] int pointCount(int track) const;
  /// What is drawn, in words.
  [[nodiscard]] QString asText() const;

signals:
  void painted();

protected:
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  struct Track {
    std::size_t channel = 0;
    QCPGraph* graph = nullptr;
  };
  void addLane();
  void addTrack(std::size_t channel, bool first);
  void setMargins();
  void restyle();
  void feed();
  [[nodiscard]] int leftMargin() const;
  [[nodiscard]] Time timeAtPixel(double x) const;

  Selection& selection_;
  Loaded loaded_;
  WaveScene scene_;
  std::vector<Track> tracks_;
  QSharedPointer<TimeTicker> ticker_;
  std::optional<double> dragFrom_;
  /// What `follow` fed was drawn.
  bool replotted_ = false;
};

} // namespace afterbeat::window
