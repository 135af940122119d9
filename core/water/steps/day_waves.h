// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/depth_grid.h"
#include "core/logbook/conditions.h"
#include "core/marks/factor_values.h"

#include <map>
#include <optional>
#include <utility>

namespace water {

/// How a place lies to a wind.
struct Exposure {
    /// Where the wind comes from. Where nobody knows that, the side that would raise the highest
    /// waves, or, where its speed is not known either, that with the longest effective fetch.
    units::Bearing side;
    /// From that side: effective fetch, and height by the mean depth on the way upwind. Nothing
    /// where nobody said how strong the wind is.
    std::optional<marks::WaveState> waves;
};

[[nodiscard]] Exposure exposureAt(const geo::Outline& outline, const grid::DepthGrid& today,
                                  geo::WaterPoint place, const logbook::Wind& wind);

/// The waves of one day where thousands of places ask for them: worked out once for each square of
/// 40 m that is asked for. Refers to its water, which must outlive it.
class DayWaves {
public:
    DayWaves(const geo::Outline& outline, const grid::DepthGrid& today, const logbook::Wind& wind)
        : outline_(outline), today_(today), wind_(wind) {}

    /// False where not even the longest way over this water could raise such waves, or where
    /// nobody said how strong the wind is.
    [[nodiscard]] bool mayExceed(units::Length height) const;
    /// Significant height in the middle of the place's square, or at the place where that middle is
    /// not on the water; nought where nobody said how strong the wind is.
    [[nodiscard]] units::Length heightNear(geo::WaterPoint place);

private:
    [[nodiscard]] units::Length heightAt(geo::WaterPoint place) const;

    const geo::Outline& outline_;
    const grid::DepthGrid& today_;
    logbook::Wind wind_;
    std::map<std::pair<int, int>, units::Length> known_;
};

} // namespace water
