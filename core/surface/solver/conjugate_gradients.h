// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/surface/solver/multigrid.h"
#include "core/surface/solver/stencil_matrix.h"

namespace surface::solver {

/// How a solution ended.
struct Ended {
    int iterations = 0;
    bool wasStopped = false; ///< By the user.
};

/// Solves A x = b from the x given, until a step moves no value by more than `tolerance`. Conjugate
/// gradients in their flexible form (Notay 2000), preconditioned by one multigrid cycle a step;
/// sums are taken row by row, so that they are the same for any number of threads.
Ended conjugateGradients(const ActiveCells& cells, const StencilMatrix<double>& matrix,
                         Multigrid& preconditioner, const Field& b, Field& x, double tolerance,
                         int threads, const base::Progress& progress);

} // namespace surface::solver
