// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/bearing.h"
#include "core/units/level.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"

#include <optional>
#include <string>

namespace logbook {

/// Wind, named by where it comes from, as far as it is known.
struct Wind {
    std::optional<units::Bearing> from; ///< Nothing: nobody said, or it is variable.
    std::optional<units::Speed> speed;  ///< Nothing: nobody said. 0 is a calm.
    friend bool operator==(const Wind&, const Wind&) = default;
};

/// What was true on the water during a stay.
struct Conditions {
    std::optional<units::Bearing> windFrom;
    std::optional<units::Speed> windSpeed;
    std::optional<units::Temperature> waterTemperature;
    std::optional<units::WaterLevel> level; ///< As read on the gauge.
    std::string sky;                        ///< In the angler's words: "overcast"; empty: unknown.
    friend bool operator==(const Conditions&, const Conditions&) = default;
};

} // namespace logbook
