// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

namespace reduction {

/// Normal equations of a small least squares problem, gathered observation by observation.
class NormalEquations {
public:
    explicit NormalEquations(std::size_t unknowns)
        : unknowns_(unknowns), matrix_(unknowns * unknowns, 0.0), right_(unknowns, 0.0) {}

    /// One factor of an unknown in an observation.
    struct Term {
        std::size_t unknown = 0;
        double factor = 0.0;
    };
    /// Adds weight x (sum of terms - observed)^2.
    void add(const std::vector<Term>& terms, double observed, double weight);

    struct Solution {
        std::vector<double> values;
        /// Square roots of the inverse matrix' diagonal: standard errors for unit weight.
        std::vector<double> errors;
    };
    /// The unknowns that make the sum least. Each must stand in some observation with weight, and
    /// together they must be determined (Gauss and Jordan without pivoting: the matrix is
    /// positive).
    [[nodiscard]] Solution solve() const;

private:
    std::size_t unknowns_;
    std::vector<double> matrix_;
    std::vector<double> right_;
};

} // namespace reduction
