// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/placed_things.h"

#include "app/chart/pointer_cache.h"

namespace chart {

namespace {

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
    for (const water::NamedPlace& place : water.places) {
        things.places.push_back({place.name, frame.toWater(place.place)});
    }
    if (water.plan.launch) {
        things.launch = frame.toWater(*water.plan.launch);
    }
    for (const logbook::Stay& stay : water.log) {
        things.stays.push_back(frame.toWater(stay.place));
    }
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
