// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/stencil_matrix.h"

#include "core/surface/solver/parallel_for.h"

namespace surface::solver {

void multiply(const ActiveCells& cells, const StencilMatrix<double>& matrix, const Field& x,
              Field& y, int threads) {
    parallelFor(threads, cells.runs().size(), 500, [&](std::size_t first, std::size_t last) {
        for (std::size_t k = first; k < last; ++k) {
            const ActiveCells::Run& run = cells.runs()[k];
            const double* numbers = matrix.row(run.firstUnknown);
            for (std::size_t p = cells.place(run.begin, run.row); p < cells.place(run.end, run.row);
                 ++p) {
                y[p] = StencilMatrix<double>::product(numbers, x.data() + p, cells.cols());
                numbers += StencilMatrix<double>::width;
            }
        }
    });
}

} // namespace surface::solver
