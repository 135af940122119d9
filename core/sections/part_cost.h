// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sections/part_sums.h"

#include <span>

namespace sections {

/// What a part of the water costs: the less, the nearer it is to what an angler would draw. All
/// terms are about 1 for a round part of the wanted size whose depth varies as much as that of the
/// whole water, so that the weights can be compared.
struct PartCost {
    double wanted_m2 = 40000.0;
    double depthVariance_m2 = 1.0; ///< Of the whole fishable water.
    double depth = 0.0;            ///< Weight of the scatter of depth.
    /// Weight of the border, the length of a circle round the wanted size being 1: keeps parts
    /// compact, lets borders settle at necks and run straight.
    double border = 1.0;
    double size = 0.2; ///< Weight of the squared difference from the wanted size.

    [[nodiscard]] double of(const PartSums& part) const;
};

/// How well parts came out.
struct PartFigures {
    double compactness = 0.0; ///< Median of 4 pi A / P^2.
    double explained = 0.0;   ///< Share of the variance of depth that lies between the parts.
};

/// Figures of the parts that hold at least `least_m2`; all count for the variance.
[[nodiscard]] PartFigures figuresOf(std::span<const PartSums> parts, double least_m2);

} // namespace sections
