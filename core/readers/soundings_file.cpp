// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/soundings_file.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace readers {

std::string nameOf(DepthUnit unit) {
    switch (unit) {
    case DepthUnit::metres:
        return "m";
    case DepthUnit::feet:
        return "ft";
    case DepthUnit::fathoms:
        return "fathom";
    }
    return "";
}

std::optional<DepthUnit> depthUnitNamed(const std::string& name) {
    for (const DepthUnit unit : {DepthUnit::metres, DepthUnit::feet, DepthUnit::fathoms}) {
        if (nameOf(unit) == name) {
            return unit;
        }
    }
    return std::nullopt;
}

units::Depth depthOf(double amount, DepthUnit unit) {
    switch (unit) {
    case DepthUnit::feet:
        return units::Depth::feet(amount);
    case DepthUnit::fathoms:
        return units::Depth::fathoms(amount);
    case DepthUnit::metres:
        break;
    }
    return units::Depth::metres(amount);
}

std::string nameOf(SoundingFileKind kind) {
    switch (kind) {
    case SoundingFileKind::nmea:
        return "NMEA 0183 log";
    case SoundingFileKind::gpx:
        return "GPX track";
    case SoundingFileKind::table:
        return "text table";
    case SoundingFileKind::b12:
        return "B-12 soundings";
    case SoundingFileKind::vector:
        return "vector file";
    case SoundingFileKind::grid:
        return "depth grid";
    }
    return "";
}

namespace {

/// Good to a percent over a few hundred metres, which is enough to tell a gap.
double roughDistance_m(geo::LonLat a, geo::LonLat b) {
    constexpr double metresPerDegree = 111320.0;
    const double north = (b.lat_deg - a.lat_deg) * metresPerDegree;
    const double east =
        (b.lon_deg - a.lon_deg) * metresPerDegree * std::cos(a.lat_deg * std::numbers::pi / 180.0);
    return std::hypot(east, north);
}

bool isBreak(const soundings::Sounding& a, const soundings::Sounding& b) {
    if (a.time && b.time) {
        const double step_s = std::chrono::duration<double>(*b.time - *a.time).count();
        return step_s < 0.0 || step_s > passGap_s;
    }
    return roughDistance_m(a.place, b.place) > passGap_m;
}

} // namespace

std::vector<std::size_t> passStartsOf(const std::vector<soundings::Sounding>& soundings,
                                      const std::vector<std::size_t>& alsoAt) {
    std::vector<std::size_t> starts;
    for (std::size_t i = 0; i < soundings.size(); ++i) {
        if (i == 0 || isBreak(soundings[i - 1], soundings[i]) ||
            std::binary_search(alsoAt.begin(), alsoAt.end(), i)) {
            starts.push_back(i);
        }
    }
    return starts;
}

} // namespace readers
