// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/contours/band.h"
#include "core/geo/outline.h"
#include "core/geo/water_frame.h"
#include "core/marks/learned_catch.h"
#include "core/marks/reason.h"
#include "core/rods/ground.h"
#include "core/sections/section.h"

#include <cstdint>
#include <functional>
#include <string>

namespace marks {

/// Everything about the water and its log that marks are proposed and ranked from. It refers to
/// what others own and keep alive. All grids lie on the frame of `ground`.
struct MarkInput {
    const geo::WaterFrame& frame;
    const geo::Outline& outline;
    /// Depth today, limit, closed water, zones and weed.
    const rods::Ground& ground;
    const contours::Bands& bands;
    const sections::SectionMap& sections;
    /// 95 % half-width of each cell's depth; NaN outside the water.
    const grid::Grid<float>& trust_m;
    /// 1 where the depth is a guess; null where nobody can say.
    const grid::Grid<std::uint8_t>* isGuess = nullptr;
    /// What the log taught; null where nothing was caught or tried yet.
    const LearnedCatch* learned = nullptr;
    /// The heights of the waves near a place, in each of the day's winds. Absent: not worked out
    /// before the ropes are.
    std::function<WavesOfDay(geo::WaterPoint)> wavesNear = {};
    /// Significant wave height of the day at a place, in the calmest of its winds. Absent: waves
    /// exclude nothing.
    std::function<units::Length(geo::WaterPoint)> waveHeightAt;
    /// What the user calls the water that he banned at a place; null where he banned none. Absent:
    /// he banned nothing.
    std::function<const std::string*(geo::WaterPoint)> bannedAt = nullptr;
};

} // namespace marks
