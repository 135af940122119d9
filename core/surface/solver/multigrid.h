// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/stencil_matrix.h"

#include <array>
#include <cstdint>
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

/// For each set of the four parents that are active, as bits: the shares that a cell takes of their
/// values, own, beside, above or below, across; 1 in all.
inline constexpr std::array<std::array<float, 4>, 16> parentShares = [] {
    constexpr std::array<float, 4> full{9.0F / 16.0F, 3.0F / 16.0F, 3.0F / 16.0F, 1.0F / 16.0F};
    std::array<std::array<float, 4>, 16> all{};
    for (unsigned parents = 1; parents < all.size(); ++parents) {
        float sum = 0.0F;
        for (unsigned k = 0; k < 4; ++k) {
            all[parents][k] = (parents >> k & 1U) != 0 ? full[k] : 0.0F;
            sum += all[parents][k];
        }
        for (float& share : all[parents]) {
            share /= sum;
        }
    }
    return all;
}();

[[nodiscard]] inline const std::array<float, 4>& sharesOf(std::uint8_t parents) {
    return parentShares[parents];
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
        /// Which of its four parents are active, as bits: see sharesOf(). Their numbers themselves
        /// would be a seventh of all memory.
        std::vector<std::uint8_t> parents;
        std::vector<float> x, b, r;
    };
    enum class Order : std::uint8_t { forward, backward };

    static void setParents(Level& fine, const ActiveCells& coarse);
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
