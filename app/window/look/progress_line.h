/// A bar whose ground and filling can be told from the page.
#pragma once

#include <QProgressBar>

namespace afterbeat::window {

class ProgressLine final : public QProgressBar {
  Q_OBJECT

public:
  using QProgressBar::QProgressBar;

protected:
  void paintEvent(QPaintEvent* event) override;
};

} // namespace afterbeat::window
