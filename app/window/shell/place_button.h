/// One part of the switch between the places.
#pragma once

#include <QAbstractButton>

class QAction;

namespace afterbeat::window {

/// Follows a checkable action; the chosen one is bold on its own paper with a bar under it, so that
/// it is told by weight and shape as well as by colour.
class PlaceButton final : public QAbstractButton {
  Q_OBJECT

public:
  PlaceButton(QAction* action, QWidget* parent);
  [[nodiscard]] QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  [[nodiscard]] QFont boldFont() const;
};

} // namespace afterbeat::window
