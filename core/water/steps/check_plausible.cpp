// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/check_plausible.h"

#include "core/geo/nearest_points.h"
#include "core/geo/outline.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace water {

using base::ErrorKind;
using base::Result;

namespace {

/// Farther from the rest of the water than this, a file belongs to another one.
constexpr double farAway_m = 20000.0;
/// Half of a stillwater's soundings are never deeper (Loch Morar, deepest in Britain, has a mean
/// depth of 87 m: Murray and Pullar 1910).
constexpr double deepestMedian_m = 100.0;
/// Soundings of two days this near to each other should agree.
constexpr double samePlace_m = 8.0;
constexpr std::size_t leastPairs = 30;

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

std::vector<geo::LonLat> placesOf(const Water& water) {
    std::vector<geo::LonLat> places;
    for (const geo::LonLatPiece& piece : water.shoreline) {
        places.insert(places.end(), piece.outer.begin(), piece.outer.end());
    }
    if (places.empty()) {
        for (const soundings::SurveyDay& day : water.days) {
            for (const soundings::Sounding& sounding : day.soundings) {
                places.push_back(sounding.place);
            }
        }
    }
    return places;
}

geo::LonLat middleOf(const std::vector<geo::LonLat>& places) {
    std::vector<double> lon, lat;
    for (const geo::LonLat& p : places) {
        lon.push_back(p.lon_deg);
        lat.push_back(p.lat_deg);
    }
    return {median(std::move(lon)), median(std::move(lat))};
}

Result<void> checkNear(const std::vector<geo::LonLat>& these, const std::vector<geo::LonLat>& those,
                       const std::string& what, const std::string& where) {
    if (these.empty() || those.empty()) {
        return {};
    }
    const geo::LonLat here = middleOf(these);
    const geo::LonLat there = middleOf(those);
    const double away_m = geo::courseBetween(here, there).distance.inMetres();
    if (away_m < farAway_m) {
        return {};
    }
    const geo::LonLat swapped{here.lat_deg, here.lon_deg};
    const bool looksSwapped = geo::isOnEarth(swapped) &&
                              geo::courseBetween(swapped, there).distance.inMetres() < farAway_m;
    return base::fail(
        ErrorKind::unusableInput,
        fmt::format("{} lies {:.0f} km from the rest of the water", what, away_m / 1000.0), where,
        looksSwapped ? "longitude and latitude look swapped: choose the columns the other way round"
                     : "check that it belongs to this water, and its coordinate system");
}

/// Ratio of these depths to those already there at the same places; nothing where the tracks do not
/// meet often enough.
std::optional<double> ratioToOthers(const Water& water, const soundings::SurveyDay& day,
                                    const geo::WaterFrame& frame) {
    std::vector<geo::WaterPoint> known;
    std::vector<double> known_m;
    for (const soundings::SurveyDay& other : water.days) {
        for (const soundings::Sounding& sounding : other.soundings) {
            known.push_back(frame.toWater(sounding.place));
            known_m.push_back(sounding.shown.inMetres());
        }
    }
    const geo::NearestPoints index(known);
    std::vector<double> ratios;
    const std::size_t stride = std::max<std::size_t>(1, day.soundings.size() / 5000);
    for (std::size_t i = 0; i < day.soundings.size(); i += stride) {
        const auto nearest = index.nearest(frame.toWater(day.soundings[i].place));
        if (nearest && nearest->distance_m < samePlace_m && known_m[nearest->index] > 1.0) {
            ratios.push_back(day.soundings[i].shown.inMetres() / known_m[nearest->index]);
        }
    }
    return ratios.size() < leastPairs ? std::nullopt : std::optional(median(std::move(ratios)));
}

Result<void> checkUnit(const Water& water, const soundings::SurveyDay& day,
                       const std::string& where) {
    if (!water.frame || water.days.empty()) {
        return {};
    }
    const auto ratio = ratioToOthers(water, day, *water.frame);
    constexpr double feetInAMetre = 1.0 / units::metresPerFoot;
    const auto isAbout = [&](double wanted) {
        return ratio && std::fabs(*ratio / wanted - 1.0) < 0.12;
    };
    if (isAbout(feetInAMetre)) {
        return base::fail(
            ErrorKind::unusableInput,
            fmt::format(
                "its depths are {:.1f} times those already sounded there: feet taken for metres",
                *ratio),
            where, "say that the depths are in feet (unit ft)");
    }
    if (isAbout(units::metresPerFoot)) {
        return base::fail(
            ErrorKind::unusableInput,
            fmt::format(
                "its depths are {:.2f} times those already sounded there: metres taken for feet",
                *ratio),
            where, "say that the depths are in metres (unit m)");
    }
    return {};
}

} // namespace

Result<void> checkPlausible(const Water& water, const soundings::SurveyDay& day,
                            const std::string& where) {
    std::vector<geo::LonLat> places;
    std::vector<double> depths_m;
    for (const soundings::Sounding& sounding : day.soundings) {
        places.push_back(sounding.place);
        depths_m.push_back(sounding.shown.inMetres());
    }
    if (auto near = checkNear(places, placesOf(water), "the file", where); !near) {
        return near;
    }
    const double middle_m = depths_m.empty() ? 0.0 : median(depths_m);
    if (middle_m > deepestMedian_m) {
        return base::fail(
            ErrorKind::unusableInput,
            fmt::format("half of its depths are over {:.0f} m, which no stillwater has", middle_m),
            where, "check the unit of the depths (unit ft) and which column they are in");
    }
    return checkUnit(water, day, where);
}

Result<void> checkShorePlausible(const Water& water, const std::vector<geo::LonLatPiece>& pieces,
                                 const std::string& where) {
    std::vector<geo::LonLat> places;
    for (const geo::LonLatPiece& piece : pieces) {
        places.insert(places.end(), piece.outer.begin(), piece.outer.end());
    }
    Water unshored;
    unshored.days = water.days;
    if (auto near = checkNear(places, placesOf(unshored), "the shore", where); !near) {
        return near;
    }
    const auto frame = geo::WaterFrame::around(places);
    if (!frame) {
        base::Error error = frame.error();
        error.where = where;
        return std::unexpected(error);
    }
    const auto outline = geo::Outline::make(pieces, *frame);
    if (!outline) {
        base::Error error = outline.error();
        error.where = error.where.empty() ? where : where + ", " + error.where;
        return std::unexpected(error);
    }
    return {};
}

bool areFeet(const base::Error& error) {
    return error.whatToDo.find("in feet (unit ft)") != std::string::npos;
}

} // namespace water
