// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"
#include "core/units/moment.h"

#include <vector>

namespace rates {

/// Where the boat was, and when.
struct TrackPoint {
    geo::WaterPoint place;
    units::Moment time;
};

using Track = std::vector<TrackPoint>;

/// A stay seen in a track: the boat did not leave its place between start and end.
struct TrackStay {
    geo::WaterPoint place; ///< Median of its points.
    units::Moment start;
    units::Moment end;
    units::Length spread; ///< Half of its points lie within this of `place`.
};

} // namespace rates
