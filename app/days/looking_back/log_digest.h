// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/kept_log.h"
#include "core/logbook/log_sum.h"
#include "core/units/moment.h"

namespace days::looking_back {

/// What the log comes to, by the water's clock. Of the log asked about last only what has changed
/// since is summed again. For the window's thread alone; holds until it is asked again.
[[nodiscard]] const logbook::LogSum& sumOf(const logbook::KeptLog& log, const units::Clock& clock);

} // namespace days::looking_back
