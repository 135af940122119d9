// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/placed_things.h"

#include "app/chart/pointer_cache.h"
#include "core/base/made_of_chunks.h"

namespace chart {

namespace {

/// Called by one thread at a time, which the cache below sees to.
std::vector<std::shared_ptr<const std::vector<geo::WaterPoint>>>
placedStays(const logbook::KeptLog& log, const geo::WaterFrame& frame) {
    static base::MadeOfChunks<logbook::Stay, std::vector<geo::WaterPoint>> ofChunks;
    static std::optional<geo::WaterFrame> frameOfChunks;
    if (frameOfChunks != frame) {
        ofChunks.forget();
        frameOfChunks = frame;
    }
    return ofChunks.of(log, [&frame](std::span<const logbook::Stay> stays) {
        std::vector<geo::LonLat> places;
        for (const logbook::Stay& stay : stays) {
            places.push_back(stay.place);
        }
        return frame.toWater(places);
    });
}

PlacedThings placed(const water::Water& water) {
    PlacedThings things;
    if (!water.frame) {
        return things;
    }
    const geo::WaterFrame& frame = *water.frame;
    for (const logbook::ClosedWater& closed : water.houseRules.closed) {
        PlacedThings::Closed made{closed.name, {}};
        for (const geo::LonLatPiece& piece : closed.pieces) {
            geo::Piece flat{frame.toWater(piece.outer), {}};
            for (const geo::LonLatRing& island : piece.islands) {
                flat.islands.push_back(frame.toWater(island));
            }
            made.pieces.push_back(std::move(flat));
        }
        things.closed.push_back(std::move(made));
    }
    for (const water::BannedWater& banned : water.banned) {
        things.banned.push_back({banned.name, {{frame.toWater(banned.ring), {}}}});
    }
    for (const water::NamedPlace& place : water.places) {
        things.places.push_back({place.name, frame.toWater(place.place)});
    }
    if (water.plan.launch) {
        things.launch = frame.toWater(*water.plan.launch);
    }
    things.stays = placedStays(water.log, frame);
    return things;
}

} // namespace

std::shared_ptr<const PlacedThings>
PlacedThings::of(const std::shared_ptr<const water::Water>& water) {
    static PointerCache<water::Water, PlacedThings> cache;
    if (!water) {
        return std::make_shared<const PlacedThings>();
    }
    return cache.of(water, placed);
}

} // namespace chart
