// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/moment.h"

#include <vector>

namespace learning {

/// The seasons of a log: fish move from one to the next. A new one begins after sixty days without
/// a trip, and a year after the last began (ours).
class Seasons {
public:
    /// \param days of trips, in any order, and the day that is planned.
    explicit Seasons(std::vector<units::Day> days);

    /// Slot of a day that was given: the newest four seasons have one each, 3 the newest; all older
    /// ones share 0.
    [[nodiscard]] int slotOf(units::Day day) const;

private:
    std::vector<std::chrono::sys_days> firstDays_; ///< Of each season, ascending.
};

} // namespace learning
