// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/light/sun.h"
#include "core/marks/mark.h"
#include "core/units/speed.h"

#include <functional>
#include <vector>

namespace marks {

/// The marks of the day and the water between them.
struct DayInput {
    struct Stop {
        int rank = 0;
        double score = 0.0; ///< 0 to 1.
        /// Just here; goes before what is wanted of every stay.
        std::optional<std::chrono::seconds> stay = std::nullopt;
    };
    std::vector<Stop> stops;
    /// Positions in `stops`, each once, as the user wants to go; empty: the best order is found.
    std::vector<std::size_t> byHand;
    /// Metres over water from stop i to stop j at [i][j]; symmetric; infinite where there is no
    /// way.
    std::vector<std::vector<double>> between_m;
    /// Metres over water from the launch to each stop; empty where no launch is known.
    std::vector<double> fromLaunch_m;
    units::Moment start;
    units::Moment end; ///< Not before start.
    units::Speed boatSpeed = units::Speed::metresPerSecond(1.5);
    /// On each mark, without the time at the ropes; nothing: the day is shared out.
    std::optional<std::chrono::seconds> stay;
    /// How good the hour is at an instant, about 1 on average over the day; absent: every hour is
    /// alike.
    std::function<double(units::Moment)> hourWeight;
    /// How good a stop is at an instant beside its score, for one that the wind of the hour makes
    /// better or worse; below 0 where the boat must not lie there then. Absent: 1.
    std::function<double(std::size_t, units::Moment)> stopWeight;
    std::optional<light::SunTimes> light;
};

/// How the day is laid out. Defaults are our choice (no source).
struct DaySettings {
    /// Shortest stay worth anchoring for, 5 minutes to 8 hours.
    std::chrono::seconds leastStay = std::chrono::minutes(30);
    /// To anchor and to lift, at each mark; a stop takes its stay and this. 0 to 2 hours.
    std::chrono::seconds atTheRopes = std::chrono::minutes(10);
    /// Up to this many stops, 0 to 14, the order is exact; above, 2-opt.
    int exactUpTo = 12;
};

/// What an order is worth: sum over its stops of score x weight of the hour of that stop's turn x
/// weight of the stop in that hour, the day cut into equal turns, less the moves, home included,
/// each priced at what the time they take would have been worth fished at the mean score. \param
/// order positions in `input.stops`, each at most once.
[[nodiscard]] double worthOf(const DayInput& input, const std::vector<std::size_t>& order);

/// The order in which to fish the marks, with times. Every mark that the boat can reach is visited
/// once, unless stays would be shorter than the least: then the lowest scores are left out, and
/// the plan says so, and so they are where the user wants longer stays than fit. The order is the
/// best by worthOf() up to `exactUpTo` stops (dynamic programming over subsets, Held and Karp
/// 1962), above it improved by 2-opt and by moving single stops; or it is the user's own, of which
/// only the stops are left out that there is no way or no time for. Stays are as long as the user
/// wants them, each or all; the others are equally long, so that they fill the day with the moves.
/// A stop lasts from the first anchor down to the last one up. Times to the second. \return
/// wrongUse for settings or stays out of range, distances or an order that do not fit the stops, or
/// a day that ends before it starts; cancelled.
[[nodiscard]] base::Result<DayPlan> orderDay(const DayInput& input, const DaySettings& settings,
                                             base::Progress& progress);

} // namespace marks
