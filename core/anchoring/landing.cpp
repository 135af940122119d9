// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/landing.h"

#include "core/anchoring/rope.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace anchoring {

namespace {

using units::Length;

/// How far from the cleat the anchor would lie if the bottom were everywhere `depth` deep.
std::optional<Length> runOver(units::Depth depth, const Rope& rope) {
    const Length wanted = ropeForScope(rope.scope, depth, rope.cleatHeight);
    return runOf(std::min(wanted, rope.available), depth, rope.cleatHeight);
}

Anchor anchorAt(geo::WaterPoint place, units::Depth depth, const Rope& rope) {
    const Length paidOut =
        std::min(ropeForScope(rope.scope, depth, rope.cleatHeight), rope.available);
    return {place, depth, paidOut, scopeOf(paidOut, depth, rope.cleatHeight).value_or(0.0)};
}

struct Limit {
    const char* name;
    double value;
    double least;
    double most;
};

} // namespace

bool Room::isClosed(geo::WaterPoint p) const {
    const grid::Cell c = depth.frame().cellOf(p);
    return closed != nullptr && closed->frame().holds(c) && (*closed)[c] != 0;
}

std::optional<units::Depth> floating(const Room& room, geo::WaterPoint at, Length draught) {
    const auto found = room.depth.at(at);
    return found && found->asLength() >= draught && !room.isClosed(at) ? found : std::nullopt;
}

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

bool boatFloats(const Room& room, const Lie& lie, const BoatSettings& boat) {
    for (int eighth = -4; eighth <= 4; ++eighth) {
        const Length along = boat.length * (0.125 * eighth);
        if (!floating(room, geo::moved(lie.centre, lie.heading, along), boat.draught)) {
            return false;
        }
    }
    return true;
}

SwingRoom swingRoomAt(const Room& room, geo::WaterPoint anchor, Length radius, Length draught) {
    SwingRoom found;
    const grid::GridFrame& frame = room.depth.frame();
    const int reach = static_cast<int>(std::ceil(radius.inMetres() / frame.cell_m())) + 1;
    const grid::Cell middle = frame.cellOf(anchor);
    for (int row = middle.row - reach; row <= middle.row + reach; ++row) {
        for (int col = middle.col - reach; col <= middle.col + reach; ++col) {
            const geo::WaterPoint centre = frame.centre({col, row});
            const double east_m = std::fabs(centre.x_m - anchor.x_m) - 0.5 * frame.cell_m();
            const double north_m = std::fabs(centre.y_m - anchor.y_m) - 0.5 * frame.cell_m();
            if (std::hypot(std::max(east_m, 0.0), std::max(north_m, 0.0)) >= radius.inMetres()) {
                continue;
            }
            const auto depth = room.depth.at(centre);
            found.isClosed = found.isClosed || room.isClosed(centre);
            found.isAshore = found.isAshore || !depth || depth->asLength() < draught;
        }
    }
    return found;
}

Length fallBackRopeOf(const Anchor& bow, const Anchor& stern, const BoatSettings& boat) {
    const Length back = geo::distance(bow.place, stern.place) - boat.length;
    return Length::metres(
        std::hypot(back.inMetres(), riseOf(bow.depth, boat.bowHeight).inMetres()));
}

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
            return base::fail(base::ErrorKind::wrongUse,
                              std::string(limit.name) + " is out of its range", "",
                              "set it between the limits that its setting names");
        }
    }
    return {};
}

} // namespace anchoring
