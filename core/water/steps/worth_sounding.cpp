// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/worth_sounding.h"

#include "core/base/normal_distribution.h"
#include "core/grid/distance_field.h"
#include "core/structure/zone_kinds.h"
#include "core/water/document/chosen_scale.h"

#include <cmath>

namespace water {

namespace {

constexpr double leastWorth = 0.1;
constexpr double besideAPlace = 2.0;

/// That the true depth is no more than the limit.
double chanceWithin(double depth_m, double halfWidth_m, double limit_m) {
    if (!(halfWidth_m > 0.0)) {
        return depth_m <= limit_m ? 1.0 : 0.0;
    }
    return base::normalBelow((limit_m - depth_m) / halfWidth_m * base::normal95);
}

/// Metres to the nearest place to fish or mark of the user's own; infinite where there is none.
grid::Grid<float> distanceToPlaces_m(const Water& water, const Derived& derived) {
    const grid::GridFrame& frame = derived.drawn->depth.frame();
    grid::Grid<std::uint8_t> isPlace(frame, 0);
    bool isAny = false;
    const auto take = [&](std::size_t cell) {
        isPlace[cell] = 1;
        isAny = true;
    };
    if (derived.structure && derived.structure->zoneOfCell.size() == isPlace.size()) {
        for (std::size_t i = 0; i < isPlace.size(); ++i) {
            const structure::ZoneNumber number = derived.structure->zoneOfCell[i];
            if (number != structure::noZone &&
                structure::isPlaceToFish(
                    derived.structure->zones[static_cast<std::size_t>(number)].kind)) {
                take(i);
            }
        }
    }
    for (const PinnedMark& mark : water.pinnedMarks) {
        if (const grid::Cell cell = frame.cellOf(water.frame->toWater(mark.place));
            frame.holds(cell)) {
            take(frame.index(cell));
        }
    }
    return isAny ? grid::straightDistance_m(isPlace) : grid::Grid<float>(frame, INFINITY);
}

} // namespace

grid::Grid<float> worthSounding(const Water& water, const Derived& derived) {
    const grid::DepthGrid& depth = derived.drawn->depth;
    const grid::Grid<float>& halfWidths_m = derived.drawn->trust.halfWidths_m();
    const grid::Grid<float> toPlaces_m = distanceToPlaces_m(water, derived);
    const double limit_m = bandsOf(water, derived).limit().inMetres();
    const double cast_m = water.plan.tackle.cast.inMetres();
    grid::Grid<float> worth(depth.frame(), 0.0F);
    for (std::size_t i = 0; i < worth.size(); ++i) {
        if (!depth.has(i)) {
            continue;
        }
        const double within = chanceWithin(static_cast<double>(depth.raw_m()[i]),
                                           static_cast<double>(halfWidths_m[i]), limit_m);
        const double beside = static_cast<double>(toPlaces_m[i]) <= cast_m ? besideAPlace : 1.0;
        worth[i] = static_cast<float>(beside * (leastWorth + (1.0 - leastWorth) * within));
    }
    return worth;
}

} // namespace water
