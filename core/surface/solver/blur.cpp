// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/blur.h"

#include "core/surface/solver/parallel_for.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace surface::solver {

namespace {

/// Lines of numbers that lie side by side in a field.
struct Lines {
    std::size_t count;  ///< Numbers in a line.
    std::size_t stride; ///< From one to the next.
    std::size_t lines;
    std::size_t apart; ///< From one line to the next.
};

/// Of each line the running sums of 2 reach + 1 numbers, with nothing beyond the ends. Several
/// lines at once: a sum has to wait for the one before it, but not for those of its neighbours, and
/// down the columns what lies side by side is fetched together.
void runningSums(double* first, const Lines& of, int reach, std::vector<double>& scratch) {
    constexpr std::size_t together = 8;
    const auto n = static_cast<std::ptrdiff_t>(of.count);
    scratch.assign((of.count + 1) * together, 0.0);
    for (std::size_t from = 0; from < of.lines; from += together) {
        const std::size_t lanes = std::min(together, of.lines - from);
        double* line = first + from * of.apart;
        double* sums = scratch.data();
        for (std::size_t k = 0; k < of.count; ++k, sums += together) {
            for (std::size_t lane = 0; lane < lanes; ++lane) {
                sums[together + lane] = sums[lane] + line[k * of.stride + lane * of.apart];
            }
        }
        for (std::ptrdiff_t k = 0; k < n; ++k) {
            const auto begin = static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, k - reach));
            const auto end = static_cast<std::size_t>(std::min<std::ptrdiff_t>(n, k + reach + 1));
            const double* low = scratch.data() + begin * together;
            const double* high = scratch.data() + end * together;
            double* to = line + static_cast<std::size_t>(k) * of.stride;
            for (std::size_t lane = 0; lane < lanes; ++lane) {
                to[lane * of.apart] = high[lane] - low[lane];
            }
        }
    }
}

} // namespace

Blur::Blur(const ActiveCells& cells, double deviation_m) : cells_(&cells) {
    const double width = std::sqrt(4.0 * std::pow(deviation_m / cells.cell_m(), 2) + 1.0);
    reach_ = std::max(1, static_cast<int>(std::lround((width - 1.0) / 2.0)));
    Field ones(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) { ones[p] = 1.0; });
    weights_ = sums(std::move(ones));
}

Field Blur::sums(Field field) const {
    const auto cols = static_cast<std::size_t>(cells_->cols());
    const auto rows = static_cast<std::size_t>(cells_->rows());
    std::vector<double> scratch;
    for (int pass = 0; pass < 3; ++pass) {
        runningSums(field.data(), {cols, 1, rows, cols}, reach_, scratch);
        runningSums(field.data(), {rows, cols, cols, 1}, reach_, scratch);
    }
    return field;
}

Field Blur::of(Field field) const {
    field = sums(std::move(field));
    for (std::size_t p = 0; p < field.size(); ++p) {
        field[p] = cells_->isActive(p) ? field[p] / weights_[p] : 0.0;
    }
    return field;
}

void Blur::replace(const std::vector<Field*>& fields, int threads) const {
    parallelFor(threads, fields.size(), 1, [&](std::size_t first, std::size_t last) {
        for (std::size_t i = first; i < last; ++i) {
            *fields[i] = of(std::move(*fields[i]));
        }
    });
}

} // namespace surface::solver
