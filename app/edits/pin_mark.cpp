// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/pin_mark.h"

#include "app/edits/change_water.h"

#include <algorithm>

namespace edits {

void pinMark(open_water::OpenWater& open, geo::LonLat from, const water::PinnedMark& mark) {
    change(open, QObject::tr("Keep mark"), {water::Part::plan}, [&](water::Water& water) {
        const auto known = std::ranges::find(water.pinnedMarks, from, &water::PinnedMark::place);
        if (known == water.pinnedMarks.end()) {
            water.pinnedMarks.push_back(mark);
        } else {
            *known = mark;
        }
    });
}

} // namespace edits
