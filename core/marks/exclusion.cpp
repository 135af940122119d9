// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/exclusion.h"

#include "core/anchoring/boat_settings.h"
#include "core/marks/clearance.h"

#include <algorithm>
#include <cmath>

namespace marks {

namespace {

/// How much shallower than under the boat it may be where an anchor lands.
constexpr double higherGround = 0.8;

/// True where a closed cell reaches nearer to the place than `room_m`.
bool isClosedWithin(const rods::Ground& ground, geo::WaterPoint place, double room_m) {
    const grid::GridFrame& frame = ground.frame();
    const int reach = static_cast<int>(std::ceil(room_m / frame.cell_m())) + 1;
    const grid::Cell middle = frame.cellOf(place);
    for (int row = middle.row - reach; row <= middle.row + reach; ++row) {
        for (int col = middle.col - reach; col <= middle.col + reach; ++col) {
            const geo::WaterPoint centre = frame.centre({col, row});
            const double east_m = std::fabs(centre.x_m - place.x_m) - 0.5 * frame.cell_m();
            const double north_m = std::fabs(centre.y_m - place.y_m) - 0.5 * frame.cell_m();
            const double away_m = std::hypot(std::max(east_m, 0.0), std::max(north_m, 0.0));
            if (away_m < room_m && ground.isClosed(grid::Cell{col, row})) {
                return true;
            }
        }
    }
    return false;
}

/// True where the boat would touch the bank as it swings.
bool hasNoRoom(const MarkInput& input, geo::WaterPoint place, units::Length room) {
    if (!input.outline.contains(place) ||
        input.outline.distanceToShore_m(place) < room.inMetres()) {
        return true;
    }
    for (int eighth = 0; eighth < 8; ++eighth) {
        const auto p = geo::moved(place, units::Bearing::degrees(eighth * 45.0), room);
        if (!input.ground.depthAt(p)) {
            return true;
        }
    }
    return false;
}

bool areRopesTooShort(units::Depth depth, const Tackle& tackle) {
    const double least_m = higherGround * depth.inMetres();
    return least_m * std::min(anchoring::BoatSettings().leastScope, tackle.scope) >
               tackle.bowRope.inMetres() ||
           (!tackle.toOneAnchor && least_m > tackle.sternRope.inMetres());
}

} // namespace

std::string_view nameOf(Exclusion exclusion) {
    switch (exclusion) {
    case Exclusion::closed:
        return "closed";
    case Exclusion::tooShallow:
        return "too_shallow";
    case Exclusion::tooDeep:
        return "too_deep";
    case Exclusion::noRoom:
        return "no_room_to_swing";
    case Exclusion::ropesTooShort:
        return "ropes_too_short";
    case Exclusion::tooRough:
        return "too_rough";
    case Exclusion::banned:
        return "banned";
    case Exclusion::tooSteep:
        return "too_steep_for_an_anchor";
    case Exclusion::noAnchors:
        return "no_room_for_anchors";
    }
    return "";
}

std::optional<Exclusion> exclusionAt(const MarkInput& input, geo::WaterPoint place,
                                     const Plan& plan, const ProposeSettings& settings,
                                     const Clearance* clearance) {
    const units::Depth depth = input.ground.depthAt(place).value_or(units::Depth());
    const units::Length room = roomFor(plan, settings);
    const grid::Cell cell = input.ground.frame().cellOf(place);
    if (input.ground.isClosed(cell)) {
        return Exclusion::closed;
    }
    if (depth < settings.shallowest) {
        return Exclusion::tooShallow;
    }
    if (depth > input.ground.limit()) {
        return Exclusion::tooDeep;
    }
    if (!(clearance != nullptr && clearance->isFarFromBanks(cell)) &&
        hasNoRoom(input, place, room)) {
        return Exclusion::noRoom;
    }
    if (!(clearance != nullptr && clearance->isFarFromClosed(cell)) &&
        isClosedWithin(input.ground, place, room.inMetres())) {
        return Exclusion::closed;
    }
    if (areRopesTooShort(depth, plan.tackle)) {
        return Exclusion::ropesTooShort;
    }
    if (input.waveHeightAt && input.waveHeightAt(place) > settings.roughest) {
        return Exclusion::tooRough;
    }
    if (input.bannedAt && input.bannedAt(place) != nullptr) {
        return Exclusion::banned;
    }
    return std::nullopt;
}

bool mayLieAt(const MarkInput& input, geo::WaterPoint place, const Plan& plan,
              const ProposeSettings& settings, const Clearance* clearance) {
    return input.ground.depthAt(place) && !exclusionAt(input, place, plan, settings, clearance);
}

} // namespace marks
