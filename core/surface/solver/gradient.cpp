// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/gradient.h"

namespace surface::solver {

namespace {

double slopeAlong(const ActiveCells& cells, const Field& field, std::size_t at,
                  std::size_t stride) {
    const bool before = cells.isActive(at - stride);
    const bool after = cells.isActive(at + stride);
    const double steps = (before ? 1.0 : 0.0) + (after ? 1.0 : 0.0);
    if (steps == 0.0) {
        return 0.0;
    }
    const double change = field[after ? at + stride : at] - field[before ? at - stride : at];
    return change / (steps * cells.cell_m());
}

} // namespace

Field changeEast(const ActiveCells& cells, const Field& field) {
    Field change(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) { change[p] = slopeAlong(cells, field, p, 1); });
    return change;
}

Field changeNorth(const ActiveCells& cells, const Field& field) {
    Field change(cells.places(), 0.0);
    const auto cols = static_cast<std::size_t>(cells.cols());
    cells.forEach(
        [&](std::size_t p, std::size_t) { change[p] = -slopeAlong(cells, field, p, cols); });
    return change;
}

Gradient gradientOf(const ActiveCells& cells, const Field& field) {
    return {changeEast(cells, field), changeNorth(cells, field)};
}

} // namespace surface::solver
