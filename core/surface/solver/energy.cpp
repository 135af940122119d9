// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/energy.h"

namespace surface::solver {

namespace {

using Matrix = StencilMatrix<float>; // for its steps

template <std::size_t Count>
bool allActive(const ActiveCells& cells, std::size_t at, const std::array<Step, Count>& steps) {
    for (const Step step : steps) {
        if (!cells.isActive(Matrix::stepped(cells, at, step))) {
            return false;
        }
    }
    return true;
}

template <class Number, std::size_t Count>
void addIfInside(const ActiveCells& cells, std::size_t at, const std::array<Step, Count>& steps,
                 const std::array<double, Count>& factors, double weight,
                 StencilMatrix<Number>& matrix) {
    if (allActive(cells, at, steps)) {
        matrix.addSquare(cells, at, steps, factors, weight);
    }
}

constexpr std::array<Step, 3> alongX{Step{-1, 0}, Step{0, 0}, Step{1, 0}};
constexpr std::array<Step, 3> alongY{Step{0, -1}, Step{0, 0}, Step{0, 1}};
constexpr std::array<Step, 4> corner{Step{0, 0}, Step{1, 0}, Step{0, 1}, Step{1, 1}};
constexpr std::array<Step, 2> toEast{Step{0, 0}, Step{1, 0}};
constexpr std::array<Step, 2> toSouth{Step{0, 0}, Step{0, 1}};
constexpr std::array<double, 3> second{1.0, -2.0, 1.0};
constexpr std::array<double, 4> mixed{1.0, -1.0, -1.0, 1.0};
constexpr std::array<double, 2> first{-1.0, 1.0};
constexpr std::array<Step, 9> around{Step{-1, -1}, Step{0, -1}, Step{1, -1},
                                     Step{-1, 0},  Step{0, 0},  Step{1, 0},
                                     Step{-1, 1},  Step{0, 1},  Step{1, 1}};

} // namespace

template <class Number>
void addBending(const ActiveCells& cells, double weight, StencilMatrix<Number>& matrix) {
    const double w = weight / (cells.cell_m() * cells.cell_m());
    cells.forEach([&](std::size_t p, std::size_t) {
        addIfInside(cells, p, alongX, second, w, matrix);
        addIfInside(cells, p, alongY, second, w, matrix);
        addIfInside(cells, p, corner, mixed, 2.0 * w, matrix);
    });
}

template <class Number>
void addMembrane(const ActiveCells& cells, double weight, StencilMatrix<Number>& matrix) {
    cells.forEach([&](std::size_t p, std::size_t) {
        addIfInside(cells, p, toEast, first, weight, matrix);
        addIfInside(cells, p, toSouth, first, weight, matrix);
    });
}

template <class Number>
void addSize(const ActiveCells& cells, double weight, StencilMatrix<Number>& matrix) {
    const double w = weight * cells.cell_m() * cells.cell_m();
    for (std::size_t k = 0; k < cells.unknowns(); ++k) {
        matrix.row(k)[Matrix::middle] += static_cast<Number>(w);
    }
}

template <class Number>
void addContourBending(const ActiveCells& cells, const ContourDirections& directions, double weight,
                       StencilMatrix<Number>& matrix) {
    const double w = weight / (cells.cell_m() * cells.cell_m());
    cells.forEach([&](std::size_t p, std::size_t) {
        const auto xx = static_cast<double>(directions.xx[p]);
        const auto xy = static_cast<double>(directions.xy[p]);
        const auto yy = static_cast<double>(directions.yy[p]);
        if (xx + yy < leastContour || !allActive(cells, p, around)) {
            return;
        }
        // rows run south, y runs north: the mixed difference changes its sign
        const std::array<double, 9> factors{-0.5 * xy, yy, 0.5 * xy, xx, -2.0 * (xx + yy), xx,
                                            0.5 * xy,  yy, -0.5 * xy};
        matrix.addSquare(cells, p, around, factors, w);
    });
}

template void addBending(const ActiveCells&, double, StencilMatrix<float>&);
template void addBending(const ActiveCells&, double, StencilMatrix<double>&);
template void addMembrane(const ActiveCells&, double, StencilMatrix<float>&);
template void addMembrane(const ActiveCells&, double, StencilMatrix<double>&);
template void addSize(const ActiveCells&, double, StencilMatrix<double>&);
template void addContourBending(const ActiveCells&, const ContourDirections&, double,
                                StencilMatrix<float>&);
template void addContourBending(const ActiveCells&, const ContourDirections&, double,
                                StencilMatrix<double>&);

std::vector<std::uint8_t> wholeDifferences(const ActiveCells& cells) {
    std::vector<std::uint8_t> bits(cells.places(), 0);
    cells.forEach([&](std::size_t p, std::size_t) {
        const auto bitOf = [&](const auto& steps, std::uint8_t bit) {
            return allActive(cells, p, steps) ? bit : std::uint8_t{0};
        };
        bits[p] = static_cast<std::uint8_t>(
            bitOf(alongX, whole::alongX) | bitOf(alongY, whole::alongY) |
            bitOf(corner, whole::corner) | bitOf(toEast, whole::toEast) |
            bitOf(toSouth, whole::toSouth) | bitOf(around, whole::around));
    });
    return bits;
}

} // namespace surface::solver
