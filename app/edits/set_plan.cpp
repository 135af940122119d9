// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/set_plan.h"

#include "app/edits/change_water.h"

namespace edits {

void setPlan(open_water::OpenWater& open, const QString& name,
             const std::function<void(marks::Plan&)>& changePlan) {
    change(open, name, {water::Part::plan}, [&](water::Water& water) { changePlan(water.plan); });
}

} // namespace edits
