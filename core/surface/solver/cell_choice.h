// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"

#include <cstddef>

namespace surface::solver {

/// The side of a cell that suits the water and the number of its soundings: about a 360th of the
/// side of a square as large as the water, no finer than 2 m where there are more soundings than
/// such cells, 1 to 20 m, at most a million cells, rounded to 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10,
/// 12, 15 or 20 m; larger only where a million cells of 20 m do not cover the water.
[[nodiscard]] units::Length cellFor(const geo::Outline& outline, std::size_t soundings);

/// The side of a cell for the trend, which is smooth: 10 m on a water of a square kilometre and
/// more, smaller on smaller ones, never below the cell itself.
[[nodiscard]] units::Length trendCellFor(const geo::Outline& outline, units::Length cell);

/// The side of a cell for the trials of stiffness, which only compare one error with another: twice
/// the cell, larger where there would be more than 20000 of them.
[[nodiscard]] units::Length trialCellFor(const geo::Outline& outline, units::Length cell);

/// The side of a cell for the trials that judge the trust, which take the errors as they are: twice
/// the cell, larger where there would be more than 40000 of them.
[[nodiscard]] units::Length trustCellFor(const geo::Outline& outline, units::Length cell);

} // namespace surface::solver
