// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/sound_speed.h"

#include <algorithm>

namespace reduction {

units::Speed soundSpeedIn(units::Temperature water) {
    const double t = std::clamp(water.inCelsius(), 0.0, 95.0);
    return units::Speed::metresPerSecond(
        1402.385 + t * (5.038813 + t * (-5.799136e-2 +
                                        t * (3.287156e-4 + t * (-1.398845e-6 + t * 2.787860e-9)))));
}

} // namespace reduction
