#include "app/papers/lettering.h"

#include <QColor>
#include <QFontInfo>
#include <QPainter>

namespace afterbeat::papers {

namespace {

/// Text is measured and painted at this size and scaled: widths then depend on no device.
constexpr int kMasterSize = 48;

QFont master(const QFont& font, QFont::Weight weight) {
  QFont made(font);
  made.setPixelSize(kMasterSize);
  made.setWeight(weight);
  made.setHintingPreference(QFont::PreferNoHinting);
  made.setStyleStrategy(
      static_cast<QFont::StyleStrategy>(QFont::PreferNoShaping | QFont::PreferAntialias));
  return made;
}

double sizeOf(const QFont& font) {
  return font.pixelSize() > 0 ? font.pixelSize() : QFontInfo(font).pixelSize();
}

} // namespace

Lettering::Lettering(const QFont& font)
    : size_(sizeOf(font)), regular_(master(font, QFont::Normal)),
      medium_(master(font, QFont::Medium)), bold_(master(font, QFont::Bold)),
      regularMetrics_(regular_), mediumMetrics_(medium_), boldMetrics_(bold_),
      capHeight_(boldMetrics_.capHeight()) {}

const QFontMetricsF& Lettering::metrics(Weight weight) const {
  switch (weight) {
  case Weight::regular:
    return regularMetrics_;
  case Weight::medium:
    return mediumMetrics_;
  case Weight::bold:
    break;
  }
  return boldMetrics_;
}

double Lettering::width(const QString& text, double size, Weight weight) const {
  // The same seconds are written beside hundreds of pauses.
  auto& known = widths_[static_cast<std::size_t>(weight)];
  const auto at = known.constFind(text);
  const double advance = at != known.constEnd() ? *at : metrics(weight).horizontalAdvance(text);
  if (at == known.constEnd()) {
    known.insert(text, advance);
  }
  return advance * size / kMasterSize;
}

double Lettering::capHeight(double size) const {
  return capHeight_ * size / kMasterSize;
}

double Lettering::ascent(double size) const {
  return regularMetrics_.ascent() * size / kMasterSize;
}

double Lettering::descent(double size) const {
  return regularMetrics_.descent() * size / kMasterSize;
}

QString Lettering::elided(const QString& text, double size, Weight weight, double room) const {
  if (width(text, size, weight) <= room) {
    return text;
  }
  const QString cut = metrics(weight).elidedText(text, Qt::ElideRight, room * kMasterSize / size);
  return cut == QStringLiteral("…") ? QString() : cut;
}

void Lettering::paint(QPainter& painter, const QPointF& at, const QString& text, double size,
                      Weight weight, const QColor& color) const {
  if (text.isEmpty()) {
    return;
  }
  painter.save();
  painter.translate(at);
  painter.scale(size / kMasterSize, size / kMasterSize);
  painter.setFont(weight == Weight::bold ? bold_ : weight == Weight::medium ? medium_ : regular_);
  painter.setPen(color);
  painter.drawText(QPointF(0, 0), text);
  painter.restore();
}

} // namespace afterbeat::papers
