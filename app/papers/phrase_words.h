/// What readers, importers and archives say, in the language of the reader.
#pragma once

#include <QString>

#include <span>
#include <string>

namespace afterbeat::papers {

/// A phrase (`Phrase::parts`) in the language that is installed (context "Importers"). A value that
/// is a clause of a reader, such as why a file could not be read, is translated too.
[[nodiscard]] QString phraseWords(std::span<const std::string> parts);

/// A value; a number with decimals has the mark of the reader's language between them ("3.000 s"
/// are three thousand elsewhere).
[[nodiscard]] QString decimalWords(const std::string& value);

/// The clause of an `IoError`, or another of a reader that has no values.
[[nodiscard]] QString clauseWords(const std::string& english);

} // namespace afterbeat::papers
