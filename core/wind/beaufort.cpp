// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/beaufort.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace wind {

namespace {

constexpr std::array firstKnot = {1, 4, 7, 11, 17, 22, 28, 34, 41, 48, 56, 64};

constexpr std::array<std::string_view, 13> names = {
    "calm",         "light air",     "light breeze", "gentle breeze", "moderate breeze",
    "fresh breeze", "strong breeze", "near gale",    "gale",          "strong gale",
    "storm",        "violent storm", "hurricane"};

constexpr std::array<std::string_view, 13> sights = {"flat",
                                                     "a ripple here and there",
                                                     "ripples all over",
                                                     "wavelets, the first crests break",
                                                     "small waves, some white horses",
                                                     "white horses everywhere",
                                                     "large waves for a lake, spray",
                                                     "foam in streaks",
                                                     "high waves, spray blown off",
                                                     "high waves, spray blown off",
                                                     "no water for boats",
                                                     "no water for boats",
                                                     "no water for boats"};

std::size_t held(int force) {
    return static_cast<std::size_t>(std::clamp(force, 0, 12));
}

} // namespace

int beaufortForce(units::Speed wind) {
    const double knots = std::round(wind.inKnots());
    return static_cast<int>(std::ranges::count_if(
        firstKnot, [knots](int first) { return knots >= static_cast<double>(first); }));
}

units::Speed middleOfForce(int force) {
    const std::size_t f = held(force);
    if (f == 0) {
        return units::Speed::knots(0.0);
    }
    const double first = firstKnot[f - 1];
    return units::Speed::knots(f == firstKnot.size() ? first : 0.5 * (first + firstKnot[f] - 1));
}

std::string_view beaufortName(int force) {
    return names[held(force)];
}

std::string_view beaufortOnTheWater(int force) {
    return sights[held(force)];
}

} // namespace wind
