/// Taking many files in: in parallel, step by step, and again where it was cut off.
#pragma once

#include "app/archive/archive.h"

#include <atomic>
#include <functional>

namespace afterbeat::archive {

struct TakeInOrder {
  /// Files, and folders that are looked through with all below them.
  std::vector<std::filesystem::path> sources;
  /// Also put the bytes of event logs into the archive.
  bool keepBytes = false;
  /// 0: one for each processor.
  unsigned threads = 0;
  /// Files (or half a second) from one commit to the next: what a cut costs at most.
  std::size_t filesInStep = 100;
};

/// How far it is; counts never go back.
struct TakeInProgress {
  /// Found so far, and all are found.
  std::size_t found = 0;
  bool allFound = false;
  /// Done with, of the found.
  std::size_t done = 0;
};

struct TakeInReport {
  std::size_t added = 0, changed = 0, known = 0;
  /// Files in folders that are no recordings by their ending.
  std::size_t leftAside = 0;
  /// Read with errors: what could be read is in.
  std::vector<std::filesystem::path> damaged;
  /// New versions of records that were there.
  std::vector<std::filesystem::path> changedFiles;
  std::vector<RefusedFile> refused;
  /// Records that were there and got figures under settings or definitions new to them.
  std::size_t computedAgain = 0;
  /// Those that could not: the file is gone or another one, and its bytes were not kept.
  std::vector<RefusedFile> notComputed;
  bool cancelled = false;
};

/// Takes files in and brings figures of what is there up to date. Written in steps of some files:
/// whatever is cut off is complete up to a file, and the next run does the rest.
/// Of several files of one record that are new in one run, the last in the order of paths is its
/// newest version. `progress` is
/// called in the caller's thread.
[[nodiscard]] Expected<TakeInReport>
takeIn(const Archive& archive, const TakeInOrder& order,
       const std::function<void(const TakeInProgress&)>& progress = {},
       const std::atomic<bool>* cancel = nullptr);

} // namespace afterbeat::archive
