// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/trust_calibration.h"
#include "core/surface/trust.h"

namespace surface::solver {

/// What a drawing was made from.
struct DrawnFrom {
    const Ground& ground;
    const Ground& coarse; ///< Larger cells, for the trials.
    const TrendGround& trendGround;
    const geo::Outline& outline;
    std::span<const soundings::KeptSounding> soundings;
    const std::vector<std::size_t>& used;
    const BottomSettings& settings;
};

/// The trust of each cell, calibrated on held-out soundings of this very water. \return cancelled.
[[nodiscard]] base::Result<TrustGrid> drawTrust(const DrawnFrom& from, const Bottom& bottom,
                                                base::Progress& progress);

/// Half-widths without bound, for a quick look.
[[nodiscard]] base::Result<TrustGrid> noTrust(const Ground& ground);

} // namespace surface::solver
