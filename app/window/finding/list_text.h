/// Lists and tables as text for other programs.
#pragma once

#include <QAbstractItemView>
#include <QString>

namespace afterbeat::window {

/// Role of a plain text for copying, where what is shown is not the whole.
inline constexpr int kCopyRole = Qt::UserRole + 77;

/// The selected rows of a view, or all where at most one is selected: one line each, columns
/// separated by tabs, the header first. Columns that are hidden are left out, unless
/// their header says otherwise by `kCopyRole`.
[[nodiscard]] QString tabbedText(const QAbstractItemView& view);

} // namespace afterbeat::window
