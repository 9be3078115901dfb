#include "core/resuslog/sealed_output.h"

#include "core/resuslog/json_text.h"

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat {

void SealedOutput::close(Time t) {
  const std::string text = fmt::format(R"({{"t":{},"type":"end","entries":{},"sha256":"{}"}})",
                                       secondsText(t.time_since_epoch()), entries_, sha_.hex());
  line(text);
}

std::optional<Time> closingTime(const Record& record) {
  std::optional<Time> latest;
  const auto raise = [&](Time t) { latest = latest ? std::max(*latest, t) : t; };
  for (const Entry& entry : record.entries) {
    // Where a stretch was never closed, it ends at the time of the closing line: keep it there.
    if (entry.neverClosed && entry.end) {
      raise(*entry.end);
    }
  }
  if (latest) {
    return latest;
  }
  if (record.lastTime) {
    raise(*record.lastTime);
  }
  for (const Entry& entry : record.entries) {
    if (entry.hasTime) {
      raise(entry.lastTime());
    }
  }
  for (const Channel& channel : record.channels) {
    if (channel.lastLine) {
      raise(*channel.lastLine);
    }
  }
  return latest;
}

} // namespace afterbeat
