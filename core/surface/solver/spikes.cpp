// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/spikes.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace surface::solver {

namespace {

constexpr std::size_t reach = 6;
constexpr std::size_t leastNeighbours = 5;
constexpr double longestStep_m = 20.0;
constexpr double window_m = 40.0;

struct Neighbour {
    double along_m;
    double depth_m;
};

double medianOf(std::vector<double>& values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// The neighbours on the same track, each with its way along the track from sounding i.
void gather(std::span<const soundings::KeptSounding> soundings, std::size_t i,
            std::vector<Neighbour>& neighbours) {
    neighbours.clear();
    for (const int side : {-1, 1}) {
        double along_m = 0.0;
        std::size_t at = i;
        for (std::size_t k = 0; k < reach; ++k) {
            if ((side < 0 && at == 0) || (side > 0 && at + 1 == soundings.size())) {
                break;
            }
            const std::size_t next = side < 0 ? at - 1 : at + 1;
            const double step_m = std::hypot(soundings[next].x_m - soundings[at].x_m,
                                             soundings[next].y_m - soundings[at].y_m);
            along_m += step_m;
            if (soundings[next].pass != soundings[i].pass || step_m > longestStep_m ||
                along_m > window_m) {
                break;
            }
            neighbours.push_back({side * along_m, soundings[next].depth_m});
            at = next;
        }
    }
}

bool standsOut(double depth_m, const std::vector<Neighbour>& neighbours,
               std::vector<double>& scratch) {
    scratch.clear();
    for (std::size_t j = 0; j < neighbours.size(); ++j) {
        for (std::size_t k = j + 1; k < neighbours.size(); ++k) {
            const double run_m = neighbours[k].along_m - neighbours[j].along_m;
            if (std::abs(run_m) > 0.1) {
                scratch.push_back((neighbours[k].depth_m - neighbours[j].depth_m) / run_m);
            }
        }
    }
    const double slope = scratch.empty() ? 0.0 : medianOf(scratch);
    scratch.clear();
    for (const Neighbour& n : neighbours) {
        scratch.push_back(n.depth_m - slope * n.along_m);
    }
    const double middle = medianOf(scratch);
    for (double& value : scratch) {
        value = std::abs(value - middle);
    }
    const double spread = 1.4826 * medianOf(scratch);
    return std::abs(depth_m - middle) > std::max(0.35 + 0.01 * std::abs(middle), 5.0 * spread);
}

} // namespace

std::vector<std::size_t> spikesIn(std::span<const soundings::KeptSounding> soundings) {
    std::vector<std::size_t> spikes;
    std::vector<Neighbour> neighbours;
    std::vector<double> scratch;
    for (std::size_t i = 0; i < soundings.size(); ++i) {
        gather(soundings, i, neighbours);
        if (neighbours.size() >= leastNeighbours &&
            standsOut(soundings[i].depth_m, neighbours, scratch)) {
            spikes.push_back(i);
        }
    }
    return spikes;
}

} // namespace surface::solver
