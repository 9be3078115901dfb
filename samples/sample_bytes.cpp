#include "core/resuslog/write_log.h"
#include "samples/samples.h"
#include "samples/truth.h"

namespace afterbeat::samples {

std::string logBytes(const Sample& sample) {
  const Story& story = sample.story;
  std::string bytes;
  const bool written = writeRecord(story.record, [&](std::string_view piece) {
    bytes += piece;
    return true;
  });
  if (!written) {
    return {};
  }
  if (sample.cutAtCompression) {
    const Entry& broken = story.truth.compressions.at(*sample.cutAtCompression);
    const std::string line = entryLine(broken, story.record.header);
    const auto found = bytes.find(line);
    if (found == std::string::npos) {
      return {};
    }
    bytes.resize(found + line.size() / 2);
  }
  return bytes;
}

std::string truthBytes(const Sample& sample) {
  if (!sample.cutAtCompression) {
    return truthJson(sample.story.record, sample.story.truth);
  }
  // What the reader still can know: the entries written before the line that was cut.
  Truth truth = sample.story.truth;
  truth.compressions.resize(*sample.cutAtCompression);
  truth.intervals.clear();
  truth.windowEnd = truth.compressions.back().t;
  std::erase_if(truth.breaths, [&](Time t) { return t > truth.windowEnd; });
  std::erase_if(truth.pauses, [&](const TruePause& p) { return p.to > truth.windowEnd; });
  truth.between.emplace_back("time_on", truth.windowEnd - Time{});
  return truthJson(sample.story.record, truth);
}

} // namespace afterbeat::samples
