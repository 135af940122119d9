// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/symmetric_matrix.h"

#include <cmath>

namespace learning {

namespace {

/// In four strands, so that the sum need not wait for itself; the order of adding is fixed.
double dot(const double* a, const double* b, std::size_t n) {
    double s0 = 0.0;
    double s1 = 0.0;
    double s2 = 0.0;
    double s3 = 0.0;
    std::size_t k = 0;
    for (; k + 4 <= n; k += 4) {
        s0 += a[k] * b[k];
        s1 += a[k + 1] * b[k + 1];
        s2 += a[k + 2] * b[k + 2];
        s3 += a[k + 3] * b[k + 3];
    }
    for (; k < n; ++k) {
        s0 += a[k] * b[k];
    }
    return (s0 + s1) + (s2 + s3);
}

} // namespace

bool CholeskyFactor::factorise(const SymmetricMatrix& matrix) {
    const std::size_t n = matrix.size();
    l_ = SymmetricMatrix(n);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            l_.lower(i, j) = (matrix.at(i, j) - dot(l_.row(i), l_.row(j), j)) / l_.at(j, j);
        }
        const double rest = matrix.at(i, i) - dot(l_.row(i), l_.row(i), i);
        if (!(rest > 0.0) || !std::isfinite(rest)) {
            return false;
        }
        l_.lower(i, i) = std::sqrt(rest);
    }
    return true;
}

std::vector<double> CholeskyFactor::solved(std::span<const double> b) const {
    const std::size_t n = l_.size();
    std::vector<double> x(b.begin(), b.end());
    for (std::size_t i = 0; i < n; ++i) {
        x[i] = (x[i] - dot(l_.row(i), x.data(), i)) / l_.at(i, i);
    }
    for (std::size_t i = n; i-- > 0;) {
        x[i] /= l_.at(i, i);
        for (std::size_t j = 0; j < i; ++j) {
            x[j] -= l_.at(i, j) * x[i];
        }
    }
    return x;
}

SymmetricMatrix CholeskyFactor::inverse() const {
    const std::size_t n = l_.size();
    // Row j of `columns` is column j of the inverse of L: nought before j.
    SymmetricMatrix columns(n);
    for (std::size_t j = 0; j < n; ++j) {
        double* column = columns.row(j);
        column[j] = 1.0 / l_.at(j, j);
        for (std::size_t i = j + 1; i < n; ++i) {
            column[i] = -dot(l_.row(i) + j, column + j, i - j) / l_.at(i, i);
        }
    }
    SymmetricMatrix out(n);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            out.row(i)[j] = dot(columns.row(i) + i, columns.row(j) + i, n - i);
            out.row(j)[i] = out.row(i)[j];
        }
    }
    return out;
}

} // namespace learning
