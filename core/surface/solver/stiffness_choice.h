// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/drawn_water.h"
#include "core/surface/solver/bottom.h"
#include "core/surface/solver/trend_ground.h"

#include <optional>

namespace surface::solver {

/// What held-out soundings chose.
struct StiffnessChoice {
    double stiffness = 300.0;
    double contourStiffness = 30.0;
    std::optional<HeldOutError> heldOut; ///< Absent where there were too few soundings to tell.
    bool wasStopped = false;
};

/// Tries a = 300, then 100 and 30 or else 1000 and 3000, and then b2 = 30, 100 or else 10 (those
/// not set beforehand) on trial cells with stretches of 60 soundings held out in two folds of six,
/// going on while the mean absolute error gets less; the common 300 and 30 where there are fewer
/// than 60 soundings.
[[nodiscard]] StiffnessChoice
chooseStiffness(const Ground& coarse, const TrendGround& trendGround, const geo::Outline& outline,
                std::span<const soundings::KeptSounding> soundings,
                std::span<const std::size_t> positions, std::optional<double> stiffness,
                std::optional<double> contourStiffness, const BottomSettings& settings,
                base::Progress& progress);

} // namespace surface::solver
