// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/multigrid.h"
#include "core/surface/solver/parallel_for.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr std::size_t leastRows = 150;
constexpr int sweeps = 2;
constexpr int sweepsAtBottom = 30;
constexpr std::size_t mostAtBottom = 1500;

} // namespace

/// One sweep of Gauss-Seidel along a run. Each value waits for the one before it and for nothing
/// else, which is why that one is left to the end.
template <int Toward>
static void relaxRun(const StencilMatrix<float>& matrix, const ActiveCells& cells,
                     const ActiveCells::Run& run, const std::vector<float>& b,
                     std::vector<float>& x) {
    constexpr std::size_t middle = StencilMatrix<float>::middle;
    constexpr std::size_t before = Toward > 0 ? middle - 1 : middle + 1;
    constexpr std::size_t after = Toward > 0 ? middle + 1 : middle - 1;
    const int length = run.end - run.begin;
    float last = 0.0F; // no cell beside the end of a run is active
    for (int i = 0; i < length; ++i) {
        const int at = Toward > 0 ? i : length - 1 - i;
        const std::size_t place = cells.place(run.begin + at, run.row);
        const float* numbers = matrix.row(run.firstUnknown + static_cast<std::size_t>(at));
        float* own = x.data() + place;
        const float rest = b[place] -
                           StencilMatrix<float>::productBeside(numbers, own, cells.cols()) -
                           numbers[middle - 2] * own[-2] - numbers[middle + 2] * own[2] -
                           numbers[after] * own[Toward];
        const float inverse = 1.0F / numbers[middle];
        last = (rest - numbers[before] * last) * inverse;
        *own = last;
    }
}

/// Rows whose number leaves the same rest by three do not touch one another.
void Multigrid::smooth(Level& level, Order order) const {
    const ActiveCells& cells = level.cells;
    const std::size_t rows = static_cast<std::size_t>(cells.rows());
    const auto relaxRow = [&](int row) {
        for (std::size_t k = cells.runsOfRow(row); k < cells.runsOfRow(row + 1); ++k) {
            if (order == Order::forward) {
                relaxRun<1>(level.matrix, cells, cells.runs()[k], level.b, level.x);
            } else {
                relaxRun<-1>(level.matrix, cells, cells.runs()[k], level.b, level.x);
            }
        }
    };
    for (int step = 0; step < 3; ++step) {
        const int colour = order == Order::forward ? step : 2 - step;
        parallelFor(threads_, (rows + 2) / 3, leastRows, [&](std::size_t first, std::size_t last) {
            for (std::size_t k = first; k < last; ++k) {
                const int row = static_cast<int>(k) * 3 + colour;
                if (row < cells.rows()) {
                    relaxRow(row);
                }
            }
        });
    }
}

void Multigrid::takeResidual(Level& level) const {
    const ActiveCells& cells = level.cells;
    parallelFor(threads_, cells.runs().size(), 500, [&](std::size_t first, std::size_t last) {
        for (std::size_t k = first; k < last; ++k) {
            const ActiveCells::Run& run = cells.runs()[k];
            const float* numbers = level.matrix.row(run.firstUnknown);
            for (std::size_t p = cells.place(run.begin, run.row); p < cells.place(run.end, run.row);
                 ++p) {
                level.r[p] = level.b[p] - StencilMatrix<float>::product(numbers, level.x.data() + p,
                                                                        cells.cols());
                numbers += StencilMatrix<float>::width;
            }
        }
    });
}

void Multigrid::restrictTo(const Level& fine, Level& coarse) const {
    std::fill(coarse.b.begin(), coarse.b.end(), 0.0F);
    std::fill(coarse.x.begin(), coarse.x.end(), 0.0F);
    for (const ActiveCells::Run& run : fine.cells.runs()) {
        const std::size_t start = fine.cells.place(run.begin, run.row);
        for (int col = run.begin; col < run.end; ++col) {
            const auto step = static_cast<std::size_t>(col - run.begin);
            const float r = fine.r[start + step];
            const std::array<float, 4>& shares = sharesOf(fine.parents[run.firstUnknown + step]);
            const std::array<std::size_t, 4> parents = parentsOf(coarse.cells, col, run.row);
            for (std::size_t k = 0; k < 4; ++k) {
                coarse.b[parents[k]] += shares[k] * r;
            }
        }
    }
}

void Multigrid::prolongFrom(const Level& coarse, Level& fine) const {
    for (const ActiveCells::Run& run : fine.cells.runs()) {
        const std::size_t start = fine.cells.place(run.begin, run.row);
        for (int col = run.begin; col < run.end; ++col) {
            const auto step = static_cast<std::size_t>(col - run.begin);
            const std::array<float, 4>& shares = sharesOf(fine.parents[run.firstUnknown + step]);
            const std::array<std::size_t, 4> parents = parentsOf(coarse.cells, col, run.row);
            float sum = 0.0F;
            for (std::size_t k = 0; k < 4; ++k) {
                sum += shares[k] * coarse.x[parents[k]];
            }
            fine.x[start + step] += sum;
        }
    }
}

void Multigrid::descend(std::size_t k) {
    Level& level = levels_[k];
    if (k + 1 == levels_.size()) {
        solveBottom();
        return;
    }
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        smooth(level, Order::forward);
    }
    takeResidual(level);
    restrictTo(level, levels_[k + 1]);
    descend(k + 1);
    prolongFrom(levels_[k + 1], level);
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        smooth(level, Order::backward);
    }
}

const std::vector<float>& Multigrid::cycle(const Field& residual) {
    Level& finest = levels_.front();
    std::transform(residual.begin(), residual.end(), finest.b.begin(),
                   [](double v) { return static_cast<float>(v); });
    std::fill(finest.x.begin(), finest.x.end(), 0.0F);
    descend(0);
    return finest.x;
}

/// Cholesky's method on the coarsest matrix; where it is too large or not positive, bottom_ stays
/// empty and solveBottom() relaxes instead.
void Multigrid::factorBottom() {
    const Level& level = levels_.back();
    const std::size_t n = level.cells.unknowns();
    bottom_.clear();
    if (n > mostAtBottom) {
        return;
    }
    std::vector<double> l(n * n, 0.0);
    level.cells.forEach([&](std::size_t place, std::size_t unknown) {
        const float* numbers = level.matrix.row(unknown);
        for (int offset = 0; offset < 25; ++offset) {
            const std::size_t other =
                StencilMatrix<float>::stepped(level.cells, place, {offset % 5 - 2, offset / 5 - 2});
            if (level.cells.isActive(other)) {
                l[unknown * n + static_cast<std::size_t>(level.cells.unknownAt(other))] =
                    static_cast<double>(numbers[offset]);
            }
        }
    });
    for (std::size_t j = 0; j < n; ++j) {
        for (std::size_t i = j; i < n; ++i) {
            double sum = l[i * n + j];
            for (std::size_t k = 0; k < j; ++k) {
                sum -= l[i * n + k] * l[j * n + k];
            }
            if (i == j) {
                if (!(sum > 1e-9 * l[i * n + i])) {
                    return;
                }
                l[j * n + j] = std::sqrt(sum);
            } else {
                l[i * n + j] = sum / l[j * n + j];
            }
        }
    }
    bottom_ = std::move(l);
}

void Multigrid::solveBottom() {
    Level& level = levels_.back();
    if (bottom_.empty()) {
        std::fill(level.x.begin(), level.x.end(), 0.0F);
        for (int sweep = 0; sweep < sweepsAtBottom; ++sweep) {
            smooth(level, Order::forward);
            smooth(level, Order::backward);
        }
        return;
    }
    const std::size_t n = level.cells.unknowns();
    std::vector<double> y(n);
    level.cells.forEach([&](std::size_t place, std::size_t unknown) {
        y[unknown] = static_cast<double>(level.b[place]);
    });
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            y[i] -= bottom_[i * n + k] * y[k];
        }
        y[i] /= bottom_[i * n + i];
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k) {
            y[i] -= bottom_[k * n + i] * y[k];
        }
        y[i] /= bottom_[i * n + i];
    }
    level.cells.forEach([&](std::size_t place, std::size_t unknown) {
        level.x[place] = static_cast<float>(y[unknown]);
    });
}

} // namespace surface::solver
