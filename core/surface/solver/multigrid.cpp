// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/multigrid.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr std::size_t bottomUnknowns = 250;

} // namespace

Multigrid::Multigrid(const ActiveCells& cells, int threads) : threads_(threads) {
    levels_.emplace_back().cells = cells;
    while (levels_.back().cells.unknowns() > bottomUnknowns) {
        ActiveCells coarse = levels_.back().cells.coarsened();
        if (coarse.unknowns() >= levels_.back().cells.unknowns()) {
            break;
        }
        setParents(levels_.back(), coarse);
        levels_.emplace_back().cells = std::move(coarse);
    }
    for (Level& level : levels_) {
        level.matrix = StencilMatrix<float>(level.cells);
        level.x.assign(level.cells.places(), 0.0F);
        level.b.assign(level.cells.places(), 0.0F);
        level.r.assign(level.cells.places(), 0.0F);
    }
}

void Multigrid::setParents(Level& fine, const ActiveCells& coarse) {
    fine.parents.assign(fine.cells.unknowns(), 0);
    for (const ActiveCells::Run& run : fine.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            const std::array<std::size_t, 4> parents = parentsOf(coarse, col, run.row);
            unsigned bits = 0;
            for (unsigned k = 0; k < 4; ++k) {
                bits |= coarse.isActive(parents[k]) ? 1U << k : 0U;
            }
            fine.parents[run.firstUnknown + static_cast<std::size_t>(col - run.begin)] =
                static_cast<std::uint8_t>(bits);
        }
    }
}

void Multigrid::setMatrix(const StencilMatrix<double>& matrix) {
    std::vector<float>& finest = levels_.front().matrix.numbers();
    std::transform(matrix.numbers().begin(), matrix.numbers().end(), finest.begin(),
                   [](double v) { return static_cast<float>(v); });
    coarsen();
}

void Multigrid::coarsen() {
    for (std::size_t k = 1; k < levels_.size(); ++k) {
        makeCoarse(levels_[k - 1], levels_[k]);
    }
    factorBottom();
}

/// Position in a 5 x 5 stencil.
static std::size_t at(int row, int col) {
    return static_cast<std::size_t>(row) * 5 + static_cast<std::size_t>(col);
}

/// Coarse matrix = P' A P, gathered fine cell by fine cell: first the fine row times P, on at most
/// 5 x 5 coarse cells around the own one, then shared out over the parents.
void Multigrid::makeCoarse(const Level& fine, Level& coarse) const {
    coarse.matrix.clear();
    const ActiveCells& c = coarse.cells;
    for (const ActiveCells::Run& run : fine.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            const std::size_t unknown =
                run.firstUnknown + static_cast<std::size_t>(col - run.begin);
            const float* row = fine.matrix.row(unknown);
            const int ownCol = (col + 2) / 2;
            const int ownRow = (run.row + 2) / 2;
            std::array<float, 25> timesP{};
            for (int dr = -2; dr <= 2; ++dr) {
                for (int dc = -2; dc <= 2; ++dc) {
                    const float number = row[(dr + 2) * 5 + dc + 2];
                    if (number == 0.0F) {
                        continue;
                    }
                    const int otherCol = col + dc;
                    const int otherRow = run.row + dr;
                    const std::int32_t other =
                        fine.cells.unknownAt(fine.cells.place(otherCol, otherRow));
                    const std::array<float, 4>& shares =
                        sharesOf(fine.parents[static_cast<std::size_t>(other)]);
                    const int pc = (otherCol + 2) / 2 - ownCol + 2;
                    const int pr = (otherRow + 2) / 2 - ownRow + 2;
                    const int qc = otherCol % 2 == 0 ? pc - 1 : pc + 1;
                    const int qr = otherRow % 2 == 0 ? pr - 1 : pr + 1;
                    timesP[at(pr, pc)] += number * shares[0];
                    timesP[at(pr, qc)] += number * shares[1];
                    timesP[at(qr, pc)] += number * shares[2];
                    timesP[at(qr, qc)] += number * shares[3];
                }
            }
            const std::array<std::size_t, 4> parents = parentsOf(c, col, run.row);
            const int besideCol = col % 2 == 0 ? -1 : 1;
            const int besideRow = run.row % 2 == 0 ? -1 : 1;
            for (int k = 0; k < 4; ++k) {
                const float share = sharesOf(fine.parents[unknown])[static_cast<std::size_t>(k)];
                if (share == 0.0F) {
                    continue;
                }
                float* numbers = coarse.matrix.row(
                    static_cast<std::size_t>(c.unknownAt(parents[static_cast<std::size_t>(k)])));
                const int shiftCol = k % 2 == 1 ? besideCol : 0;
                const int shiftRow = k >= 2 ? besideRow : 0;
                for (int r = std::max(0, shiftRow); r < std::min(5, 5 + shiftRow); ++r) {
                    for (int q = std::max(0, shiftCol); q < std::min(5, 5 + shiftCol); ++q) {
                        numbers[(r - shiftRow) * 5 + q - shiftCol] += share * timesP[at(r, q)];
                    }
                }
            }
        }
    }
}

} // namespace surface::solver
