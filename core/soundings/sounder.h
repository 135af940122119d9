// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/depth.h"
#include "core/units/speed.h"

namespace soundings {

/// How the sounder was set up on the day.
struct Sounder {
    /// From the surface down to the transducer; zero where the shown depth already counts from the
    /// surface. 0 to 3 m.
    units::Depth draft;
    /// Speed of sound that the sounder reckons with. Default 1500 m/s, as survey sounders are set
    /// (NOAA Field Procedures Manual, 1.5.4); consumer makers publish none. 1300 to 1700 m/s.
    units::Speed assumedSoundSpeed = units::Speed::metresPerSecond(1500.0);
    /// False for depths that were not measured by sound (a lead line, a grid): no sound speed
    /// correction then.
    bool measuresBySound = true;
    friend bool operator==(const Sounder&, const Sounder&) = default;
};

} // namespace soundings
