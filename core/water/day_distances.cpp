// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/day_distances.h"

#include "core/grid/distance_field.h"
#include "core/water/closed_cells.h"

#include <algorithm>
#include <cmath>

namespace water {

namespace {

/// The cells that the boat may go through.
base::Result<grid::Mask> openWater(const Water& water, const geo::Outline& outline,
                                   const grid::GridFrame& frame) {
    const auto closed = closedCells(water, frame);
    if (!closed) {
        return std::unexpected(closed.error());
    }
    grid::Grid<std::uint8_t> open = grid::Mask::of(outline, frame).active();
    for (std::size_t i = 0; i < open.size(); ++i) {
        open[i] = (*closed)[i] != 0 ? 0 : open[i];
    }
    return grid::Mask::from(open);
}

} // namespace

base::Result<DayDistances> dayDistances(const Water& water, const geo::Outline& outline,
                                        const std::vector<geo::WaterPoint>& places,
                                        std::optional<geo::WaterPoint> launch) {
    const double breadth_m = std::max(outline.box().width_m(), outline.box().height_m());
    const auto frame = grid::GridFrame::covering(
        outline.box(), units::Length::metres(std::max(5.0, breadth_m / 400.0)));
    if (!frame) {
        return std::unexpected(frame.error());
    }
    const auto open = openWater(water, outline, *frame);
    if (!open) {
        return std::unexpected(open.error());
    }
    const grid::Mask& mask = *open;
    DayDistances out;
    std::vector<grid::Cell> cells;
    std::transform(places.begin(), places.end(), std::back_inserter(cells), [&](geo::WaterPoint p) {
        return mask.nearestActive(p).value_or(grid::Cell{-1, -1});
    });
    const auto distancesFrom = [&](grid::Cell from) {
        const auto field = grid::distanceOverWater_m(mask, std::array{from});
        std::vector<double> distances;
        std::transform(cells.begin(), cells.end(), std::back_inserter(distances),
                       [&](grid::Cell c) {
                           return mask.isActive(c) ? static_cast<double>(field[c]) : HUGE_VAL;
                       });
        return distances;
    };
    for (const grid::Cell cell : cells) {
        out.between_m.push_back(distancesFrom(cell));
    }
    // The two ways differ by rounding on the cells; the order of the day wants one figure.
    for (std::size_t i = 0; i < cells.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            const double mean_m = 0.5 * (out.between_m[i][j] + out.between_m[j][i]);
            out.between_m[i][j] = out.between_m[j][i] = mean_m;
        }
        out.between_m[i][i] = 0.0;
    }
    if (launch) {
        out.fromLaunch_m = distancesFrom(mask.nearestActive(*launch).value_or(grid::Cell{-1, -1}));
    }
    return out;
}

} // namespace water
