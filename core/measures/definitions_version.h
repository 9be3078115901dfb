/// Which definitions the figures follow.
#pragma once

namespace afterbeat {

/// Raised whenever a definition changes so that the same record may get another figure; an archive
/// then keeps the old figures and computes new ones beside them. A test reminds whoever changes
/// resources/definitions/measures.md.
inline constexpr int kDefinitionsVersion = 1;

} // namespace afterbeat
