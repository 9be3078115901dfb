/// Numbers that stay with their units where a text is broken into lines.
#pragma once

#include <QString>

namespace afterbeat::papers {

/// The same text with no-break spaces between a number and what it counts: "8 min 18 s", "42 %",
/// "110.5 a minute".
[[nodiscard]] QString unbroken(QString text);

} // namespace afterbeat::papers
