// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/readers/soundings_file.h"
#include "core/units/depth.h"
#include "core/units/level.h"
#include "core/units/moment.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"

#include <optional>
#include <string>
#include <vector>

namespace readers {

struct PlaceFact {
    std::string name;
    geo::LonLat place;
    friend bool operator==(const PlaceFact&, const PlaceFact&) = default;
};

/// What is known of a water besides its soundings.
struct WaterFacts {
    std::string name;
    bool isInvented = false;
    units::Clock clock;
    std::optional<units::WaterLevel> chartLevel;
    std::optional<units::Depth> secchi;
    std::optional<geo::LonLat> launch;
    std::vector<PlaceFact> places;
};

/// What was true on one day of soundings, and in which file they are.
struct SurveyDayFacts {
    std::string day;  ///< "2026-09-05".
    std::string file; ///< Beside the table.
    std::optional<units::WaterLevel> level;
    std::optional<units::Temperature> waterTemperature;
    std::optional<units::Depth> draft;
    std::optional<units::Speed> assumedSoundSpeed;
    std::optional<DepthUnit> unit;
};

} // namespace readers
