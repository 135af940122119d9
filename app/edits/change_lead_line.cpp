// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_lead_line.h"

#include "app/edits/change_water.h"

#include <algorithm>

namespace edits {

void changeLeadLine(open_water::OpenWater& open, const soundings::LeadLineSounding& sounding) {
    change(open, QObject::tr("Change sounding by lead line"), {water::Part::leadLine},
           [&sounding](water::Water& water) {
               const auto at =
                   std::ranges::find(water.leadLine, sounding.id, &soundings::LeadLineSounding::id);
               if (at != water.leadLine.end()) {
                   *at = sounding;
               }
           });
}

} // namespace edits
