// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/depth.h"

#include <array>
#include <string_view>

namespace weed {

/// Published relations between water clarity and the greatest depth at which rooted weed grows.
/// Chambers and Kalff and Caffrey are quoted at second hand, Canfield from memory, as is that the
/// logarithms are to base 10 (see tests/reference/macrophyte_test.cpp).
enum class GrowthRelation {
    chambersKalffWorld,  ///< Chambers and Kalff 1985, Quebec and world: sqrt z = 1.33 log D + 1.40.
    chambersKalffQuebec, ///< Chambers and Kalff 1985, Quebec: sqrt z = 1.14 log D + 1.32.
    canfield,            ///< Canfield and others 1985: log z = 0.61 log D + 0.26.
    caffrey,             ///< Caffrey and others 2007, Florida, best fit: log z = 0.66 log D + 0.31.
    caffreyUpper         ///< Caffrey and others 2007, upper envelope: log z = 0.53 log D + 0.59.
};

inline constexpr std::array allGrowthRelations{
    GrowthRelation::chambersKalffWorld, GrowthRelation::chambersKalffQuebec,
    GrowthRelation::canfield, GrowthRelation::caffrey, GrowthRelation::caffreyUpper};

/// "Chambers and Kalff 1985 (world)" and so on, for reports.
[[nodiscard]] std::string_view nameOf(GrowthRelation relation);

/// Greatest depth of rooted weed in water of this clarity (logarithms to base 10, metres).
/// \param secchi positive; a relation whose square root would be negative (Secchi depth below 0.09
/// m) gives 0.
[[nodiscard]] units::Depth growthLimit(GrowthRelation relation, units::Depth secchi);

/// The relations scatter by a quarter, so a range is shown with the value in use.
struct GrowthRange {
    units::Depth low;  ///< Least of the best fits.
    units::Depth mid;  ///< Their mean.
    units::Depth high; ///< Greatest of the best fits; the upper envelope is not among them.
};
[[nodiscard]] GrowthRange growthRange(units::Depth secchi);

} // namespace weed
