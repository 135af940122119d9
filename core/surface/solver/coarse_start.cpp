// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/coarse_start.h"

namespace surface::solver {

Field laidOn(const Ground& fine, const Ground& coarse, const Field& values,
             const Field& elsewhere) {
    Field laid = elsewhere;
    constexpr int pad = ActiveCells::padding;
    for (const ActiveCells::Run& run : fine.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            const geo::WaterPoint middle = fine.frame().centre({col - pad, run.row - pad});
            if (const auto at = footprintOf(coarse.cells, coarse.frame(), middle)) {
                laid[fine.cells.place(col, run.row)] = at->of(values);
            }
        }
    }
    return laid;
}

base::Result<Bottom> coarseStart(const geo::Outline& outline, units::Length coarseCell,
                                 const Ground& fine, const TrendGround& trendGround,
                                 const Field& trend, const Field& fineTrend,
                                 std::span<const soundings::KeptSounding> soundings,
                                 std::span<const std::size_t> positions,
                                 const BottomSettings& settings, const base::Progress& progress) {
    const auto coarse = groundOf(outline, coarseCell, settings.threads, progress);
    if (!coarse) {
        return std::unexpected(coarse.error());
    }
    BottomDrawer drawer(coarse->cells, shorePullsOf(outline, coarse->cells, coarse->frame()),
                        settings.threads);
    const Bottom drawn = drawer.draw(trendGround.onto(*coarse, trend),
                                     mergedSamplesOf(*coarse, soundings, positions), settings,
                                     std::nullopt, progress);
    if (drawn.wasStopped) {
        return std::unexpected(base::cancelled());
    }
    Bottom start;
    start.depth_m = laidOn(fine, *coarse, drawn.depth_m, fineTrend);
    start.lay = layOf(fine.cells, start.depth_m, firstBlur_m(settings), settings.threads);
    return start;
}

} // namespace surface::solver
