// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/palette.h"
#include "core/contours/band.h"

namespace chart {

/// The bands that the content draws: those of its water, else the usual ones.
[[nodiscard]] const contours::Bands& bandsOf(const ChartContent& content);

/// The colour of the band that holds `depth`.
[[nodiscard]] QColor colourOf(const Palette& palette, const contours::Bands& bands,
                              units::Depth depth);

/// What the bottom under p looks like on the chart: the colour of its band, or paper on land.
[[nodiscard]] QColor groundAt(const ChartContent& content, const Palette& palette,
                              geo::WaterPoint p);

/// Ink on light bands, paper on dark ones: for lines drawn on `ground`.
[[nodiscard]] QColor lineOn(const Palette& palette, const QColor& ground);

} // namespace chart
