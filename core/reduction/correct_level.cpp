// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/correct_level.h"

namespace reduction {

units::Length levelCorrection(const soundings::Gauge& gauge, std::optional<units::Moment> time,
                              std::optional<units::WaterLevel> chartLevel) {
    const auto level = gauge.levelAt(time);
    if (!level || !chartLevel) {
        return {};
    }
    return *chartLevel - *level;
}

} // namespace reduction
