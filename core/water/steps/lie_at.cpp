// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/lie_at.h"

#include "core/anchoring/lay_by_hand.h"
#include "core/anchoring/place_anchors.h"
#include "core/rods/spread_rods.h"
#include "core/water/steps/day_waves.h"

#include <algorithm>

namespace water {

using base::Result;

anchoring::BoatSettings boatOf(const marks::Tackle& tackle) {
    anchoring::BoatSettings boat;
    boat.length = tackle.boatLength;
    boat.bowHeight = tackle.bowHeight;
    boat.bowRope = tackle.bowRope;
    boat.sternRope = tackle.sternRope;
    boat.scope = tackle.scope;
    boat.leastScope = std::min(boat.leastScope, tackle.scope);
    boat.toOneAnchor = tackle.toOneAnchor;
    return boat;
}

rods::RodSettings rodsOf(const marks::Tackle& tackle) {
    rods::RodSettings settings;
    settings.rods = tackle.rods;
    settings.cast = tackle.cast;
    settings.overDepth = tackle.overDepth;
    settings.nearest = std::min(settings.nearest, tackle.cast * 0.5);
    return settings;
}

namespace {

std::optional<geo::WaterPoint> toWater(const Water& water, const std::optional<geo::LonLat>& at) {
    return at ? std::optional(water.frame->toWater(*at)) : std::nullopt;
}

anchoring::AnchorsByHand anchorsOf(const Water& water, const LaidByHand* laid, bool toOneAnchor) {
    if (laid == nullptr) {
        return {};
    }
    return {toWater(water, laid->bow), toOneAnchor ? std::nullopt : toWater(water, laid->stern),
            laid->windFrom};
}

} // namespace

const LaidByHand* laidAt(const Water& water, geo::WaterPoint place) {
    for (const PinnedMark& mark : water.pinnedMarks) {
        if (mark.laid.isAny() && water.frame->toWater(mark.place) == place) {
            return &mark.laid;
        }
    }
    return nullptr;
}

const LaidByHand* laidAt(const Water& water, const marks::Candidate& candidate) {
    return candidate.isPinned ? laidAt(water, candidate.place) : nullptr;
}

Result<marks::Lying> lyingIn(const logbook::Wind& wind, geo::WaterPoint place,
                             const LaidByHand* laid, const LieWork& work) {
    const rods::Ground& ground = work.day.ground();
    const Exposure lies = exposureAt(work.day.outline(), ground.today(), place, wind);
    anchoring::Weather weather{lies.side, wind.speed, std::nullopt, wind.from.has_value()};
    if (lies.waves) {
        weather.waveHeight = lies.waves->height;
    }
    const auto* closed = ground.isClosed(place) ? nullptr : &work.day.closed();
    const anchoring::BoatSettings boat = boatOf(work.tackle);
    const anchoring::AnchorsByHand byHand = anchorsOf(work.water, laid, boat.toOneAnchor);
    auto anchors = byHand.areAny() ? anchoring::layByHand(ground.today(), closed, place, byHand,
                                                          weather, boat, work.progress)
                                   : anchoring::placeAnchors(ground.today(), closed, place, weather,
                                                             boat, work.progress);
    if (!anchors) {
        return std::unexpected(anchors.error());
    }
    return marks::Lying{std::move(*anchors), lies.waves};
}

Result<rods::RodSpread> rodsAt(const anchoring::AnchorSet& anchors, const LaidByHand* laid,
                               const LieWork& work) {
    std::vector<geo::WaterPoint> byHand;
    if (laid != nullptr) {
        for (const geo::LonLat bait : laid->baits) {
            byHand.push_back(work.water.frame->toWater(bait));
        }
    }
    return rods::spreadRods(work.day.ground(), anchors, rodsOf(work.tackle), work.progress, byHand);
}

} // namespace water
