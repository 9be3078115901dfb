/// What is happening at one moment of a record, in words that are read at the back of a room.
#pragma once

#include "app/papers/words.h"
#include "core/measures/figures.h"

#include <QString>

#include <optional>
#include <vector>

namespace afterbeat::papers {

enum class NowKind : std::uint8_t {
  outside,
  handsOn,
  handsOff,
  shock,
  circulation,
  notCounted,
  unknown
};

struct Now {
  NowKind kind = NowKind::unknown;
  /// "09:15:02", or "3 min 5 s after power-on".
  QString clock;
  /// "Hands on, 112 a minute", "Hands off for 12 s, analysis", "Shock 2".
  QString words;
};

/// Asked many times a second while a record is replayed: what it needs is put in order once.
class NowTeller {
public:
  /// Keeps what it needs; `record` and `figures` may go.
  NowTeller(const Record& record, const Figures& figures, Words say);
  [[nodiscard]] Now at(Time t) const;

  /// A shock is told from its moment on for this long.
  static constexpr Duration kShockShown{1'500'000};

private:
  struct Analysed {
    Interval stretch;
    std::optional<Advice> advice;
  };
  struct Shocked {
    Time t{};
    QString words;
  };
  struct Rated {
    Interval stretch;
    std::optional<double> rate;
  };
  [[nodiscard]] QString clockAt(Time t) const;
  [[nodiscard]] std::optional<double> rateAt(Time t) const;
  [[nodiscard]] Now handsAt(Time t) const;
  [[nodiscard]] QString analysisAt(Time t) const;

  Words say_;
  /// Header and power-on: all that is needed to name a moment.
  Record frame_;
  std::optional<Interval> window_;
  Evidence evidence_ = Evidence::none;
  Duration threshold_{};
  std::vector<Time> compressions_;
  std::vector<Interval> pauses_, circulation_;
  std::vector<NotCounted> notCounted_;
  std::vector<Analysed> analyses_;
  std::vector<Shocked> shocks_;
  std::vector<Rated> stretches_;
};

} // namespace afterbeat::papers
