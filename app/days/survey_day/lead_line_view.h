// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"
#include "core/soundings/lead_line.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace days::survey_day {

/// "not felt", "soft", "gravel", "rock", "weed": in this order in the list to choose from.
[[nodiscard]] QStringList bottomNames();
[[nodiscard]] std::optional<soundings::Bottom> bottomAt(int row);
[[nodiscard]] int rowOf(std::optional<soundings::Bottom> bottom);

/// The soundings by lead line.
struct LeadLineView {
    std::vector<QStringList> rows; ///< Depth, bottom, place.
    QString about; ///< From where the depths count: "Depths count from chart level..."
};

[[nodiscard]] LeadLineView leadLineViewOf(const ViewInput& input);

/// Depth below chart level of a lead that ran out `shown` while the gauge read `level`; as it is
/// where nobody read it.
[[nodiscard]] units::Depth belowChartLevel(units::Depth shown,
                                           std::optional<units::WaterLevel> level,
                                           units::WaterLevel chartLevel);

} // namespace days::survey_day
