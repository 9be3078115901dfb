#include "samples/waves.h"

#include <algorithm>

namespace afterbeat::samples {

namespace {

/// Seconds from the deepest point of a compression to the chest at rest.
constexpr double kHalfWidth = 0.26;
/// Depth drawn where the record gives none, mm.
constexpr double kUsualDepth = 52;
constexpr double kGravity = 9.81;

/// Something short that happens at a moment: a compression, a breath, a beat.
struct Event {
  double s = 0;
  /// How strong: mm for compressions, a share of the usual elsewhere.
  double size = 1;
  bool wide = false;
};

/// Sums over the events near a moment; moments must not go backwards.
class Nearby {
public:
  Nearby(const std::vector<Event>& events, double before, double after)
      : events_(events), before_(before), after_(after) {}

  /// The sum of `shape(event, seconds since it)` over the events in reach of `s`.
  template <typename Shape>
  double sum(double s, const Shape& shape) {
    while (first_ < events_.size() && events_[first_].s + after_ < s) {
      ++first_;
    }
    double total = 0;
    for (std::size_t i = first_; i < events_.size() && events_[i].s - before_ < s; ++i) {
      total += shape(events_[i], s - events_[i].s);
    }
    return total;
  }

private:
  const std::vector<Event>& events_;
  double before_, after_;
  std::size_t first_ = 0;
};

/// A value that wanders around `middle` and is pulled back to it.
class Wander {
public:
  Wander(double middle, double step, double pull) : value_(middle), step_(step), pull_(pull) {}
  double next(Dice& dice, double middle) {
    value_ += pull_ * (middle - value_) + step_ * dice.between(-1, 1);
    return value_;
  }

private:
  double value_, step_, pull_;
};

/// Fibrillation: a tone between 4 and 6 Hz and two weaker ones beside it, all drifting.
class Fibrillation {
public:
  explicit Fibrillation(double rateHz) : dt_(1 / rateHz) {}
  double next(Dice& dice, double amplitude) {
    const double hz = std::clamp(frequency_.next(dice, 5), 3.5, 6.5);
    turns_ += hz * dt_;
    const double size = amplitude * std::clamp(size_.next(dice, 1), 0.4, 1.6);
    return size * (sineOfTurns(turns_) + 0.45 * sineOfTurns(turns_ * 1.618) +
                   0.3 * sineOfTurns(turns_ * 0.573));
  }

private:
  double dt_, turns_ = 0;
  Wander frequency_{5, 0.08, 0.002}, size_{1, 0.03, 0.002};
};

/// One beat, mV, at `d` seconds from its largest wave.
double beat(const Event& e, double d) {
  if (e.wide) {
    return e.size *
           (0.45 * hill(d / 0.09) - 0.16 * hill((d - 0.11) / 0.07) - 0.2 * hill((d - 0.33) / 0.16));
  }
  return e.size *
         (0.1 * hill((d + 0.16) / 0.06) - 0.09 * hill((d + 0.035) / 0.025) +
          0.95 * hill(d / 0.035) - 0.2 * hill((d - 0.04) / 0.03) + 0.24 * hill((d - 0.28) / 0.12));
}

double depthOf(const Entry& entry) {
  return std::get<entry::Compression>(entry.data).depthMm.value_or(kUsualDepth);
}

std::vector<Event> compressionsOf(const Story& story) {
  std::vector<Event> events;
  for (const auto& entry : story.truth.compressions) {
    events.push_back({seconds(entry.t), depthOf(entry)});
  }
  return events;
}

std::vector<Event> breathsOf(const Story& story) {
  std::vector<Event> events;
  for (const Time t : story.truth.breaths) {
    events.push_back({seconds(t)});
  }
  return events;
}

std::vector<Event> beatsOf(Story& story) {
  std::vector<Event> events;
  for (const auto& r : story.truth.rhythm) {
    if (r.is != RhythmKind::organised) {
      continue;
    }
    double s = seconds(r.from) + 0.2;
    while (s < seconds(r.to)) {
      events.push_back({s, story.dice.between(0.92, 1.08), r.wide});
      s += 60 / r.rate * (1 + 0.015 * story.dice.normal());
    }
  }
  return events;
}

class Painter {
public:
  Painter(Story& story, double from, double to)
      : story_(story), from_(from), to_(to), compressions_(compressionsOf(story)),
        breaths_(breathsOf(story)), beats_(beatsOf(story)) {}

  void ecg(double rateHz) {
    Nearby hands(compressions_, kHalfWidth, kHalfWidth), beats(beats_, 0.3, 0.6);
    Fibrillation fibrillation(rateHz);
    Wander drift(0, 0.004, 0.001), coupling(1, 0.02, 0.002);
    double afterShock = 0;
    const double fade = 1 - 1.4 / rateHz;
    add("ecg", "ecg", "mV", rateHz, 0.001, "ECG, pads", [&](double s) {
      const TrueRhythm* r = rhythmAt(s);
      const double couple = std::clamp(coupling.next(story_.dice, 1), 0.4, 1.6);
      double mv = drift.next(story_.dice, 0) + 0.008 * story_.dice.normal();
      if (r != nullptr && r->is == RhythmKind::shockable) {
        mv += fibrillation.next(story_.dice, r->amplitude);
      }
      mv += beats.sum(s, beat);
      mv += couple * hands.sum(s, [](const Event& e, double d) {
        const double x = d / kHalfWidth;
        return e.size / kUsualDepth * (0.55 * hill(x) + 0.16 * hillSlope(x));
      });
      afterShock = shockWithin(s, 1 / rateHz) ? 9.5 : afterShock * fade;
      return std::clamp(mv + afterShock, -10.0, 10.0);
    });
  }

  void impedance(double rateHz) {
    Nearby hands(compressions_, kHalfWidth, kHalfWidth), breaths(breaths_, 0.3, 1.6);
    Wander drift(82, 0.012, 0.0002);
    double afterShock = 0;
    const double fade = 1 - 0.3 / rateHz;
    add("impedance", "impedance", "Ohm", rateHz, 0.005, "Chest impedance, pads", [&](double s) {
      const double lungs =
          breaths.sum(s, [](const Event&, double d) { return 0.9 * hill((d - 0.65) / 0.95); });
      const double chest = hands.sum(s, [](const Event& e, double d) {
        return -0.45 * e.size / kUsualDepth * hill(d / kHalfWidth);
      });
      afterShock = shockWithin(s, 1 / rateHz) ? 4 : afterShock * fade;
      return drift.next(story_.dice, 82) + lungs + chest - afterShock + 0.01 * story_.dice.normal();
    });
  }

  void depth(double rateHz) {
    Nearby hands(compressions_, kHalfWidth, kHalfWidth);
    add("depth", "depth", "mm", rateHz, 0.01, "Chest compression depth", [&](double s) {
      return hands.sum(s, [](const Event& e, double d) { return e.size * hill(d / kHalfWidth); }) +
             0.15 * story_.dice.normal();
    });
  }

  void acceleration(double rateHz) {
    Nearby hands(compressions_, kHalfWidth, kHalfWidth);
    add("acceleration", "acceleration", "m/s2", rateHz, 0.005, "Chest acceleration", [&](double s) {
      // depth'' in m/s2; the sensor feels its negative, and gravity's share.
      const double inwards = hands.sum(s, [](const Event& e, double d) {
        return e.size / 1000 * hillCurvature(d / kHalfWidth) / (kHalfWidth * kHalfWidth);
      });
      return kGravity - inwards + 0.06 * story_.dice.normal();
    });
  }

private:
  template <typename Value>
  void add(const char* id, const char* quantity, const char* unit, double rateHz, double scale,
           const char* label, const Value& value) {
    Channel channel;
    channel.id = id;
    channel.quantity = quantity;
    channel.unit = unit;
    channel.rateHz = rateHz;
    channel.scale = scale;
    channel.label = label;
    rhythm_ = 0;
    shock_ = 0;
    const auto count = static_cast<std::size_t>(std::floor((to_ - from_) * rateHz));
    channel.samples.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
      const double raw = value(from_ + static_cast<double>(i) / rateHz) / scale;
      channel.samples.push_back(
          static_cast<std::int16_t>(std::floor(std::clamp(raw, -32767.0, 32766.0) + 0.5)));
    }
    channel.blocks.push_back({at(from_), 0, count});
    story_.record.channels.push_back(std::move(channel));
  }

  const TrueRhythm* rhythmAt(double s) {
    const auto& all = story_.truth.rhythm;
    while (rhythm_ < all.size() && seconds(all[rhythm_].to) <= s) {
      ++rhythm_;
    }
    return rhythm_ < all.size() && seconds(all[rhythm_].from) <= s ? &all[rhythm_] : nullptr;
  }

  /// Whether a delivered shock falls into the sample that begins at `s`.
  bool shockWithin(double s, double length) {
    const auto& all = story_.truth.shocks;
    while (shock_ < all.size() && (!all[shock_].delivered || seconds(all[shock_].t) < s)) {
      ++shock_;
    }
    return shock_ < all.size() && seconds(all[shock_].t) < s + length;
  }

  Story& story_;
  double from_, to_;
  std::vector<Event> compressions_, breaths_, beats_;
  std::size_t rhythm_ = 0, shock_ = 0;
};

} // namespace

void addWaves(Story& story, double from, double to, const WaveRates& rates) {
  Painter painter(story, from, to);
  if (rates.ecg > 0) {
    painter.ecg(rates.ecg);
  }
  if (rates.impedance > 0) {
    painter.impedance(rates.impedance);
  }
  if (rates.depth > 0) {
    painter.depth(rates.depth);
  }
  if (rates.acceleration > 0) {
    painter.acceleration(rates.acceleration);
  }
}

} // namespace afterbeat::samples
