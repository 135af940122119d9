// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/stay.h"
#include "core/units/moment.h"

#include <map>
#include <set>
#include <span>
#include <string>

namespace logbook {

/// What stays come to, which stand one after another in a log that is in order: by month, and as a
/// whole. Sums of neighbours can be put together, so that of a long log only what changed need be
/// summed again.
struct LogSum {
    struct Month {
        std::size_t trips = 0;
        std::size_t stays = 0;
        std::size_t blanks = 0;
        std::size_t fish = 0;
        friend bool operator==(const Month&, const Month&) = default;
    };
    std::map<std::chrono::year_month, Month> months;
    std::set<std::string> species; ///< Of landed fish, where it was noted.
    units::Day first{};            ///< With a trip; says nothing where there is no month.
    units::Day last{};
    friend bool operator==(const LogSum&, const LogSum&) = default;

    [[nodiscard]] static LogSum of(std::span<const Stay> stays, const units::Clock& clock);
    /// Takes in the stays that follow. A trip that lies in both is one.
    void add(const LogSum& next);
    /// Of all months.
    [[nodiscard]] Month whole() const;
};

} // namespace logbook
