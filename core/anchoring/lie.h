// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"

namespace anchoring {

/// Where the boat sits, and which way its bow points, once both ropes are tight.
struct Lie {
    geo::WaterPoint centre;
    units::Bearing heading;
    friend bool operator==(const Lie&, const Lie&) = default;
};

[[nodiscard]] inline geo::WaterPoint bowOf(const Lie& lie, units::Length boatLength) {
    return geo::moved(lie.centre, lie.heading, boatLength * 0.5);
}

[[nodiscard]] inline geo::WaterPoint sternOf(const Lie& lie, units::Length boatLength) {
    return geo::moved(lie.centre, lie.heading.opposite(), boatLength * 0.5);
}

} // namespace anchoring
