// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/factor_values.h"
#include "core/marks/place_features.h"

#include <optional>
#include <vector>

namespace marks {

/// What a place is worth tomorrow, and why.
struct Judgement {
    /// Those that can be weighed, and with a log also bottom and hour. What they multiply by gives
    /// the score and nothing else does.
    std::vector<Factor> factors;
    double score = 1.0; ///< Times the water's mean.
    /// What the log lets expect, per rod-hour; nothing without a log.
    std::optional<learning::Expectation> expected;
    /// How much more than it promises the place may give, as a share of that: what is learned
    /// there. Nothing is learned of a place whose depth is not what is drawn.
    double toFindOut = 0.0;
    /// The share of what is drawn there that is left by the chance that the depth is another.
    double leftByTrust = 1.0;
    learning::Features features; ///< Empty without a log.

    /// By what marks are chosen: the score and, for a log, what may be found out there times the
    /// eagerness to try; without a log the weighted sum of the factors' values less what a
    /// depth that is not known for sure takes, which orders places as their product does.
    [[nodiscard]] double worth(double eagerness) const;
};

/// Chance that the depth of the place is not what is drawn, by more than half a metre or a fifth of
/// it, whichever is more: its 95 % half-width for a normal error. 1 where nobody knows it. A fifth:
/// the log tells depths apart that differ by two fifths (learning::addDepth).
[[nodiscard]] double chanceOfOtherDepth(units::Depth depth, units::Length halfWidth);

/// Chance that a depth with this 95 % half-width lies, to half a metre, between two others.
[[nodiscard]] double chanceOfDepthBetween(units::Depth least, units::Depth most, units::Depth depth,
                                          units::Length halfWidth);

/// Chance that a place lies within reach: shallow enough to be fished and deep enough for a bait.
[[nodiscard]] double chanceOfReach(const MarkInput& input, const Surroundings& around,
                                   units::Length halfWidth);

/// What is left of a place whose depth may be another: see judgementOf(). \param ofBottom what its
/// bottom as drawn multiplies by.
[[nodiscard]] double leftByTrust(double chanceOfOther, double chanceOfReach, double ofBottom);

/// 95 % half-width of the depth at the place; of those round it where its cell has none.
[[nodiscard]] units::Length trustAt(const MarkInput& input, const Surroundings& around,
                                    geo::WaterPoint place);

/// True for the reasons that stand on the bottom being what is drawn.
[[nodiscard]] bool isOfTheBottom(FactorKind kind);

/// What is true of a place on the planned day.
[[nodiscard]] Circumstances tomorrow(const LearnedCatch& learned, const Surroundings& around,
                                     const Plan& plan);

/// Who says that the place is to be judged. What the program chooses as the best of many promises
/// too much: on made-up seasons of seven kinds such marks promised 0.9 to 1.3 times what they
/// gave, 1.13 on average; with a log a tenth is taken off (ours). The user's own marks are not
/// chosen for looking best.
enum class ChosenBy { user, program };

/// With a log: the water's mean times what it says of depth, kinds of bottom, wind, hours and
/// whereabouts, times what the user believes beside it, times what a depth that is not known for
/// sure takes away: where the depth is another the bottom is another too, and gives the mean at
/// most, and where it is out of reach nothing. Without: what the user believes alone, times the
/// same. \param waves absent: not yet worked out; then there is no factor for shelter.
[[nodiscard]] Judgement judgementOf(const MarkInput& input, const Surroundings& around,
                                    geo::WaterPoint place, const Plan& plan,
                                    const WavesOfDay& waves, ChosenBy chosenBy);

} // namespace marks
