/// A chart as a picture in a file.
#pragma once

#include "app/papers/charts/chart.h"
#include "app/papers/charts/chart_look.h"

#include <QByteArray>

namespace afterbeat::papers {

/// A chart as SVG, as wide as `width` units; `asText` is its description. Text stays text.
[[nodiscard]] QByteArray chartAsSvg(const Chart& chart, double width, const ChartLook& look);

/// A chart as PNG, `scale` pixels for each unit.
[[nodiscard]] QByteArray chartAsPng(const Chart& chart, double width, const ChartLook& look,
                                    double scale);

} // namespace afterbeat::papers
