// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/active_cells.h"

#include <cstring>
#include <span>

namespace surface::solver {

/// Steps from a cell to one of the 5 x 5 cells around it.
struct Step {
    int col = 0;
    int row = 0;
};

/// A symmetric matrix on active cells whose rows reach at most two cells far: 25 numbers a cell,
/// row by row from the north-west. Numbers at places that are not active stay 0.
template <class Number>
class StencilMatrix {
public:
    static constexpr std::size_t width = 25;
    static constexpr std::size_t middle = 12;

    StencilMatrix() = default;
    explicit StencilMatrix(const ActiveCells& cells) : numbers_(cells.unknowns() * width) {}

    [[nodiscard]] Number* row(std::size_t unknown) { return numbers_.data() + unknown * width; }
    [[nodiscard]] const Number* row(std::size_t unknown) const {
        return numbers_.data() + unknown * width;
    }
    [[nodiscard]] std::vector<Number>& numbers() { return numbers_; }
    [[nodiscard]] const std::vector<Number>& numbers() const { return numbers_; }
    void clear() { std::fill(numbers_.begin(), numbers_.end(), Number{}); }

    /// Adds weight x (sum of factor_k x value at `at` + step_k)^2 to the energy 1/2 x'Ax, twice
    /// over: A += weight x factor factor'. Every cell named must be active; steps lie within 3 x 3.
    void addSquare(const ActiveCells& cells, std::size_t at, std::span<const Step> steps,
                   std::span<const double> factors, double weight) {
        for (std::size_t i = 0; i < steps.size(); ++i) {
            const std::size_t place = stepped(cells, at, steps[i]);
            Number* numbers = row(static_cast<std::size_t>(cells.unknownAt(place)));
            for (std::size_t j = 0; j < steps.size(); ++j) {
                const int offset =
                    (steps[j].row - steps[i].row + 2) * 5 + steps[j].col - steps[i].col + 2;
                numbers[offset] += static_cast<Number>(weight * factors[i] * factors[j]);
            }
        }
    }

    [[nodiscard]] static std::size_t stepped(const ActiveCells& cells, std::size_t at, Step step) {
        return static_cast<std::size_t>(static_cast<std::ptrdiff_t>(at) +
                                        static_cast<std::ptrdiff_t>(step.row) * cells.cols() +
                                        step.col);
    }

    /// Row of the matrix times x at one place.
    [[nodiscard]] static Number product(const Number* numbers, const Number* x, int cols) {
        return productBeside(numbers, x, cols) + numbers[10] * x[-2] + numbers[11] * x[-1] +
               numbers[12] * x[0] + numbers[13] * x[1] + numbers[14] * x[2];
    }

    /// What the two rows to the north and the two to the south give to it, four numbers at a time
    /// (a vector of GCC and Clang: left to themselves they take one after the other).
    [[nodiscard]] static Number productBeside(const Number* numbers, const Number* x, int cols) {
        using Four [[gnu::vector_size(4 * sizeof(Number))]] = Number;
        Four sums{};
        Number last{};
        for (int r = -2; r <= 2; r += r == -1 ? 2 : 1) {
            const Number* own = numbers + middle + r * 5 - 2;
            const Number* line = x + static_cast<std::ptrdiff_t>(r) * cols - 2;
            Four factors;
            Four values;
            std::memcpy(&factors, own, sizeof factors);
            std::memcpy(&values, line, sizeof values);
            sums += factors * values;
            last += own[4] * line[4];
        }
        return (sums[0] + sums[1]) + (sums[2] + sums[3]) + last;
    }

private:
    std::vector<Number> numbers_;
};

/// y = A x on the active cells; y elsewhere is left alone.
void multiply(const ActiveCells& cells, const StencilMatrix<double>& matrix, const Field& x,
              Field& y, int threads);

} // namespace surface::solver
