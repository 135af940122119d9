// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/day_scatter.h"

#include <algorithm>

namespace rates {

namespace {

constexpr double usualVariance = 1.0 / 3.0;
constexpr double daysOfTheUsual = 12.0;

/// What a row's days say: the excess of their scatter over that of chance, and what it would be for
/// a day variance of 1.
struct Excess {
    double found = 0.0;
    double unit = 0.0;
    double squares = 0.0; ///< Of the fish expected, summed over the days.
    double days = 0.0;
};

/// For y_t with mean f_t n, f_t a day's share of the effort and n the fish of the row, the sum of
/// squares is expected to be n (1 - S2) + v n (n - 1) (S2 - 2 S3 + S2^2), with Sk = sum of f_t^k.
Excess excessOf(const ByDay& row) {
    double rodHours = 0.0;
    double fish = 0.0;
    for (const auto& [day, tally] : row) {
        rodHours += tally.rodHours;
        fish += tally.fish;
    }
    Excess out;
    if (!(rodHours > 0.0) || row.size() < 2) {
        return out;
    }
    double scatter = 0.0;
    double squares = 0.0;
    double cubes = 0.0;
    for (const auto& [day, tally] : row) {
        const double share = tally.rodHours / rodHours;
        const double off = tally.fish - share * fish;
        scatter += off * off;
        squares += share * share;
        cubes += share * share * share;
    }
    const double pairs = std::max(fish * (fish - 1.0), 0.0);
    out.found = scatter - fish * (1.0 - squares);
    out.unit = pairs * (squares - 2.0 * cubes + squares * squares);
    out.squares = pairs * squares;
    out.days = static_cast<double>(row.size());
    return out;
}

} // namespace

double dayVariance(std::span<const ByDay> rows) {
    Excess sum;
    for (const ByDay& row : rows) {
        const Excess one = excessOf(row);
        sum.found += one.found;
        sum.unit += one.unit;
        sum.squares += one.squares;
        sum.days += one.days;
    }
    if (!(sum.days > 0.0) || !(sum.squares > 0.0)) {
        return usualVariance; // nothing to go by
    }
    const double usual = daysOfTheUsual * sum.squares / sum.days;
    return std::max(0.0, (sum.found + usual * usualVariance) / (sum.unit + usual));
}

double dispersionOf(const ByDay& days, double perRodHour, double dayVariance) {
    if (days.size() < 2) {
        return 1.0;
    }
    double expected = 0.0;
    double squares = 0.0;
    for (const auto& [day, tally] : days) {
        const double fish = perRodHour * tally.rodHours;
        expected += fish;
        squares += fish * fish;
    }
    return expected > 0.0 ? 1.0 + dayVariance * squares / expected : 1.0;
}

Tally worthOf(const Tally& tally, double dispersion) {
    return {tally.fish / dispersion, tally.rodHours / dispersion};
}

} // namespace rates
