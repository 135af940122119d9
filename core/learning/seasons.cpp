// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/seasons.h"

#include <algorithm>

namespace learning {

namespace {

constexpr std::chrono::days rest(60);
constexpr std::chrono::days year(365);
constexpr int newestSlot = 3;

} // namespace

Seasons::Seasons(std::vector<units::Day> days) {
    std::ranges::sort(days);
    std::chrono::sys_days last;
    for (const std::chrono::sys_days day : days) {
        if (firstDays_.empty() || day - last >= rest || day - firstDays_.back() >= year) {
            firstDays_.push_back(day);
        }
        last = day;
    }
}

int Seasons::slotOf(units::Day day) const {
    const auto after = std::ranges::upper_bound(firstDays_, std::chrono::sys_days(day));
    const auto newer = static_cast<int>(firstDays_.end() - after);
    return std::max(0, newestSlot - newer);
}

} // namespace learning
