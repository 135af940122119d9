// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/stencil_matrix.h"

namespace surface::solver {

/// What bends of the bottom cost. Each adds weight x (integral over the active cells) to x'Ax,
/// from differences that lie wholly inside: at the shore the surface is free (natural boundary).
/// Lengths in metres.

/// weight x int |H x|^2, H the Hessian.
void addBending(const ActiveCells& cells, double weight, StencilMatrix<double>& matrix);

/// weight x int |grad x|^2.
void addMembrane(const ActiveCells& cells, double weight, StencilMatrix<double>& matrix);

/// weight x int x^2.
void addSize(const ActiveCells& cells, double weight, StencilMatrix<double>& matrix);

/// The direction of the contour in each cell and how sure it is: the three numbers of
/// c (t t'), c from 0 to 1.
struct ContourDirections {
    Field xx, xy, yy;
};

/// weight x int c^2 (t' H x t)^2: bends along contours.
void addContourBending(const ActiveCells& cells, const ContourDirections& directions, double weight,
                       StencilMatrix<double>& matrix);

} // namespace surface::solver
