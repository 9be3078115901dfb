#include "app/window/compare/beside_legend.h"

#include "app/papers/rows_layout.h"
#include "app/papers/rows_model.h"
#include "app/papers/rows_paint.h"
#include "app/window/look/look.h"

#include <QEvent>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr double kAside = 12, kDown = 5;

QFont smallFont(const QFont& font) {
  QFont small = font;
  small.setPixelSize(std::max(9, QFontInfo(font).pixelSize() - 2));
  return small;
}

} // namespace

struct BesideLegend::Item {
  /// Empty: the ground of what differs most.
  std::optional<papers::LegendShape> shape;
  QString words;
};

BesideLegend::BesideLegend(QWidget* parent) : QWidget(parent) {
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Base);
  QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setAccessibleName(tr("What the shapes mean"));
}

BesideLegend::~BesideLegend() = default;

void BesideLegend::show(const std::vector<BesideRecord>& records, bool marked) {
  items_.clear();
  for (const BesideRecord& one : records) {
    for (const papers::LegendItem& item : papers::legendItems(one.rows->model())) {
      const bool known = std::any_of(items_.begin(), items_.end(), [&](const Item& there) {
        return there.shape == item.shape && there.words == item.words;
      });
      if (!known) {
        items_.push_back({item.shape, item.words});
      }
    }
  }
  // In one order, whichever record brought them.
  std::stable_sort(items_.begin(), items_.end(),
                   [](const Item& a, const Item& b) { return a.shape < b.shape; });
  if (marked) {
    items_.insert(items_.begin(), {std::nullopt, tr("what differs most")});
  }
  setAccessibleDescription(said().join(QStringLiteral(", ")));
  setVisible(!items_.empty());
  updateGeometry();
  update();
}

QStringList BesideLegend::said() const {
  QStringList all;
  for (const Item& item : items_) {
    all << item.words;
  }
  return all;
}

std::vector<QRectF> BesideLegend::places(double width, double& height) const {
  const QFont small = smallFont(font());
  const double size = small.pixelSize(), shape = papers::legendShapeWidth(size);
  const QFontMetricsF metrics(small);
  std::vector<QRectF> all;
  double x = kAside, y = kDown;
  for (const Item& item : items_) {
    const double whole = shape + metrics.horizontalAdvance(item.words) + 1;
    if (x > kAside && x + whole > width - kAside) {
      x = kAside;
      y += size * papers::kLegendLine;
    }
    all.emplace_back(x, y, std::min(whole, width - kAside - x), size * 1.4);
    x += whole + size * 1.5;
  }
  height = items_.empty() ? 0 : y + size * 1.4 + kDown;
  return all;
}

int BesideLegend::heightForWidth(int width) const {
  double height = 0;
  (void)places(width, height);
  return static_cast<int>(std::ceil(height));
}

QSize BesideLegend::sizeHint() const {
  return {400, heightForWidth(std::max(400, width()))};
}

void BesideLegend::paintEvent(QPaintEvent*) {
  const Look look = Look::of(palette(), font());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(QRectF(0, 0, width(), 1), look.line);
  const QFont small = smallFont(font());
  const double size = small.pixelSize(), shape = papers::legendShapeWidth(size);
  const double line = std::max(1.0, size * 0.09);
  const QFontMetricsF metrics(small);
  double height = 0;
  const auto boxes = places(width(), height);
  for (std::size_t i = 0; i < items_.size(); ++i) {
    const QRectF& box = boxes[i];
    painter.save();
    if (items_[i].shape) {
      papers::paintLegendShape(painter, box, *items_[i].shape, look.rows, line);
    } else {
      const QRectF ground(box.left(), box.top() + size * 0.15, size * 2, size * 1.1);
      painter.fillRect(ground, look.rows.highlight);
      painter.fillRect(QRectF(ground.left(), ground.bottom() - line * 2, ground.width(), line * 2),
                       look.attention);
    }
    painter.restore();
    painter.setFont(small);
    painter.setPen(look.faintInk);
    painter.drawText(box.adjusted(shape, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(items_[i].words, Qt::ElideRight, box.width() - shape));
  }
}

void BesideLegend::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    updateGeometry();
  }
}

} // namespace afterbeat::window
