/// Breaking text into lines of the sheet.
#pragma once

#include "app/papers/lettering.h"

#include <QStringList>

namespace afterbeat::papers {

/// Text broken at spaces into at most `most` lines of `width`, facts parted by dots unbroken where
/// they fit; the last line is cut with "…".
[[nodiscard]] QStringList wrapped(const Lettering& lettering, const QString& text, double size,
                                  Weight weight, double width, int most);

} // namespace afterbeat::papers
