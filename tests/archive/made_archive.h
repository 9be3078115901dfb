/// An archive of many made-up records, without files.
#pragma once

#include "app/archive/archive.h"
#include "samples/season/plan.h"

namespace afterbeat::archive::testing {

/// Writes a made-up season into a new archive, small pictures of the rows included: 100 000 records
/// in half a minute. Record `i` is said to be in `folder`/i; no file is written. Throws
/// `ArchiveFailure`.
void makeArchive(const ArchivePlace& place, const samples::SeasonPlan& plan,
                 const std::string& folder = "/srv/season");

} // namespace afterbeat::archive::testing
