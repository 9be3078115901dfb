/// Where everything of the rows lies for one area: the one geometry behind painting and asking.
#pragma once

#include "app/papers/lettering.h"
#include "app/papers/rows.h"
#include "app/papers/rows_model.h"

#include <QRectF>

#include <vector>

namespace afterbeat::papers {

/// How much room a row has for words.
enum class RowDetail : std::uint8_t {
  full,  ///< flags and remarks above the band, analyses in words below it
  dense, ///< the band alone; short words inside it
};

/// Sizes of one row, in the painter's units, from its top downwards.
struct RowSizes {
  RowDetail detail = RowDetail::full;
  double text = 12, small = 10;
  double above = 0, band = 44, below = 0;
  [[nodiscard]] double pitch() const { return above + band + below; }
};

/// A row that is shown.
struct RowPlace {
  int index = 0;
  QRectF band;
  /// Top and bottom of everything that belongs to the row.
  double top = 0, bottom = 0;
};

/// Sizes and rows, without any words placed. Cheap.
struct RowsGeometry {
  RowSizes sizes;
  /// Left edge and width of the bands.
  double left = 0, width = 0;
  std::vector<RowPlace> rows;
  /// Between the first and the last rows where not all fit; empty otherwise.
  QRectF leftOut;
  int leftOutFrom = 0, leftOutCount = 0;
  /// Room of the legend; empty without one.
  QRectF legend;
  /// End of the lowest thing.
  double bottom = 0;

  /// Horizontal place of a moment within a row.
  [[nodiscard]] double x(const Interval& row, Time t) const;
  [[nodiscard]] const RowPlace* place(int index) const;
};

/// What a placed text is, for its painting and for tests.
enum class TextRole : std::uint8_t {
  rowMinutes,
  rowClock,
  flagGiven,  ///< on a filled flag
  flagHollow, ///< in a hollow flag
  analysis,
  circulation,
  remark,
  cycle,    ///< the number of a cycle that begins here
  deviceOn, ///< the device was on before the rows begin
  pause,
  pauseBeyond,
  excluded,
  leftOut,
  legend,
  nothing,
};

/// A text with its place; `box` holds all of it, with the flag or the blank ground around it.
struct PlacedText {
  TextRole role = TextRole::remark;
  QRectF box;
  /// Where the baseline begins.
  QPointF at;
  QString text;
  double size = 10;
  Weight weight = Weight::regular;
  /// Index of the row, or -1.
  int row = -1;
};

/// A breath's circle.
struct PlacedBreath {
  QPointF centre;
  double radius = 2;
  bool derived = false;
};

struct RowsLayout {
  RowsGeometry geometry;
  std::vector<PlacedText> texts;
  std::vector<PlacedBreath> breaths;
};

/// What stands in the legend: a shape and its words.
enum class LegendShape : std::uint8_t {
  handsOn,
  handsOnUnknownRate,
  handsOnDerived,
  corridor,
  handsOff,
  handsOffBeyond,
  shock,
  shockNotGiven,
  shockUnknown,
  analysisShock,
  analysisNoShock,
  analysisInconclusive,
  breath,
  breathDerived,
  circulation,
  remark,
  medication,
  cycle,
  excluded,
  brokeOff,
};
struct LegendItem {
  LegendShape shape = LegendShape::handsOn;
  QString words;
};

/// The shapes this record shows.
[[nodiscard]] std::vector<LegendItem> legendItems(const RowsModel& model);
/// Parts of `layOutRows`: the legend, the sentence about rows left out, and the one for no rows.
void placeLegend(const RowsModel& model, const Lettering& lettering, RowsLayout& layout);
void placeLeftOut(const RowsModel& model, const Lettering& lettering, RowsLayout& layout);
void placeNothing(const RowsModel& model, const Lettering& lettering, const QRectF& area,
                  RowsLayout& layout);
/// Height of a line of the legend, in text sizes.
inline constexpr double kLegendLine = 1.6;
/// Width of a legend's shape for a text size.
[[nodiscard]] double legendShapeWidth(double size);

/// Minutes and clock time stand this far above and below the middle of a band, in small texts ...
inline constexpr double kLabelStep = 0.75;
/// ... and beside each other where the band is too low for that.
[[nodiscard]] bool oneLineLabels(const RowSizes& sizes, const Lettering& lettering);

[[nodiscard]] RowsGeometry layOutGeometry(const RowsModel& model, const Lettering& lettering,
                                          const QRectF& area, const RowsLook& look, bool legend,
                                          bool fit);
/// Height of all rows and the legend without fitting, or squeezed as far as every row is shown.
[[nodiscard]] double neededHeight(const RowsModel& model, const Lettering& lettering, double width,
                                  const RowsLook& look, bool legend, bool squeezed);
[[nodiscard]] RowsLayout layOutRows(const RowsModel& model, const Lettering& lettering,
                                    const QRectF& area, const RowsLook& look, bool legend,
                                    bool fit);

} // namespace afterbeat::papers
