// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/find_crossings.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include <boost/geometry.hpp>
#include <boost/geometry/index/rtree.hpp>

namespace reduction {

namespace {

namespace bg = boost::geometry;
namespace bgi = boost::geometry::index;
using Corner = bg::model::point<double, 2, bg::cs::cartesian>;
using Bounds = bg::model::box<Corner>;
using Entry = std::pair<Bounds, std::size_t>;
using Kept = soundings::KeptSounding;

/// The straight piece of track from sounding `first` to the next one.
Bounds boundsOf(std::span<const Kept> kept, std::size_t first) {
    const Kept& a = kept[first];
    const Kept& b = kept[first + 1];
    return {{std::min(a.x_m, b.x_m), std::min(a.y_m, b.y_m)},
            {std::max(a.x_m, b.x_m), std::max(a.y_m, b.y_m)}};
}

/// Where segments p and q cross, as shares along them in [0, 1); nothing for parallels.
std::optional<Crossing> crossingOf(std::span<const Kept> kept, std::size_t p, std::size_t q) {
    const Kept& a = kept[p];
    const Kept& b = kept[p + 1];
    const Kept& c = kept[q];
    const Kept& d = kept[q + 1];
    const double ux = b.x_m - a.x_m;
    const double uy = b.y_m - a.y_m;
    const double vx = d.x_m - c.x_m;
    const double vy = d.y_m - c.y_m;
    const double cross = ux * vy - uy * vx;
    if (cross == 0.0) {
        return std::nullopt;
    }
    const double shareP = ((c.x_m - a.x_m) * vy - (c.y_m - a.y_m) * vx) / cross;
    const double shareQ = ((c.x_m - a.x_m) * uy - (c.y_m - a.y_m) * ux) / cross;
    if (!(shareP >= 0.0 && shareP < 1.0 && shareQ >= 0.0 && shareQ < 1.0)) {
        return std::nullopt;
    }
    return Crossing{{a.x_m + shareP * ux, a.y_m + shareP * uy},
                    std::lerp(a.depth_m, b.depth_m, shareP),
                    std::lerp(c.depth_m, d.depth_m, shareQ),
                    a.day,
                    c.day,
                    p,
                    q,
                    shareP,
                    shareQ};
}

} // namespace

base::Result<std::vector<Crossing>> findCrossings(std::span<const Kept> kept,
                                                  const CrossingSettings& settings,
                                                  base::Progress& progress) {
    progress.begin("finding crossings");
    std::vector<Entry> segments;
    for (std::size_t i = 0; i + 1 < kept.size(); ++i) {
        const double step_m =
            std::hypot(kept[i + 1].x_m - kept[i].x_m, kept[i + 1].y_m - kept[i].y_m);
        if (kept[i].pass == kept[i + 1].pass && step_m > 0.0 && step_m <= settings.longestStep_m) {
            segments.emplace_back(boundsOf(kept, i), i);
        }
    }
    const bgi::rtree<Entry, bgi::rstar<16>> tree(segments);
    std::vector<Crossing> crossings;
    std::vector<std::size_t> later;
    for (std::size_t n = 0; n < segments.size(); ++n) {
        constexpr std::size_t often = 4096;
        if (n % often == 0) {
            if (progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
            progress.tell(static_cast<double>(n) / static_cast<double>(segments.size()));
        }
        const std::size_t p = segments[n].second;
        later.clear();
        for (auto hit = tree.qbegin(bgi::intersects(segments[n].first)); hit != tree.qend();
             ++hit) {
            if (hit->second >= p + settings.leastApart) {
                later.push_back(hit->second);
            }
        }
        std::ranges::sort(later);
        for (const std::size_t q : later) {
            if (const auto crossing = crossingOf(kept, p, q)) {
                crossings.push_back(*crossing);
            }
        }
    }
    return crossings;
}

} // namespace reduction
