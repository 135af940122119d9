// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/day_distances.h"

#include "core/grid/distance_field.h"
#include "core/grid/water_way.h"
#include "core/water/steps/closed_cells.h"

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

/// Shortest ways over water, straight where one place sees the other.
class Ways {
public:
    explicit Ways(const grid::Mask& mask) : mask_(mask) {}

    /// \return its number, for between_m(); whatever does not lie in open water counts from the
    /// nearest.
    std::size_t take(geo::WaterPoint place) {
        const grid::GridFrame& frame = mask_.frame();
        const grid::Cell here = frame.cellOf(place);
        const grid::Cell cell =
            mask_.isActive(here) ? here : mask_.nearestActive(place).value_or(grid::Cell{-1, -1});
        ends_.push_back({cell, cell == here ? place : frame.centre(cell), std::nullopt});
        return ends_.size() - 1;
    }

    [[nodiscard]] double between_m(std::size_t a, std::size_t b) {
        if (!mask_.isActive(ends_[a].cell) || !mask_.isActive(ends_[b].cell)) {
            return HUGE_VAL;
        }
        if (grid::isStraightWay(mask_, ends_[a].at, ends_[b].at)) {
            return geo::distance_m(ends_[a].at, ends_[b].at);
        }
        std::optional<grid::Grid<float>>& field = ends_[a].field;
        if (!field) {
            field = grid::distanceOverWater_m(mask_, std::array{ends_[a].cell});
        }
        return static_cast<double>((*field)[ends_[b].cell]);
    }

private:
    struct End {
        grid::Cell cell;
        geo::WaterPoint at;
        std::optional<grid::Grid<float>> field; ///< Once a way round something was asked for.
    };

    const grid::Mask& mask_;
    std::vector<End> ends_;
};

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
    DayDistances out;
    Ways ways(*open);
    for (const geo::WaterPoint place : places) {
        ways.take(place);
    }
    // One figure for there and back: the two ways differ by rounding on the cells.
    out.between_m.assign(places.size(), std::vector<double>(places.size(), 0.0));
    for (std::size_t i = 0; i < places.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            out.between_m[i][j] = out.between_m[j][i] = ways.between_m(j, i);
        }
    }
    if (launch) {
        const std::size_t from = ways.take(*launch);
        for (std::size_t i = 0; i < places.size(); ++i) {
            out.fromLaunch_m.push_back(ways.between_m(from, i));
        }
    }
    return out;
}

} // namespace water
