// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/contours/find_bands.h"

#include "core/gdal/trace.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace contours {

using base::Result;

namespace {

/// Deeper than any water, so that the last band is closed below for the tracer.
constexpr double bottomless_m = 1e6;

/// Depths with the first cells outside the water mirrored to minus the depth inside: the surface
/// then passes through depth 0 at the edge of the water, and the bands end there and not half a
/// cell inside.
std::vector<float> withMirroredRim(const grid::DepthGrid& depth) {
    const grid::GridFrame& f = depth.frame();
    std::vector<float> field = depth.raw_m();
    for (std::size_t i = 0; i < field.size(); ++i) {
        if (depth.has(i)) {
            continue;
        }
        const grid::Cell c = f.cellAt(i);
        float deepest_m = 0.0F;
        for (int dr = -1; dr <= 1; ++dr) {
            for (int dc = -1; dc <= 1; ++dc) {
                if (const auto beside = depth.at(grid::Cell{c.col + dc, c.row + dr})) {
                    deepest_m = std::max(deepest_m, static_cast<float>(beside->inMetres()));
                }
            }
        }
        // Farther out: just above the surface, so that the tracer meets no hole.
        field[i] = deepest_m > 0.0F ? -deepest_m : -0.01F;
    }
    return field;
}

void measure(const grid::DepthGrid& depth, const grid::Mask& mask, const Bands& bands,
             BandsFound& found) {
    std::vector<double> area_m2(bands.count(), 0.0);
    std::vector<double> volume_m3(bands.count(), 0.0);
    for (std::size_t i = 0; i < depth.size(); ++i) {
        if (!depth.has(i)) {
            continue;
        }
        const double depth_m = static_cast<double>(depth.raw_m()[i]);
        if (depth_m < 0.0) {
            continue;
        }
        const std::size_t band = bands.bandOf(units::Depth::metres(depth_m));
        found.bandOfCell[i] = static_cast<std::uint8_t>(band);
        const double wet_m2 = static_cast<double>(mask.share(i)) * depth.frame().cellArea_m2();
        area_m2[band] += wet_m2;
        volume_m3[band] += wet_m2 * depth_m;
    }
    for (std::size_t band = 0; band < bands.count(); ++band) {
        found.measures.push_back({bands.from(band), bands.to(band),
                                  units::Area::squareMetres(area_m2[band]),
                                  units::Volume::cubicMetres(volume_m3[band])});
    }
}

Result<std::vector<gdal::TracedPolygon>>
traced(const grid::DepthGrid& depth, std::span<const double> levels_m, base::Progress& progress) {
    const grid::GridFrame& f = depth.frame();
    const std::vector<float> field = withMirroredRim(depth);
    return gdal::tracePolygons({f.west_m(), f.north_m(), f.cell_m(), f.cols(), f.rows(), field},
                               levels_m, progress);
}

} // namespace

Result<std::vector<geo::Piece>> findWater(const grid::DepthGrid& depth, base::Progress& progress) {
    auto water = traced(depth, std::array{0.0, bottomless_m}, progress);
    if (!water) {
        return std::unexpected(water.error());
    }
    return water->empty() ? std::vector<geo::Piece>{} : std::move(water->front().pieces);
}

Result<BandsFound> findBands(const grid::DepthGrid& depth, const grid::Mask& mask,
                             const Bands& bands, base::Progress& progress) {
    if (depth.frame() != mask.frame()) {
        return base::fail(base::ErrorKind::wrongUse, "depths and water lie on different cells",
                          "bands", "draw the water anew");
    }
    if (bands.count() >= noBand) {
        return base::fail(base::ErrorKind::wrongUse, "there are more bands than can be told apart",
                          "bands", "give at most 250 edges");
    }
    BandsFound found;
    found.bandOfCell = grid::Grid<std::uint8_t>(depth.frame(), noBand);
    measure(depth, mask, bands, found);
    std::vector<double> levels_m{0.0};
    for (const units::Depth edge : bands.edges()) {
        levels_m.push_back(edge.inMetres());
    }
    levels_m.push_back(bottomless_m);
    auto areas = traced(depth, levels_m, progress);
    if (!areas) {
        return std::unexpected(areas.error());
    }
    for (std::size_t band = 0; band < areas->size() && band < bands.count(); ++band) {
        found.polygons.push_back(
            {bands.from(band), bands.to(band), std::move((*areas)[band].pieces)});
    }
    return found;
}

} // namespace contours
