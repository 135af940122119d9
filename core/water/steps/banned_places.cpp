// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/banned_places.h"

#include <algorithm>

namespace water {

base::Result<BannedPlaces> BannedPlaces::of(const Water& water) {
    BannedPlaces places;
    for (const BannedWater& banned : water.banned) {
        const std::vector<geo::LonLatPiece> pieces{{banned.ring, {}}};
        auto outline = geo::Outline::make(pieces, *water.frame);
        if (!outline) {
            base::Error error = outline.error();
            error.where =
                "banned water " + banned.name + (error.where.empty() ? "" : ", " + error.where);
            return std::unexpected(std::move(error));
        }
        places.banned_.emplace_back(banned.name, std::move(*outline));
    }
    return places;
}

const std::string* BannedPlaces::at(geo::WaterPoint place) const {
    const auto found = std::ranges::find_if(
        banned_, [place](const auto& banned) { return banned.second.contains(place); });
    return found == banned_.end() ? nullptr : &found->first;
}

} // namespace water
