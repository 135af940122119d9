// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "core/geo/water_point.h"

#include <QString>

#include <optional>

namespace chart {

/// What there is to say of one place, as words. Empty where there is nothing to say.
struct ReadOut {
    QString depth;    ///< "5.4 m", at the level that the plan expects.
    QString trust;    ///< "±0.2 m, sounded"
    QString band;     ///< "4 to 6 m"
    QString zones;    ///< "drop-off, weed edge"
    QString section;  ///< "Long Bar"
    QString position; ///< "55.20341 N  3.11272 E"

    /// All of it in one line; "land" outside the water.
    [[nodiscard]] QString line() const;
};

[[nodiscard]] ReadOut readOutAt(const ChartContent& content, geo::WaterPoint p);

/// Today's level above chart level: that of the drawing, else what the plan expects, else none.
[[nodiscard]] units::Length riseOf(const ChartContent& content);

} // namespace chart
