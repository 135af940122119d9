// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_geojson.h"

#include "core/base/whole_file.h"
#include "core/outputs/geojson_text.h"

namespace outputs {

namespace {

constexpr int millimetres = 3; ///< Decimals of a depth in metres.
constexpr int ofAnArea = 1;    ///< Decimals of an area in square metres.
constexpr int ofALength = 1;   ///< Decimals of a length in metres.
constexpr int ofAShare = 4;

Properties propertiesOf(const sections::Section& section) {
    return Properties()
        .with("name", section.name)
        .with("number", section.number, 0)
        .with("area_m2", section.area.inSquareMetres(), ofAnArea)
        .with("mean_depth_m", section.meanDepth.inMetres(), millimetres)
        .with("max_depth_m", section.maxDepth.inMetres(), millimetres)
        .with("shoreline_m", section.shore.inMetres(), ofALength)
        .with("drop_off_m", section.dropOff.inMetres(), ofALength)
        .with("weed_share", section.weedShare, ofAShare)
        .with("trust_sounded", section.trustShare[0], ofAShare)
        .with("trust_inferred", section.trustShare[1], ofAShare)
        .with("trust_guess", section.trustShare[2], ofAShare);
}

} // namespace

base::Result<void> writeShorelineGeojson(const std::filesystem::path& path,
                                         std::span<const geo::LonLatPiece> shoreline,
                                         std::string_view name) {
    FeatureCollection features;
    for (const geo::LonLatPiece& piece : shoreline) {
        features.addPieces(std::span(&piece, 1), Properties().with("name", name));
    }
    return base::writeWholeFile(path, features.text());
}

base::Result<void> writeContoursGeojson(const std::filesystem::path& path,
                                        std::span<const contours::Contour> contours,
                                        const geo::WaterFrame& frame) {
    FeatureCollection features;
    for (const contours::Contour& contour : contours) {
        features.addLine(frame.toEarth(std::span(contour.line)),
                         Properties().with("depth_m", contour.depth.inMetres(), millimetres));
    }
    return base::writeWholeFile(path, features.text());
}

base::Result<void> writeBandsGeojson(const std::filesystem::path& path,
                                     std::span<const contours::BandPolygons> bands,
                                     const geo::WaterFrame& frame) {
    FeatureCollection features;
    for (const contours::BandPolygons& band : bands) {
        const auto to_m = band.to ? std::optional(band.to->inMetres()) : std::nullopt;
        features.addPieces(band.pieces, frame,
                           Properties()
                               .with("from_m", band.from.inMetres(), millimetres)
                               .with("to_m", to_m, millimetres));
    }
    return base::writeWholeFile(path, features.text());
}

base::Result<void> writeZonesGeojson(const std::filesystem::path& path,
                                     std::span<const structure::Zone> zones,
                                     const geo::WaterFrame& frame) {
    FeatureCollection features;
    for (const structure::Zone& zone : zones) {
        const double edge_m = zone.edgeLength.inMetres();
        features.addPieces(
            zone.pieces, frame,
            Properties()
                .with("kind", structure::nameOf(zone.kind))
                .with("name", zone.name)
                .with("area_m2", zone.area.inSquareMetres(), ofAnArea)
                .with("shallowest_m", zone.shallowest.inMetres(), millimetres)
                .with("deepest_m", zone.deepest.inMetres(), millimetres)
                .with("edge_m", edge_m > 0.0 ? std::optional(edge_m) : std::nullopt, ofALength)
                .with("trust_m", zone.meanTrust_m, millimetres));
    }
    return base::writeWholeFile(path, features.text());
}

base::Result<void> writeSectionsGeojson(const std::filesystem::path& path,
                                        std::span<const sections::Section> sections,
                                        std::span<const water::SectionUse> uses,
                                        const geo::WaterFrame& frame) {
    FeatureCollection features;
    for (std::size_t i = 0; i < sections.size(); ++i) {
        Properties known = propertiesOf(sections[i]);
        if (uses.size() == sections.size()) {
            known.with("stays", uses[i].stays, 0).withTruth("never_fished", uses[i].stays == 0);
        }
        features.addPieces(sections[i].pieces, frame, known);
    }
    return base::writeWholeFile(path, features.text());
}

} // namespace outputs
