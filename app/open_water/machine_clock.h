// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/moment.h"

#include <QByteArray>
#include <QTimeZone>

namespace open_water {

/// The clock that a new water begins with, until its angler says otherwise: that of this machine.
/// UTC where the machine does not know its zone, or core does not know that one.
[[nodiscard]] units::Clock machineClock(const QByteArray& zone = QTimeZone::systemTimeZoneId());

} // namespace open_water
