// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"

namespace support {

/// Tomorrow on the star water of which no two figures are alike, so that one printed for another
/// shows: level below the chart's, clock an hour off UTC, a pinned mark, one of a section, one that
/// is left out; depths, ropes and stop knots all different; cautions of day, marks and anchors.
[[nodiscard]] water::PlannedDay dayToRead();
/// All of it, to be shown in these units.
[[nodiscard]] chart::ChartContent contentToRead(preferences::UnitSystem units);

/// Figures as the tests write them, on their own: nothing of the program's wording is used.
class Said {
public:
    explicit Said(preferences::UnitSystem units)
        : isMetric_(units == preferences::UnitSystem::metric) {}

    [[nodiscard]] QString depth(units::Depth depth) const;    ///< "5.4 m", "17.7 ft"
    [[nodiscard]] QString length(units::Length length) const; ///< "18.3 m", "60 ft", "1.2 km"
    [[nodiscard]] static QString bearing(units::Bearing bearing);
    [[nodiscard]] static QString place(geo::LonLat place);
    [[nodiscard]] QString either(const char* metric, const char* imperial) const {
        return QString::fromUtf8(isMetric_ ? metric : imperial);
    }

private:
    bool isMetric_;
};

} // namespace support
