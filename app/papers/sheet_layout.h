/// Puts the sheet's words, ruled lines and rows on one page.
#pragma once

#include "app/papers/sheet_content.h"
#include "app/papers/sheet_page.h"

namespace afterbeat::papers {

/// Sets one sheet. Every block is written once: measuring is setting on a page that is thrown away.
class SheetLayout {
public:
  /// What is given must outlive this.
  SheetLayout(const SheetContent& content, const RowsPicture& rows, const Words& say,
              const QSizeF& page);
  /// Everything on one page, whatever is in it.
  [[nodiscard]] SheetPage made();

private:
  /// Height of everything but the rows at this scale.
  [[nodiscard]] double fixedHeight(double scale);
  void chooseScale();
  /// Each sets its block from `top` and returns where it ends.
  double bands(double top);
  double header(double top);
  double dateAndPlace(double left, double top);
  double fold(double top);
  double foldLine(std::size_t first, std::size_t count, const double* shares, double top);
  double figure(const SheetFigure& figure, bool large, const QRectF& room, double label);
  double notices(double top);
  double ticks(double left, double top);
  double sections(double top);
  double knownAndBlanks(const SheetLine& line, double left, double top);
  double section(const SheetSection& section, double top);
  double blanks(const QStringList& labels, double left, double right, double top);
  double footer(double top);
  void rows(const QRectF& room);
  void remarks(const QRectF& room);

  double paragraph(SheetRole role, const QString& text, double left, double top, double width,
                   double size, Weight weight, SheetInk ink, int most);
  void write(SheetRole role, double left, double baseline, const QString& text, double size,
             Weight weight, SheetInk ink = SheetInk::black);
  void rule(double left, double right, double y, double width, SheetInk ink = SheetInk::black);
  void toFill(double left, double right, double y);
  [[nodiscard]] double scaled(double points) const { return points * page_.scale; }

  const SheetContent& content_;
  const RowsPicture& picture_;
  const Words& say_;
  Lettering lettering_;
  double left_, right_;
  SheetPage page_;
};

/// A page and the rows that belong on it. Cheap to copy; painting changes nothing in it.
struct HandoverSheet {
  SheetPage page;
  RowsPicture rows;
};

/// The sheet of a record, set in `options.paper`'s size.
[[nodiscard]] HandoverSheet layOutHandoverSheet(const Record& record, const Figures& figures,
                                                const SheetOptions& options);

} // namespace afterbeat::papers
