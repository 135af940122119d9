// SPDX-License-Identifier: GPL-3.0-or-later
// Divides a depth grid into sections: bench_sections DEPTH.tif LABELS.tif [HECTARES [LIMIT_M
// [DEPTH_WEIGHT]]]. LABELS holds the section of each cell, from 0.
#include "core/gdal/raster_file.h"
#include "core/grid/connected_pieces.h"
#include "core/sections/divide_water.h"
#include "tests/support/ruler_pieces.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <string>

#include <fmt/format.h>

namespace {

/// How many connected parts of sections are off the wanted size, though more of the same water goes
/// on from the small ones; and how many are pockets that nature has cut off.
void tellSizes(const sections::SectionMap& map, const support::KnownLake& water, double wanted_m2,
               const contours::Bands& bands) {
    grid::Grid<std::int32_t> isFishable(water.depth.frame(), -1);
    for (std::size_t i = 0; i < isFishable.size(); ++i) {
        const auto depth_m = static_cast<double>(water.depth.raw_m()[i]);
        isFishable[i] = depth_m > 0.0 && bands.isFishable(units::Depth::metres(depth_m)) ? 0 : -1;
    }
    const grid::ConnectedPieces fishable = grid::connectedPieces(isFishable);
    const auto parts = grid::connectedPieces(map.sectionOfCell).cells;
    int outside = 0;
    int pockets = 0;
    for (const std::vector<std::size_t>& part : parts) {
        const double share =
            static_cast<double>(part.size()) * isFishable.frame().cellArea_m2() / wanted_m2;
        const auto pocket = static_cast<std::size_t>(fishable.pieceOfCell[part.front()]);
        const bool isPocket = share < 0.5 && fishable.cells[pocket].size() == part.size();
        pockets += isPocket ? 1 : 0;
        outside += (share < 0.5 && !isPocket) || share > 1.6 ? 1 : 0;
    }
    fmt::print(
        "{} of {} connected parts outside 0.5 to 1.6 of the wanted size, {} natural pockets\n",
        outside, parts.size(), pockets);
}

/// How much more of the depths sections tell than pieces of a ruler do, and whether they are whole.
void tellPeer(const sections::SectionMap& map, const support::KnownLake& water) {
    const std::size_t count = map.sections.size();
    const auto ours = support::figuresOf(water, map.sectionOfCell, count);
    const auto peer = support::figuresOf(water, support::rulerPieces(water, count), count);
    fmt::print(
        "explained {:.3f}, k-means {:.3f}: {:.2f} of it; compactness {:.3f}, k-means {:.3f}: "
        "{:.2f} of it; {} of {} sections torn\n",
        ours.explained, peer.explained, ours.explained / peer.explained, ours.compactness,
        peer.compactness, ours.compactness / peer.compactness, ours.torn, count);
}

base::Result<void> run(const std::string& depthPath, const std::string& labelsPath,
                       double wanted_ha, double limit_m, double depthWeight) {
    const auto raster = gdal::readRasterFile(depthPath);
    if (!raster) {
        return std::unexpected(raster.error());
    }
    const support::KnownLake water = support::knownLake(*raster, limit_m);
    const geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    const geo::Box box = water.depth.frame().box();
    const auto outline = geo::Outline::make(std::vector{geo::Piece{{{box.west_m, box.south_m},
                                                                    {box.east_m, box.south_m},
                                                                    {box.east_m, box.north_m},
                                                                    {box.west_m, box.north_m}},
                                                                   {}}},
                                            frame);
    const auto bands =
        contours::Bands::make({units::Depth::metres(2.0)}, units::Depth::metres(limit_m));
    if (!outline || !bands) {
        return std::unexpected(outline ? bands.error() : outline.error());
    }
    sections::SectionSettings settings;
    settings.wantedArea = units::Area::hectares(wanted_ha);
    settings.depthWeight = depthWeight;
    base::Progress progress;
    const auto start = std::chrono::steady_clock::now();
    const auto map = sections::divideWater({.depth = water.depth,
                                            .mask = water.mask,
                                            .outline = *outline,
                                            .frame = frame,
                                            .bands = *bands},
                                           settings, progress);
    if (!map) {
        return std::unexpected(map.error());
    }
    const double took_s =
        std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    const sections::DivisionReport& r = map->report;
    fmt::print("{} sections in {:.3f} s, depth weight {}, compactness {:.3f} ({:.3f} straight), "
               "explained {:.3f} ({:.3f} straight)\n",
               map->sections.size(), took_s, r.depthWeight, r.compactness, r.straightCompactness,
               r.explained, r.straightExplained);
    tellPeer(*map, water);
    tellSizes(*map, water, settings.wantedArea.inSquareMetres(), *bands);
    std::vector<float> labels(map->sectionOfCell.size(), NAN);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        if (map->sectionOfCell[i] != sections::noSection) {
            labels[i] = static_cast<float>(map->sectionOfCell[i]);
        }
    }
    const grid::GridFrame& f = map->sectionOfCell.frame();
    return gdal::writeRasterFile(labelsPath, {f.west_m(), f.north_m(), f.cell_m(), f.cols(),
                                              f.rows(), labels, -9999.0F, raster->wkt, "section"});
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::fputs(
            "usage: bench_sections DEPTH.tif LABELS.tif [HECTARES [LIMIT_M [DEPTH_WEIGHT]]]\n",
            stderr);
        return 2;
    }
    try {
        const auto done =
            run(argv[1], argv[2], argc > 3 ? std::stod(argv[3]) : 4.0,
                argc > 4 ? std::stod(argv[4]) : 9.144, argc > 5 ? std::stod(argv[5]) : 1.0);
        if (!done) {
            fmt::print(stderr, "{}\n", done.error().sentence());
            return 1;
        }
    } catch (const std::exception& e) {
        std::fprintf(stderr, "%s\n", e.what());
        return 1;
    }
    return 0;
}
