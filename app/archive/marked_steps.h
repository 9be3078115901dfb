/// Days from which on something was new, as a group keeps them in its archive.
#pragma once

#include "app/archive/archive.h"
#include "core/compare/marked_step.h"

#include <string>
#include <vector>

namespace afterbeat::archive {

/// A line for each: "2026-04-01 new training from here", the day as in ISO 8601. Line ends within
/// the words become spaces.
[[nodiscard]] std::string stepsAsText(const std::vector<MarkedStep>& steps);
/// What cannot be read is left out.
[[nodiscard]] std::vector<MarkedStep> stepsFromText(const std::string& text);
/// `text` with the mark as its last line, unless it is there. Other lines stay as they are, those
/// that cannot be read included; so here and in the next.
[[nodiscard]] std::string withStep(const std::string& text, const MarkedStep& step);
[[nodiscard]] std::string withoutStep(const std::string& text, const MarkedStep& step);

/// The marks that users of the archive share, by day.
[[nodiscard]] Expected<std::vector<MarkedStep>> sharedSteps(const Archive& archive);
/// Adds one; gives all that are there then. Needs the right to write.
[[nodiscard]] Expected<std::vector<MarkedStep>> shareStep(const Archive& archive,
                                                          const MarkedStep& step);
/// Takes one away; gives all that are there then. Needs the right to write.
[[nodiscard]] Expected<std::vector<MarkedStep>> unshareStep(const Archive& archive,
                                                            const MarkedStep& step);

} // namespace afterbeat::archive
