// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/note_places.h"

#include "core/geo/within_ring.h"

#include <algorithm>
#include <cmath>

namespace weed {

namespace {

constexpr double apart_m = 25.0;
constexpr double mostPlaces = 200.0;

} // namespace

std::vector<geo::WaterPoint> placesAlong(const geo::Path& line) {
    if (line.size() < 2) {
        return {line.begin(), line.end()};
    }
    const double whole_m = geo::lengthOf(line).inMetres();
    const double gaps = std::clamp(std::ceil(whole_m / apart_m), 1.0, mostPlaces - 1.0);
    std::vector<geo::WaterPoint> places{line.front()};
    double done_m = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double piece_m = geo::distance_m(line[i - 1], line[i]);
        for (auto k = static_cast<double>(places.size());
             k < gaps && k * whole_m / gaps <= done_m + piece_m && piece_m > 0.0;
             k = static_cast<double>(places.size())) {
            const double t = (k * whole_m / gaps - done_m) / piece_m;
            places.push_back({line[i - 1].x_m + t * (line[i].x_m - line[i - 1].x_m),
                              line[i - 1].y_m + t * (line[i].y_m - line[i - 1].y_m)});
        }
        done_m += piece_m;
    }
    places.push_back(line.back());
    return places;
}

std::vector<geo::WaterPoint> placesWithin(const geo::Ring& ring) {
    if (ring.size() < 3) {
        return {};
    }
    geo::Box box;
    for (const geo::WaterPoint p : ring) {
        box.take(p);
    }
    const double step_m =
        std::max(apart_m, std::sqrt(std::abs(geo::signedArea_m2(ring)) / mostPlaces));
    const geo::WaterPoint middle{0.5 * (box.west_m + box.east_m),
                                 0.5 * (box.south_m + box.north_m)};
    // The lattice lies about the middle, so that a small ring holds at least that.
    const auto reach = [step_m](double side_m) {
        return static_cast<int>(std::ceil(0.5 * side_m / step_m));
    };
    const int across = reach(box.east_m - box.west_m);
    const int up = reach(box.north_m - box.south_m);
    std::vector<geo::WaterPoint> places;
    for (int row = -up; row <= up; ++row) {
        for (int col = -across; col <= across; ++col) {
            const geo::WaterPoint p{middle.x_m + col * step_m, middle.y_m + row * step_m};
            if (geo::isWithin(ring, p)) {
                places.push_back(p);
            }
        }
    }
    return places.empty() ? std::vector{middle} : places;
}

std::vector<geo::WaterPoint> placesOf(const WeedNote& note, const geo::WaterFrame& frame) {
    std::vector<geo::WaterPoint> places;
    if (note.extent == Extent::line) {
        places = placesAlong(frame.toWater(std::span(note.corners)));
    } else if (note.extent == Extent::area) {
        places = placesWithin(frame.toWater(std::span(note.corners)));
    }
    return places.empty() ? std::vector{frame.toWater(note.place)} : places;
}

} // namespace weed
