// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"
#include "core/units/bearing.h"
#include "core/units/length.h"
#include "core/units/speed.h"

#include <optional>

namespace anchoring {

/// The boat and its ropes. "Common practice" has no published source.
struct BoatSettings {
    /// Over all; 2 to 15 m. A usual open lake boat.
    units::Length length = units::Length::metres(5.0);
    /// From the water to the bow cleat; 0 to 2 m.
    units::Length bowHeight = units::Length::metres(0.6);
    /// From the water to the stern cleat; 0 to 2 m.
    units::Length sternHeight = units::Length::metres(0.5);
    /// Water the boat needs to float with a hand to spare; 0 to 2 m.
    units::Length draught = units::Length::metres(0.4);
    /// Rope on the bow anchor; 5 to 200 m.
    units::Length bowRope = units::Length::metres(50.0);
    /// Rope on the stern anchor; 5 to 200 m.
    units::Length sternRope = units::Length::metres(30.0);
    /// Wanted scope at the bow; 1.2 to 10. Three is common practice on stillwaters with two
    /// anchors in settled weather (no source); courses for boaters teach 6 to 10, and the cautions
    /// say so.
    double scope = 3.0;
    /// Scope at the stern; 1.2 to 10. Short: it only stops the swing (common practice).
    double sternScope = 1.5;
    /// Side that the wind meets on the beam, crew included; 0.5 to 20 m2.
    units::Area windage = units::Area::squareMetres(3.0);
    /// Farthest that the bow may be turned off the wind to find water for both anchors; 0 to 60.
    double mostTurn_deg = 40.0;
    /// Least scope at the bow that is still proposed where the water is too narrow; 1.2 to 10.
    double leastScope = 2.0;
    /// One anchor at the bow alone: the boat lies downwind of it, and swings.
    bool toOneAnchor = false;
};

/// What the wind and the water do while the boat lies there.
struct Weather {
    /// The bow is laid to it: where the wind comes from, or what is taken for that.
    units::Bearing windFrom;
    std::optional<units::Speed> windSpeed;   ///< Nothing where nobody said.
    std::optional<units::Length> waveHeight; ///< Significant height at the mark, where known.
    bool isFromKnown = true; ///< False where windFrom is only taken for where the wind comes from.
};

} // namespace anchoring
