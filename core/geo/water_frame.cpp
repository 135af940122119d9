// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/water_frame.h"

#include "core/base/number_text.h"

#include <cmath>
#include <map>
#include <memory>
#include <utility>

#include <fmt/format.h>
#include <geodesic.h>
#include <proj.h>

namespace geo {

namespace {

constexpr double poleMargin_deg = 2.0;
constexpr double widest_deg = 2.0;

struct ContextCloser {
    void operator()(PJ_CONTEXT* c) const { proj_context_destroy(c); }
};
struct ProjectionCloser {
    void operator()(PJ* p) const { proj_destroy(p); }
};

/// PROJ objects must not be shared between threads, so each thread keeps its own, by definition.
class Projections {
public:
    /// What PROJ would say on standard error is told by what it gives.
    Projections() { proj_log_level(context_.get(), PJ_LOG_NONE); }
    PJ* of(const std::string& definition) {
        auto found = made_.find(definition);
        if (found == made_.end()) {
            PJ* made = proj_create(context_.get(), definition.c_str());
            found = made_.emplace(definition, std::unique_ptr<PJ, ProjectionCloser>(made)).first;
        }
        return found->second.get();
    }
    PJ_CONTEXT* context() { return context_.get(); }

private:
    std::unique_ptr<PJ_CONTEXT, ContextCloser> context_{proj_context_create()};
    std::map<std::string, std::unique_ptr<PJ, ProjectionCloser>> made_;
};

Projections& projections() {
    thread_local Projections here;
    return here;
}

const geod_geodesic& earth() {
    static const geod_geodesic shape = [] {
        geod_geodesic made{};
        geod_init(&made, 6378137.0, 1.0 / 298.257223563);
        return made;
    }();
    return shape;
}

double rounded(double degrees) {
    return std::round(degrees * 100.0) / 100.0;
}

} // namespace

base::Result<WaterFrame> WaterFrame::centredOn(LonLat centre) {
    if (!isOnEarth(centre) || std::fabs(centre.lat_deg) > 90.0 - poleMargin_deg) {
        return base::fail(base::ErrorKind::wrongUse,
                          fmt::format("no flat frame can be laid at longitude {}, latitude {}",
                                      centre.lon_deg, centre.lat_deg),
                          "", "check the shore: longitude first, then latitude, in degrees");
    }
    return WaterFrame(centre);
}

base::Result<WaterFrame> WaterFrame::around(std::span<const LonLat> places) {
    if (places.empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "there is no position to lay the water's frame on");
    }
    double west = 180.0, east = -180.0, south = 90.0, north = -90.0;
    for (const LonLat& p : places) {
        if (!isOnEarth(p)) {
            return base::fail(
                base::ErrorKind::unusableInput,
                fmt::format("longitude {}, latitude {} is not on the Earth", p.lon_deg, p.lat_deg),
                "", "give degrees, or name the coordinate system of the file");
        }
        west = std::fmin(west, p.lon_deg);
        east = std::fmax(east, p.lon_deg);
        south = std::fmin(south, p.lat_deg);
        north = std::fmax(north, p.lat_deg);
    }
    if (east - west > widest_deg || north - south > widest_deg) {
        return base::fail(
            base::ErrorKind::unusableInput,
            fmt::format(
                "the positions spread over {:.1f} by {:.1f} degrees, too wide for one water",
                east - west, north - south),
            "", "check that all belong to one water");
    }
    return centredOn({rounded(0.5 * (west + east)), rounded(0.5 * (south + north))});
}

std::string WaterFrame::definition() const {
    return fmt::format(
        "+proj=tmerc +lat_0={} +lon_0={} +k=1 +x_0=0 +y_0=0 +datum=WGS84 +units=m +no_defs",
        base::exactText(centre_.lat_deg), base::exactText(centre_.lon_deg));
}

WaterPoint WaterFrame::toWater(LonLat place) const {
    PJ* projection = projections().of(definition());
    const PJ_COORD out =
        proj_trans(projection, PJ_FWD,
                   proj_coord(proj_torad(place.lon_deg), proj_torad(place.lat_deg), 0.0, 0.0));
    return {out.xy.x, out.xy.y};
}

LonLat WaterFrame::toEarth(WaterPoint point) const {
    PJ* projection = projections().of(definition());
    const PJ_COORD out = proj_trans(projection, PJ_INV, proj_coord(point.x_m, point.y_m, 0.0, 0.0));
    return {proj_todeg(out.lp.lam), proj_todeg(out.lp.phi)};
}

std::vector<WaterPoint> WaterFrame::toWater(std::span<const LonLat> places) const {
    PJ* projection = projections().of(definition());
    std::vector<WaterPoint> out;
    out.reserve(places.size());
    for (const LonLat& p : places) {
        const PJ_COORD c = proj_trans(
            projection, PJ_FWD, proj_coord(proj_torad(p.lon_deg), proj_torad(p.lat_deg), 0.0, 0.0));
        out.push_back({c.xy.x, c.xy.y});
    }
    return out;
}

std::vector<LonLat> WaterFrame::toEarth(std::span<const WaterPoint> points) const {
    PJ* projection = projections().of(definition());
    std::vector<LonLat> out;
    out.reserve(points.size());
    for (const WaterPoint& p : points) {
        const PJ_COORD c = proj_trans(projection, PJ_INV, proj_coord(p.x_m, p.y_m, 0.0, 0.0));
        out.push_back({proj_todeg(c.lp.lam), proj_todeg(c.lp.phi)});
    }
    return out;
}

std::string WaterFrame::wkt() const {
    PJ_CONTEXT* context = projections().context();
    const std::unique_ptr<PJ, ProjectionCloser> crs(
        proj_create(context, (definition() + " +type=crs").c_str()));
    const char* const options[] = {"MULTILINE=NO", nullptr};
    const char* text = crs ? proj_as_wkt(context, crs.get(), PJ_WKT1_GDAL, options) : nullptr;
    return text == nullptr ? std::string() : std::string(text);
}

Course courseBetween(LonLat from, LonLat to) {
    double metres = 0.0, azimuth = 0.0;
    geod_inverse(&earth(), from.lat_deg, from.lon_deg, to.lat_deg, to.lon_deg, &metres, &azimuth,
                 nullptr);
    return {units::Length::metres(metres), units::Bearing::degrees(azimuth)};
}

LonLat destination(LonLat from, const Course& course) {
    LonLat to;
    geod_direct(&earth(), from.lat_deg, from.lon_deg, course.bearing.inDegrees(),
                course.distance.inMetres(), &to.lat_deg, &to.lon_deg, nullptr);
    return to;
}

std::string projVersion() {
    return proj_info().version;
}

} // namespace geo
