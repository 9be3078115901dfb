#include "core/signal/derive/ecg_of_record.h"

#include "core/signal/ecg/beats.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

/// A piece is this long, and this much more is read on both sides for filters and thresholds to
/// settle; whole steps of the hints' windows and whole seconds of the faults'.
constexpr double kPieceSeconds = 600, kMarginSeconds = 30;

/// A piece of a block with what is read around it.
struct EcgPiece {
  SignalView view;
  /// What the piece is for.
  Interval core;
  bool last = false;
};

/// Calls `take` with each piece of a block in turn.
template <typename Take>
void eachPiece(const Channel& channel, const SampleBlock& block, double factor, const Take& take) {
  const auto samples = [&channel](double s) {
    return static_cast<std::size_t>(std::max(1.0, std::round(s * channel.rateHz)));
  };
  const std::size_t length = samples(kPieceSeconds), margin = samples(kMarginSeconds);
  std::vector<double> values;
  for (std::size_t begin = 0; begin < block.count; begin += length) {
    const std::size_t end = std::min(block.count, begin + length);
    const std::size_t from = begin > margin ? begin - margin : 0;
    const std::size_t to = std::min(block.count, end + margin);
    readValues(channel, block, from, to - from, factor, values);
    take(EcgPiece{{channel.timeOf(block, from), channel.rateHz, values},
                  {channel.timeOf(block, begin), channel.timeOf(block, end)},
                  end == block.count});
  }
}

Rails railsOf(const Channel& channel, double factor) {
  RailLearner learner(channel.rateHz);
  const auto length =
      static_cast<std::size_t>(std::max(1.0, std::round(kPieceSeconds * channel.rateHz)));
  std::vector<double> values;
  for (const SampleBlock& block : channel.blocks) {
    for (std::size_t begin = 0; begin < block.count; begin += length) {
      readValues(channel, block, begin, std::min(length, block.count - begin), factor, values);
      learner.add(values);
    }
    learner.endRun();
  }
  return learner.rails();
}

/// Adds a fault found in a piece, cut to what the piece is for; one that goes on from the piece
/// before is the same.
void addCut(const FaultyStretch& found, const Interval& core, std::vector<FaultyStretch>& faults) {
  const Interval cut{std::max(found.where.begin, core.begin), std::min(found.where.end, core.end)};
  if (cut.begin >= cut.end) {
    return;
  }
  const auto before = std::find_if(faults.rbegin(), faults.rend(), [&](const FaultyStretch& one) {
    return one.fault == found.fault;
  });
  if (before != faults.rend() && cut.begin == core.begin && before->where.end == core.begin) {
    before->where.end = cut.end;
  } else {
    faults.push_back({cut, found.fault});
  }
}

std::vector<FaultyStretch> faultsOf(const Channel& channel, double factor, const Rails& rails) {
  std::vector<FaultyStretch> faults;
  for (const SampleBlock& block : channel.blocks) {
    eachPiece(channel, block, factor, [&](const EcgPiece& piece) {
      for (const FaultyStretch& found : ecgFaults(piece.view, rails)) {
        addCut(found, piece.core, faults);
      }
    });
  }
  std::stable_sort(
      faults.begin(), faults.end(),
      [](const FaultyStretch& a, const FaultyStretch& b) { return a.where.begin < b.where.begin; });
  return faults;
}

std::optional<EcgChannel> judged(const Record& record, std::size_t index) {
  const Channel& channel = record.channels[index];
  const auto factor = factorToUsual(channel.quantity, channel.unit);
  if (channel.quantity != "ecg" || !channel.drawable || channel.blocks.empty() || !factor) {
    return std::nullopt;
  }
  EcgChannel ecg;
  ecg.index = index;
  ecg.factor = *factor;
  ecg.rails = railsOf(channel, *factor);
  ecg.faults = faultsOf(channel, *factor, ecg.rails);
  std::vector<Interval> bad;
  for (const FaultyStretch& fault : ecg.faults) {
    bad.push_back(fault.where);
  }
  for (const SampleBlock& block : channel.blocks) {
    ecg.judged += channel.timeOf(block, block.count) - block.t;
  }
  ecg.judged -= total(merged(std::move(bad)));
  const SampleBlock& last = channel.blocks.back();
  ecg.length = channel.timeOf(last, last.count) - channel.blocks.front().t;
  return ecg;
}

/// Whether a moment belongs to a piece; what lies at its end belongs to the next.
bool belongs(Time t, const EcgPiece& piece) {
  return t >= piece.core.begin && (t < piece.core.end || piece.last);
}

} // namespace

std::optional<EcgChannel> bestEcg(const Record& record) {
  std::optional<EcgChannel> best;
  for (std::size_t i = 0; i < record.channels.size(); ++i) {
    if (auto one = judged(record, i); one && (!best || one->judged > best->judged)) {
      best = std::move(one);
    }
  }
  return best;
}

EcgPart ecgBetween(const Record& record, const EcgChannel& ecg, Time from, Time to) {
  const Channel& channel = record.channels[ecg.index];
  const auto after = std::upper_bound(channel.blocks.begin(), channel.blocks.end(), to,
                                      [](Time t, const SampleBlock& block) { return t < block.t; });
  EcgPart part;
  part.rateHz = channel.rateHz;
  part.begin = to;
  if (after == channel.blocks.begin()) {
    return part;
  }
  const SampleBlock& block = *(after - 1);
  const auto index = [&](Time t) {
    return static_cast<std::size_t>(std::clamp(std::ceil(seconds(t - block.t) * channel.rateHz),
                                               0.0, static_cast<double>(block.count)));
  };
  const std::size_t begin = index(from), end = std::max(begin, index(to));
  part.begin = channel.timeOf(block, begin);
  readValues(channel, block, begin, end - begin, ecg.factor, part.values);
  return part;
}

RhythmHints hintsOf(const Record& record, const EcgChannel& ecg, std::span<const Time> compressions,
                    std::span<const Interval> cpr) {
  const Channel& channel = record.channels[ecg.index];
  RhythmHints hints;
  for (const SampleBlock& block : channel.blocks) {
    std::vector<RhythmWindow> windows;
    std::vector<Time> beats;
    eachPiece(channel, block, ecg.factor, [&](const EcgPiece& piece) {
      for (const Beat& beat : findBeats(piece.view)) {
        if (belongs(beat.at, piece)) {
          beats.push_back(beat.at);
        }
      }
      for (RhythmWindow& window :
           measuredWindows({{&piece.view, 1}, ecg.faults, compressions, cpr, {}})) {
        if (belongs(window.where.begin, piece)) {
          windows.push_back(std::move(window));
        }
      }
    });
    if (block.count > 0) {
      addRun(hints, std::move(windows),
             {{block.t, channel.timeOf(block, block.count)}, channel.rateHz}, beats);
    }
  }
  return hints;
}

} // namespace afterbeat
