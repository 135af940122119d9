// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/lon_lat.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace readers {

enum class GpxKind { waypoint, routePoint, trackPoint };

/// One point of a GPX file with all that may tell a depth; texts as they stand.
struct GpxPoint {
    GpxKind kind = GpxKind::waypoint;
    std::optional<geo::LonLat> place; ///< Absent where lat or lon is missing or no number.
    std::string elevation;
    std::string time;
    std::string name;
    std::string description;
    /// Innermost elements of its extensions: name without prefix, text.
    std::vector<std::pair<std::string, std::string>> extensions;
    bool hasFix = true; ///< False where the receiver says that it had none (<fix>none</fix>).
    bool beginsSegment = false; ///< The first point of a track segment or of a route.
    std::size_t line = 0;
};

/// How a walk through a GPX file ended.
struct GpxEnd {
    std::size_t points = 0;
    std::string fault; ///< Why the rest could not be read; empty where all was.
    std::size_t faultLine = 0;
    std::size_t entities = 0; ///< Declared by the file; none is ever written out.
    std::size_t firstEntityLine = 0;
    std::string firstEntity; ///< Its name.
};

/// Streams through a GPX 1.0 or 1.1 file and calls `take` for each point. Elements are known by
/// their names, not by who wrote them. Entities that a file declares are counted and left as they
/// stand, so that they cannot grow. A file that nests deeper than 100 elements or breaks off is
/// read up to there. \return unusableInput where the file is not there,
/// is empty, or is no GPX at all; cancelled.
[[nodiscard]] base::Result<GpxEnd> walkGpx(const std::filesystem::path& path,
                                           const std::function<void(const GpxPoint&)>& take,
                                           base::Progress& progress);

} // namespace readers
