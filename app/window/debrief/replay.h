/// Going through a record as it went: a cursor that moves with the time, faster where wanted, and
/// the line that says what is happening.
#pragma once

#include "app/papers/debrief_now.h"

#include <QList>
#include <QObject>

#include <array>
#include <chrono>
#include <functional>
#include <memory>
#include <optional>

class QAction;
class QTimer;

namespace afterbeat::window {

class Selection;
class Session;

/// Moves the selection's cursor. The waves follow, so that the cursor stays in view.
class Replay final : public QObject {
  Q_OBJECT

public:
  /// Time that only goes forward, from any begin.
  using Clock = std::function<std::chrono::nanoseconds()>;
  static constexpr std::array kSpeeds{1, 2, 4, 8};

  Replay(Session& session, Selection& selection, QObject* parent = nullptr, Clock clock = {});
  ~Replay() override;

  [[nodiscard]] bool playing() const { return playing_; }
  [[nodiscard]] int speed() const { return speed_; }
  /// Where the cursor is; where there is none, the begin of the resuscitation window.
  [[nodiscard]] Time position() const;
  /// What is happening there; without words while there is no record.
  [[nodiscard]] papers::Now now() const;

  /// At the end it begins again.
  void setPlaying(bool playing);
  void setSpeed(int speed);
  /// Play, the speeds, next and previous.
  [[nodiscard]] QList<QAction*> actions() const { return actions_; }
  [[nodiscard]] QAction* playAction() const { return actions_.front(); }
  /// One for each of `kSpeeds`.
  [[nodiscard]] QList<QAction*> speedActions() const { return actions_.mid(1, kSpeeds.size()); }
  /// What "next" and "previous" do while that place is in view; it answers whether it was. Else
  /// they go to the next pause.
  void setSteps(std::function<bool(bool forward)> steps) { steps_ = std::move(steps); }

  /// Moves the cursor to where it is by the clock; a timer calls it while playing.
  void tick();

signals:
  /// Playing, speed or the place of the cursor changed.
  void changed();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void makeActions();
  void follow();
  void anchor();
  void keepInView(Time t);
  void step(bool forward);
  [[nodiscard]] Time begin() const;
  [[nodiscard]] Time end() const;

  Session& session_;
  Selection& selection_;
  Clock clock_;
  QTimer* timer_;
  QList<QAction*> actions_;
  std::function<bool(bool)> steps_;
  std::unique_ptr<papers::NowTeller> teller_;
  /// The last place of the cursor: whoever takes the cursor away does not send the replay back.
  std::optional<Time> last_;
  bool playing_ = false, moving_ = false;
  int speed_ = 1;
  /// The cursor was at `anchorTime_` when the clock said `anchorClock_`.
  std::chrono::nanoseconds anchorClock_{};
  Time anchorTime_{};
};

} // namespace afterbeat::window
