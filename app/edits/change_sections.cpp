// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_sections.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/sections.h"

namespace edits {

base::Result<void> joinSections(open_water::OpenWater& open, geo::WaterPoint a, geo::WaterPoint b) {
    return tryAct(open, wording::Tongue::tr("Join sections"), [&](const water::Water& water) {
        return acts::joinSections(water, open.derived(), a, b);
    });
}

base::Result<void> splitSection(open_water::OpenWater& open, const geo::Path& line) {
    return tryAct(open, wording::Tongue::tr("Split section"), [&](const water::Water& water) {
        return acts::splitSection(water, open.derived(), line);
    });
}

base::Result<void> moveBorder(open_water::OpenWater& open, geo::WaterPoint a, geo::WaterPoint b,
                              const geo::Path& line) {
    return tryAct(open, wording::Tongue::tr("Move border"), [&](const water::Water& water) {
        return acts::moveBorder(water, open.derived(), a, b, line);
    });
}

void takeBackSectionChange(open_water::OpenWater& open) {
    act(open, wording::Tongue::tr("Take back change of sections"), acts::takeBackSectionChange);
}

void takeBackSectionChanges(open_water::OpenWater& open) {
    act(open, wording::Tongue::tr("Take back all changes of sections"),
        acts::takeBackSectionChanges);
}

} // namespace edits
