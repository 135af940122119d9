// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/ground_features.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace learning {

namespace {

constexpr std::array knots_m{.7, 1.0, 1.5, 2.2, 3.2, 4.6, 6.6, 9.5, 14.0};
constexpr double lattice_m = 120.0;
constexpr double middle_c = 11.0;
constexpr double perScale_c = 5.0;
constexpr double mostScale = 3.0;

void add(Features& to, Group group, std::int64_t key, double value) {
    if (value != 0.0) {
        to.push_back({group, key, value});
    }
}

} // namespace

void addDepth(Features& to, Group group, units::Depth depth, double scale) {
    const double at = std::log(std::clamp(depth.inMetres(), knots_m.front(), knots_m.back()));
    std::size_t k = 0;
    while (k + 2 < knots_m.size() && at >= std::log(knots_m[k + 1])) {
        ++k;
    }
    const double from = std::log(knots_m[k]);
    const double u = std::clamp((at - from) / (std::log(knots_m[k + 1]) - from), 0.0, 1.0);
    const double length = std::hypot(u, 1.0 - u);
    add(to, group, static_cast<std::int64_t>(k), scale * (1.0 - u) / length);
    add(to, group, static_cast<std::int64_t>(k) + 1, scale * u / length);
}

double temperatureScale(const std::optional<units::Temperature>& temperature) {
    return temperature ? std::clamp((temperature->inCelsius() - middle_c) / perScale_c, -mostScale,
                                    mostScale)
                       : 0.0;
}

void addPlace(Features& to, geo::WaterPoint place) {
    const double col = place.x_m / lattice_m;
    const double row = place.y_m / lattice_m;
    const double u = col - std::floor(col);
    const double v = row - std::floor(row);
    const std::array<double, 4> shares{(1.0 - u) * (1.0 - v), u * (1.0 - v), (1.0 - u) * v, u * v};
    double squares = 0.0;
    for (const double share : shares) {
        squares += share * share;
    }
    constexpr std::int64_t stride = std::int64_t{1} << 24;
    for (int k = 0; k < 4; ++k) {
        const auto c = static_cast<std::int64_t>(std::floor(col)) + k % 2;
        const auto r = static_cast<std::int64_t>(std::floor(row)) + k / 2;
        add(to, Group::place, r * stride + c,
            shares[static_cast<std::size_t>(k)] / std::sqrt(squares));
    }
}

} // namespace learning
