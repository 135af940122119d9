// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/place_anchors.h"

#include "core/anchoring/cautions.h"
#include "core/anchoring/rope.h"

#include <algorithm>
#include <cmath>

namespace anchoring {

namespace {

using base::ErrorKind;
using units::Length;

constexpr double turnStep_deg = 5.0;
constexpr double bowScopeStep = 0.25;
constexpr double leastSternScope = 1.2; // below it the rope stands nearly upright
constexpr double beamDrag = 1.0;        // of a bluff body; check values use the same

enum class Hindrance { none, land, rope };

/// One rope from its cleat to the bottom.
struct Rope {
    geo::WaterPoint cleat;
    units::Bearing towards;
    Length cleatHeight;
    Length available;
    double scope = 0.0;
};

/// The bottom, and where no boat may be.
struct Room {
    const grid::DepthGrid& depth;
    const grid::Grid<std::uint8_t>* closed;

    [[nodiscard]] bool isClosed(geo::WaterPoint p) const {
        const grid::Cell c = depth.frame().cellOf(p);
        return closed != nullptr && closed->frame().holds(c) && (*closed)[c] != 0;
    }
};

/// Open water deep enough to row over.
std::optional<units::Depth> floating(const Room& room, geo::WaterPoint at, Length draught) {
    const auto found = room.depth.at(at);
    return found && found->asLength() >= draught && !room.isClosed(at) ? found : std::nullopt;
}

/// How far from the cleat the anchor would lie if the bottom were everywhere `depth` deep.
std::optional<Length> runOver(units::Depth depth, const Rope& rope) {
    const Length wanted = ropeForScope(rope.scope, depth, rope.cleatHeight);
    return runOf(std::min(wanted, rope.available), depth, rope.cleatHeight);
}

struct Landed {
    std::optional<Anchor> anchor;
    Hindrance hindrance = Hindrance::none;
};

Anchor anchorAt(geo::WaterPoint place, units::Depth depth, const Rope& rope) {
    const Length paidOut =
        std::min(ropeForScope(rope.scope, depth, rope.cleatHeight), rope.available);
    return {place, depth, paidOut, scopeOf(paidOut, depth, rope.cleatHeight).value_or(0.0)};
}

/// The first place along the rope's way where the run to it is the run over the depth there. The
/// way is walked in small steps, because on a slope there may be several such places, and because
/// the boat has to float all along it.
Landed landAnchor(const Room& room, const Rope& rope, Length draught) {
    const Length step = Length::metres(std::clamp(0.25 * room.depth.frame().cell_m(), 0.25, 1.0));
    Length near; // where the anchor would still slide farther out
    for (Length far; far <= rope.available; near = far, far += step) {
        const auto here = floating(room, geo::moved(rope.cleat, rope.towards, far), draught);
        if (!here) {
            return {std::nullopt, Hindrance::land};
        }
        const auto run = runOver(*here, rope);
        if (!run) {
            return {std::nullopt, Hindrance::rope};
        }
        if (*run > far) {
            continue;
        }
        for (int halving = 0; halving < 30; ++halving) {
            const Length middle = 0.5 * (near + far);
            const auto there = room.depth.at(geo::moved(rope.cleat, rope.towards, middle));
            const auto reach = there ? runOver(*there, rope) : std::nullopt;
            (reach && *reach > middle ? near : far) = middle;
        }
        const geo::WaterPoint place = geo::moved(rope.cleat, rope.towards, far);
        const auto there = floating(room, place, draught);
        return there ? Landed{anchorAt(place, *there, rope), Hindrance::none}
                     : Landed{std::nullopt, Hindrance::land};
    }
    return {std::nullopt, Hindrance::rope};
}

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

/// All along the boat, so that nothing narrow lies under it between bow and stern.
bool boatFloats(const Room& room, const Lie& lie, const BoatSettings& boat) {
    for (int eighth = -4; eighth <= 4; ++eighth) {
        const Length along = boat.length * (0.125 * eighth);
        if (!floating(room, geo::moved(lie.centre, lie.heading, along), boat.draught)) {
            return false;
        }
    }
    return true;
}

Lying tryOut(const Room& room, const Lie& lie, const Trial& trial, const BoatSettings& boat) {
    if (!boatFloats(room, lie, boat)) {
        return {std::nullopt, Hindrance::land};
    }
    const Landed bow = landAnchor(
        room, {bowOf(lie, boat.length), lie.heading, boat.bowHeight, boat.bowRope, trial.bowScope},
        boat.draught);
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
    const Length back = geo::distance(set.bow.place, set.stern.place) - boat.length;
    set.fallBackRope = Length::metres(
        std::hypot(back.inMetres(), riseOf(set.bow.depth, boat.bowHeight).inMetres()));
    const bool bowHolds = set.bow.scope >= std::min(boat.leastScope, boat.scope) - 1e-9;
    const bool sternHolds = set.stern.scope >= leastSternScope - 1e-9;
    if (!bowHolds || !sternHolds || set.fallBackRope > boat.bowRope) {
        return {std::nullopt, Hindrance::rope};
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

struct Limit {
    const char* name;
    double value;
    double least;
    double most;
};

base::Result<void> checkSettings(const BoatSettings& boat, const Weather& weather) {
    for (const Limit& limit :
         {Limit{"the boat's length", boat.length.inMetres(), 2.0, 15.0},
          Limit{"the height of the bow cleat", boat.bowHeight.inMetres(), 0.0, 2.0},
          Limit{"the height of the stern cleat", boat.sternHeight.inMetres(), 0.0, 2.0},
          Limit{"the boat's draught", boat.draught.inMetres(), 0.0, 2.0},
          Limit{"the bow rope", boat.bowRope.inMetres(), 5.0, 200.0},
          Limit{"the stern rope", boat.sternRope.inMetres(), 5.0, 200.0},
          Limit{"the scope", boat.scope, leastSternScope, 10.0},
          Limit{"the stern scope", boat.sternScope, leastSternScope, 10.0},
          Limit{"the least scope", boat.leastScope, leastSternScope, 10.0},
          Limit{"the windage", boat.windage.inSquareMetres(), 0.5, 20.0},
          Limit{"the turn off the wind", boat.mostTurn_deg, 0.0, 60.0},
          Limit{"the wind", weather.windSpeed.value_or(units::Speed()).inMetresPerSecond(), 0.0,
                60.0}}) {
        if (!(limit.value >= limit.least && limit.value <= limit.most)) {
            return base::fail(ErrorKind::wrongUse, std::string(limit.name) + " is out of its range",
                              "", "set it between the limits that its setting names");
        }
    }
    return {};
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
        Lying lying = tryOut(room, lie, trial, boat);
        if (lying.set) {
            if (weather.windSpeed) {
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
                      "there is no room here for two anchors in this wind", "",
                      "move the mark away from the shore");
}

} // namespace anchoring
