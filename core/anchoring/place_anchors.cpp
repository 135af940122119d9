// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/place_anchors.h"

#include "core/anchoring/cautions.h"
#include "core/anchoring/landing.h"
#include "core/anchoring/rope.h"
#include "core/anchoring/swing.h"

#include <algorithm>
#include <cmath>

namespace anchoring {

namespace {

using base::ErrorKind;
using units::Length;

constexpr double turnStep_deg = 5.0;
constexpr double bowScopeStep = 0.25;
constexpr double beamDrag = 1.0; // of a bluff body; check values use the same

/// One way of lying that is being tried.
struct Trial {
    double turn_deg;
    double bowScope;
    double sternScope;

    /// How far it is from what was wanted; the least wins.
    [[nodiscard]] double regret(const BoatSettings& boat) const {
        return std::fabs(turn_deg) / 45.0 + (boat.scope - bowScope) / boat.scope +
               0.3 * (boat.sternScope - sternScope) / boat.sternScope;
    }
};

struct Lying {
    std::optional<AnchorSet> set;
    Hindrance hindrance = Hindrance::none;
};

Landed landBow(const Room& room, const Lie& lie, const Trial& trial, const BoatSettings& boat) {
    return landAnchor(
        room, {bowOf(lie, boat.length), lie.heading, boat.bowHeight, boat.bowRope, trial.bowScope},
        boat.draught);
}

Lying tryOut(const Room& room, const Lie& lie, const Trial& trial, const BoatSettings& boat) {
    if (!boatFloats(room, lie, boat)) {
        return {std::nullopt, Hindrance::land};
    }
    const Landed bow = landBow(room, lie, trial, boat);
    if (!bow.anchor) {
        return {std::nullopt, bow.hindrance};
    }
    const Landed stern = landAnchor(room,
                                    {sternOf(lie, boat.length), lie.heading.opposite(),
                                     boat.sternHeight, boat.sternRope, trial.sternScope},
                                    boat.draught);
    if (!stern.anchor) {
        return {std::nullopt, stern.hindrance};
    }
    AnchorSet set{*bow.anchor, *stern.anchor, lie, {}, trial.turn_deg, {}, {}};
    set.fallBackRope = fallBackRopeOf(*bow.anchor, *stern.anchor, boat);
    const bool bowHolds = set.bow.scope >= std::min(boat.leastScope, boat.scope) - 1e-9;
    const bool sternHolds = stern.anchor->scope >= leastSternScope - 1e-9;
    if (!bowHolds || !sternHolds || set.fallBackRope > boat.bowRope) {
        return {std::nullopt, Hindrance::rope};
    }
    return {std::move(set), Hindrance::none};
}

/// Downwind of one anchor, with room to swing right round it.
Lying tryOneAnchor(const Room& room, const Lie& lie, const Trial& trial, const Weather& weather,
                   const BoatSettings& boat) {
    if (!boatFloats(room, lie, boat)) {
        return {std::nullopt, Hindrance::land};
    }
    const Landed bow = landBow(room, lie, trial, boat);
    if (!bow.anchor) {
        return {std::nullopt, bow.hindrance};
    }
    AnchorSet set{*bow.anchor, std::nullopt, lie, bow.anchor->rope, 0.0, {}, {}};
    set.swing = swingOf(set.bow, lie, weather, boat);
    if (set.bow.scope < std::min(boat.leastScope, boat.scope) - 1e-9) {
        return {std::nullopt, Hindrance::rope};
    }
    const SwingRoom round = swingRoomAt(room, set.bow.place, set.swing->radius, boat.draught);
    if (round.isClosed || round.isAshore) {
        return {std::nullopt, Hindrance::land};
    }
    return {std::move(set), Hindrance::none};
}

std::vector<Trial> trialsFor(const BoatSettings& boat) {
    std::vector<double> bowScopes{boat.scope};
    while (bowScopes.back() - bowScopeStep > boat.leastScope) {
        bowScopes.push_back(bowScopes.back() - bowScopeStep);
    }
    if (boat.leastScope < bowScopes.back()) {
        bowScopes.push_back(boat.leastScope);
    }
    std::vector<Trial> trials;
    if (boat.toOneAnchor) {
        // She turns to the wind by herself.
        for (const double bowScope : bowScopes) {
            trials.push_back({0.0, bowScope, boat.sternScope});
        }
        return trials;
    }
    for (double turn_deg = 0.0; turn_deg <= boat.mostTurn_deg; turn_deg += turnStep_deg) {
        for (const double bowScope : bowScopes) {
            for (const double sternScope : {boat.sternScope, leastSternScope}) {
                trials.push_back({turn_deg, bowScope, std::min(boat.sternScope, sternScope)});
                if (turn_deg > 0.0) {
                    trials.push_back({-turn_deg, bowScope, std::min(boat.sternScope, sternScope)});
                }
            }
        }
    }
    std::ranges::stable_sort(trials, {},
                             [&boat](const Trial& trial) { return trial.regret(boat); });
    return trials;
}

} // namespace

base::Result<AnchorSet> placeAnchors(const grid::DepthGrid& depth,
                                     const grid::Grid<std::uint8_t>* closed, geo::WaterPoint mark,
                                     const Weather& weather, const BoatSettings& boat,
                                     base::Progress& progress) {
    if (const auto fine = checkSettings(boat, weather); !fine) {
        return std::unexpected(fine.error());
    }
    const Room room{depth, closed};
    if (!floating(room, mark, boat.draught)) {
        return base::fail(ErrorKind::unusableInput, "there is no water to float a boat at the mark",
                          "", "move the mark to deeper water");
    }
    Hindrance first = Hindrance::none;
    for (const Trial& trial : trialsFor(boat)) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        const Lie lie{mark, weather.windFrom.turnedBy(trial.turn_deg)};
        Lying lying = boat.toOneAnchor ? tryOneAnchor(room, lie, trial, weather, boat)
                                       : tryOut(room, lie, trial, boat);
        if (lying.set) {
            if (weather.windSpeed && lying.set->stern) {
                lying.set->beamPull_N = windPull_N(*weather.windSpeed, boat.windage, beamDrag);
            }
            lying.set->cautions = cautionsFor(*lying.set, weather, boat);
            return std::move(*lying.set);
        }
        first = first == Hindrance::none ? lying.hindrance : first;
    }
    if (first == Hindrance::rope) {
        return base::fail(ErrorKind::unusableInput, "the ropes are too short for the depth here",
                          "", "take longer ropes or choose a shallower mark");
    }
    return base::fail(ErrorKind::unusableInput,
                      boat.toOneAnchor ? "there is no room here to swing round one anchor"
                                       : "there is no room here for two anchors in this wind",
                      "", "move the mark away from the shore");
}

} // namespace anchoring
