// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/take_sheet.h"

#include "core/acts/boat_sheets.h"
#include "core/water/document/swap_parts.h"

namespace edits {

void takeSheet(open_water::OpenWater& open, const water::BoatSheet& sheet) {
    const auto before = open.water();
    const auto after = acts::takeSheet(*before, sheet);
    if (!after) {
        emit open.failed(after.error());
        return;
    }
    const std::vector<water::Part> touched = water::differingParts(*before, *after);
    if (!touched.empty()) {
        water::Water kept = water::copyOfParts(*after, touched);
        open.swapParts(kept, touched);
    }
}

} // namespace edits
