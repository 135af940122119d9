// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/shore.h"

#include "core/water/steps/reshape_shore.h"

#include <algorithm>
#include <functional>

namespace acts {

using base::Result;
using water::Shoreline;
using water::Water;

namespace {

/// As far as the frame promises its scale.
constexpr double reach_m = 20'000.0;

bool isInReach(const geo::WaterFrame& frame, const Shoreline& shoreline) {
    return std::ranges::all_of(shoreline, [&frame](const geo::LonLatPiece& piece) {
        return std::ranges::all_of(piece.outer, [&frame](geo::LonLat corner) {
            return geo::distance_m(frame.toWater(corner), {0.0, 0.0}) <= reach_m;
        });
    });
}

/// \param reshape given the shoreline and the frame; gives the other shoreline.
Result<Water> reshaped(
    const Water& water,
    const std::function<Result<Shoreline>(const Shoreline&, const geo::WaterFrame&)>& reshape) {
    if (!water.frame) {
        return base::fail(base::ErrorKind::wrongUse, "there is no chart to draw a shore on yet", "",
                          "bring in soundings or a backdrop first");
    }
    Result<Shoreline> other = reshape(water.shoreline, *water.frame);
    if (!other) {
        return std::unexpected(other.error());
    }
    Water after = water;
    after.shoreline = std::move(*other);
    return after;
}

} // namespace

Result<Water> setShoreline(const Water& water, std::vector<geo::LonLatPiece> shoreline) {
    Water after = water;
    if (after.frame && !isInReach(*after.frame, shoreline)) {
        after.frame.reset();
    }
    const bool isToBeLaid = !after.frame && !shoreline.empty();
    if (!(after.shoreline == shoreline)) {
        after.shoreline = std::move(shoreline);
    }
    if (isToBeLaid) {
        if (auto laid = water::layFrame(after); !laid) {
            return std::unexpected(laid.error());
        }
    }
    return after;
}

Result<Water> moveShoreCorner(const Water& water, water::ShoreCorner corner, geo::WaterPoint to) {
    return reshaped(water, [&](const Shoreline& shore, const geo::WaterFrame& frame) {
        return water::withCornerMoved(shore, frame, corner, to);
    });
}

Result<Water> addShoreCorner(const Water& water, water::ShoreCorner after, geo::WaterPoint at) {
    return reshaped(water, [&](const Shoreline& shore, const geo::WaterFrame& frame) {
        return water::withCornerAdded(shore, frame, after, at);
    });
}

Result<Water> removeShoreCorner(const Water& water, water::ShoreCorner corner) {
    return reshaped(water, [&](const Shoreline& shore, const geo::WaterFrame& frame) {
        return water::withoutCorner(shore, frame, corner);
    });
}

Result<Water> addIsland(const Water& water, const geo::Ring& island) {
    return reshaped(water, [&](const Shoreline& shore, const geo::WaterFrame& frame) {
        return water::withIsland(shore, frame, island);
    });
}

Result<Water> removeIslandAt(const Water& water, geo::WaterPoint at) {
    return reshaped(water, [&](const Shoreline& shore, const geo::WaterFrame& frame) {
        return water::withoutIslandAt(shore, frame, at);
    });
}

Result<Water> traceShore(const Water& water, const geo::Ring& shore) {
    return reshaped(water, [&](const Shoreline& before, const geo::WaterFrame& frame) {
        return water::tracedAnew(before, frame, shore);
    });
}

} // namespace acts
