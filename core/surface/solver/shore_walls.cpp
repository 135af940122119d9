// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/shore_walls.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <utility>

namespace surface::solver {

namespace {

constexpr double reach_m = 30.0;
constexpr double leastDistance_m = 5.0;
constexpr double steep = 0.6;
constexpr double leastSlope = 0.02;

using Block = std::pair<std::int64_t, std::int64_t>;

/// Blocks as wide as the reach: what is near a point lies in its own and the eight around.
Block blockOf(geo::WaterPoint p) {
    return {static_cast<std::int64_t>(std::floor(p.x_m / reach_m)),
            static_cast<std::int64_t>(std::floor(p.y_m / reach_m))};
}

} // namespace

std::vector<double> wallSlopesOf(const std::vector<ShorePull>& shore,
                                 const std::vector<Sample>& samples) {
    std::map<Block, std::vector<const Sample*>> blocks;
    for (const ShorePull& pull : shore) {
        const Block own = blockOf(pull.middle);
        for (std::int64_t k = 0; k < 9; ++k) {
            blocks.try_emplace({own.first + k % 3 - 1, own.second + k / 3 - 1});
        }
    }
    for (const Sample& sample : samples) {
        if (const auto block = blocks.find(blockOf(sample.point)); block != blocks.end()) {
            block->second.push_back(&sample);
        }
    }
    std::vector<double> slopes;
    slopes.reserve(shore.size());
    for (const ShorePull& pull : shore) {
        const Block own = blockOf(pull.middle);
        double steepest = 0.0;
        for (std::int64_t k = 0; k < 9; ++k) {
            for (const Sample* sample :
                 blocks.at({own.first + k % 3 - 1, own.second + k / 3 - 1})) {
                const double off_m = geo::distance_m(sample->point, pull.middle);
                if (off_m <= reach_m) {
                    steepest =
                        std::max(steepest, sample->depth_m / std::max(off_m, leastDistance_m));
                }
            }
        }
        slopes.push_back(steepest);
    }
    return slopes;
}

double shoreSlopeOf(double bankSlope, double wallSlope) {
    const double over = wallSlope / steep;
    return std::max({leastSlope, bankSlope, wallSlope * (1.0 + over * over)});
}

} // namespace surface::solver
