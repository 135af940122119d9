// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/surface/solver/multigrid.h"
#include "core/surface/solver/stencil_matrix.h"

#include <functional>

namespace surface::solver {

/// How a solution ended.
struct Ended {
    int iterations = 0;
    bool wasStopped = false; ///< By the user.
};

/// y = A x on the active cells; x is 0 elsewhere.
using Apply = std::function<void(const Field& x, Field& y)>;

/// Solves A x = b from the x given, until a step moves no value by more than `tolerance`. Conjugate
/// gradients in their flexible form (Notay 2000), preconditioned by one multigrid cycle a step;
/// sums are taken row by row, so that they are the same for any number of threads.
/// \param b the right side; what is left of it when this returns.
Ended conjugateGradients(const ActiveCells& cells, const Apply& apply, Multigrid& preconditioner,
                         Field& b, Field& x, double tolerance, const base::Progress& progress);
/// The same for a matrix whose numbers are kept.
Ended conjugateGradients(const ActiveCells& cells, const StencilMatrix<double>& matrix,
                         Multigrid& preconditioner, const Field& b, Field& x, double tolerance,
                         int threads, const base::Progress& progress);

} // namespace surface::solver
