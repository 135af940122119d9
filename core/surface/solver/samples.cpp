// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/samples.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <utility>

namespace surface::solver {

std::optional<Footprint> footprintOf(const ActiveCells& cells, const grid::GridFrame& frame,
                                     geo::WaterPoint p) {
    const double col = (p.x_m - frame.west_m()) / frame.cell_m() - 0.5;
    const double row = (frame.north_m() - p.y_m) / frame.cell_m() - 0.5;
    if (!(col >= -1.0 && row >= -1.0 && col <= frame.cols() && row <= frame.rows())) {
        return std::nullopt;
    }
    const int left = static_cast<int>(std::floor(col));
    const int top = static_cast<int>(std::floor(row));
    const double right = col - left;
    const double down = row - top;
    Footprint at;
    const std::size_t corner = cells.place(left + ActiveCells::padding, top + ActiveCells::padding);
    const auto width = static_cast<std::size_t>(cells.cols());
    at.places = {corner, corner + 1, corner + width, corner + width + 1};
    at.weights = {(1.0 - right) * (1.0 - down), right * (1.0 - down), (1.0 - right) * down,
                  right * down};
    double sum = 0.0;
    for (std::size_t k = 0; k < 4; ++k) {
        at.weights[k] = cells.isActive(at.places[k]) ? at.weights[k] : 0.0;
        sum += at.weights[k];
    }
    if (!(sum > 1e-6)) {
        return std::nullopt;
    }
    for (double& weight : at.weights) {
        weight /= sum;
    }
    return at;
}

template <class Number>
void addPull(const ActiveCells& cells, const Footprint& at, double value, double weight,
             StencilMatrix<Number>& matrix, Field& right) {
    constexpr std::array<Step, 4> steps{Step{0, 0}, Step{1, 0}, Step{0, 1}, Step{1, 1}};
    for (std::size_t i = 0; i < 4; ++i) {
        if (at.weights[i] == 0.0) {
            continue;
        }
        Number* row = matrix.row(static_cast<std::size_t>(cells.unknownAt(at.places[i])));
        for (std::size_t j = 0; j < 4; ++j) {
            row[(steps[j].row - steps[i].row + 2) * 5 + steps[j].col - steps[i].col + 2] +=
                static_cast<Number>(weight * at.weights[i] * at.weights[j]);
        }
        right[at.places[i]] += weight * at.weights[i] * value;
    }
}

template void addPull(const ActiveCells&, const Footprint&, double, double, StencilMatrix<float>&,
                      Field&);
template void addPull(const ActiveCells&, const Footprint&, double, double, StencilMatrix<double>&,
                      Field&);

std::vector<double> thinningWeights(const std::vector<Sample>& samples, double block_m) {
    std::map<std::pair<std::int64_t, std::int64_t>, double> counts;
    const auto blockOf = [block_m](const Sample& s) {
        return std::pair(static_cast<std::int64_t>(std::floor(s.point.x_m / block_m)),
                         static_cast<std::int64_t>(std::floor(s.point.y_m / block_m)));
    };
    for (const Sample& sample : samples) {
        counts[blockOf(sample)] += sample.soundings;
    }
    std::vector<double> weights;
    weights.reserve(samples.size());
    for (const Sample& sample : samples) {
        weights.push_back(sample.soundings / counts[blockOf(sample)]);
    }
    return weights;
}

} // namespace surface::solver
