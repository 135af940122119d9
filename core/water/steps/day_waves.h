// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/depth_grid.h"
#include "core/logbook/conditions.h"
#include "core/marks/factor_values.h"
#include "core/marks/winds_of_day.h"

#include <map>
#include <optional>
#include <utility>
#include <vector>

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

/// The same of a day whose wind may turn. Refers to its water, which must outlive it.
class WavesOfWinds {
public:
    WavesOfWinds(const geo::Outline& outline, const grid::DepthGrid& today,
                 const marks::ExpectedDay& day);

    /// False where one of the winds could not raise such waves anywhere.
    [[nodiscard]] bool mayExceed(units::Length height) const;
    /// True where one of the winds raises any.
    [[nodiscard]] bool areAny() const;
    /// The heights in each; nothing for a wind whose speed nobody said.
    [[nodiscard]] marks::WavesOfDay near(geo::WaterPoint place);
    /// In the calmest of the winds.
    [[nodiscard]] units::Length lowestNear(geo::WaterPoint place);

private:
    std::vector<marks::WindOfHours> winds_;
    std::vector<DayWaves> ofEach_;
};

} // namespace water
