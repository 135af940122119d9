// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rates/track.h"
#include "core/units/speed.h"

#include <span>

namespace rates {

struct FindStaysSettings {
    /// Points of a stay lie within this of its middle: swing of the ropes plus the noise of the
    /// position; 5 to 100 m.
    units::Length swing = units::Length::metres(20.0);
    /// Slower than this over `window` is lying still; 0.05 to 0.5 m/s. A boat adrift makes more.
    units::Speed stillBelow = units::Speed::metresPerSecond(0.2);
    /// Time before and after a point over which its speed is taken; 10 to 300 s.
    std::chrono::seconds window{60};
    /// Shorter halts are no stays; 1 to 120 min.
    std::chrono::minutes least{8};
    /// Two halts at one place are one stay if no more than this lies between: a lost signal, a
    /// landed fish followed for a moment; 0 to 120 min.
    std::chrono::minutes bridged{20};
};

/// The stays in a day's track, by start. Points may come in any order; single wild positions and
/// gaps do no harm. \return wrongUse for a setting out of range; unusableInput for fewer than two
/// points.
[[nodiscard]] base::Result<std::vector<TrackStay>> findStays(std::span<const TrackPoint> points,
                                                             const FindStaysSettings& settings,
                                                             base::Progress& progress);

} // namespace rates
