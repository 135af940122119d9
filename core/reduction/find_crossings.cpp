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

/// Neighbouring straight pieces of track, from sounding `begin` to `begin + 1` and so on: one entry
/// of the tree for many pieces makes it small.
struct Bundle {
    std::size_t begin = 0;
    std::size_t end = 0;
    Bounds bounds;
};
constexpr std::size_t mostInBundle = 16;

/// The straight piece of track from sounding `first` to the next one.
Bounds boundsOf(std::span<const Kept> kept, std::size_t first) {
    const Kept& a = kept[first];
    const Kept& b = kept[first + 1];
    return {{std::min(a.x_m, b.x_m), std::min(a.y_m, b.y_m)},
            {std::max(a.x_m, b.x_m), std::max(a.y_m, b.y_m)}};
}

std::vector<Bundle> bundlesOf(std::span<const Kept> kept, double longestStep_m) {
    std::vector<Bundle> bundles;
    for (std::size_t i = 0; i + 1 < kept.size(); ++i) {
        const double step_m =
            std::hypot(kept[i + 1].x_m - kept[i].x_m, kept[i + 1].y_m - kept[i].y_m);
        if (kept[i].pass != kept[i + 1].pass || !(step_m > 0.0) || step_m > longestStep_m) {
            continue;
        }
        if (bundles.empty() || bundles.back().end != i ||
            i - bundles.back().begin == mostInBundle) {
            bundles.push_back({i, i + 1, boundsOf(kept, i)});
        } else {
            bundles.back().end = i + 1;
            bg::expand(bundles.back().bounds, boundsOf(kept, i));
        }
    }
    return bundles;
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

/// Those of the pieces of `earlier` with the pieces of `later`, which may be the same bundle.
void addCrossings(std::span<const Kept> kept, const Bundle& earlier, const Bundle& later,
                  std::size_t leastApart, std::vector<Crossing>& crossings) {
    for (std::size_t p = earlier.begin; p < earlier.end; ++p) {
        if (p + leastApart >= later.end || !bg::intersects(boundsOf(kept, p), later.bounds)) {
            continue;
        }
        for (std::size_t q = std::max(later.begin, p + leastApart); q < later.end; ++q) {
            if (const auto crossing = crossingOf(kept, p, q)) {
                crossings.push_back(*crossing);
            }
        }
    }
}

} // namespace

base::Result<std::vector<Crossing>> findCrossings(std::span<const Kept> kept,
                                                  const CrossingSettings& settings,
                                                  base::Progress& progress) {
    progress.begin("finding crossings");
    const std::vector<Bundle> bundles = bundlesOf(kept, settings.longestStep_m);
    std::vector<Entry> entries;
    entries.reserve(bundles.size());
    for (std::size_t n = 0; n < bundles.size(); ++n) {
        entries.emplace_back(bundles[n].bounds, n);
    }
    const bgi::rtree<Entry, bgi::rstar<16>> tree(entries);
    std::vector<Crossing> crossings;
    for (std::size_t n = 0; n < bundles.size(); ++n) {
        constexpr std::size_t often = 512;
        if (n % often == 0) {
            if (progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
            progress.tell(static_cast<double>(n) / static_cast<double>(bundles.size()));
        }
        for (auto hit = tree.qbegin(bgi::intersects(bundles[n].bounds)); hit != tree.qend();
             ++hit) {
            if (hit->second >= n) {
                addCrossings(kept, bundles[n], bundles[hit->second], settings.leastApart,
                             crossings);
            }
        }
    }
    std::ranges::sort(crossings, [](const Crossing& a, const Crossing& b) {
        return std::pair(a.soundingA, a.soundingB) < std::pair(b.soundingA, b.soundingB);
    });
    return crossings;
}

} // namespace reduction
