// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/stencil_matrix.h"

#include <array>
#include <vector>

namespace surface::solver {

/// The four coarse places that a fine cell gets its value from, own, beside, above or
/// below, across.
[[nodiscard]] inline std::array<std::size_t, 4> parentsOf(const ActiveCells& coarse, int col,
                                                          int row) {
    const int ownCol = (col + 2) / 2;
    const int ownRow = (row + 2) / 2;
    const int otherCol = col % 2 == 0 ? ownCol - 1 : ownCol + 1;
    const int otherRow = row % 2 == 0 ? ownRow - 1 : ownRow + 1;
    return {coarse.place(ownCol, ownRow), coarse.place(otherCol, ownRow),
            coarse.place(ownCol, otherRow), coarse.place(otherCol, otherRow)};
}

/// Solves a stencil system roughly, in one V(2,2) cycle of geometric multigrid: Gauss-Seidel by
/// rows in three colours, cell-centred prolongation (3/4, 1/4), Galerkin coarse matrices, a direct
/// solution at the bottom (Trottenberg, Oosterlee and Schüller 2001). Single precision: meant as
/// the preconditioner of conjugateGradients(). The colours make the cycle the same for any number
/// of threads.
class Multigrid {
public:
    /// The cells of every level for one water; the matrices follow with setMatrix().
    Multigrid(const ActiveCells& cells, int threads);
    /// Takes a new finest matrix over and makes the coarse ones.
    void setMatrix(const StencilMatrix<double>& matrix);
    /// The finest matrix, to be filled in place; coarsen() has to follow.
    [[nodiscard]] StencilMatrix<float>& finest() { return levels_.front().matrix; }
    /// Makes the coarse matrices of the finest one.
    void coarsen();
    /// About A^-1 residual, at the places of the finest cells; good until the next cycle.
    [[nodiscard]] const std::vector<float>& cycle(const Field& residual);

private:
    struct Level {
        ActiveCells cells;
        StencilMatrix<float> matrix;
        /// Shares of the four coarse cells that a cell gets its value from: own, beside, above or
        /// below, across.
        std::vector<std::array<float, 4>> shares;
        std::vector<float> x, b, r;
    };
    enum class Order : std::uint8_t { forward, backward };

    void setShares(Level& fine, const ActiveCells& coarse) const;
    void makeCoarse(const Level& fine, Level& coarse) const;
    void smooth(Level& level, Order order) const;
    void takeResidual(Level& level) const;
    void restrictTo(const Level& fine, Level& coarse) const;
    void prolongFrom(const Level& coarse, Level& fine) const;
    void descend(std::size_t k);
    void factorBottom();
    void solveBottom();

    std::vector<Level> levels_;
    std::vector<double> bottom_; ///< Cholesky factor of the coarsest matrix, row by row.
    int threads_;
};

} // namespace surface::solver
