// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/vector_source.h"

#include "core/gdal/open_data.h"
#include "core/gdal/session.h"

#include <cmath>

#include <fmt/format.h>
#include <gdal_priv.h>
#include <ogrsf_frmts.h>

namespace gdal {

namespace {

struct ForgetTransformation {
    void operator()(OGRCoordinateTransformation* transformation) const {
        OGRCoordinateTransformation::DestroyCT(transformation);
    }
};
using Transformation = std::unique_ptr<OGRCoordinateTransformation, ForgetTransformation>;

/// Takes a geometry apart into the plain values of a feature.
class Unpacking {
public:
    Unpacking(Feature& feature, OGRCoordinateTransformation* toEarth)
        : feature_(&feature), toEarth_(toEarth) {}

    void take(const OGRGeometry& geometry) {
        switch (wkbFlatten(geometry.getGeometryType())) {
        case wkbPoint: {
            const OGRPoint& point = *geometry.toPoint();
            if (point.IsEmpty() == FALSE) {
                feature_->points.push_back(placed(point));
            }
            break;
        }
        case wkbLineString:
            feature_->lines.push_back(places(*geometry.toLineString()));
            break;
        case wkbPolygon:
        case wkbTriangle:
            takePiece(*geometry.toPolygon());
            break;
        case wkbMultiPoint:
        case wkbMultiLineString:
        case wkbMultiPolygon:
        case wkbGeometryCollection:
            for (const OGRGeometry* part : *geometry.toGeometryCollection()) {
                take(*part);
            }
            break;
        default:
            takeCurved(geometry);
        }
    }

private:
    void takeCurved(const OGRGeometry& geometry) {
        if (geometry.hasCurveGeometry() != FALSE) {
            const std::unique_ptr<OGRGeometry> straight(geometry.getLinearGeometry());
            if (straight && straight->hasCurveGeometry() == FALSE) {
                take(*straight);
            }
        }
    }

    void takePiece(const OGRPolygon& polygon) {
        geo::LonLatPiece piece;
        bool isOuter = true;
        for (const OGRLinearRing* ring : polygon) {
            geo::LonLatRing places;
            for (const PlaceWithZ& p : this->places(*ring)) {
                places.push_back(p.place);
            }
            while (places.size() > 1 && places.front() == places.back()) {
                places.pop_back();
            }
            if (isOuter) {
                piece.outer = std::move(places);
            } else {
                piece.islands.push_back(std::move(places));
            }
            isOuter = false;
        }
        if (!piece.outer.empty()) {
            feature_->pieces.push_back(std::move(piece));
        }
    }

    std::vector<PlaceWithZ> places(const OGRSimpleCurve& line) {
        std::vector<PlaceWithZ> all;
        for (const OGRPoint& point : line) {
            all.push_back(placed(point));
        }
        return all;
    }

    PlaceWithZ placed(const OGRPoint& point) {
        double x = point.getX();
        double y = point.getY();
        if (toEarth_ != nullptr && toEarth_->Transform(1, &x, &y) == FALSE) {
            x = y = NAN;
        }
        const geo::LonLat place{x, y};
        feature_->offEarth = feature_->offEarth || !geo::isOnEarth(place);
        const bool hasZ = point.Is3D() != FALSE && std::isfinite(point.getZ());
        return {place, hasZ ? std::optional(point.getZ()) : std::nullopt};
    }

    Feature* feature_;
    OGRCoordinateTransformation* toEarth_;
};

/// ISO 8601 of a date, a time, or both, with the zone where there is one.
std::string timeText(const OGRFeature& feature, int field, OGRFieldType type) {
    int year = 0;
    int month = 0;
    int day = 0;
    int hour = 0;
    int minute = 0;
    int zone = 0;
    float second = 0.0F;
    feature.GetFieldAsDateTime(field, &year, &month, &day, &hour, &minute, &second, &zone);
    const std::string date = fmt::format("{:04}-{:02}-{:02}", year, month, day);
    std::string time = fmt::format("{:02}:{:02}:{:06.3f}", hour, minute, second);
    constexpr int utc = 100; // GDAL counts zones in quarters of an hour from here.
    if (zone > 1) {
        const int offset_min = (zone - utc) * 15;
        time += offset_min == 0 ? std::string("Z")
                                : fmt::format("{}{:02}:{:02}", offset_min < 0 ? '-' : '+',
                                              std::abs(offset_min) / 60, std::abs(offset_min) % 60);
    }
    return type == OFTDate ? date : type == OFTTime ? time : date + "T" + time;
}

FieldValue valueOf(const OGRFeature& feature, int field) {
    if (feature.IsFieldSetAndNotNull(field) == FALSE) {
        return std::monostate{};
    }
    const OGRFieldType type = feature.GetFieldDefnRef(field)->GetType();
    switch (type) {
    case OFTInteger:
    case OFTInteger64:
    case OFTReal:
        return feature.GetFieldAsDouble(field);
    case OFTDate:
    case OFTTime:
    case OFTDateTime:
        return timeText(feature, field, type);
    default:
        return std::string(feature.GetFieldAsString(field));
    }
}

Layer described(OGRLayer& layer) {
    Layer described;
    described.name = layer.GetName();
    const OGRFeatureDefn& definition = *layer.GetLayerDefn();
    for (int i = 0; i < definition.GetFieldCount(); ++i) {
        described.fields.emplace_back(definition.GetFieldDefn(i)->GetNameRef());
    }
    const GIntBig count = layer.GetFeatureCount(FALSE);
    if (count >= 0) {
        described.featureCount = static_cast<std::size_t>(count);
    }
    described.hasReferenceSystem = layer.GetSpatialRef() != nullptr;
    return described;
}

} // namespace

struct VectorSource::Inside {
    std::string where;
    std::optional<int> epsg;
    GDALDatasetUniquePtr dataset;
    std::string format;
    std::vector<Layer> layers;

    /// From the layer's coordinates to WGS 84; null where they are degrees already or nothing says
    /// what they are.
    base::Result<Transformation> toEarth(OGRLayer& layer, const Session& session) const {
        OGRSpatialReference system;
        if (epsg) {
            if (system.importFromEPSG(*epsg) != OGRERR_NONE) {
                return std::unexpected(session.error(
                    base::ErrorKind::unusableInput, "there is no reference system of that number",
                    fmt::format("EPSG:{}", *epsg), "look the number up in the EPSG register"));
            }
        } else if (const OGRSpatialReference* own = layer.GetSpatialRef()) {
            system = *own;
        } else {
            return Transformation{};
        }
        system.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
        OGRSpatialReference earth;
        earth.SetWellKnownGeogCS("WGS84");
        earth.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
        if (system.IsSame(&earth) != FALSE) {
            return Transformation{};
        }
        Transformation made(OGRCreateCoordinateTransformation(&system, &earth));
        if (!made) {
            return std::unexpected(
                session.error(base::ErrorKind::unusableInput,
                              "its reference system cannot be brought to longitude and latitude",
                              where, "give the EPSG number of the coordinates"));
        }
        return made;
    }
};

VectorSource::VectorSource(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
VectorSource::~VectorSource() = default;
VectorSource::VectorSource(VectorSource&&) noexcept = default;
VectorSource& VectorSource::operator=(VectorSource&&) noexcept = default;

base::Result<VectorSource> VectorSource::open(const std::filesystem::path& path,
                                              std::optional<int> epsg) {
    const Session session;
    auto dataset =
        openData(path, Holding::vectors, session, "it is no vector file that can be read",
                 "give a shapefile, GeoPackage, GeoJSON, KML or the like");
    if (!dataset) {
        return std::unexpected(std::move(dataset.error()));
    }
    auto inside = std::make_unique<Inside>();
    inside->where = path.filename().string();
    inside->epsg = epsg;
    inside->dataset = std::move(*dataset);
    inside->format = inside->dataset->GetDriverName();
    for (OGRLayer* layer : inside->dataset->GetLayers()) {
        inside->layers.push_back(described(*layer));
    }
    if (inside->layers.empty()) {
        return base::fail(base::ErrorKind::unusableInput, "it has no layer with geometry",
                          path.string(), "give a file with points, lines or polygons");
    }
    return VectorSource(std::move(inside));
}

const std::string& VectorSource::format() const {
    return inside_->format;
}

const std::vector<Layer>& VectorSource::layers() const {
    return inside_->layers;
}

base::Result<void> VectorSource::forEach(std::size_t layer,
                                         const std::function<bool(const Feature&)>& take,
                                         base::Progress& progress) {
    Session session;
    OGRLayer* source = layer < inside_->layers.size()
                           ? inside_->dataset->GetLayer(static_cast<int>(layer))
                           : nullptr;
    if (source == nullptr) {
        return base::fail(base::ErrorKind::wrongUse, "there is no layer of that number",
                          inside_->where, "take one of those that are listed");
    }
    auto toEarth = inside_->toEarth(*source, session);
    if (!toEarth) {
        return std::unexpected(toEarth.error());
    }
    session.forget();
    source->ResetReading();
    const auto count = static_cast<double>(inside_->layers[layer].featureCount.value_or(0));
    const std::size_t fields = inside_->layers[layer].fields.size();
    for (std::size_t number = 1;; ++number) {
        constexpr std::size_t often = 1024;
        if (number % often == 0) {
            if (progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
            progress.tell(count > 0.0 ? std::fmin(static_cast<double>(number) / count, 1.0) : 0.0);
        }
        const OGRFeatureUniquePtr found(source->GetNextFeature());
        if (!found) {
            break;
        }
        Feature feature;
        feature.number = number;
        for (std::size_t i = 0; i < fields; ++i) {
            feature.values.push_back(valueOf(*found, static_cast<int>(i)));
        }
        if (const OGRGeometry* geometry = found->GetGeometryRef()) {
            Unpacking(feature, toEarth->get()).take(*geometry);
        }
        if (!take(feature)) {
            return {};
        }
    }
    if (session.hasFailed()) {
        return std::unexpected(session.error(base::ErrorKind::unusableInput,
                                             "the file breaks off or is damaged", inside_->where,
                                             "get a whole copy of it"));
    }
    return {};
}

} // namespace gdal
