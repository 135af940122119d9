// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/ground.h"

#include "core/surface/solver/parallel_for.h"

#include <fmt/format.h>

namespace surface::solver {

namespace {

constexpr std::size_t mostActiveCells = 6'000'000;

/// Of each active cell's centre, land or not. Ended early where the user stops it.
Field distancesToShore_m(const Ground& ground, const geo::Outline& outline, int threads,
                         const base::Progress& progress) {
    Field shore_m(ground.cells.places(), 0.0);
    const std::vector<ActiveCells::Run>& runs = ground.cells.runs();
    parallelFor(threads, runs.size(), 100, [&](std::size_t first, std::size_t last) {
        for (std::size_t k = first; k < last && !progress.stopAsked(); ++k) {
            const ActiveCells::Run& run = runs[k];
            for (int col = run.begin; col < run.end; ++col) {
                const geo::WaterPoint centre = ground.frame().centre(
                    {col - ActiveCells::padding, run.row - ActiveCells::padding});
                shore_m[ground.cells.place(col, run.row)] = outline.distanceToShore_m(centre);
            }
        }
    });
    return shore_m;
}

} // namespace

base::Result<Ground> groundOf(const geo::Outline& outline, units::Length cell, int threads,
                              const base::Progress& progress) {
    const double wanted = outline.area().inSquareMetres() / (cell.inMetres() * cell.inMetres());
    if (wanted > static_cast<double>(mostActiveCells)) {
        return base::fail(base::ErrorKind::wrongUse,
                          fmt::format("cells of {} m would need {:.0f} million of them, more than "
                                      "the {} million that can be drawn",
                                      cell.inMetres(), wanted / 1e6, mostActiveCells / 1'000'000),
                          "cell size", "choose a larger cell, or none to have it chosen");
    }
    const base::Result<grid::GridFrame> frame = grid::GridFrame::covering(outline.box(), cell);
    if (!frame) {
        return std::unexpected(frame.error());
    }
    Ground ground;
    ground.mask = grid::Mask::of(outline, *frame);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    ground.cells = ActiveCells::of(ground.mask);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    ground.shore_m = distancesToShore_m(ground, outline, threads, progress);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    for (int row = 0; row < frame->rows(); ++row) {
        const std::vector<double> xs = outline.crossingsAt(frame->centre({0, row}).y_m);
        std::size_t crossed = 0;
        for (int col = 0; col < frame->cols(); ++col) {
            while (crossed < xs.size() && xs[crossed] < frame->centre({col, row}).x_m) {
                ++crossed;
            }
            if (crossed % 2 == 0) {
                double& shore_m = ground.shore_m[ground.cells.place(col + ActiveCells::padding,
                                                                    row + ActiveCells::padding)];
                shore_m = -shore_m;
            }
        }
    }
    return ground;
}

std::vector<Sample> samplesOf(const Ground& ground,
                              std::span<const soundings::KeptSounding> soundings,
                              std::span<const std::size_t> positions) {
    std::vector<Sample> samples;
    samples.reserve(positions.size());
    for (const std::size_t i : positions) {
        const geo::WaterPoint point{soundings[i].x_m, soundings[i].y_m};
        if (const auto at = footprintOf(ground.cells, ground.frame(), point)) {
            samples.push_back({*at, point, soundings[i].depth_m});
        }
    }
    return samples;
}

std::vector<Sample> mergedSamplesOf(const Ground& ground,
                                    std::span<const soundings::KeptSounding> soundings,
                                    std::span<const std::size_t> positions) {
    const double within_m = 0.25 * ground.frame().cell_m();
    std::vector<Sample> samples;
    geo::WaterPoint first; // of those in the making
    int pass = 0;
    for (const std::size_t i : positions) {
        const geo::WaterPoint point{soundings[i].x_m, soundings[i].y_m};
        const auto at = footprintOf(ground.cells, ground.frame(), point);
        if (!at) {
            continue;
        }
        if (samples.empty() || soundings[i].pass != pass ||
            geo::distance_m(first, point) > within_m) {
            samples.push_back({*at, point, soundings[i].depth_m, 1.0});
            first = point;
            pass = soundings[i].pass;
            continue;
        }
        Sample& mean = samples.back();
        mean.soundings += 1.0;
        mean.point.x_m += (point.x_m - mean.point.x_m) / mean.soundings;
        mean.point.y_m += (point.y_m - mean.point.y_m) / mean.soundings;
        mean.depth_m += (soundings[i].depth_m - mean.depth_m) / mean.soundings;
        mean.at = footprintOf(ground.cells, ground.frame(), mean.point).value_or(*at);
    }
    samples.shrink_to_fit();
    return samples;
}

} // namespace surface::solver
