// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/gain_map.h"

#include <vector>

namespace surface::solver {

/// A straight way through the water, whole from bank to bank.
struct Chord {
    geo::WaterPoint start;
    geo::WaterPoint end;
};

/// Chords in 12 directions, `apart_m` apart, that keep `offShore_m` off the shore and to cells that
/// hold a depth, at least `shortest_m` long.
[[nodiscard]] std::vector<Chord> chordsOf(const geo::Outline& outline, const grid::DepthGrid& depth,
                                          double apart_m, double offShore_m, double shortest_m);

/// The stretch of a chord that gains most for each metre of line and of the way to it.
struct BestStretch {
    geo::WaterPoint start;
    geo::WaterPoint end;
    double gain_m3 = 0.0;
    double worth_m2 = 0.0; ///< Gain over metres sailed.
};

/// \param wayTo_m metres over water from the trip so far to each block (a grid on map.mask()).
/// Worth 0 where no stretch gains anything.
[[nodiscard]] BestStretch bestStretchOf(const Chord& chord, const GainMap& map,
                                        const grid::Grid<float>& wayTo_m, double shortest_m,
                                        double longest_m);

} // namespace surface::solver
