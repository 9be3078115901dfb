/// The rows: a whole rescue as lines on a page, one row two minutes from the window's begin. The same
/// painting code serves the window, the handover sheet and the debrief.
#pragma once

#include "core/measures/figures.h"

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

class QPainter;

namespace afterbeat::papers {

/// Colours of a rows picture. Every meaning is carried by shape and word as well.
struct RowsLook {
  QColor paper, ink, faintInk, grid;
  /// Hands on the chest, and the target corridor for the rate.
  QColor handsOn, target;
  /// Hatch of hands off; a pause beyond the profile's limit is also set in bold.
  QColor hatch, attention;
  QColor excluded, highlight;
  QFont font;
  /// Height of one row's band in the painter's units; labels scale with the font.
  double rowHeight = 44;

  [[nodiscard]] static RowsLook screenLight();
  [[nodiscard]] static RowsLook screenDark();
  /// Black on white: reads from a mono laser printer.
  [[nodiscard]] static RowsLook paperLook();
};

/// What is laid over the rows.
struct RowsOverlay {
  /// Stretches of the chosen figure's working.
  std::vector<Interval> working;
  /// The stretch selected by the reader.
  std::optional<Interval> selected;
};

/// Words on the rows, in the reader's language.
using Translate = std::function<QString(const char* english)>;

/// Where everything lies for one record in one width; cheap to ask, built once.
class RowsPicture {
public:
  static constexpr Duration kRowLength{120'000'000};

  /// Keeps what it needs; `record` and `figures` may go.
  RowsPicture(const Record& record, const Figures& figures, Translate translate = {});

  [[nodiscard]] int rowCount() const;
  /// The stretch of time of a row (the last may reach past the window's end).
  [[nodiscard]] Interval row(int index) const;
  /// Height needed for all rows (and the legend) at this width.
  [[nodiscard]] double heightFor(double width, const RowsLook& look, bool legend) const;
  /// Paints into `area`; rows are `look.rowHeight` high unless `fit`, then they shrink to fit.
  void paint(QPainter& painter, const QRectF& area, const RowsLook& look,
             const RowsOverlay& overlay = {}, bool legend = true, bool fit = false) const;
  /// The moment under a point of the last layout with this area and look; nothing outside rows.
  [[nodiscard]] std::optional<Time> timeAt(const QPointF& point, const QRectF& area,
                                           const RowsLook& look) const;
  /// The rectangle of a row's band within `area`.
  [[nodiscard]] QRectF rowRect(int index, const QRectF& area, const RowsLook& look) const;
  /// What the picture says, row by row, for a screen reader.
  [[nodiscard]] QString asText() const;

private:
  struct Data;
  std::shared_ptr<const Data> data_;
};

} // namespace afterbeat::papers
