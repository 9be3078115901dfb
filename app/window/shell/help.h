/// What the program says about itself: its keys, what it is and is not.
#pragma once

#include <QString>

class QMenuBar;
class QWidget;

namespace afterbeat::window {

/// One line: no medical device, for afterwards, local protocol first.
[[nodiscard]] QString cautionLine();

/// Every entry of every menu with its key.
void showKeys(const QMenuBar* menus, QWidget* parent);

/// Version, licence, cautions.
void showAbout(QWidget* parent);

} // namespace afterbeat::window
