// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/bottom_operator.h"

#include "core/surface/solver/parallel_for.h"

#include <algorithm>
#include <array>

namespace surface::solver {

BottomOperator::BottomOperator(const ActiveCells& cells)
    : cells_(&cells), whole_(wholeDifferences(cells)) {}

void BottomOperator::setBends(double bending, double membrane, double contourBending,
                              const ContourDirections* contours) {
    const double square = cells_->cell_m() * cells_->cell_m();
    bending_ = bending / square;
    membrane_ = membrane;
    contourBending_ = contourBending / square;
    contours_ = contours;
    pulls_.clear();
    tracks_.clear();
}

void BottomOperator::addPull(const Footprint& at, double weight) {
    pulls_.push_back({at, weight});
}

void BottomOperator::takeDifferences(const Field& x, int row, Row& differences) const {
    const int cols = cells_->cols();
    const auto clear = [](std::vector<double>& values) { std::ranges::fill(values, 0.0); };
    clear(differences.alongX);
    clear(differences.alongY);
    clear(differences.mixed);
    clear(differences.corner);
    clear(differences.toEast);
    clear(differences.toSouth);
    const auto costs = [](std::uint8_t bits, std::uint8_t bit, double weight) {
        return (bits & bit) != 0 ? weight : 0.0;
    };
    for (std::size_t k = cells_->runsOfRow(row); k < cells_->runsOfRow(row + 1); ++k) {
        const ActiveCells::Run& run = cells_->runs()[k];
        for (int col = run.begin; col < run.end; ++col) {
            const std::size_t p = cells_->place(col, row);
            const std::uint8_t bits = whole_[p];
            const double* own = x.data() + p;
            const double* north = own - cols;
            const double* south = own + cols;
            const auto at = static_cast<std::size_t>(col);
            const double bendX = own[-1] - 2.0 * own[0] + own[1];
            const double bendY = north[0] - 2.0 * own[0] + south[0];
            double alongX = costs(bits, whole::alongX, bending_) * bendX;
            double alongY = costs(bits, whole::alongY, bending_) * bendY;
            if (contours_ != nullptr && (bits & whole::around) != 0) {
                const auto xx = static_cast<double>(contours_->xx[p]);
                const auto xy = static_cast<double>(contours_->xy[p]);
                const auto yy = static_cast<double>(contours_->yy[p]);
                if (xx + yy >= leastContour) {
                    // rows run south, y runs north: the mixed difference changes its sign
                    const double twist = 0.5 * (north[1] - north[-1] + south[-1] - south[1]);
                    const double bend = contourBending_ * (xx * bendX + yy * bendY + xy * twist);
                    alongX += xx * bend;
                    alongY += yy * bend;
                    differences.mixed[at] = 0.5 * xy * bend;
                }
            }
            differences.alongX[at] = alongX;
            differences.alongY[at] = alongY;
            differences.corner[at] = costs(bits, whole::corner, 2.0 * bending_) *
                                     (own[0] - own[1] - south[0] + south[1]);
            differences.toEast[at] = costs(bits, whole::toEast, membrane_) * (own[1] - own[0]);
            differences.toSouth[at] = costs(bits, whole::toSouth, membrane_) * (south[0] - own[0]);
        }
    }
}

/// Each difference once more, transposed.
void BottomOperator::gather(const Row& north, const Row& own, const Row& south, int row,
                            Field& y) const {
    for (std::size_t k = cells_->runsOfRow(row); k < cells_->runsOfRow(row + 1); ++k) {
        const ActiveCells::Run& run = cells_->runs()[k];
        for (int col = run.begin; col < run.end; ++col) {
            const auto c = static_cast<std::size_t>(col);
            y[cells_->place(col, row)] =
                own.alongX[c - 1] - 2.0 * own.alongX[c] + own.alongX[c + 1] + north.alongY[c] -
                2.0 * own.alongY[c] + south.alongY[c] + south.mixed[c - 1] - south.mixed[c + 1] +
                north.mixed[c + 1] - north.mixed[c - 1] + own.corner[c] - own.corner[c - 1] -
                north.corner[c] + north.corner[c - 1] + own.toEast[c - 1] - own.toEast[c] +
                north.toSouth[c] - own.toSouth[c];
        }
    }
}

void BottomOperator::multiply(const Field& x, Field& y, int threads) {
    constexpr int border = ActiveCells::padding;
    constexpr std::size_t leastRows = 60;
    const auto rows = static_cast<std::size_t>(std::max(0, cells_->rows() - 2 * border));
    parallelFor(threads, rows, leastRows, [&](std::size_t first, std::size_t last) {
        const Row none(static_cast<std::size_t>(cells_->cols()));
        std::array<Row, 3> three{none, none, none};
        const auto of = [&](int row) -> Row& { return three[static_cast<std::size_t>(row) % 3]; };
        const int begin = static_cast<int>(first) + border;
        const int end = static_cast<int>(last) + border;
        takeDifferences(x, begin - 1, of(begin - 1));
        takeDifferences(x, begin, of(begin));
        for (int row = begin; row < end; ++row) {
            takeDifferences(x, row + 1, of(row + 1));
            gather(of(row - 1), of(row), of(row + 1), row, y);
        }
    });
    for (const Pull& pull : pulls_) {
        const double force = pull.weight * pull.at.of(x);
        for (std::size_t k = 0; k < 4; ++k) {
            if (pull.at.weights[k] != 0.0) {
                y[pull.at.places[k]] += pull.at.weights[k] * force;
            }
        }
    }
    tracks_.addTimes(x, y);
}

} // namespace surface::solver
