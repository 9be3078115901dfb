/// The handover sheet with everything in its place: what the painter paints and the tests read.
#pragma once

#include "app/papers/handover_sheet.h"
#include "app/papers/lettering.h"
#include "app/papers/rows.h"

#include <QLineF>
#include <QRectF>

#include <vector>

class QPainter;

namespace afterbeat::papers {

/// What a text on the sheet is.
enum class SheetRole : unsigned char {
  band,
  head,
  figureTitle,
  /// "at least": before a value that is not the whole.
  figureDoubt,
  figureValue,
  figureNote,
  notice,
  section,
  text,
  /// The words before a ruled line.
  label,
  caption,
  footer,
};

enum class SheetInk : unsigned char { black, faint, white };

/// A line of text on the page; `box` holds all of it.
struct SheetText {
  SheetRole role = SheetRole::text;
  QString text;
  QRectF box;
  /// Where the baseline begins.
  QPointF at;
  double size = 10;
  Weight weight = Weight::regular;
  SheetInk ink = SheetInk::black;
};

struct SheetRule {
  /// Something belongs on it by pen; otherwise it parts two blocks.
  bool toFill = false;
  QLineF line;
  double width = 1;
  SheetInk ink = SheetInk::black;
};

/// A box, black or framed.
struct SheetBox {
  bool filled = false;
  QRectF rect;
  double width = 1;
};

/// One page in PostScript points.
struct SheetPage {
  QSizeF size;
  std::vector<SheetText> texts;
  std::vector<SheetRule> rules;
  std::vector<SheetBox> boxes;
  /// Room of the rows; empty without them.
  QRectF rows;
  RowsLook rowsLook;
  /// The rows are to be squeezed into their room.
  bool rowsFit = false;
  /// 1: set in full size.
  double scale = 1;

  /// The words of the page in reading order, one line of text a line, "____" for a ruled line.
  [[nodiscard]] QString asText() const;
};

/// Paints a page and its rows.
void paintSheet(QPainter& painter, const SheetPage& page, const RowsPicture& rows);

} // namespace afterbeat::papers
