/// What a signal's name and unit say about it, in the words of the event log.
#pragma once

#include <string>
#include <string_view>

namespace afterbeat {

/// A unit as written in a WFDB header, in UCUM (`mmHg` -> `mm[Hg]`); what is not known becomes an
/// annotation in braces, which UCUM allows for units of its own.
[[nodiscard]] std::string ucumUnit(std::string_view written);

/// The log's word for the quantity: `ecg`, `impedance`, `pleth`, ... or `other`.
[[nodiscard]] std::string quantityOf(std::string_view description, std::string_view ucum);

} // namespace afterbeat
