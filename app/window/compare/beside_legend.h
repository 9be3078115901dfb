/// What the shapes of rows under each other mean, once for all of them.
#pragma once

#include "app/window/compare/beside_load.h"

#include <QWidget>

namespace afterbeat::window {

/// Lines of shapes with their words, as many as the width asks for.
class BesideLegend final : public QWidget {
  Q_OBJECT

public:
  explicit BesideLegend(QWidget* parent = nullptr);
  ~BesideLegend() override;
  /// Each shape that one of the records shows; `marked`: also what lies behind what differs most.
  void show(const std::vector<BesideRecord>& records, bool marked);
  /// The words, one after the other.
  [[nodiscard]] QStringList said() const;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  struct Item;
  /// Where each begins at this width, and the height of all.
  [[nodiscard]] std::vector<QRectF> places(double width, double& height) const;
  std::vector<Item> items_;
};

} // namespace afterbeat::window
