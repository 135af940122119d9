// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/layers/layer.h"
#include "core/geo/path.h"

#include <memory>

namespace chart {

/// Where soundings were taken, as far as the water holds any: for the time before they are looked
/// over and drawn. Of a long day not every sounding, but its whole way. Empty without a frame.
[[nodiscard]] std::shared_ptr<const geo::Path> firstTrackOf(const ChartContent& content);

/// True while there is nothing drawn yet, but soundings to be seen.
[[nodiscard]] bool showsFirstTrack(const ChartContent& content);

/// Those soundings as dots.
void paintFirstTrack(LayerContext& on);

} // namespace chart
