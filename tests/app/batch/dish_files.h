// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/number_text.h"
#include "core/geo/lon_lat.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace batch_tests {

/// The files of a made-up round water in open sea: its bottom is a paraboloid, so that every figure
/// of it has a formula. Radius 150 m, 8 m deep in the middle of 3.1 E 55.2 N.
namespace dish {

inline constexpr double radius_m = 150.0;
inline constexpr double depth_m = 8.0;

/// Metres from the middle to degrees, by the radii of the ellipsoid of WGS 84 at 55.2 N: good to a
/// few centimetres this near to the middle, and independent of the program's own projection.
inline geo::LonLat at(double x_m, double y_m) {
    const double e2 = 0.00669437999014;
    const double lat = 55.2 * std::numbers::pi / 180.0;
    const double w2 = 1.0 - e2 * std::sin(lat) * std::sin(lat);
    const double across_m = 6378137.0 / std::sqrt(w2) * std::cos(lat);
    const double along_m = 6378137.0 * (1.0 - e2) / std::pow(w2, 1.5);
    return {3.1 + x_m / across_m * 180.0 / std::numbers::pi,
            55.2 + y_m / along_m * 180.0 / std::numbers::pi};
}

inline double bottom_m(double x_m, double y_m) {
    return depth_m * (1.0 - (x_m * x_m + y_m * y_m) / (radius_m * radius_m));
}

inline std::string placeText(double x_m, double y_m) {
    const geo::LonLat place = at(x_m, y_m);
    return base::fixedText(place.lon_deg, 7) + "," + base::fixedText(place.lat_deg, 7);
}

/// A circle about a place as GeoJSON, of 180 corners.
inline std::string circleJson(double radius, double x_m = 0.0, double y_m = 0.0) {
    std::string ring;
    for (int i = 0; i <= 180; ++i) {
        const double a = 2.0 * std::numbers::pi * (i % 180) / 180.0;
        ring += (i == 0 ? "[" : ",[") +
                placeText(x_m + radius * std::cos(a), y_m + radius * std::sin(a)) + "]";
    }
    return R"({"type":"Polygon","coordinates":[[)" + ring + "]]}";
}

/// Lines 10 m apart to and fro in the morning of `day`, a sounding every 5 m at 2 m/s; west to east
/// or south to north. \param change what the sounder shows for a true depth. \param ahead_m how far
/// the boat is ahead of the place that its receiver gives.
template <class Change>
std::string soundings(const std::string& day, bool alongMeridians, const Change& change,
                      const std::string& header = "lon,lat,depth_m,time\n", double ahead_m = 0.0) {
    std::string text = header;
    int seconds = 0;
    int line = 0;
    for (double off_m = -140.0; off_m <= 140.0; off_m += 10.0, ++line) {
        for (int i = -29; i <= 29; ++i) {
            const double along_m = (line % 2 == 0 ? 5.0 : -5.0) * i;
            const double x_m = alongMeridians ? off_m : along_m;
            const double y_m = alongMeridians ? along_m : off_m;
            if (std::hypot(x_m, y_m) < radius_m - 2.0) {
                const int tenths = seconds * 10 + 25 * (i + 29);
                const auto digits = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
                const double on_m = line % 2 == 0 ? ahead_m : -ahead_m;
                const double shown_m =
                    change(alongMeridians ? bottom_m(x_m, y_m + on_m) : bottom_m(x_m + on_m, y_m));
                text += placeText(x_m, y_m) + "," + base::fixedText(shown_m, 4) + "," + day + "T" +
                        digits(7 + tenths / 36000) + ":" + digits(tenths / 600 % 60) + ":" +
                        digits(tenths / 10 % 60) + "." + std::to_string(tenths % 10) + "Z\n";
            }
        }
        seconds += 180;
    }
    return text;
}

/// As the bottom is.
inline std::string trueSoundings() {
    return soundings("2026-09-05", false, [](double metres) { return metres; });
}

} // namespace dish

/// A folder with the shore of the dish and its true soundings in it.
struct DishFolder {
    DishFolder() {
        static_cast<void>(folder.file("shore.geojson", dish::circleJson(dish::radius_m)));
        static_cast<void>(folder.file("true.csv", dish::trueSoundings()));
    }
    [[nodiscard]] std::string at(const std::string& name) const {
        return (folder.path() / name).string();
    }
    std::string write(const std::string& name, const std::string& text) const {
        return folder.file(name, text).string();
    }
    /// The words that draw it into dish.gpkg with cells of 6 m and nothing proposed.
    [[nodiscard]] std::vector<std::string>
    sketchWords(const std::vector<std::string>& more = {},
                const std::string& soundings = "true.csv") const {
        std::vector<std::string> words{
            "sketch",        at(soundings), "--shore", at("shore.geojson"), "--water",
            at("dish.gpkg"), "--cell",      "6",       "--next-minutes",    "0"};
        words.insert(words.end(), more.begin(), more.end());
        return words;
    }
    /// What lies in the folder, by name.
    [[nodiscard]] std::vector<std::string> names() const {
        std::vector<std::string> found;
        for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
            found.push_back(entry.path().filename().string());
        }
        std::sort(found.begin(), found.end());
        return found;
    }
    support::ScratchFolder folder;
};

} // namespace batch_tests
