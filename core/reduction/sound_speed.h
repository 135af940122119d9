// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/speed.h"
#include "core/units/temperature.h"

namespace reduction {

/// Speed of sound in fresh water at the surface. Domain 0 to 95 C; outside it, the nearest end is
/// taken. Source: W. Marczak 1997, J. Acoust. Soc. Am. 102, 2776 (accuracy 0.02 m/s). 20 m of water
/// add 0.3 m/s, which is left out.
[[nodiscard]] units::Speed soundSpeedIn(units::Temperature water);

} // namespace reduction
