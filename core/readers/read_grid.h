// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/readers/soundings_file.h"

#include <filesystem>

namespace readers {

/// Depths from a grid that somebody already has: a GeoTIFF, an ASCII grid, whatever raster GDAL
/// reads. Each cell is a sounding in its middle, without a time and a pass of its own; of a grid of
/// more than 250,000 cells with a depth every second, third ... row and column. Depths may count
/// down or, as heights below the surface, up (then all are turned); cells of the other sign are
/// land, and refused as "above_surface".
/// \return unusableInput where it is no raster, a picture, lies nowhere on the Earth or has no
/// system of coordinates, or holds heights above the sea instead of depths; cancelled.
[[nodiscard]] base::Result<ReadSoundings> readGrid(const std::filesystem::path& path,
                                                   const SoundingFileSettings& settings,
                                                   base::Progress& progress);

} // namespace readers
