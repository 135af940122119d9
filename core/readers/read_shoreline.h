// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/lon_lat.h"

#include <filesystem>
#include <optional>
#include <vector>

namespace readers {

/// The shore of any vector file that GDAL reads, or of a GPX track walked around the water:
/// polygons as they are; of closed lines (ends within 30 m, or a tenth of the line) the ones inside
/// another are islands. \return unusableInput where no line closes or a coordinate is not on the
/// Earth.
[[nodiscard]] base::Result<std::vector<geo::LonLatPiece>>
readShoreline(const std::filesystem::path& path, std::optional<int> epsg, base::Progress& progress);

} // namespace readers
