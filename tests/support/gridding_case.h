// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/soundings/sounding.h"

#include <string>
#include <vector>

namespace support {

/// A case of the gridding bench.
struct GriddingCase {
    geo::WaterFrame frame;
    geo::Outline outline;
    std::vector<soundings::KeptSounding> soundings;
};

/// Reads shore.geojson and soundings*.csv (lon, lat, depth_m), in the order of their names, of a
/// case's folder; a new pass begins where the track jumps by more than 30 m. \return unusableInput
/// where there is no shore.
[[nodiscard]] base::Result<GriddingCase> readGriddingCase(const std::string& folder);

} // namespace support
