// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/remove_lead_line.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/notes.h"

namespace edits {

void removeLeadLine(open_water::OpenWater& open, soundings::LeadLineId id) {
    act(open, wording::Tongue::tr("Remove sounding by lead line"),
        [&](const water::Water& water) { return acts::removeLeadLine(water, id); });
}

} // namespace edits
