// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace geo {

/// A place on the Earth: longitude and latitude in degrees, WGS 84, east and north positive.
struct LonLat {
    double lon_deg = 0.0;
    double lat_deg = 0.0;
    friend bool operator==(const LonLat&, const LonLat&) = default;
};

/// True for finite values with |lat| <= 90 and |lon| <= 180.
[[nodiscard]] bool isOnEarth(LonLat place);

/// A closed ring of places; the first is not repeated at the end.
using LonLatRing = std::vector<LonLat>;

/// One piece of water or land as files give it: an outer ring and the islands in it.
struct LonLatPiece {
    LonLatRing outer;
    std::vector<LonLatRing> islands;
    friend bool operator==(const LonLatPiece&, const LonLatPiece&) = default;
};

} // namespace geo
