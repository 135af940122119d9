// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/stencil_matrix.h"

#include <cstdint>
#include <vector>

namespace surface::solver {

/// What bends of the bottom cost. Each adds weight x (integral over the active cells) to x'Ax,
/// from differences that lie wholly inside: at the shore the surface is free (natural boundary).
/// Lengths in metres.

/// weight x int |H x|^2, H the Hessian.
template <class Number>
void addBending(const ActiveCells& cells, double weight, StencilMatrix<Number>& matrix);

/// weight x int |grad x|^2.
template <class Number>
void addMembrane(const ActiveCells& cells, double weight, StencilMatrix<Number>& matrix);

/// weight x int x^2.
template <class Number>
void addSize(const ActiveCells& cells, double weight, StencilMatrix<Number>& matrix);

/// The direction of the contour in each cell and how sure it is: the three numbers of
/// c (t t'), c from 0 to 1. In single precision: more would say nothing, and on large waters it
/// would be what memory is full of.
struct ContourDirections {
    std::vector<float> xx, xy, yy;
};

/// weight x int c^2 (t' H x t)^2: bends along contours.
template <class Number>
void addContourBending(const ActiveCells& cells, const ContourDirections& directions, double weight,
                       StencilMatrix<Number>& matrix);

/// Below it a cell shows no contour to bend along: the trace of c (t t').
constexpr double leastContour = 0.02;

/// Which differences lie wholly on active cells, as bits.
namespace whole {
constexpr std::uint8_t alongX = 1;   ///< The cell, its west and its east.
constexpr std::uint8_t alongY = 2;   ///< The cell, its north and its south.
constexpr std::uint8_t corner = 4;   ///< The cell, its east, south and south-east.
constexpr std::uint8_t toEast = 8;   ///< The cell and its east.
constexpr std::uint8_t toSouth = 16; ///< The cell and its south.
constexpr std::uint8_t around = 32;  ///< All nine.
} // namespace whole

/// For each place of the rectangle; 0 where no cell is active.
[[nodiscard]] std::vector<std::uint8_t> wholeDifferences(const ActiveCells& cells);

} // namespace surface::solver
