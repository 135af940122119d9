// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_frame.h"
#include "core/soundings/survey_day.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace support {

/// What was done to a sounding; `unseen` where it shows what it would have shown anyway.
enum class Planted : std::uint8_t { nothing, spike, dropOut, doubleEcho, stuck, jump, unseen };

[[nodiscard]] std::string_view nameOf(Planted fault);

/// How many faults to plant.
struct FaultWish {
    double spikeShare = 0.01; ///< Of all soundings, each alone.
    double dropOuts = 1.0;    ///< Stretches per thousand soundings: no echo, shown as 0.
    double doubleEchoes = 0.7;
    double stuck = 0.3; ///< Stretches where the figure stood still while the bottom went on.
    double jumps = 0.4; ///< Stretches whose position is off by 70 to 300 m.
};

/// Plants faults into a clean day. A fault that nobody could see is none: a spike is off by a metre
/// and by a fifth of the depth at least, echoes double where it is deeper than 1.2 m, and the
/// bottom moves by 1.5 m while a figure is stuck. \return for each sounding what was done to it.
/// Same seed, same faults, on every platform.
[[nodiscard]] std::vector<Planted> plantFaults(soundings::SurveyDay& day,
                                               const geo::WaterFrame& frame, const FaultWish& wish,
                                               std::uint32_t seed);

} // namespace support
