/// Pages of which one is shown.
#pragma once

#include <QStackedWidget>

namespace afterbeat::window {

/// How high wrapped text gets at some width is each page's own affair. A plain stack hands that
/// question up, where stacks within stacks ask every page, those not shown as well, again and
/// again.
class Stack final : public QStackedWidget {
public:
  using QStackedWidget::QStackedWidget;
  [[nodiscard]] bool hasHeightForWidth() const override { return false; }
};

} // namespace afterbeat::window
