// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rods/bait_rules.h"

#include "core/anchoring/swing.h"

#include <algorithm>

namespace rods {

namespace {

constexpr units::Length slack = units::Length::metres(0.1); // of a place laid with the mouse

units::Bearing turnOf(const anchoring::Lie& lie, geo::WaterPoint p) {
    return units::Bearing::degrees(geo::bearing(lie.centre, p).inDegrees() -
                                   lie.heading.inDegrees());
}

/// One bait, and what of the water and the boat it is held against.
struct Judged {
    const RodPlace& rod;
    int number;
    const Ground& ground;
    const RodSettings& settings;
};

void judgeGround(const Judged& one, std::vector<BaitCaution>& out) {
    const auto depth = one.ground.depthAt(one.rod.place);
    if (one.ground.isClosed(one.rod.place)) {
        out.push_back({one.number, BaitRule::inClosedWater});
    }
    if (!depth) {
        out.push_back({one.number, BaitRule::onLand});
    } else if (*depth > one.ground.limit()) {
        out.push_back({one.number, BaitRule::belowLimit});
    } else if (*depth < one.settings.shallowest) {
        out.push_back({one.number, BaitRule::tooShallow});
    }
}

void judgeFrom(const Judged& one, const anchoring::Lie& lie,
               const std::vector<units::Bearing>& ropes, std::vector<BaitCaution>& out) {
    const bool isOnWater = one.ground.depthAt(one.rod.place) && !one.ground.isClosed(one.rod.place);
    if (isOnWater && !one.ground.isOverOpenWater(lie.centre, one.rod.place)) {
        // Whichever of both it is, the line does not lie in open water.
        out.push_back({one.number, one.ground.isOverWater(lie.centre, one.rod.place)
                                       ? BaitRule::inClosedWater
                                       : BaitRule::onLand});
    }
    const units::Length away = geo::distance(lie.centre, one.rod.place);
    if (away > one.settings.cast + slack) {
        out.push_back({one.number, BaitRule::tooFar});
    }
    if (away < one.settings.nearest - slack) {
        out.push_back({one.number, BaitRule::tooNear});
    }
    const units::Bearing turn = turnOf(lie, one.rod.place);
    if (std::ranges::any_of(ropes, [&](units::Bearing rope) {
            return rope.angleTo_deg(turn) < one.settings.ropeClear_deg - 0.1;
        })) {
        out.push_back({one.number, BaitRule::foulOfRope});
    }
}

void judgePairs(const RodSpread& spread, const std::vector<anchoring::Lie>& lies,
                const RodSettings& settings, std::vector<BaitCaution>& out) {
    const auto& rods = spread.rods;
    for (std::size_t a = 0; a < rods.size(); ++a) {
        for (std::size_t b = a + 1; b < rods.size(); ++b) {
            const bool areNear =
                geo::distance(rods[a].place, rods[b].place) < settings.leastApart - slack ||
                std::ranges::any_of(lies, [&](const anchoring::Lie& lie) {
                    return turnOf(lie, rods[a].place).angleTo_deg(turnOf(lie, rods[b].place)) <
                           settings.leastAngle_deg - 0.1;
                });
            if (areNear && (rods[a].isByHand || rods[b].isByHand)) {
                out.push_back(
                    {static_cast<int>(a) + 1, BaitRule::nearAnotherLine, static_cast<int>(b) + 1});
            }
        }
    }
}

} // namespace

std::vector<units::Bearing> ropeTurns(const anchoring::AnchorSet& anchors) {
    std::vector<units::Bearing> turns;
    const auto take = [&](const anchoring::Anchor& anchor) {
        if (anchor.rope > units::Length()) {
            turns.push_back(turnOf(anchors.lie, anchor.place));
        }
    };
    take(anchors.bow);
    if (anchors.stern) {
        take(*anchors.stern);
    }
    return turns;
}

std::vector<BaitCaution> baitsThatBreakRules(const RodSpread& spread, const Ground& ground,
                                             const anchoring::AnchorSet& anchors,
                                             const RodSettings& settings) {
    std::vector<BaitCaution> found;
    const std::vector<anchoring::Lie> lies = anchoring::liesOf(anchors);
    const std::vector<units::Bearing> ropes = ropeTurns(anchors);
    for (std::size_t k = 0; k < spread.rods.size(); ++k) {
        if (!spread.rods[k].isByHand) {
            continue;
        }
        const Judged one{spread.rods[k], static_cast<int>(k) + 1, ground, settings};
        judgeGround(one, found);
        for (const anchoring::Lie& lie : lies) {
            judgeFrom(one, lie, ropes, found);
        }
    }
    judgePairs(spread, lies, settings, found);
    std::ranges::stable_sort(found, {}, &BaitCaution::rule);
    std::vector<BaitCaution> out;
    for (const BaitCaution& caution : found) {
        if (std::ranges::find(out, caution) == out.end()) {
            out.push_back(caution);
        }
    }
    return out;
}

} // namespace rods
