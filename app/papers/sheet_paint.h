/// Puts the sheet's words, ruled lines and rows on one page.
#pragma once

#include "app/papers/lettering.h"
#include "app/papers/rows.h"
#include "app/papers/sheet_content.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace afterbeat::papers {

/// Text broken at spaces into at most `most` lines of `width`; the last is cut with "…".
[[nodiscard]] QStringList wrapped(const Lettering& lettering, const QString& text, double size,
                                  Weight weight, double width, int most);

/// Measures and paints one sheet. Every block is written once: without a painter it only measures.
class SheetPainter {
public:
  SheetPainter(const SheetContent& content, const RowsPicture& rows, const Words& say,
               const QSizeF& page);
  /// Everything on one page, whatever is in it.
  void paint(QPainter& painter);

private:
  /// Height of everything but the rows at this scale.
  [[nodiscard]] double fixedHeight(double scale);
  void chooseScale();
  /// Each paints (or measures) its block from `top` and returns where it ends.
  double bands(double top);
  double header(double top);
  double largeFigures(double top);
  double figureColumn(const SheetFigure& figure, const QRectF& room);
  double notices(double top);
  double sections(double top);
  double section(const SheetSection& section, double top);
  double blanks(const QStringList& labels, double left, double right, double top);
  double footer(double top);
  void rows(const QRectF& room);
  void remarks(const QRectF& room);

  double paragraph(const QString& text, double left, double top, double width, double size,
                   Weight weight, const QColor& color, int most);
  void write(double left, double baseline, const QString& text, double size, Weight weight,
             const QColor& color);
  void rule(double left, double right, double y, double width, const QColor& color);
  [[nodiscard]] double scaled(double points) const { return points * scale_; }

  const SheetContent& content_;
  const RowsPicture& picture_;
  const Words& say_;
  Lettering lettering_;
  QSizeF page_;
  double left_, right_, scale_ = 1;
  QPainter* painter_ = nullptr;
  QColor ink_, faint_;
};

} // namespace afterbeat::papers
