// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/contours/band.h"

#include <algorithm>
#include <cmath>

namespace contours {

using units::Depth;

Bands::Bands()
    : Bands({Depth::metres(2), Depth::metres(4), Depth::metres(6), Depth::feet(30),
             Depth::metres(14), Depth::metres(20)},
            Depth::feet(30)) {}

base::Result<Bands> Bands::make(std::vector<Depth> edges, Depth limit) {
    const auto unusable = [](Depth d) {
        return !(d.inMetres() > 0.0) || !std::isfinite(d.inMetres());
    };
    if (edges.empty() || std::any_of(edges.begin(), edges.end(), unusable) ||
        std::adjacent_find(edges.begin(), edges.end(), std::greater_equal<>()) != edges.end()) {
        return base::fail(
            base::ErrorKind::wrongUse,
            "the band edges must be depths below the surface, each deeper than the one before", "",
            "give them as 2,4,6");
    }
    if (unusable(limit)) {
        return base::fail(base::ErrorKind::wrongUse, "the limit must be a depth below the surface",
                          "", "give one as 9");
    }
    return Bands(std::move(edges), limit);
}

std::size_t Bands::bandOf(Depth depth) const {
    return static_cast<std::size_t>(std::upper_bound(edges_.begin(), edges_.end(), depth) -
                                    edges_.begin());
}

Depth Bands::from(std::size_t band) const {
    return band == 0 ? Depth() : edges_[band - 1];
}

std::optional<Depth> Bands::to(std::size_t band) const {
    return band < edges_.size() ? std::optional(edges_[band]) : std::nullopt;
}

} // namespace contours
