// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/set_plan.h"

#include "app/edits/change_water.h"
#include "core/acts/plan.h"

namespace edits {

void setPlan(open_water::OpenWater& open, const QString& name,
             const std::function<void(marks::Plan&)>& changePlan, Gesture gesture) {
    act(
        open, name,
        [&](const water::Water& water) {
            marks::Plan plan = water.plan;
            changePlan(plan);
            return acts::setPlan(water, plan);
        },
        gesture);
}

} // namespace edits
