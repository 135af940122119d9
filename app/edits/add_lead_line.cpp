// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_lead_line.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/notes.h"

namespace edits {

void addLeadLine(open_water::OpenWater& open, std::vector<soundings::LeadLineSounding> soundings) {
    act(open, wording::Tongue::tr("Bring in lead line"),
        [&](const water::Water& water) { return acts::addLeadLine(water, std::move(soundings)); });
}

} // namespace edits
