// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/survey_day.h"
#include "core/units/level.h"
#include "core/units/speed.h"

#include <optional>
#include <vector>

namespace reduction {

/// What all days of a survey are brought to.
struct ReductionSettings {
    /// The gauge reading that stored depths refer to. Absent: that of the first day with a gauge;
    /// no level correction where no day has one.
    std::optional<units::WaterLevel> chartLevel;
    /// Added to the depths of each day, one for each day, from tieDays; empty for none. Positive is
    /// deeper.
    std::vector<units::Length> dayOffsets;
};

/// How one reduced depth came about, as a sum: shown + soundSpeed + draft + level + dayOffset =
/// reduced, to the last digit.
struct ReductionTerms {
    units::Depth shown;
    units::Length soundSpeed; ///< shown x (c / assumed - 1); zero without a water temperature.
    units::Length draft;      ///< Surface to transducer.
    units::Length level;      ///< Minus what the water stood above chart level.
    units::Length dayOffset;  ///< From the crossings with other days.
    units::Depth reduced;     ///< Below chart level.
};

/// The chart level that these settings come to: theirs, or the first known gauge's.
[[nodiscard]] std::optional<units::WaterLevel>
chartLevelOf(const std::vector<soundings::SurveyDay>& days, const ReductionSettings& settings);

/// The terms of one sounding. \param day, sounding: positions, in range. Order of reduction:
/// methods.md and NOAA Field Procedures Manual 1.5.4 (draft and sound speed before level).
[[nodiscard]] ReductionTerms termsOf(const std::vector<soundings::SurveyDay>& days, std::size_t day,
                                     std::size_t sounding, const ReductionSettings& settings);

} // namespace reduction
