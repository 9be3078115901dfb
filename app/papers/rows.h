/// The rows: a whole rescue as lines on a page, one row two minutes from the window's begin. The
/// same painting code serves the window, the handover sheet and the debrief.
#pragma once

#include "app/papers/words.h"
#include "core/measures/figures.h"

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>

#include <memory>
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
  /// Size of the text in the painter's units; 0: the font's own.
  double textSize = 0;
  /// Where rows shrink to fit, text keeps at least this share of its size.
  double smallestShare = 0.62;
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
  /// The moment pointed at or replayed.
  std::optional<Time> cursor;
};

struct RowsModel;
struct RowsLayout;

/// Where everything lies for one record in one width; cheap to ask, built once.
///
/// The rows cover the resuscitation window. What matters to the reader and lies after it
/// (circulation returned, a shock that was not given) is shown too: the rows then go on to it,
/// circulation at most ten minutes, on otherwise blank paper.
class RowsPicture {
public:
  static constexpr Duration kRowLength{120'000'000};

  /// Keeps what it needs; `record` and `figures` may go.
  RowsPicture(const Record& record, const Figures& figures, Translate translate = {});

  /// The same record as one row over another stretch, of any length and without its label: for
  /// records under each other. What the record does not cover stays blank.
  [[nodiscard]] RowsPicture asOneRow(const Interval& stretch) const;

  [[nodiscard]] int rowCount() const;
  /// The stretch of time of a row (the last may reach past the window's end).
  [[nodiscard]] Interval row(int index) const;
  /// Height needed for all rows (and the legend) at this width.
  [[nodiscard]] double heightFor(double width, const RowsLook& look, bool legend) const;
  /// Paints into `area`; rows are `look.rowHeight` high unless `fit`, then they shrink to fit.
  void paint(QPainter& painter, const QRectF& area, const RowsLook& look,
             const RowsOverlay& overlay = {}, bool legend = true, bool fit = false) const;
  /// The least height in which `paint` with `fit` shows every row; with less, the first and the
  /// last rows are shown and a sentence between them says how many are left out.
  [[nodiscard]] double leastHeightFor(double width, const RowsLook& look, bool legend) const;
  /// The moment under a point of what `paint` draws with the same area, look, legend and fit;
  /// nothing outside rows.
  [[nodiscard]] std::optional<Time> timeAt(const QPointF& point, const QRectF& area,
                                           const RowsLook& look, bool legend = true,
                                           bool fit = false) const;
  /// The rectangle of a row's band within `area`; empty for a row left out.
  [[nodiscard]] QRectF rowRect(int index, const QRectF& area, const RowsLook& look,
                               bool legend = true, bool fit = false) const;
  /// What the picture says, row by row, for a screen reader.
  [[nodiscard]] QString asText() const;
  /// The same for one row; empty for a row that is not there.
  [[nodiscard]] QString rowAsText(int index) const;
  /// What is shown, before it is laid out; for tests.
  [[nodiscard]] const RowsModel& model() const { return *model_; }

private:
  friend class RowsPlaced;
  explicit RowsPicture(std::shared_ptr<const RowsModel> model) : model_(std::move(model)) {}
  std::shared_ptr<const RowsModel> model_;
};

/// A rows picture laid out once for one area, so that painting and asking again cost little: a
/// window keeps what `paint` made and lays `paintOverlay` over it, frame by frame.
class RowsPlaced {
public:
  RowsPlaced(const RowsPicture& picture, const QRectF& area, const RowsLook& look,
             bool legend = true, bool fit = false);

  /// Everything but what is selected or pointed at; with the stretches of a working.
  void paint(QPainter& painter, const std::vector<Interval>& working = {}) const;
  /// The selected stretch and the cursor alone.
  void paintOverlay(QPainter& painter, const RowsOverlay& overlay) const;
  /// Where `paintOverlay` paints: one rectangle for each row that is touched.
  [[nodiscard]] std::vector<QRectF> touched(const RowsOverlay& overlay) const;
  [[nodiscard]] std::optional<Time> timeAt(const QPointF& point) const;
  [[nodiscard]] QRectF rowRect(int index) const;

private:
  std::shared_ptr<const RowsModel> model_;
  RowsLook look_;
  std::shared_ptr<const RowsLayout> layout_;
};

} // namespace afterbeat::papers
