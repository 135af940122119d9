// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace learning {

/// A small dense symmetric matrix, of which jobs fill and read the lower half.
class SymmetricMatrix {
public:
    SymmetricMatrix() = default;
    explicit SymmetricMatrix(std::size_t size) : size_(size), values_(size * size, 0.0) {}

    [[nodiscard]] std::size_t size() const { return size_; }
    [[nodiscard]] double& lower(std::size_t row, std::size_t col) {
        return values_[row * size_ + col];
    }
    /// Of either half.
    [[nodiscard]] double at(std::size_t row, std::size_t col) const {
        return row >= col ? values_[row * size_ + col] : values_[col * size_ + row];
    }
    [[nodiscard]] const double* row(std::size_t r) const { return values_.data() + r * size_; }
    [[nodiscard]] double* row(std::size_t r) { return values_.data() + r * size_; }

private:
    std::size_t size_ = 0;
    std::vector<double> values_;
};

/// A = L L'. Source: Golub and Van Loan, Matrix Computations, 4th ed., 4.2.
class CholeskyFactor {
public:
    /// \return false where the matrix is not positive definite; then nothing else may be asked.
    [[nodiscard]] bool factorise(const SymmetricMatrix& matrix);
    /// x with A x = b.
    [[nodiscard]] std::vector<double> solved(std::span<const double> b) const;
    /// The inverse of A, both halves filled.
    [[nodiscard]] SymmetricMatrix inverse() const;

private:
    SymmetricMatrix l_;
};

} // namespace learning
