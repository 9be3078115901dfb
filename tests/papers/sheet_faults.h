/// What is wrong with where things stand on a sheet.
#pragma once

#include "app/papers/sheet_page.h"

#include <QStringList>

namespace afterbeat::test {

/// A sentence for every text that leaves the page, lies on another, on the rows or under a rule, is
/// too small to read, and for every line too short to write on. Empty: all is well.
[[nodiscard]] QStringList faultsOf(const papers::SheetPage& page);

} // namespace afterbeat::test
