// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/coordinates.h"

#include "core/gdal/session.h"

#include <cmath>

#include <ogr_spatialref.h>

namespace gdal {

namespace {

struct ForgetTransformation {
    void operator()(OGRCoordinateTransformation* transformation) const {
        OGRCoordinateTransformation::DestroyCT(transformation);
    }
};
using Transformation = std::unique_ptr<OGRCoordinateTransformation, ForgetTransformation>;

} // namespace

struct Coordinates::Inside {
    Transformation toEarth;
    Transformation fromEarth;

    /// Nothing where GDAL knows no way between `system` and WGS 84.
    static std::unique_ptr<Inside> of(OGRSpatialReference& system) {
        system.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
        OGRSpatialReference earth;
        earth.SetWellKnownGeogCS("WGS84");
        earth.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
        auto inside = std::make_unique<Inside>();
        inside->toEarth.reset(OGRCreateCoordinateTransformation(&system, &earth));
        inside->fromEarth.reset(OGRCreateCoordinateTransformation(&earth, &system));
        if (!inside->toEarth || !inside->fromEarth) {
            return nullptr;
        }
        return inside;
    }
};

Coordinates::Coordinates(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Coordinates::~Coordinates() = default;
Coordinates::Coordinates(Coordinates&&) noexcept = default;
Coordinates& Coordinates::operator=(Coordinates&&) noexcept = default;

base::Result<Coordinates> Coordinates::ofEpsg(int code) {
    const Session session;
    OGRSpatialReference system;
    std::unique_ptr<Inside> inside;
    if (system.importFromEPSG(code) == OGRERR_NONE) {
        inside = Inside::of(system);
    }
    if (!inside) {
        return std::unexpected(session.error(
            base::ErrorKind::unusableInput, "there is no usable reference system of that number",
            "EPSG:" + std::to_string(code), "look the number up in the EPSG register"));
    }
    return Coordinates(std::move(inside));
}

base::Result<Coordinates> Coordinates::ofWkt(const std::string& wkt) {
    const Session session;
    OGRSpatialReference system;
    std::unique_ptr<Inside> inside;
    if (system.importFromWkt(wkt.c_str()) == OGRERR_NONE) {
        inside = Inside::of(system);
    }
    if (!inside) {
        return std::unexpected(
            session.error(base::ErrorKind::unusableInput, "the reference system cannot be read",
                          wkt.substr(0, 60), "give the EPSG number of the coordinates instead"));
    }
    return Coordinates(std::move(inside));
}

std::optional<geo::LonLat> Coordinates::toEarth(PlanePosition position) const {
    const Session session;
    if (!std::isfinite(position.x) || !std::isfinite(position.y) ||
        inside_->toEarth->Transform(1, &position.x, &position.y) == FALSE) {
        return std::nullopt;
    }
    const geo::LonLat place{position.x, position.y};
    return geo::isOnEarth(place) ? std::optional(place) : std::nullopt;
}

std::optional<PlanePosition> Coordinates::fromEarth(geo::LonLat place) const {
    const Session session;
    PlanePosition position{place.lon_deg, place.lat_deg};
    if (!geo::isOnEarth(place) ||
        inside_->fromEarth->Transform(1, &position.x, &position.y) == FALSE ||
        !std::isfinite(position.x) || !std::isfinite(position.y)) {
        return std::nullopt;
    }
    return position;
}

} // namespace gdal
