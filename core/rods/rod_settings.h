// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/depth.h"
#include "core/units/length.h"

#include <string>
#include <vector>

namespace rods {

/// How rods may be set. Defaults are common practice (no source).
struct RodSettings {
    /// Rods wanted, 1 to 8; the caller holds them to the house rules.
    int rods = 4;
    /// Farthest bait, 5 to 100 m, more than the nearest.
    units::Length cast = units::Length::metres(30.0);
    /// Nearest bait, 1 to 50 m: a bait nearer lies under the boat and its ropes.
    units::Length nearest = units::Length::metres(8.0);
    /// Stop knot set deeper than the water by this, 0 to 3 m, so that a sliding float stays up in
    /// waves and drift.
    units::Length overDepth = units::Length::feet(1.0);
    /// Least angle between two lines, 5 to 90 degrees: lines nearer foul each other when a fish
    /// runs.
    double leastAngle_deg = 15.0;
    /// Least distance between two baits, 0 to 50 m.
    units::Length leastApart = units::Length::metres(6.0);
    /// Least angle between a line and an anchor rope, 0 to 60 degrees.
    double ropeClear_deg = 12.0;
    /// Shallowest water for a bait, 0.1 to 5 m.
    units::Depth shallowest = units::Depth::metres(0.5);
};

/// One sentence for each setting out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const RodSettings& settings);

} // namespace rods
