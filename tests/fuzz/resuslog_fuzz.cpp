// Any bytes at all: read, written again, and settled after the first time.
#include "core/resuslog/write_log.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

using namespace afterbeat;

void demand(bool good, const char* what) {
  if (!good) {
    std::fprintf(stderr, "broken promise: %s\n", what);
    std::abort();
  }
}

std::string again(ByteSource& source, const LogFile& file, std::size_t index, bool& changed) {
  std::string out;
  const auto report = rewriteRecord(source, file, index, [&](std::string_view bytes) {
    out += bytes;
    return true;
  });
  demand(report.has_value(), "a file that was read can be written again");
  changed = report->changed;
  return out;
}

void checkRecord(ByteSource& source, const LogFile& file, std::size_t index) {
  bool changed = false;
  const std::string once = again(source, file, index, changed);
  MemorySource onceSource(once);
  const auto settled = readLog(onceSource);
  demand(settled.has_value(), "what was written again can be read");
  demand(settled->records.size() == 1, "it holds one record");
  demand(settled->records.front().record.seal.matches, "its seal fits");
  demand(again(onceSource, *settled, 0, changed) == once && !changed,
         "writing it once more changes nothing");
  std::size_t size = 0;
  demand(writeRecord(file.records[index].record,
                     [&](std::string_view bytes) {
                       size += bytes.size();
                       return true;
                     }),
         "a record that was read can be written");
  demand(size > 0, "and is something");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  MemorySource source({reinterpret_cast<const char*>(data), size});
  const auto file = readLog(source, {RecordKind::test, true});
  if (!file) {
    demand(!sentence(file.error()).empty(), "a refusal is said in words");
    return 0;
  }
  for (const Problem& problem : file->problems) {
    demand(!sentence(problem).empty(), "a problem is said in words");
  }
  for (std::size_t i = 0; i < file->records.size(); ++i) {
    checkRecord(source, *file, i);
  }
  return 0;
}
