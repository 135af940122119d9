// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/water/document/water.h"

#include <functional>

namespace edits {

/// Changes what is known of the water as a whole: name, clock, chart level, places, launch.
void changeFacts(open_water::OpenWater& open, const QString& name,
                 const std::function<void(water::Water&)>& changeThem);

} // namespace edits
