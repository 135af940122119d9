// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/machine_clock.h"

namespace open_water {

units::Clock machineClock(const QByteArray& zone) {
    return units::Clock::inZone(zone.toStdString()).value_or(units::Clock());
}

} // namespace open_water
