// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace surface {

/// How the half-width of a water grows away from what was sounded, as calibrated on its own
/// soundings; solver::ErrorGrowth says in which formula.
struct TrustCurve {
    double factor = 6.0;       ///< c
    double ofDistance = 0.5;   ///< p
    double ofUnevenness = 1.0; ///< a
    double farthest_m = 1e6;   ///< Beyond which nothing was held out to go by.
    double floor_m = 0.16;     ///< Half-width at a sounding on a level bottom.

    friend bool operator==(const TrustCurve&, const TrustCurve&) = default;
};

} // namespace surface
