// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

#include <functional>

namespace edits {

/// Changes one stay of the log, its runs included; a run without an id gets a fresh one.
/// \param name "Add fish".
void changeStay(open_water::OpenWater& open, const QString& name, logbook::StayId id,
                const std::function<void(logbook::Stay&)>& changeOne);

} // namespace edits
