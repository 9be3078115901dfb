/// A chart on the screen: pointed at, walked through by keys, and opened.
#pragma once

#include "app/papers/charts/chart_placed.h"
#include "app/window/look/look.h"
#include "app/window/look/pictures_for_ears.h"

#include <QPixmap>
#include <QWidget>

#include <memory>
#include <optional>

namespace afterbeat::window {

/// Left and Right go from point to point, Up and Down to the next lane's or bar's; Enter, or a
/// click, opens the record under it. Many lanes or bars make it higher than its room, which
/// scrolls; the axis stays in view.
class ChartCanvas final : public QWidget, public Described {
  Q_OBJECT

public:
  explicit ChartCanvas(QWidget* parent = nullptr);
  void show(std::shared_ptr<const papers::Chart> chart);
  [[nodiscard]] const std::shared_ptr<const papers::Chart>& chart() const { return chart_; }
  /// The point (or bar, in a chart of bars) the keyboard is at, which has a ring around it; empty:
  /// none.
  [[nodiscard]] std::optional<std::size_t> current() const { return current_; }
  void setCurrent(std::size_t index);
  /// Where it is painted.
  [[nodiscard]] std::optional<QPointF> placeOf(std::size_t index) const;
  /// The height that is in view, px.
  void setRoom(int height);
  /// How a record is called, for what is pointed at.
  void setNames(std::function<QString(std::uint32_t)> names) { names_ = std::move(names); }
  [[nodiscard]] QString spokenDescription() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return {300, 160}; }
  [[nodiscard]] static papers::ChartLook lookFor(const QPalette& palette, const QFont& font);

signals:
  /// A record is to be opened: its place in the season.
  void wanted(std::uint32_t place);
  void currentChanged();

protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void moveEvent(QMoveEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void layOut();
  void askForHeight();
  void repaintAll();
  [[nodiscard]] QPixmap painted(const QRect& part) const;
  /// Paints `part` ahead.
  void keep(const QRect& part);
  /// How far the axis is moved up to be in view.
  [[nodiscard]] int axisRaised() const;
  /// Where it is painted then; empty where it lies anyway.
  [[nodiscard]] QRect raisedAxis() const;
  [[nodiscard]] std::vector<papers::ChartHit> under(const QPointF& place) const;
  [[nodiscard]] bool bars() const;
  [[nodiscard]] std::size_t count() const;
  [[nodiscard]] std::optional<papers::ChartHit> hit(std::size_t index) const;
  [[nodiscard]] QString wordsFor(const papers::ChartHit& hit) const;
  void step(int by);
  void jump(int direction);
  [[nodiscard]] const std::vector<std::size_t>& order() const;

  std::shared_ptr<const papers::Chart> chart_;
  std::unique_ptr<papers::ChartPlaced> placed_;
  std::function<QString(std::uint32_t)> names_;
  /// What is in view, painted: a chart of many lanes is higher than a picture may be.
  QPixmap kept_;
  QRect keptOf_;
  int room_ = 0;
  std::vector<papers::ChartHit> pointed_;
  std::optional<std::size_t> current_, pressed_;
  /// Points from left to right, lane by lane; made when a key first asks for it.
  mutable std::vector<std::size_t> order_;
};

} // namespace afterbeat::window
