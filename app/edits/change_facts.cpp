// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_facts.h"

#include "app/edits/change_water.h"
#include "core/acts/facts.h"

namespace edits {

void changeFacts(open_water::OpenWater& open, const QString& name,
                 const std::function<void(water::Water&)>& changeThem) {
    act(open, name,
        [&](const water::Water& water) { return acts::changeFacts(water, changeThem); });
}

} // namespace edits
