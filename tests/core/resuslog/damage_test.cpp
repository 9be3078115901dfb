// A small file, cut and changed at every byte: nothing crashes, whole lines survive, and writing it
// again settles it.
#include "log_text.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using test::closed;
using test::joined;
using test::kHeader;
using test::readText;
using test::rewritten;

std::vector<std::string> smallLines() {
  return {std::string(kHeader),
          R"({"t":-4.5,"type":"milestone","what":"collapse"})",
          R"({"t":0,"type":"power_on","note":"é \u00e9"})",
          test::samples(0, {1, -2, 300, kMissingSample}),
          R"({"t":1.5,"type":"analysis","open":true})",
          test::samples(1, {5, 6, 7, 8}),
          R"({"t":2.25,"type":"compression","depth_mm":52.5,"full_release":true})",
          R"({"t":1.5,"end":4.5,"type":"analysis","advice":"shock"})",
          R"({"t":6,"type":"shock","delivered":true,"energy_j":150,"maker":{"x":[1,2]}})",
          R"({"t":9,"type":"power_off"})"};
}

std::string smallLog() {
  const auto lines = smallLines();
  return closed(joined(lines), lines.size() - 1, 9);
}

/// The lines of a file that a reading took for entries, as they stand in it.
std::set<std::string> entryLines(const std::string& text, const LogFile& file) {
  std::set<std::string> lines;
  for (const LogRecord& log : file.records) {
    for (const LineSpan& span : log.lines) {
      if (span.fate == LineFate::entry) {
        lines.insert(text.substr(span.offset, span.length));
      }
    }
  }
  return lines;
}

/// Every byte of the file lies in one line or between two.
void expectCovered(const std::string& text, const LogFile& file) {
  std::uint64_t at = 0;
  for (const LogRecord& log : file.records) {
    for (const LineSpan& span : log.lines) {
      ASSERT_GE(span.offset, at);
      for (; at < span.offset; ++at) {
        ASSERT_NE(std::string_view("\r\n\xEF\xBB\xBF").find(text[at]), std::string_view::npos);
      }
      at = span.offset + span.length;
    }
  }
}

/// Reads, looks for the lines that must have survived, and writes twice.
void expectSalvaged(const std::string& text, const std::set<std::string>& intact) {
  const ReadOptions options{RecordKind::rescue, true};
  const auto file = readText(text, options);
  if (!file) {
    // Only a first line that names another version is refused when a header may be made up.
    ASSERT_EQ(file.error().kind, RefusalKind::otherVersion) << text;
    return;
  }
  ASSERT_NO_FATAL_FAILURE(expectCovered(text, *file));
  const auto found = entryLines(text, *file);
  for (const std::string& line : intact) {
    ASSERT_TRUE(found.count(line) > 0) << line << "\nin\n" << text;
  }
  for (std::size_t i = 0; i < file->records.size(); ++i) {
    const std::string once = rewritten(text, options, i);
    ASSERT_FALSE(once.empty());
    RewriteReport report;
    ASSERT_EQ(rewritten(once, {}, 0, &report), once) << text;
    ASSERT_FALSE(report.changed) << text;
  }
}

TEST(Damage, cutAtEveryByte) {
  const std::string text = smallLog();
  const auto lines = smallLines();
  for (std::size_t cut = 1; cut < text.size(); ++cut) {
    std::set<std::string> whole;
    std::size_t end = lines.front().size();
    for (std::size_t i = 1; i < lines.size(); ++i) {
      end += 1 + lines[i].size();
      if (end <= cut) {
        whole.insert(lines[i]);
      }
    }
    ASSERT_NO_FATAL_FAILURE(expectSalvaged(text.substr(0, cut), whole)) << cut;
  }
}

/// The entry lines that a change at one byte leaves alone.
std::set<std::string> untouched(const std::vector<std::string>& lines, std::size_t changed) {
  std::set<std::string> rest;
  std::size_t begin = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::size_t end = begin + lines[i].size();
    // The line feed belongs to both lines around it.
    const bool touched = changed >= (begin == 0 ? 0 : begin - 1) && changed <= end;
    if (i > 0 && !touched) {
      rest.insert(lines[i]);
    }
    begin = end + 1;
  }
  return rest;
}

class Damage : public testing::TestWithParam<char> {};

TEST_P(Damage, everyByteChanged) {
  const std::string good = smallLog();
  const auto lines = smallLines();
  for (std::size_t at = 0; at < good.size(); ++at) {
    std::string text = good;
    // 'F' stands for a flipped bit.
    text[at] = GetParam() == 'F' ? static_cast<char>(text[at] ^ 1) : GetParam();
    ASSERT_NO_FATAL_FAILURE(expectSalvaged(text, untouched(lines, at))) << at;
  }
}

INSTANTIATE_TEST_SUITE_P(Bytes, Damage, testing::Values('F', '\0', '\n', '"', '{', '\x80', '9'));

TEST(Damage, everyByteLeftOutOrDoubled) {
  const std::string good = smallLog();
  const auto lines = smallLines();
  for (std::size_t at = 0; at < good.size(); ++at) {
    ASSERT_NO_FATAL_FAILURE(expectSalvaged(std::string(good).erase(at, 1), untouched(lines, at)));
    ASSERT_NO_FATAL_FAILURE(
        expectSalvaged(std::string(good).insert(at, 1, good[at]), untouched(lines, at)));
  }
}

TEST(Damage, bufferFlushedTwiceAtEveryLine) {
  const auto lines = smallLines();
  for (std::size_t from = 1; from < lines.size(); ++from) {
    for (std::size_t to = from + 1; to <= lines.size(); ++to) {
      auto twice = lines;
      twice.insert(twice.begin() + static_cast<std::ptrdiff_t>(to),
                   lines.begin() + static_cast<std::ptrdiff_t>(from),
                   lines.begin() + static_cast<std::ptrdiff_t>(to));
      const std::string text = joined(twice);
      const auto file = readText(text);
      ASSERT_TRUE(file);
      const auto repeated =
          std::count_if(file->problems.begin(), file->problems.end(),
                        [](const Problem& p) { return p.kind == ProblemKind::repeatedLine; });
      ASSERT_EQ(repeated, static_cast<std::ptrdiff_t>(to - from));
      ASSERT_NO_FATAL_FAILURE(
          expectSalvaged(text, std::set<std::string>(lines.begin() + 1, lines.end())));
    }
  }
}

TEST(Damage, rubbishOfAllKinds) {
  std::uint32_t state = 1;
  const auto next = [&] { return state = state * 1664525U + 1013904223U; };
  const std::string letters = "{}[]\",:0123456789.eE-tfn\\u\"type\"\n\n\r\xEF\xBB\xBF\xff ";
  for (int round = 0; round < 3000; ++round) {
    std::string text = round % 3 == 0 ? std::string() : std::string(kHeader) + "\n";
    for (std::uint32_t n = next() >> 26U; n > 0; --n) {
      text += letters[(next() >> 16U) % letters.size()];
    }
    if (!text.empty() && readText(text, {RecordKind::test, true})) {
      ASSERT_NO_FATAL_FAILURE(expectSalvaged(text, {}));
    }
  }
}

} // namespace
} // namespace afterbeat
