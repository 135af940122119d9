// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/anchor_ground.h"

#include "core/marks/propose_settings.h"
#include "core/structure/slope_grid.h"

#include <cmath>

namespace water {

namespace {

/// Where the bottom there is known.
std::optional<structure::Fall> fallAt(const DayGround& day, geo::WaterPoint anchor) {
    const grid::Cell c = day.today().frame().cellOf(anchor);
    if (!day.today().has(c) || day.isGuess(c)) {
        return std::nullopt;
    }
    return structure::fallAt(day.today(), c);
}

/// Of the lead line nearest to the anchor that noted the bottom.
std::optional<soundings::Bottom> bottomNotedAt(const Water& water, geo::WaterPoint anchor) {
    std::optional<soundings::Bottom> bottom;
    double nearest_m = notedNear.inMetres();
    for (const soundings::LeadLineSounding& one : water.leadLine) {
        const double away_m = geo::distance_m(water.frame->toWater(one.place), anchor);
        if (one.bottom && away_m <= nearest_m) {
            bottom = one.bottom;
            nearest_m = away_m;
        }
    }
    return bottom;
}

/// True where the bottom gets deeper from the anchor towards the boat, more than across: the pull
/// lifts the anchor off it.
bool fallsTo(geo::WaterPoint boat, geo::WaterPoint anchor, const structure::Fall& fall) {
    const units::Bearing to = geo::bearing(anchor, boat);
    const double along = fall.eastward * to.east() + fall.northward * to.north();
    return along > std::hypot(fall.eastward, fall.northward) * std::sqrt(0.5);
}

marks::AnchorGround groundAt(const Water& water, const DayGround& day, geo::WaterPoint anchor) {
    return {slopeAt(day, anchor), bottomNotedAt(water, anchor)};
}

void addCautions(marks::AnchorEnd end, const marks::AnchorGround& ground,
                 const anchoring::Anchor& anchor, const DayGround& day, marks::Mark& mark) {
    if (ground.slope && *ground.slope >= marks::ProposeSettings().steep) {
        const bool isToBoat =
            fallsTo(mark.anchors.lie.centre, anchor.place, fallAt(day, anchor.place).value());
        mark.cautions.emplace_back(marks::SteepAtAnchor{end, *ground.slope, isToBoat});
    }
    if (ground.bottom == soundings::Bottom::rock || ground.bottom == soundings::Bottom::weed) {
        mark.cautions.emplace_back(marks::FoulAtAnchor{end, *ground.bottom});
    }
}

} // namespace

std::optional<double> slopeAt(const DayGround& day, geo::WaterPoint anchor) {
    const auto fall = fallAt(day, anchor);
    return fall ? std::optional(std::hypot(fall->eastward, fall->northward)) : std::nullopt;
}

bool isTooSteep(const anchoring::AnchorSet& anchors, const DayGround& day) {
    const double steepest = marks::ProposeSettings().steepest;
    return slopeAt(day, anchors.bow.place) > steepest ||
           (anchors.stern && slopeAt(day, anchors.stern->place) > steepest);
}

void tellOfAnchorGround(const Water& water, const DayGround& day, std::vector<marks::Mark>& marks) {
    for (marks::Mark& mark : marks) {
        mark.bowGround = groundAt(water, day, mark.anchors.bow.place);
        addCautions(marks::AnchorEnd::bow, mark.bowGround, mark.anchors.bow, day, mark);
        if (mark.anchors.stern) {
            mark.sternGround = groundAt(water, day, mark.anchors.stern->place);
            addCautions(marks::AnchorEnd::stern, mark.sternGround, *mark.anchors.stern, day, mark);
        }
    }
}

} // namespace water
