/// Colours and sizes of a chart.
#pragma once

#include <QColor>
#include <QFont>

#include <array>

namespace afterbeat::papers {

/// Every meaning is carried by shape and word as well; lightness alone tells neighbours apart.
struct ChartLook {
  QColor paper, ink, faintInk, grid;
  /// Points, and lines through them.
  QColor value;
  /// Centre lines and medians.
  QColor centre;
  QColor attention;
  /// Behind everything.
  QColor band, bandEdge;
  QColor highlight;
  /// Stages of a bar, neighbours far apart in lightness, and the ink of words on them.
  std::array<QColor, 5> stages, stageInk;
  QFont font;
  /// Size of the text in the painter's units; 0: the font's own.
  double textSize = 0;
  /// Sentences are painted under the chart; a window that shows them as text does without.
  bool sentences = true;

  /// Blue and vermilion after Okabe and Ito, Color Universal Design, 2002 (from memory), darkened
  /// to 4.5:1 on the paper.
  [[nodiscard]] static ChartLook screenLight();
  [[nodiscard]] static ChartLook screenDark();
  /// Black on white, for PDF; reads from a mono laser printer.
  [[nodiscard]] static ChartLook paperLook();
};

} // namespace afterbeat::papers
