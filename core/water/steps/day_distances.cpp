// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/day_distances.h"

#include "core/grid/distance_field.h"
#include "core/grid/touched_cells.h"
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
    grid::Grid<std::uint8_t> open = grid::touchedCells(outline, frame);
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

    /// Works out at once what between_m() will be asked for. A field answers for all ways from one
    /// place: those with the most ways round something get one first, until every way has one.
    void prepare() {
        const std::size_t n = ends_.size();
        std::vector<std::vector<std::size_t>> round(n);
        for (std::size_t a = 0; a < n; ++a) {
            for (std::size_t b = 0; b < n; ++b) {
                if (a != b && canSail(a, b) && !isStraight(a, b)) {
                    round[a].push_back(b);
                }
            }
        }
        while (true) {
            const auto most = std::ranges::max_element(round, {}, &std::vector<std::size_t>::size);
            if (most == round.end() || most->empty()) {
                return;
            }
            const auto from = static_cast<std::size_t>(most - round.begin());
            ends_[from].field = grid::distanceOverWater_m(mask_, std::array{ends_[from].cell});
            most->clear();
            for (std::vector<std::size_t>& others : round) {
                std::erase(others, from);
            }
        }
    }

    [[nodiscard]] double between_m(std::size_t a, std::size_t b) const {
        if (!canSail(a, b)) {
            return HUGE_VAL;
        }
        if (isStraight(a, b)) {
            return geo::distance_m(ends_[a].at, ends_[b].at);
        }
        const End& from = ends_[a].field ? ends_[a] : ends_[b];
        const End& to = ends_[a].field ? ends_[b] : ends_[a];
        return static_cast<double>((*from.field)[to.cell]);
    }

private:
    struct End {
        grid::Cell cell;
        geo::WaterPoint at;
        std::optional<grid::Grid<float>> field; ///< Where ways round something begin here.
    };

    [[nodiscard]] bool canSail(std::size_t a, std::size_t b) const {
        return mask_.isActive(ends_[a].cell) && mask_.isActive(ends_[b].cell);
    }
    [[nodiscard]] bool isStraight(std::size_t a, std::size_t b) const {
        return grid::isStraightWay(mask_, ends_[a].at, ends_[b].at);
    }

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
    const std::optional<std::size_t> from =
        launch ? std::optional(ways.take(*launch)) : std::nullopt;
    ways.prepare();
    // One figure for there and back: the two ways differ by rounding on the cells.
    out.between_m.assign(places.size(), std::vector<double>(places.size(), 0.0));
    for (std::size_t i = 0; i < places.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            out.between_m[i][j] = out.between_m[j][i] = ways.between_m(j, i);
        }
    }
    for (std::size_t i = 0; from && i < places.size(); ++i) {
        out.fromLaunch_m.push_back(ways.between_m(*from, i));
    }
    return out;
}

} // namespace water
