/// Makes event logs for tests.
#pragma once

#include "core/bytes/digest.h"
#include "core/resuslog/read_log.h"
#include "core/resuslog/write_log.h"

#include <string>
#include <string_view>
#include <vector>

namespace afterbeat::test {

/// A header with two channels of 4 samples a second.
inline constexpr std::string_view kHeader =
    R"({"resuslog":"1.0","id":"urn:uuid:123e4567-e89b-42d3-a456-426614174000",)"
    R"("recorded":"2026-03-14T09:12:30+01:00","kind":"drill","channels":[)"
    R"({"id":"ecg","quantity":"ecg","unit":"mV","rate_hz":4,"scale":0.5},)"
    R"({"id":"odd","quantity":"pleth","rate_hz":4,"encoding":"int24be"}]})";

/// The same without channels.
inline constexpr std::string_view kPlainHeader =
    R"({"resuslog":"1.0","id":"urn:uuid:123e4567-e89b-42d3-a456-426614174000",)"
    R"("recorded":"2026-03-14T09:12:30+01:00","kind":"rescue"})";

/// Lines with line ends.
inline std::string joined(const std::vector<std::string>& lines, std::string_view end = "\n") {
  std::string text;
  for (const std::string& line : lines) {
    text.append(line).append(end);
  }
  return text;
}

/// The text with a closing line that fits.
inline std::string closed(const std::string& text, std::size_t entries, double t = 100,
                          std::string_view end = "\n") {
  return text + R"({"t":)" + std::to_string(t) + R"(,"type":"end","entries":)" +
         std::to_string(entries) + R"(,"sha256":")" + sha256Hex(text) + "\"}" + std::string(end);
}

/// A header and entries, closed.
inline std::string sealedLog(const std::vector<std::string>& entries,
                             std::string_view header = kPlainHeader) {
  return closed(std::string(header) + "\n" + joined(entries), entries.size());
}

inline tl::expected<LogFile, Refusal> readText(std::string_view text,
                                               const ReadOptions& options = {}) {
  MemorySource source(text);
  return readLog(source, options);
}

/// Record `index` of the text, written again; empty if that fails.
inline std::string rewritten(std::string_view text, const ReadOptions& options = {},
                             std::size_t index = 0, RewriteReport* report = nullptr) {
  MemorySource source(text);
  const auto file = readLog(source, options);
  std::string out;
  if (!file) {
    return out;
  }
  const auto done = rewriteRecord(source, *file, index, [&](std::string_view bytes) {
    out += bytes;
    return true;
  });
  if (report != nullptr && done) {
    *report = *done;
  }
  return done ? out : std::string{};
}

/// A record in canonical form.
inline std::string written(const Record& record) {
  std::string out;
  const bool good = writeRecord(record, [&](std::string_view bytes) {
    out += bytes;
    return true;
  });
  return good ? out : std::string{};
}

/// A samples line of channel `ecg`.
inline std::string samples(double t, const std::vector<std::int16_t>& values,
                           std::string_view channel = "ecg") {
  return R"({"t":)" + std::to_string(t) + R"(,"type":"samples","channel":")" +
         std::string(channel) + R"(","count":)" + std::to_string(values.size()) + R"(,"data":")" +
         base64FromInt16(values) + "\"}";
}

} // namespace afterbeat::test
