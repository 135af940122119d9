// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/near_place.h"

namespace water {

std::vector<PlacedName> placedNames(const Water& water) {
    std::vector<PlacedName> names;
    for (const NamedPlace& named : water.places) {
        names.push_back({named.name, water.frame->toWater(named.place)});
    }
    return names;
}

std::optional<marks::NearPlace> nearestOf(const std::vector<PlacedName>& names,
                                          geo::WaterPoint place) {
    std::optional<marks::NearPlace> nearest;
    for (const PlacedName& named : names) {
        const auto distance = units::Length::metres(geo::distance_m(named.at, place));
        if (distance <= nearEnoughToName && (!nearest || distance < nearest->distance)) {
            nearest = marks::NearPlace{named.name, distance, geo::bearing(named.at, place)};
        }
    }
    return nearest;
}

std::optional<marks::NearPlace> nearestNamedPlace(const Water& water, geo::WaterPoint place) {
    return nearestOf(placedNames(water), place);
}

} // namespace water
