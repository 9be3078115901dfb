/// Where the reference recordings lie: public de-identified ECGs that are not part of this tree.
#pragma once

#include <cstdlib>
#include <filesystem>

#include <gtest/gtest.h>

namespace afterbeat {

/// The folder that holds `ecg/`: AFTERBEAT_DATA, or ../shared/data beside the checkout.
inline std::filesystem::path referenceRecordings() {
  if (const char* folder = std::getenv("AFTERBEAT_DATA")) {
    return folder;
  }
  return std::filesystem::path{AFTERBEAT_SOURCE_DIR} / ".." / "shared" / "data";
}

} // namespace afterbeat

/// Skips the running test where the recordings are absent.
#define AFTERBEAT_NEEDS_REFERENCE_RECORDINGS()                                                     \
  if (!std::filesystem::is_directory(afterbeat::referenceRecordings() / "ecg")) {                  \
    GTEST_SKIP() << "reference recordings not found, test skipped";                                \
  }                                                                                                \
  static_assert(true, "")
