// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark_input.h"

#include <array>
#include <optional>
#include <vector>

namespace marks {

/// What lies within a cast of a place: the physical quantities that factors are made from. Zero
/// everywhere for a place that is not on water today. "Fishable" is open water no deeper than the
/// limit and deep enough for a bait (rods::RodSettings::shallowest).
struct Surroundings {
    units::Depth depth;         ///< At the place, today.
    double fishableShare = 0.0; ///< Of the full circle: land, closed and too deep water count none.
    units::Depth shallowest;    ///< Of the fishable water.
    units::Depth deepest;       ///< Of the fishable water.
    double dropOff_m = 0.0;     ///< Length of drop-off edge over fishable water.
    units::Depth dropOffTop;    ///< Shallowest and
    units::Depth dropOffFoot;   ///< deepest of the drop-offs met.
    double weedEdge_m = 0.0;    ///< Length of weed edge over fishable water.
    double featureArea_m2 = 0.0;                ///< Fishable humps, holes, spurs, saddles.
    std::optional<structure::ZoneKind> feature; ///< The largest kind among them.
    std::vector<structure::ZoneKind> kinds; ///< Every kind of zone met, in the order of ZoneKind.
    /// Share of the full circle that each kind takes, fishable or not, in the order of ZoneKind.
    std::array<double, structure::allZoneKinds.size()> shareOfKind{};
    /// Gradient of the plane laid through the depths by least squares, positive the way it gets
    /// shallower: rise over run to the east and to the north.
    double riseEast = 0.0;
    double riseNorth = 0.0;
    units::Length trust;       ///< Mean 95 % half-width of the fishable water.
    double guessShare = 0.0;   ///< Of the fishable water, how much is a guess.
    bool isClosedNear = false; ///< Closed water lies within the cast.
};

/// Looks round `place` as far as `cast`, cell by cell. \param cast positive. A cast shorter than a
/// cell looks at the cell of the place alone.
[[nodiscard]] Surroundings surroundingsOf(const MarkInput& input, geo::WaterPoint place,
                                          units::Length cast);

} // namespace marks
