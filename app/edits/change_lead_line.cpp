// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_lead_line.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/notes.h"

namespace edits {

void changeLeadLine(open_water::OpenWater& open, const soundings::LeadLineSounding& sounding) {
    act(open, wording::Tongue::tr("Change sounding by lead line"),
        [&](const water::Water& water) { return acts::changeLeadLine(water, sounding); });
}

} // namespace edits
