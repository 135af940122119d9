// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/cautions.h"

#include <algorithm>
#include <cmath>

namespace anchoring {

namespace {

constexpr double worthSaying_deg = 2.5;
constexpr double sameScope = 0.05;
constexpr units::Length sameRope = units::Length::metres(0.05);
constexpr units::Length onTheMark = units::Length::metres(1.0);
constexpr int fewestSteps = 8;

struct Line {
    geo::WaterPoint from;
    geo::WaterPoint to;
};

/// What lies under a line, its ends included.
void judge(const Room& room, const Line& line, LiePart part, units::Length draught,
           std::vector<Caution>& out) {
    const double length_m = geo::distance_m(line.from, line.to);
    const double step_m = std::clamp(0.25 * room.depth.frame().cell_m(), 0.25, 1.0);
    const int steps = std::max(fewestSteps, static_cast<int>(length_m / step_m) + 1);
    bool isClosed = false;
    bool isAshore = false;
    for (int k = 0; k <= steps; ++k) {
        const double t = static_cast<double>(k) / steps;
        const geo::WaterPoint p{line.from.x_m + t * (line.to.x_m - line.from.x_m),
                                line.from.y_m + t * (line.to.y_m - line.from.y_m)};
        const auto depth = room.depth.at(p);
        isClosed = isClosed || room.isClosed(p);
        isAshore = isAshore || !depth || depth->asLength() < draught;
    }
    if (isClosed) {
        out.emplace_back(LiesInClosedWater{part});
    }
    if (isAshore) {
        out.emplace_back(LiesAshore{part});
    }
}

void judgeGround(const Room& room, const AnchorSet& set, const BoatSettings& boat,
                 std::vector<Caution>& out) {
    const geo::WaterPoint bow = bowOf(set.lie, boat.length);
    const geo::WaterPoint stern = sternOf(set.lie, boat.length);
    judge(room, {stern, bow}, LiePart::boat, boat.draught, out);
    judge(room, {bow, set.bow.place}, LiePart::bowAnchor, boat.draught, out);
    if (set.stern) {
        judge(room, {stern, set.stern->place}, LiePart::sternAnchor, boat.draught, out);
    }
    if (set.swing) {
        const SwingRoom round = swingRoomAt(room, set.bow.place, set.swing->radius, boat.draught);
        if (round.isClosed) {
            out.emplace_back(LiesInClosedWater{LiePart::swing});
        }
        if (round.isAshore) {
            out.emplace_back(LiesAshore{LiePart::swing});
        }
    }
    // The closed water of all parts goes before the shore of any.
    std::ranges::stable_partition(out, [](const Caution& caution) {
        return std::holds_alternative<LiesInClosedWater>(caution);
    });
}

void judgeRopes(const AnchorSet& set, const BoatSettings& boat, std::vector<Caution>& out) {
    const units::Length bowNeeds = std::max(set.bow.rope, set.fallBackRope);
    if (bowNeeds > boat.bowRope + sameRope) {
        out.emplace_back(RopeTooShort{LiePart::bowAnchor, bowNeeds, boat.bowRope});
    }
    if (set.stern && set.stern->rope > boat.sternRope + sameRope) {
        out.emplace_back(RopeTooShort{LiePart::sternAnchor, set.stern->rope, boat.sternRope});
    }
    const double leastAtBow = std::min(boat.leastScope, boat.scope);
    if (set.bow.scope < leastAtBow - sameScope) {
        out.emplace_back(TooSteep{LiePart::bowAnchor, set.bow.scope, leastAtBow});
    }
    if (set.stern && set.stern->scope < leastSternScope - sameScope) {
        out.emplace_back(TooSteep{LiePart::sternAnchor, set.stern->scope, leastSternScope});
    }
}

/// Whether the wind is another than it was, and they fit it less than they did.
std::optional<WindChangedSince> changeSince(const AnchorSet& set, const LaidFor& laidFor,
                                            const Weather& weather) {
    if (!laidFor.windFrom || !weather.isFromKnown) {
        return std::nullopt;
    }
    const double change_deg = laidFor.windFrom->angleTo_deg(weather.windFrom);
    const double offBefore_deg = set.lie.heading.angleTo_deg(*laidFor.windFrom);
    const bool fitsLess = !set.stern || std::fabs(set.offTheWind_deg) > offBefore_deg;
    return change_deg >= windIsAnother_deg && fitsLess ? std::optional(WindChangedSince{change_deg})
                                                       : std::nullopt;
}

} // namespace

std::vector<Caution> cautionsFor(const AnchorSet& set, const Weather& weather,
                                 const BoatSettings& boat) {
    std::vector<Caution> out;
    if (weather.waveHeight && *weather.waveHeight > highWave) {
        out.emplace_back(HighWaves{});
    }
    if (!weather.isFromKnown) {
        out.emplace_back(BowToOpenWater{});
    }
    if (weather.windSpeed && *weather.windSpeed >= freshBreeze &&
        set.bow.scope < seamanlikeScope - sameScope) {
        out.emplace_back(ShortForTheWind{set.bow.scope});
    }
    if (set.bow.scope < boat.scope - sameScope) {
        out.emplace_back(ShortOfRoom{set.bow.scope});
    }
    if (weather.isFromKnown && std::fabs(set.offTheWind_deg) > worthSaying_deg) {
        out.emplace_back(TurnedOffTheWind{std::fabs(set.offTheWind_deg)});
    }
    return out;
}

std::vector<Caution> cautionsByHand(const Room& room, const AnchorSet& set, const LaidFor& laidFor,
                                    const Weather& weather, const BoatSettings& boat) {
    std::vector<Caution> out;
    judgeGround(room, set, boat, out);
    judgeRopes(set, boat, out);
    const double off_deg = std::fabs(set.offTheWind_deg);
    if (weather.isFromKnown && off_deg > worthSaying_deg) {
        out.emplace_back(LaidOffTheWind{off_deg, off_deg > boat.mostTurn_deg});
    }
    if (const auto changed = changeSince(set, laidFor, weather)) {
        out.emplace_back(*changed);
    }
    const units::Length off = geo::distance(set.lie.centre, laidFor.mark);
    if (off > onTheMark) {
        out.emplace_back(LiesOffTheMark{off});
    }
    for (const Caution& usual : cautionsFor(set, weather, boat)) {
        if (!std::holds_alternative<TurnedOffTheWind>(usual)) {
            out.push_back(usual);
        }
    }
    return out;
}

} // namespace anchoring
