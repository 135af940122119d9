// SPDX-License-Identifier: GPL-3.0-or-later
// expects: no match for 'operator\+' \(operand types are 'units::WaterLevel' and
// 'units::WaterLevel'\)
#include "core/units/level.h"

units::Length rise(units::WaterLevel friday, units::WaterLevel monday) {
#ifdef MEREMARK_BREACH
    return monday + friday;
#else
    return monday - friday;
#endif
}
