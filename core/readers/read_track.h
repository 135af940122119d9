// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/lon_lat.h"
#include "core/units/moment.h"

#include <filesystem>
#include <vector>

namespace readers {

/// Where the boat was, and when.
struct TrackPoint {
    geo::LonLat place;
    units::Moment time;
    friend bool operator==(const TrackPoint&, const TrackPoint&) = default;
};

/// The track points of a GPX file that have a time, or the positions of an NMEA 0183 log (GGA, GLL,
/// RMC of any talker, dated by RMC or ZDA), by time. Which of the two it is, is seen by what it
/// holds. \return unusableInput where there are none.
[[nodiscard]] base::Result<std::vector<TrackPoint>> readTrack(const std::filesystem::path& path,
                                                              base::Progress& progress);

} // namespace readers
