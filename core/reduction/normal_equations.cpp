// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/normal_equations.h"

#include <algorithm>
#include <cmath>

namespace reduction {

void NormalEquations::add(const std::vector<Term>& terms, double observed, double weight) {
    for (const Term& row : terms) {
        for (const Term& column : terms) {
            matrix_[row.unknown * unknowns_ + column.unknown] +=
                weight * row.factor * column.factor;
        }
        right_[row.unknown] += weight * row.factor * observed;
    }
}

NormalEquations::Solution NormalEquations::solve() const {
    const std::size_t n = unknowns_;
    std::vector<double> left = matrix_;
    std::vector<double> inverse(n * n, 0.0);
    for (std::size_t i = 0; i < n; ++i) {
        inverse[i * n + i] = 1.0;
    }
    for (std::size_t i = 0; i < n; ++i) {
        const double pivot = left[i * n + i];
        for (std::size_t c = 0; c < n; ++c) {
            left[i * n + c] /= pivot;
            inverse[i * n + c] /= pivot;
        }
        for (std::size_t r = 0; r < n; ++r) {
            const double factor = left[r * n + i];
            for (std::size_t c = 0; r != i && c < n; ++c) {
                left[r * n + c] -= factor * left[i * n + c];
                inverse[r * n + c] -= factor * inverse[i * n + c];
            }
        }
    }
    Solution solution;
    for (std::size_t r = 0; r < n; ++r) {
        double value = 0.0;
        for (std::size_t c = 0; c < n; ++c) {
            value += inverse[r * n + c] * right_[c];
        }
        solution.values.push_back(value);
        solution.errors.push_back(std::sqrt(std::fmax(0.0, inverse[r * n + r])));
    }
    return solution;
}

} // namespace reduction
