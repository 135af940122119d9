// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_facts.h"

#include "app/edits/change_water.h"

namespace edits {

void changeFacts(open_water::OpenWater& open, const QString& name,
                 const std::function<void(water::Water&)>& changeThem) {
    change(open, name, {water::Part::facts, water::Part::plan}, changeThem);
}

} // namespace edits
