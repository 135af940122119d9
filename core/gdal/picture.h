// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/lon_lat.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace gdal {

/// A window of a plane: upright, square pixels, row 0 in the north.
struct PictureWindow {
    double west_m = 0.0;
    double north_m = 0.0;
    double pixel_m = 1.0; ///< Side of a pixel.
    int cols = 0;
    int rows = 0;
    friend bool operator==(const PictureWindow&, const PictureWindow&) = default;
};

/// Colours over a window; 0xAARRGGBB, alpha 0 where the file shows nothing.
struct Picture {
    PictureWindow window;
    std::vector<std::uint32_t> argb; ///< cols * rows.
};

/// Places along the edge of a georeferenced raster, round it once.
/// \return unusableInput where the file is no raster, or does not say where on the Earth it lies.
[[nodiscard]] base::Result<std::vector<geo::LonLat>> pictureEdge(const std::filesystem::path& path);

/// What a raster looks like in a window of another plane: turned, stretched and thinned to its
/// pixels. Of three bands or more, the first three are red, green and blue; one band becomes grey,
/// from its least to its greatest value; a table of colours is used. \param wkt of that plane.
/// \return as pictureEdge(); wrongUse for a window without pixels or of more than 64 million;
/// cancelled.
[[nodiscard]] base::Result<Picture> readPicture(const std::filesystem::path& path,
                                                const PictureWindow& window, const std::string& wkt,
                                                base::Progress& progress);

} // namespace gdal
