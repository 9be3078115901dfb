/// The searches that `ecgFaults` puts together, each over a whole run.
#pragma once

#include "core/signal/ecg/quality.h"

namespace afterbeat {

/// Collects stretches of samples of one kind of fault, and joins near ones.
class StretchCollector {
public:
  /// Stretches with at most `join` samples between them become one.
  StretchCollector(const SignalView& run, SignalFault fault, double join)
      : run_(run), fault_(fault), join_(join) {}

  /// Samples [begin, end); begins must not fall.
  void add(std::size_t begin, std::size_t end) {
    if (!sampled_.empty() &&
        static_cast<double>(begin) <= static_cast<double>(sampled_.back().end) + join_) {
      sampled_.back().end = std::max(sampled_.back().end, end);
    } else {
      sampled_.push_back({begin, end});
    }
  }
  void moveTo(std::vector<FaultyStretch>& out) const {
    for (const auto& [begin, end] : sampled_) {
      out.push_back(
          {{run_.timeAt(static_cast<double>(begin)), run_.timeAt(static_cast<double>(end))},
           fault_});
    }
  }

private:
  struct Samples {
    std::size_t begin, end;
  };
  const SignalView& run_;
  SignalFault fault_;
  double join_;
  std::vector<Samples> sampled_;
};

void findNeedles(const SignalView& ecg, std::vector<FaultyStretch>& out);
void findNoise(const SignalView& ecg, std::vector<FaultyStretch>& out);

} // namespace afterbeat
