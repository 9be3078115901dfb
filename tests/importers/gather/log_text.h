/// Logs as text for tests: written, read, and put together from lines.
#pragma once

#include "core/resuslog/write_log.h"
#include "importers/gather/gather.h"

#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

namespace afterbeat {

inline std::string written(const Record& record) {
  std::string text;
  EXPECT_TRUE(writeRecord(record, [&](std::string_view piece) {
    text += piece;
    return true;
  }));
  return text;
}

/// The one record of a log in memory, with its problems.
inline Imported readBack(const std::string& text) {
  MemorySource source{text};
  auto file = readLog(source);
  EXPECT_TRUE(file) << text;
  if (!file || file->records.size() != 1) {
    ADD_FAILURE() << "not one record";
    return {};
  }
  Imported imported;
  imported.record = std::move(file->records[0].record);
  imported.problems = std::move(file->problems);
  return imported;
}

/// A source whose log has this header (without braces, beginning after the version) and lines.
inline GatherSource logSource(const std::string& label, const std::string& header,
                              const std::vector<std::string>& lines,
                              std::optional<Duration> offset = std::nullopt) {
  std::string text = "{\"resuslog\":\"1.0\"," + header + "}\n";
  for (const auto& line : lines) {
    text += line + "\n";
  }
  GatherSource source;
  source.imported = readBack(text);
  source.label = label;
  source.sha256 = std::string(64, 'a');
  source.offset = offset;
  return source;
}

inline GatherSource notesSource(const std::string& label, const std::string& notes,
                                std::optional<Duration> offset = std::nullopt) {
  auto imported = parseCsv(notes);
  EXPECT_TRUE(imported);
  return {imported.value_or(Imported{}), label, std::string(64, 'b'), offset};
}

inline std::vector<GatherSource> together(GatherSource a, GatherSource b) {
  std::vector<GatherSource> sources;
  sources.push_back(std::move(a));
  sources.push_back(std::move(b));
  return sources;
}

/// The sentences of a severity, one a line.
inline std::string said(const Imported& imported, Severity severity) {
  std::string text;
  for (const auto& problem : imported.problems) {
    if (problem.severity == severity) {
      text += sentence(problem) + "\n";
    }
  }
  return text;
}

} // namespace afterbeat
