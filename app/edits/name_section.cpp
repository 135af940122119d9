// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/name_section.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/sections.h"

namespace edits {

void nameSection(open_water::OpenWater& open, sections::SectionNumber section,
                 const QString& name) {
    act(open, wording::Tongue::tr("Name section"), [&](const water::Water& water) {
        return acts::nameSection(water, open.derived(), section, name.trimmed().toStdString());
    });
}

} // namespace edits
