// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/conditions.h"
#include "core/marks/factor.h"
#include "core/marks/surroundings.h"

#include <optional>
#include <vector>

namespace marks {

// Each factor is a number from 0 to 1 made by one monotone map from one physical quantity. The
// maps and their constants are our own choice (no source); what matters to whom is in the weights.

/// Share of the circle of a cast that is fishable water: that share itself.
[[nodiscard]] double depthValue(double fishableShare);
/// Length of edge within a cast: 1 - exp(-length / cast). A straight edge through the middle of the
/// circle, two casts long, gives 0.86. For drop-offs and weed edges.
[[nodiscard]] double edgeValue(double edge_m, units::Length cast);
/// Area of features within a cast: 1 - exp(-area / a tenth of the circle).
[[nodiscard]] double featureValue(double area_m2, units::Length cast);
/// Speed at which the wind blows up the slope and on to the bank, negative where it blows off it:
/// v = wind speed x cosine of the angle to the way uphill x the slope's share of 5 %, at most 1.
/// Value: (1 + v / (|v| + 3 m/s)) / 2; a half where there is no wind or no slope.
[[nodiscard]] double windwardValue(units::Speed upSlope);
/// That speed.
[[nodiscard]] units::Speed windUpSlope(const logbook::Wind& wind, double riseEast,
                                       double riseNorth);
/// Significant wave height H: 1 / (1 + (H / 0.25 m)^2). A quarter of a metre is where an anchored
/// small boat begins to be uneasy.
[[nodiscard]] double shelterValue(units::Length waveHeight);
/// Expected rate here r against the whole water's w: r / (r + w); a half where either is unknown or
/// both are 0.
[[nodiscard]] double recordValue(const std::optional<rates::Record>& here,
                                 const std::optional<rates::Rate>& whole);
/// Width of what is known of the rate here, c = standard deviation over mean: c / (1 + c); 1 where
/// nothing is known.
[[nodiscard]] double lessTriedValue(const std::optional<rates::Record>& here);
/// 95 % half-width t of the depths within a cast: 1 / (1 + (t / 0.5 m)^2).
[[nodiscard]] double trustValue(units::Length halfWidth);

/// What is known of the waves at a place.
struct WaveState {
    units::Length fetch;  ///< Effective.
    units::Length height; ///< Significant.
};

/// Every factor of one place in the order of allFactorKinds, with its weight and its reason in
/// words. \param waves absent: not yet worked out; then there is no factor for shelter.
[[nodiscard]] std::vector<Factor> factorsOf(const MarkInput& input, const Surroundings& around,
                                            geo::WaterPoint place, const logbook::Wind& wind,
                                            units::Length cast,
                                            const std::optional<WaveState>& waves,
                                            const Weights& weights);

/// Mean of the factors weighted by their weights, 0 to 1; 0 where no weight is above 0.
[[nodiscard]] double scoreOf(const std::vector<Factor>& factors);

} // namespace marks
