/// Gathers a channel's blocks as their lines come, and lays them out in time order at the end.
#pragma once

#include "core/record/channel.h"
#include "core/record/problem.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace afterbeat {

/// The longest stretch of samples a line should hold.
inline constexpr Duration kLongestBlock = std::chrono::seconds{5};

/// The blocks of one channel of one record.
class SampleStore {
public:
  /// `expected`: about how many samples may come; room for them is set aside, so that a long
  /// recording is not copied as it grows (untouched room costs no memory). `keep` false: blocks are
  /// checked, their values dropped.
  SampleStore(Channel& channel, std::size_t expected, bool keep)
      : channel_(channel), expected_(expected), keep_(keep) {}

  /// Adds a block; false if the text is not base64 of exactly `count` samples.
  [[nodiscard]] bool add(Time t, std::size_t count, std::string_view base64, int line);

  /// Sorts and joins blocks, drops what overlaps, and reports gaps and overlaps.
  void finish(std::vector<Problem>& problems);

private:
  /// A block as its line gave it.
  struct Written {
    Time t{};
    std::size_t first = 0;
    std::size_t count = 0;
    int line = 0;
  };
  /// The end of what is laid out so far, as its lines gave it.
  struct Reach {
    Time end{};
    bool any = false;
  };

  [[nodiscard]] Time endOf(Time t, std::size_t count) const;
  [[nodiscard]] std::size_t overlap(const Written& block, const Reach& reach,
                                    std::vector<Problem>& problems) const;
  void layOut(Written block, Reach& reach, std::vector<std::int16_t>& into, std::size_t& filled,
              std::vector<Problem>& problems);

  Channel& channel_;
  std::size_t expected_;
  bool keep_;
  std::vector<Written> written_;
  std::size_t total_ = 0;
};

} // namespace afterbeat
