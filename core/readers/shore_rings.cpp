// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/shore_rings.h"

#include "core/geo/water_frame.h"

#include <cmath>
#include <optional>

namespace readers {

namespace {

/// Even-odd rule on degrees; rings of a water are small enough for it.
bool holds(const geo::LonLatRing& ring, geo::LonLat p) {
    bool inside = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        const geo::LonLat a = ring[i];
        const geo::LonLat b = ring[j];
        if ((a.lat_deg > p.lat_deg) != (b.lat_deg > p.lat_deg) &&
            p.lon_deg <
                (b.lon_deg - a.lon_deg) * (p.lat_deg - a.lat_deg) / (b.lat_deg - a.lat_deg) +
                    a.lon_deg) {
            inside = !inside;
        }
    }
    return inside;
}

/// The smallest box around a ring: most rings can be told apart by it.
struct Box {
    double west_deg = 180.0;
    double east_deg = -180.0;
    double south_deg = 90.0;
    double north_deg = -90.0;

    [[nodiscard]] bool holds(geo::LonLat p) const {
        return p.lon_deg >= west_deg && p.lon_deg <= east_deg && p.lat_deg >= south_deg &&
               p.lat_deg <= north_deg;
    }
};

Box boxOf(const geo::LonLatRing& ring) {
    Box box;
    for (const geo::LonLat p : ring) {
        box.west_deg = std::fmin(box.west_deg, p.lon_deg);
        box.east_deg = std::fmax(box.east_deg, p.lon_deg);
        box.south_deg = std::fmin(box.south_deg, p.lat_deg);
        box.north_deg = std::fmax(box.north_deg, p.lat_deg);
    }
    return box;
}

double area_deg2(const geo::LonLatRing& ring) {
    double twice = 0.0;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        twice += (ring[j].lon_deg - ring[0].lon_deg) * (ring[i].lat_deg - ring[0].lat_deg) -
                 (ring[i].lon_deg - ring[0].lon_deg) * (ring[j].lat_deg - ring[0].lat_deg);
    }
    return std::fabs(twice) / 2.0;
}

} // namespace

geo::LonLatRing closedRing(geo::LonLatRing line) {
    constexpr double near_m = 30.0;
    constexpr double share = 0.1;
    if (line.size() < 4) {
        return {};
    }
    double length_m = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i) {
        length_m += geo::courseBetween(line[i - 1], line[i]).distance.inMetres();
    }
    const double open_m = geo::courseBetween(line.front(), line.back()).distance.inMetres();
    if (open_m > std::fmax(near_m, share * length_m)) {
        return {};
    }
    while (line.size() > 1 && line.front() == line.back()) {
        line.pop_back();
    }
    return line.size() >= 3 ? line : geo::LonLatRing{};
}

std::vector<geo::LonLatPiece> nested(std::vector<geo::LonLatRing> rings) {
    std::vector<Box> boxes;
    std::vector<double> areas_deg2;
    for (const geo::LonLatRing& ring : rings) {
        boxes.push_back(boxOf(ring));
        areas_deg2.push_back(area_deg2(ring));
    }
    const auto isAround = [&](std::size_t j, std::size_t i) {
        const geo::LonLat corner = rings[i].front();
        return i != j && boxes[j].holds(corner) && holds(rings[j], corner);
    };
    // Those inside an even number of others hold water. Lists of who is inside whom would grow with
    // the square of the rings, so that it is asked twice.
    std::vector<bool> isOuter(rings.size());
    for (std::size_t i = 0; i < rings.size(); ++i) {
        std::size_t around = 0;
        for (std::size_t j = 0; j < rings.size(); ++j) {
            around += isAround(j, i) ? 1U : 0U;
        }
        isOuter[i] = around % 2 == 0;
    }
    std::vector<std::optional<std::size_t>> home(rings.size());
    for (std::size_t i = 0; i < rings.size(); ++i) {
        for (std::size_t j = 0; j < rings.size() && !isOuter[i]; ++j) {
            const bool isSmaller = !home[i] || areas_deg2[j] < areas_deg2[*home[i]];
            if (isOuter[j] && isSmaller && isAround(j, i)) {
                home[i] = j;
            }
        }
    }
    std::vector<geo::LonLatPiece> pieces;
    std::vector<std::size_t> pieceOf(rings.size());
    for (std::size_t i = 0; i < rings.size(); ++i) {
        if (isOuter[i]) {
            pieceOf[i] = pieces.size();
            pieces.push_back({std::move(rings[i]), {}});
        }
    }
    for (std::size_t i = 0; i < rings.size(); ++i) {
        if (home[i]) {
            pieces[pieceOf[*home[i]]].islands.push_back(std::move(rings[i]));
        }
    }
    return pieces;
}

} // namespace readers
