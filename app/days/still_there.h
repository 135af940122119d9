// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"

#include <optional>

namespace days {

// What was chosen goes on being chosen where it is still there.

/// The mark of the new plan that is where the chosen one of the old plan was; without one, the
/// best.
[[nodiscard]] std::optional<int> markStillThere(const chart::ChartContent& before,
                                                const water::PlannedDay* now);

/// The section of the new map that lies where the chosen one of the old map has its middle.
[[nodiscard]] std::optional<int> sectionStillThere(const chart::ChartContent& before,
                                                   const sections::SectionMap* now);

} // namespace days
