// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <array>
#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace gdal {

/// A grid of square cells to be written; row 0 in the north, values row by row from west to east.
struct RasterToWrite {
    double west_m = 0.0;  ///< West edge of the first column.
    double north_m = 0.0; ///< North edge of the first row.
    double cell_m = 1.0;
    int cols = 0;
    int rows = 0;
    std::span<const float> values; ///< cols * rows; not a number where there is no data.
    float noData = -9999.0F;       ///< What the file says for not a number.
    std::string wkt;               ///< Reference system.
    std::string description;       ///< Of the band: "depth, metres, positive down".
};

/// Writes a float32 GeoTIFF, deflated, whole or not at all (under a temporary name, then renamed).
/// \return wrongUse where sizes do not fit, unwritableOutput where the disk says no.
[[nodiscard]] base::Result<void> writeRasterFile(const std::filesystem::path& path,
                                                 const RasterToWrite& raster);

/// One or more bands of any raster that GDAL reads.
struct Raster {
    int cols = 0;
    int rows = 0;
    /// Position of (column, row) edges: x = t0 + col t1 + row t2, y = t3 + col t4 + row t5.
    std::array<double, 6> transform{0.0, 1.0, 0.0, 0.0, 0.0, -1.0};
    std::string wkt;                       ///< Reference system; empty where the file has none.
    std::vector<std::vector<float>> bands; ///< Each cols * rows; not a number where no data.

    [[nodiscard]] bool isUpright() const { return transform[2] == 0.0 && transform[4] == 0.0; }
};

/// Reads the first `mostBands` bands (at least one).
/// \return unusableInput where the file is not there, no raster, or of more than 400 million cells.
[[nodiscard]] base::Result<Raster> readRasterFile(const std::filesystem::path& path,
                                                  int mostBands = 1);

} // namespace gdal
