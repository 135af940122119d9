// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/propose_marks.h"

#include "core/anchoring/boat_settings.h"

#include <algorithm>
#include <cmath>

namespace marks {

namespace {

/// How much shallower than under the boat it may be where an anchor lands.
constexpr double higherGround = 0.8;
/// Places looked at to measure what is excluded.
constexpr double placesMeasured = 10000.0;

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
    }
    return "";
}

std::optional<Exclusion> exclusionAt(const MarkInput& input, geo::WaterPoint place,
                                     const Plan& plan, const ProposeSettings& settings) {
    const units::Depth depth = input.ground.depthAt(place).value_or(units::Depth());
    const units::Length room = plan.tackle.boatLength * settings.swingRoom;
    if (input.ground.isClosed(place)) {
        return Exclusion::closed;
    }
    if (depth < settings.shallowest) {
        return Exclusion::tooShallow;
    }
    if (!input.ground.isFishable(place)) {
        return Exclusion::tooDeep;
    }
    if (hasNoRoom(input, place, room)) {
        return Exclusion::noRoom;
    }
    if (isClosedWithin(input.ground, place, room.inMetres())) {
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

std::array<units::Area, allExclusions.size()>
excludedAreas(const MarkInput& input, const Plan& plan, const ProposeSettings& settings) {
    const grid::GridFrame& frame = input.ground.frame();
    const int step = std::max(
        1, static_cast<int>(std::sqrt(static_cast<double>(frame.size()) / placesMeasured)));
    std::array<double, allExclusions.size()> m2{};
    for (int row = step / 2; row < frame.rows(); row += step) {
        for (int col = step / 2; col < frame.cols(); col += step) {
            const geo::WaterPoint p = frame.centre({col, row});
            if (!input.ground.depthAt(p)) {
                continue;
            }
            if (const auto exclusion = exclusionAt(input, p, plan, settings)) {
                m2[static_cast<std::size_t>(*exclusion)] += frame.cellArea_m2() * step * step;
            }
        }
    }
    std::array<units::Area, allExclusions.size()> areas;
    std::ranges::transform(m2, areas.begin(), units::Area::squareMetres);
    return areas;
}

} // namespace marks
