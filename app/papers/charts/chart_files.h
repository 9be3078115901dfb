/// A chart as a picture in a file.
#pragma once

#include "app/papers/charts/chart.h"
#include "app/papers/charts/chart_look.h"

#include <QByteArray>

namespace afterbeat::papers {

/// Around a picture that stands by itself, in its units.
inline constexpr double kPictureMargin = 16;

/// A chart as SVG, as wide as `width` units; `asText` is its description. Text stays text.
[[nodiscard]] QByteArray chartAsSvg(const Chart& chart, double width, const ChartLook& look,
                                    double margin = kPictureMargin);

/// A chart as PNG with the margin of a picture, `scale` pixels for each unit.
[[nodiscard]] QByteArray chartAsPng(const Chart& chart, double width, const ChartLook& look,
                                    double scale);

} // namespace afterbeat::papers
