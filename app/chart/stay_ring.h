// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/stay.h"

#include <algorithm>
#include <cmath>

namespace chart {

/// The ring of a stay: its area grows with the rod-hours.
[[nodiscard]] inline double stayRadius(const logbook::Stay& stay, double scale) {
    return scale * std::clamp(2.0 + 1.35 * std::sqrt(std::max(stay.rodHours().value_or(0.0), 0.0)),
                              3.0, 12.0);
}

} // namespace chart
