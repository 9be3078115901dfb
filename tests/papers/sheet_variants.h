/// Every kind of record a handover sheet has to stand, by name. All of it is invented.
#pragma once

#include "app/papers/handover_sheet.h"
#include "app/papers/sheet_layout.h"

#include <ostream>
#include <string>
#include <vector>

namespace afterbeat::test {

struct SheetVariant {
  std::string name;
  Record record;
  std::optional<papers::ToldFigures> told = {};
};

/// How a test names one.
inline void PrintTo(const SheetVariant& variant, std::ostream* out) {
  *out << variant.name;
}

[[nodiscard]] std::vector<SheetVariant> sheetVariants();
/// One of them.
[[nodiscard]] SheetVariant sheetVariant(const std::string& name);

/// Options of the tests' sheets: a file, its checksum, a moment of printing.
[[nodiscard]] papers::SheetOptions sheetOptions(const SheetVariant& variant,
                                                const QString& language);
/// The sheet of a variant, laid out.
[[nodiscard]] papers::HandoverSheet sheetOf(const SheetVariant& variant, const QString& language,
                                            QPageSize::PageSizeId paper = QPageSize::A4);

} // namespace afterbeat::test
