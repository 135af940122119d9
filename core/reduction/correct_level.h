// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/gauge.h"
#include "core/units/length.h"
#include "core/units/level.h"

#include <optional>

namespace reduction {

/// What to add to a depth below the day's surface to get the depth below chart level: minus the
/// height of the water above chart level; zero where either is unknown.
[[nodiscard]] units::Length levelCorrection(const soundings::Gauge& gauge,
                                            std::optional<units::Moment> time,
                                            std::optional<units::WaterLevel> chartLevel);

} // namespace reduction
