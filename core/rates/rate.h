// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/units/weight.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace rates {

/// Fish counted over the effort they took.
struct Tally {
    double fish = 0.0; ///< Not whole where they are what fish of the same days are worth.
    double rodHours = 0.0;
    friend bool operator==(const Tally&, const Tally&) = default;
};

/// Fish per 10 rod-hours with its 95 % interval.
struct Rate {
    double per10RodHours = 0.0;
    double low = 0.0;
    double high = 0.0;
    friend bool operator==(const Rate&, const Rate&) = default;
};

/// The rate of a tally, all fish over all effort, with the exact Poisson interval. Nothing where
/// there is no effort. Source: Garwood 1936, through the chi-squared quantiles.
[[nodiscard]] std::optional<Rate> rateOf(const Tally& tally);

/// What one group of stays brought.
struct RateRow {
    std::string name;
    double rodHours = 0.0;
    int stays = 0;
    int blanks = 0; ///< Stays, or their part in this group, without a counted fish.
    int runs = 0;   ///< Takes, landed or lost; species and weight asked for do not matter here.
    int fish = 0;   ///< Landed, of the species and weight asked for.
    std::optional<units::Weight> best; ///< Heaviest counted fish.
    std::optional<Rate> rate;          ///< Nothing where there was no effort.
    /// Drawn towards the other rows by as much as the row is uncertain; a row without effort gets
    /// what is known of the others. Nothing where no row has effort.
    std::optional<Rate> shrunk;
    double shrunkWidth = 0.0;   ///< Standard deviation of the shrunk rate over its mean.
    double shareOfEffort = 0.0; ///< 0 to 1.
    /// Chance of a difference to all other rows at least this large if there were none: exact
    /// conditional test, central, Holm over the rows. Nothing where this row or the rest has no
    /// effort.
    std::optional<double> pAgainstTheRest;

    /// Where it is, of rows that are places.
    std::optional<geo::LonLat> place;

    /// How many times as much the count scatters as chance alone would make it: 1 within a day.
    double dispersion = 1.0;

    [[nodiscard]] Tally tally() const { return {static_cast<double>(fish), rodHours}; }
};

/// Rows of one grouping, in the order asked for.
struct RateTable {
    std::vector<RateRow> rows;
    RateRow overall;
    /// What to expect of a group that was never fished; nothing where nothing was fished at all.
    std::optional<Rate> untried;
    double untriedWidth = 0.0; ///< As shrunkWidth.
    /// Stays of the time asked for that count in no row, since nobody noted their rods.
    std::size_t effortUnknown = 0;
    std::size_t days = 0; ///< With stays that count.
    /// What may be said, and what may not, in whole sentences.
    std::vector<std::string> notes;
};

/// Puts the rows in the order of what is to be expected of them (steadied), most first; those that
/// were never fished come last, in the order in which they stand.
void sortByExpected(RateTable& table);

} // namespace rates
