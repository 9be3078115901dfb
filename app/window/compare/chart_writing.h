/// What leaves a chart: a picture in a file, its words.
#pragma once

#include "app/papers/charts/chart.h"

#include <QString>

#include <memory>

namespace afterbeat::window {

/// Writes a chart as SVG, PNG or PDF, by the ending of the path. Gives an empty text, or a sentence
/// that says why it was not written.
[[nodiscard]] QString writeChart(const papers::Chart& chart, const QString& path);

} // namespace afterbeat::window
