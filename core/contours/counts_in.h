// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/depth.h"

namespace contours {

/// What depths are counted in, so that steps are round.
enum class CountsIn { metres, feet };

/// The deepest depth worth fishing where nobody says another: 9 m, or 30 ft (common practice, no
/// source).
[[nodiscard]] inline units::Depth usualLimit(CountsIn unit) {
    return unit == CountsIn::feet ? units::Depth::feet(30.0) : units::Depth::metres(9.0);
}

} // namespace contours
