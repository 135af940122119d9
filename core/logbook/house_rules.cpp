// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/house_rules.h"

namespace logbook {

bool Season::holds(units::Day day) const {
    const std::chrono::month_day here(day.month(), day.day());
    return first <= last ? first <= here && here <= last : here >= first || here <= last;
}

} // namespace logbook
