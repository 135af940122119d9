// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/conditions.h"
#include "core/marks/factor.h"
#include "core/marks/mark.h"
#include "core/marks/plan.h"
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
/// The mean of that value over the winds of the hours planned; a half for one that is not known.
[[nodiscard]] double windwardValue(const ExpectedDay& day, double riseEast, double riseNorth);
/// That speed; 0 for a wind of which direction or speed is not known.
[[nodiscard]] units::Speed windUpSlope(const logbook::Wind& wind, double riseEast,
                                       double riseNorth);
/// Significant wave height H, for somebody who likes it so rippled, from 0 to 1 (see WaveLiking):
/// 1 / (1 + ((H - peak) / width)^2), peak = ripple x 0.2 m, width = (1 - ripple / 2) x 0.25 m. For
/// who likes it calm a half at a quarter of a metre, where an anchored small boat begins to be
/// uneasy; who likes a good ripple is best off at 0.2 m, and a calm is worth little to him.
[[nodiscard]] double waveValue(units::Length waveHeight, double ripple);
/// The height where that peaks.
[[nodiscard]] units::Length bestWaves(double ripple);
/// What stands for it where nobody said how strong the wind is.
inline constexpr double waveOfUnknownWind = 0.5;
/// The mean of that value over the winds of the hours planned, a half for one whose speed nobody
/// said; nothing where waves are not yet worked out.
[[nodiscard]] std::optional<double> waveValue(const ExpectedDay& day, const WavesOfDay& waves,
                                              double ripple);
/// What the log says of a place at the hours planned.
struct LogSays {
    ExpectedCatch here;
    double meanPer10RodHours = 0.0; ///< Of the whole water.
    double relativeWidth = 0.0;     ///< Standard deviation of the rate here over its mean.
};

/// Expected rate here r against the whole water's w: r / (r + w); a half where the log says
/// nothing.
[[nodiscard]] double recordValue(const std::optional<LogSays>& log);
[[nodiscard]] Reason recordReason(const std::optional<LogSays>& log);
/// Width of what is known of the rate here, c = standard deviation over mean: c / (1 + c); 1 where
/// nothing is known.
[[nodiscard]] double lessTriedValue(const std::optional<LogSays>& log);
[[nodiscard]] Reason lessTriedReason(const std::optional<LogSays>& log);
/// 95 % half-width t of the depths within a cast: 1 / (1 + (t / 0.5 m)^2).
[[nodiscard]] double trustValue(units::Length halfWidth);

/// Every factor of one place that can be weighed, in the order of allFactorKinds, with its value,
/// its weight and its reason. What they multiply by is not filled in.
/// On a day of two winds windward and shelter are the means of both, by their hours.
/// \param waves absent: not yet worked out, or not known. There is no factor for shelter then,
/// but where nobody said how strong the wind is: that is a half, and its reason says so.
[[nodiscard]] std::vector<Factor> factorsOf(units::Depth limit, const Surroundings& around,
                                            const Plan& plan, const WavesOfDay& waves,
                                            const std::optional<LogSays>& log);

/// Product of what the factors multiply by.
[[nodiscard]] double scoreOf(const std::vector<Factor>& factors);

} // namespace marks
