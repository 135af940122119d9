// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/stencil_matrix.h"

#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

/// Linear algebra with all numbers kept: slow, and plain enough to compare with.
namespace dense {

using Vector = std::vector<double>;
using Matrix = std::vector<Vector>;

inline Matrix zeros(std::size_t n) {
    return Matrix(n, Vector(n, 0.0));
}

/// x of a x = b, by elimination with the largest pivot of each column.
inline Vector solved(Matrix a, Vector b) {
    const std::size_t n = b.size();
    for (std::size_t j = 0; j < n; ++j) {
        std::size_t best = j;
        for (std::size_t i = j + 1; i < n; ++i) {
            best = std::abs(a[i][j]) > std::abs(a[best][j]) ? i : best;
        }
        std::swap(a[j], a[best]);
        std::swap(b[j], b[best]);
        for (std::size_t i = j + 1; i < n; ++i) {
            const double factor = a[i][j] / a[j][j];
            if (factor == 0.0) {
                continue;
            }
            for (std::size_t k = j; k < n; ++k) {
                a[i][k] -= factor * a[j][k];
            }
            b[i] -= factor * b[j];
        }
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k) {
            b[i] -= a[i][k] * b[k];
        }
        b[i] /= a[i][i];
    }
    return b;
}

inline Vector product(const Matrix& a, const Vector& x) {
    Vector y(a.size(), 0.0);
    for (std::size_t i = 0; i < a.size(); ++i) {
        for (std::size_t k = 0; k < x.size(); ++k) {
            y[i] += a[i][k] * x[k];
        }
    }
    return y;
}

/// All numbers of a matrix on cells, unknown by unknown.
inline Matrix of(const surface::solver::ActiveCells& cells,
                 const surface::solver::StencilMatrix<double>& matrix) {
    using Stencil = surface::solver::StencilMatrix<double>;
    Matrix a = zeros(cells.unknowns());
    cells.forEach([&](std::size_t place, std::size_t unknown) {
        for (int k = 0; k < 25; ++k) {
            const std::size_t other = Stencil::stepped(cells, place, {k % 5 - 2, k / 5 - 2});
            if (cells.isActive(other)) {
                a[unknown][static_cast<std::size_t>(cells.unknownAt(other))] =
                    matrix.row(unknown)[k];
            }
        }
    });
    return a;
}

/// The values of the active cells, unknown by unknown.
inline Vector of(const surface::solver::ActiveCells& cells, const surface::solver::Field& field) {
    Vector x(cells.unknowns());
    cells.forEach([&](std::size_t place, std::size_t unknown) { x[unknown] = field[place]; });
    return x;
}

} // namespace dense
