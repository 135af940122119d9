// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/blur.h"

#include "core/surface/solver/parallel_for.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace surface::solver {

namespace {

/// Running sums of 2 reach + 1 numbers, `stride` apart, with nothing beyond the ends.
void runningSum(double* line, std::size_t count, std::size_t stride, int reach,
                std::vector<double>& scratch) {
    const auto n = static_cast<std::ptrdiff_t>(count);
    scratch.resize(count + 1);
    scratch[0] = 0.0;
    for (std::size_t k = 0; k < count; ++k) {
        scratch[k + 1] = scratch[k] + line[k * stride];
    }
    for (std::ptrdiff_t k = 0; k < n; ++k) {
        const std::ptrdiff_t from = std::max<std::ptrdiff_t>(0, k - reach);
        const std::ptrdiff_t to = std::min<std::ptrdiff_t>(n, k + reach + 1);
        line[static_cast<std::size_t>(k) * stride] =
            scratch[static_cast<std::size_t>(to)] - scratch[static_cast<std::size_t>(from)];
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
        for (std::size_t row = 0; row < rows; ++row) {
            runningSum(field.data() + row * cols, cols, 1, reach_, scratch);
        }
        for (std::size_t col = 0; col < cols; ++col) {
            runningSum(field.data() + col, rows, cols, reach_, scratch);
        }
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
