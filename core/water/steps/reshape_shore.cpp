// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/reshape_shore.h"

#include "core/geo/outline.h"

#include <algorithm>

namespace water {

using base::ErrorKind;
using base::Result;

namespace {

constexpr std::size_t leastCorners = 3;
constexpr auto onTheChart = "the shoreline";

geo::LonLatRing* ringOf(Shoreline& shoreline, ShoreCorner corner) {
    if (corner.piece >= shoreline.size()) {
        return nullptr;
    }
    geo::LonLatPiece& piece = shoreline[corner.piece];
    if (corner.ring > piece.islands.size()) {
        return nullptr;
    }
    geo::LonLatRing& ring = corner.ring == 0 ? piece.outer : piece.islands[corner.ring - 1];
    return corner.corner < ring.size() ? &ring : nullptr;
}

std::unexpected<base::Error> notThere() {
    return base::fail(ErrorKind::wrongUse, "the shore has no such corner", onTheChart,
                      "point at one of its corners");
}

/// The shoreline, if an outline can be made of it.
Result<Shoreline> checked(Shoreline shoreline, const geo::WaterFrame& frame) {
    if (const auto outline = geo::Outline::make(shoreline, frame); !outline) {
        return std::unexpected(outline.error());
    }
    return shoreline;
}

/// Whether the place lies inside the ring; even and odd crossings of a line to the east.
bool isInside(const geo::Ring& ring, geo::WaterPoint p) {
    bool isIn = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        const geo::WaterPoint a = ring[i];
        const geo::WaterPoint b = ring[j];
        if ((a.y_m > p.y_m) != (b.y_m > p.y_m) &&
            p.x_m < a.x_m + (b.x_m - a.x_m) * (p.y_m - a.y_m) / (b.y_m - a.y_m)) {
            isIn = !isIn;
        }
    }
    return isIn;
}

bool isWhollyInside(const geo::Ring& outer, const geo::Ring& ring) {
    return std::all_of(ring.begin(), ring.end(),
                       [&](geo::WaterPoint p) { return isInside(outer, p); });
}

} // namespace

Result<Shoreline> withCornerMoved(Shoreline shoreline, const geo::WaterFrame& frame,
                                  ShoreCorner corner, geo::WaterPoint to) {
    geo::LonLatRing* ring = ringOf(shoreline, corner);
    if (ring == nullptr) {
        return notThere();
    }
    (*ring)[corner.corner] = frame.toEarth(to);
    return checked(std::move(shoreline), frame);
}

Result<Shoreline> withCornerAdded(Shoreline shoreline, const geo::WaterFrame& frame,
                                  ShoreCorner after, geo::WaterPoint at) {
    geo::LonLatRing* ring = ringOf(shoreline, after);
    if (ring == nullptr) {
        return notThere();
    }
    ring->insert(ring->begin() + static_cast<std::ptrdiff_t>(after.corner) + 1, frame.toEarth(at));
    return checked(std::move(shoreline), frame);
}

Result<Shoreline> withoutCorner(Shoreline shoreline, const geo::WaterFrame& frame,
                                ShoreCorner corner) {
    geo::LonLatRing* ring = ringOf(shoreline, corner);
    if (ring == nullptr) {
        return notThere();
    }
    if (ring->size() <= leastCorners) {
        return base::fail(ErrorKind::unusableInput, "a shore needs three corners", onTheChart,
                          corner.ring == 0 ? "move the corner instead"
                                           : "take the whole island away instead");
    }
    ring->erase(ring->begin() + static_cast<std::ptrdiff_t>(corner.corner));
    return checked(std::move(shoreline), frame);
}

Result<Shoreline> withIsland(Shoreline shoreline, const geo::WaterFrame& frame,
                             const geo::Ring& island) {
    for (geo::LonLatPiece& piece : shoreline) {
        const bool isInWater = isWhollyInside(frame.toWater(piece.outer), island) &&
                               std::none_of(piece.islands.begin(), piece.islands.end(),
                                            [&](const geo::LonLatRing& other) {
                                                const geo::Ring there = frame.toWater(other);
                                                return isInside(there, island.front()) ||
                                                       isInside(island, there.front());
                                            });
        if (isInWater) {
            piece.islands.push_back(frame.toEarth(island));
            return checked(std::move(shoreline), frame);
        }
    }
    return base::fail(ErrorKind::unusableInput, "an island lies in the water, all of it",
                      onTheChart, "go round it inside the shore");
}

Result<Shoreline> withoutIslandAt(Shoreline shoreline, const geo::WaterFrame& frame,
                                  geo::WaterPoint at) {
    for (geo::LonLatPiece& piece : shoreline) {
        const auto found = std::find_if(
            piece.islands.begin(), piece.islands.end(),
            [&](const geo::LonLatRing& island) { return isInside(frame.toWater(island), at); });
        if (found != piece.islands.end()) {
            piece.islands.erase(found);
            return shoreline;
        }
    }
    return base::fail(ErrorKind::unusableInput, "there is no island at that place", onTheChart,
                      "point inside an island");
}

Result<Shoreline> tracedAnew(const Shoreline& before, const geo::WaterFrame& frame,
                             const geo::Ring& shore) {
    geo::LonLatPiece piece{frame.toEarth(shore), {}};
    for (const geo::LonLatPiece& old : before) {
        for (const geo::LonLatRing& island : old.islands) {
            if (isWhollyInside(shore, frame.toWater(island))) {
                piece.islands.push_back(island);
            }
        }
    }
    return checked({std::move(piece)}, frame);
}

} // namespace water
