// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/remove_lead_line.h"

#include "app/edits/change_water.h"

namespace edits {

void removeLeadLine(open_water::OpenWater& open, soundings::LeadLineId id) {
    change(open, QObject::tr("Remove sounding by lead line"), {water::Part::leadLine},
           [id](water::Water& water) {
               std::erase_if(water.leadLine.edit(), [id](const auto& one) { return one.id == id; });
           });
}

} // namespace edits
