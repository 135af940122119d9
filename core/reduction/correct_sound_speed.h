// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/sound_speed.h"
#include "core/soundings/sounder.h"
#include "core/units/temperature.h"

#include <optional>

namespace reduction {

/// Factor for depths below the transducer: c(water) / assumed; 1 where the temperature is unknown
/// or the depth was not measured by sound.
[[nodiscard]] double soundSpeedFactor(const soundings::Sounder& sounder,
                                      std::optional<units::Temperature> water);

} // namespace reduction
