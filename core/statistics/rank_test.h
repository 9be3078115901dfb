/// Whether one group's values lie higher or lower than another's, by their ranks alone.
#pragma once

#include <vector>

namespace afterbeat {

/// Two-sided chance of ranks at least as one-sided as these, were both groups alike.
///
/// Mann and Whitney, The Annals of Mathematical Statistics 1947;18:50-60 (from memory), by the
/// normal approximation with ties and the correction for continuity; 1 where a group is empty or
/// all values are equal.
[[nodiscard]] double rankTest(const std::vector<double>& one, const std::vector<double>& other);

/// The same for each of several groups against all the others together. `group` names the group of
/// each value, from 0 to `groups` - 1; -1: counted in none, and with no others.
[[nodiscard]] std::vector<double> rankTestAgainstOthers(const std::vector<double>& values,
                                                        const std::vector<int>& group, int groups);

/// Chances corrected for their number: Holm, Scandinavian Journal of Statistics 1979;6:65-70 (from
/// memory). In the order given.
[[nodiscard]] std::vector<double> holm(const std::vector<double>& chances);

} // namespace afterbeat
