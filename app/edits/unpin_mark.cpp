// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/unpin_mark.h"

#include "app/edits/change_water.h"

namespace edits {

void unpinMark(open_water::OpenWater& open, geo::LonLat place) {
    change(open, QObject::tr("Let mark go"), {water::Part::plan}, [&](water::Water& water) {
        std::erase_if(water.pinnedMarks,
                      [&](const water::PinnedMark& mark) { return mark.place == place; });
    });
}

} // namespace edits
