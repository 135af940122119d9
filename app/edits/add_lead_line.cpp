// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_lead_line.h"

#include "app/edits/change_water.h"

#include <algorithm>

namespace edits {

void addLeadLine(open_water::OpenWater& open, std::vector<soundings::LeadLineSounding> soundings) {
    std::int64_t id = water::freshId(*open.water());
    change(open, QObject::tr("Bring in lead line"), {water::Part::leadLine},
           [&](water::Water& water) {
               for (soundings::LeadLineSounding& sounding : soundings) {
                   sounding.id = {};
                   const bool isKnown = std::ranges::any_of(
                       water.leadLine, [&sounding](soundings::LeadLineSounding other) {
                           other.id = {};
                           return other == sounding;
                       });
                   if (!isKnown) {
                       sounding.id = soundings::LeadLineId(id++);
                       water.leadLine.edit().push_back(sounding);
                   }
               }
           });
}

} // namespace edits
