// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"
#include "core/surface/solver/stencil_matrix.h"

#include <optional>
#include <vector>

namespace surface::solver {

/// A point's place between the centres of four cells: bilinear weights on those that are active,
/// 0 on the others, 1 in all.
struct Footprint {
    std::array<std::size_t, 4> places{}; ///< North-west, north-east, south-west, south-east.
    std::array<double, 4> weights{};

    [[nodiscard]] double of(const Field& field) const {
        return weights[0] * field[places[0]] + weights[1] * field[places[1]] +
               weights[2] * field[places[2]] + weights[3] * field[places[3]];
    }
};

/// The footprint of p on cells laid on `frame`; nothing where none of the four cells is active.
[[nodiscard]] std::optional<Footprint> footprintOf(const ActiveCells& cells,
                                                   const grid::GridFrame& frame, geo::WaterPoint p);

/// One depth that the surface is held to: that of a sounding, or the mean of several.
struct Sample {
    Footprint at;
    geo::WaterPoint point;
    double depth_m = 0.0;
    double soundings = 1.0; ///< How many it stands for.
};

/// Adds weight x (value at the footprint - value)^2 to the energy: its matrix and right side.
template <class Number>
void addPull(const ActiveCells& cells, const Footprint& at, double value, double weight,
             StencilMatrix<Number>& matrix, Field& right);

/// For each sample its share of the soundings in the same block of `block_m`.
[[nodiscard]] std::vector<double> thinningWeights(const std::vector<Sample>& samples,
                                                  double block_m);

} // namespace surface::solver
