// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/near_place.h"

namespace water {

std::optional<marks::NearPlace> nearestNamedPlace(const Water& water, geo::WaterPoint place) {
    std::optional<marks::NearPlace> nearest;
    for (const NamedPlace& named : water.places) {
        const geo::WaterPoint at = water.frame->toWater(named.place);
        const auto distance = units::Length::metres(geo::distance_m(at, place));
        if (distance <= nearEnoughToName && (!nearest || distance < nearest->distance)) {
            nearest = marks::NearPlace{named.name, distance, geo::bearing(at, place)};
        }
    }
    return nearest;
}

} // namespace water
