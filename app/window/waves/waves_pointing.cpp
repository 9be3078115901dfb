/// Pointer, keys and fingers in the waves: zooming, moving, the cursor and the ruler.
#include "app/window/session/selection.h"
#include "app/window/waves/paper_grid.h"
#include "app/window/waves/waves_plot.h"

#include <QApplication>
#include <QGestureEvent>
#include <QHelpEvent>
#include <QNativeGestureEvent>
#include <QPinchGesture>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

/// A key moves the cursor by this share of what is shown.
constexpr double kKeyStep = 0.005;

} // namespace

Time WavesPlot::timeAtPixel(double x) const {
  const double s = scene_.lane->axis(QCPAxis::atBottom)->pixelToCoord(x);
  return timeFromSeconds(s).value_or(selection_.stretch().begin);
}

std::size_t WavesPlot::trackAt(double y) const {
  for (std::size_t i = 0; i < scene_.tracks.size(); ++i) {
    if (y <= scene_.tracks[i].rect->rect().bottom()) {
      return i;
    }
  }
  return scene_.tracks.empty() ? 0 : scene_.tracks.size() - 1;
}

std::optional<bool> WavesPlot::rulerEndAt(const QPointF& point) const {
  constexpr double kReach = 5;
  if (!scene_.ruler || scene_.ruler->track >= scene_.tracks.size()) {
    return std::nullopt;
  }
  const QCPAxisRect& track = *scene_.tracks[scene_.ruler->track].rect;
  if (point.y() < track.rect().top() - kReach || point.y() > track.rect().bottom() + kReach) {
    return std::nullopt;
  }
  const double first = std::fabs(pixelOf(track, scene_.ruler->from) - point.x());
  const double second = std::fabs(pixelOf(track, scene_.ruler->to) - point.x());
  return std::min(first, second) <= kReach ? std::optional(first < second) : std::nullopt;
}

bool WavesPlot::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), tipAt(help->pos()), this);
    return true;
  }
  return pinch(event) || QCustomPlot::event(event);
}

bool WavesPlot::pinch(QEvent* event) {
  if (!scene_.lane || drawn_.empty()) {
    return false;
  }
  if (event->type() == QEvent::NativeGesture) {
    const auto* fingers = static_cast<const QNativeGestureEvent*>(event);
    // The touchpad reports how much larger things shall become, step by step.
    constexpr double kLeast = 0.1;
    if (fingers->gestureType() == Qt::ZoomNativeGesture) {
      selection_.zoom(1 / std::max(kLeast, 1 + fingers->value()),
                      timeAtPixel(fingers->position().x()));
      return true;
    }
  }
  if (event->type() == QEvent::Gesture) {
    auto* gestures = static_cast<QGestureEvent*>(event);
    if (const auto* two = static_cast<QPinchGesture*>(gestures->gesture(Qt::PinchGesture))) {
      if (two->scaleFactor() > 0) {
        const double x = mapFromGlobal(two->centerPoint()).x();
        selection_.zoom(1 / two->scaleFactor(), timeAtPixel(x));
      }
      gestures->accept();
      return true;
    }
  }
  return false;
}

void WavesPlot::wheelEvent(QWheelEvent* event) {
  if (!scene_.lane || drawn_.empty()) {
    return;
  }
  const QPoint turned = event->angleDelta();
  const bool sideways = turned.x() != 0 || event->modifiers().testFlag(Qt::ShiftModifier);
  constexpr double kNotch = 120.0;
  if (sideways) {
    const double notches = (turned.x() != 0 ? turned.x() : turned.y()) / kNotch;
    const double length = static_cast<double>(selection_.stretch().length().count());
    selection_.moveBy(Duration{std::llround(-notches * length / 8)});
  } else {
    selection_.zoom(std::pow(0.8, turned.y() / kNotch), timeAtPixel(event->position().x()));
  }
  event->accept();
}

void WavesPlot::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !scene_.lane || drawn_.empty()) {
    return;
  }
  const auto end = rulerEndAt(event->position());
  measuring_ = end || event->modifiers().testFlag(Qt::ShiftModifier);
  if (end) {
    // The end that was taken is the one that moves.
    if (*end) {
      setRuler(Ruler{scene_.ruler->to, scene_.ruler->from, scene_.ruler->track});
    }
    setCursor(Qt::SizeHorCursor);
  } else if (measuring_) {
    const Time t = timeAtPixel(event->position().x());
    setRuler(Ruler{t, t, trackAt(event->position().y())});
    setCursor(Qt::CrossCursor);
  } else {
    dragFrom_ = event->position().x();
    pressedAt_ = event->position();
    setCursor(Qt::ClosedHandCursor);
  }
}

void WavesPlot::mouseMoveEvent(QMouseEvent* event) {
  if (!scene_.lane || drawn_.empty()) {
    return;
  }
  const double x = event->position().x();
  if (pressedAt_ &&
      (event->position() - *pressedAt_).manhattanLength() >= QApplication::startDragDistance()) {
    pressedAt_.reset();
  }
  if (dragFrom_) {
    selection_.moveBy(timeAtPixel(*dragFrom_) - timeAtPixel(x));
    dragFrom_ = x;
    return;
  }
  const QRect lane = scene_.lane->rect();
  const bool inside = x >= lane.left() && x <= lane.right() + 1;
  if (measuring_ && scene_.ruler) {
    const double kept = std::clamp<double>(x, lane.left(), lane.right() + 1);
    setRuler(Ruler{scene_.ruler->from, timeAtPixel(kept), scene_.ruler->track});
  }
  if (!measuring_) {
    rulerEndAt(event->position()) ? setCursor(Qt::SizeHorCursor) : unsetCursor();
  }
  selection_.setCursor(inside ? std::optional(timeAtPixel(x)) : std::nullopt);
}

void WavesPlot::mouseReleaseEvent(QMouseEvent* event) {
  const RhythmStretch* clicked = pressedAt_ ? rhythmAt(scene_, event->position()) : nullptr;
  if (clicked && clicked->isHint()) {
    emit hintClicked(timeAtPixel(event->position().x()));
  }
  pressedAt_.reset();
  if (measuring_ && scene_.ruler && scene_.ruler->from == scene_.ruler->to) {
    setRuler(std::nullopt);
  }
  measuring_ = false;
  dragFrom_.reset();
  unsetCursor();
}

void WavesPlot::leaveEvent(QEvent* event) {
  QCustomPlot::leaveEvent(event);
  if (!dragFrom_ && !measuring_) {
    selection_.setCursor(std::nullopt);
  }
}

void WavesPlot::moveCursor(double share, bool measuring) {
  const Interval& shown = selection_.stretch();
  const double length = static_cast<double>(shown.length().count());
  const Time now = selection_.cursor().value_or(shown.begin + shown.length() / 2);
  const Time before = measuring && scene_.ruler ? scene_.ruler->to : now;
  const Time next = before + Duration{std::llround(share * length)};
  const Time cut = std::clamp(next, selection_.extent().begin, selection_.extent().end);
  if (measuring) {
    const Ruler old = scene_.ruler.value_or(Ruler{now, now, 0});
    setRuler(Ruler{old.from, cut, old.track});
  }
  if (!shown.holds(cut)) {
    selection_.moveBy(cut - before);
  }
  selection_.setCursor(cut);
}

void WavesPlot::keyPressEvent(QKeyEvent* event) {
  const bool shift = event->modifiers() == Qt::ShiftModifier;
  if (!scene_.lane || drawn_.empty() || (event->modifiers() != Qt::NoModifier && !shift)) {
    QCustomPlot::keyPressEvent(event);
    return;
  }
  const auto measureTrack = [this](int by) {
    if (scene_.ruler) {
      const auto last = static_cast<int>(scene_.tracks.size()) - 1;
      const int next = std::clamp(static_cast<int>(scene_.ruler->track) + by, 0, last);
      setRuler(Ruler{scene_.ruler->from, scene_.ruler->to, static_cast<std::size_t>(next)});
    }
  };
  switch (event->key()) {
  case Qt::Key_Left:
    moveCursor(-kKeyStep, shift);
    break;
  case Qt::Key_Right:
    moveCursor(kKeyStep, shift);
    break;
  case Qt::Key_Up:
    measureTrack(-1);
    break;
  case Qt::Key_Down:
    measureTrack(1);
    break;
  case Qt::Key_Escape:
    setRuler(std::nullopt);
    selection_.setCursor(std::nullopt);
    break;
  default:
    QCustomPlot::keyPressEvent(event);
  }
}

void WavesPlot::followCursor() {
  scene_.cursor = selection_.cursor();
  if (scene_.lane) {
    update();
  }
}

void WavesPlot::setRuler(std::optional<Ruler> ruler) {
  if (ruler == scene_.ruler) {
    return;
  }
  scene_.ruler = ruler;
  if (scene_.lane) {
    update();
  }
  emit rulerChanged();
}

void WavesPlot::startRuler() {
  const Interval& shown = selection_.stretch();
  const Time from = selection_.cursor().value_or(shown.begin + shown.length() / 2);
  const std::size_t track = scene_.ruler ? scene_.ruler->track : 0;
  setRuler(Ruler{from, from + shown.length() / 20, track});
}

QString WavesPlot::rulerText() const {
  return scene_.ruler && scene_.ruler->track < scene_.tracks.size()
             ? rulerWords(*scene_.ruler, scene_.tracks[scene_.ruler->track])
             : QString();
}

QString WavesPlot::valueText(int track) const {
  const TrackFrame& frame = scene_.tracks[static_cast<std::size_t>(track)];
  return scene_.cursor ? valueWords(frame, *scene_.cursor) : QString();
}

void WavesPlot::setPaperGrid(bool on) {
  scene_.paperGrid = on;
  restyle();
  replot(rpQueuedReplot);
}

QString WavesPlot::paperScaleText() const {
  const auto ecg = std::find_if(scene_.tracks.begin(), scene_.tracks.end(),
                                [](const TrackFrame& track) { return isEcg(*track.channel); });
  if (!scene_.paperGrid || ecg == scene_.tracks.end()) {
    return {};
  }
  const PaperScale scale = paperScale(*ecg->rect, *this);
  const auto rounded = [](double mm) { return words().number(mm, mm < 10 ? 1 : 0); };
  return tr("ECG paper: %1 mm/s, %2 mm/mV on this screen")
      .arg(rounded(scale.mmPerSecond), rounded(scale.mmPerMillivolt));
}

void WavesPlot::usePaperSpeed() {
  if (!scene_.lane) {
    return;
  }
  const double shown = scene_.lane->rect().width() / (pixelsPerMillimetre(*this) * kPaperSpeed);
  const Interval& now = selection_.stretch();
  const double length = seconds(now.length());
  if (length > 0) {
    selection_.zoom(shown / length, selection_.cursor());
  }
}

} // namespace afterbeat::window
