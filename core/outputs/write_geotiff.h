// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/water_frame.h"
#include "core/grid/depth_grid.h"
#include "core/surface/bottom_change.h"
#include "core/surface/trust.h"

#include <filesystem>

namespace outputs {

/// The depth grid as a float32 GeoTIFF: metres, positive down, no data outside the water, in the
/// water's own frame. \return unwritableOutput.
[[nodiscard]] base::Result<void> writeDepthGeotiff(const std::filesystem::path& path,
                                                   const grid::DepthGrid& depth,
                                                   const geo::WaterFrame& frame);

/// The 95 % half-widths of the depths on the same grid, metres. \return unwritableOutput.
[[nodiscard]] base::Result<void> writeTrustGeotiff(const std::filesystem::path& path,
                                                   const surface::TrustGrid& trust,
                                                   const geo::WaterFrame& frame);

/// The rise of the bottom since an earlier survey, metres, silt positive, no data where it was not
/// sounded both times; and its 95 % half-widths. \return unwritableOutput.
[[nodiscard]] base::Result<void> writeRiseGeotiff(const std::filesystem::path& path,
                                                  const surface::BottomChange& change,
                                                  const geo::WaterFrame& frame);
[[nodiscard]] base::Result<void> writeRiseTrustGeotiff(const std::filesystem::path& path,
                                                       const surface::BottomChange& change,
                                                       const geo::WaterFrame& frame);

} // namespace outputs
