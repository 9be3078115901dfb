/// Text whose size is in the painter's own units and whose width is the same on every device, so
/// that one layout serves screen, printer and PDF.
#pragma once

#include <array>

#include <QFont>
#include <QFontMetricsF>
#include <QHash>
#include <QPointF>
#include <QString>

class QColor;
class QPainter;

namespace afterbeat::papers {

enum class Weight : unsigned char { regular, medium, bold };

/// Measures and paints text of one family without ligatures (so that text can be searched in a
/// PDF). Remembers the widths it measured: for one thread at a time.
class Lettering {
public:
  explicit Lettering(const QFont& font);
  /// Size of the font it was made from, in painter's units.
  [[nodiscard]] double size() const { return size_; }
  [[nodiscard]] double width(const QString& text, double size, Weight weight) const;
  /// Height of capitals and figures.
  [[nodiscard]] double capHeight(double size) const;
  [[nodiscard]] double ascent(double size) const;
  [[nodiscard]] double descent(double size) const;
  [[nodiscard]] double lineHeight(double size) const { return ascent(size) + descent(size); }
  /// Cut at the end with "…" to fit `width`; whole if it fits.
  [[nodiscard]] QString elided(const QString& text, double size, Weight weight, double width) const;
  /// Paints with the baseline's begin at `at`.
  void paint(QPainter& painter, const QPointF& at, const QString& text, double size, Weight weight,
             const QColor& color) const;

private:
  [[nodiscard]] const QFontMetricsF& metrics(Weight weight) const;
  double size_;
  QFont regular_, medium_, bold_;
  QFontMetricsF regularMetrics_, mediumMetrics_, boldMetrics_;
  double capHeight_;
  /// Widths that were asked for, by weight.
  mutable std::array<QHash<QString, double>, 3> widths_;
};

} // namespace afterbeat::papers
