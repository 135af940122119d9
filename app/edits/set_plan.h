// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/edits/change_water.h"
#include "app/open_water/open_water.h"

#include <functional>

namespace edits {

/// Changes what tomorrow's marks are asked with: the day, the boat, what matters.
/// \param name "Set wind". \param gesture edits of one gesture are undone as one.
void setPlan(open_water::OpenWater& open, const QString& name,
             const std::function<void(marks::Plan&)>& changePlan, Gesture gesture = Gesture::none);

} // namespace edits
