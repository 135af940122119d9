// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/name_section.h"

#include "app/edits/change_water.h"

namespace edits {

void nameSection(open_water::OpenWater& open, sections::SectionNumber section,
                 const QString& name) {
    const auto map = open.derived().sections;
    const auto frame = open.water()->frame;
    if (!map || !frame || section < 0 ||
        static_cast<std::size_t>(section) >= map->sections.size()) {
        return;
    }
    const geo::LonLat seed =
        frame->toEarth(map->sections[static_cast<std::size_t>(section)].middle);
    change(open, QObject::tr("Name section"), {water::Part::sections}, [&](water::Water& water) {
        std::erase_if(water.sectionNames, [&](const sections::SectionName& known) {
            return sections::sectionAt(*map, frame->toWater(known.seed)) == section;
        });
        if (!name.trimmed().isEmpty()) {
            water.sectionNames.push_back({seed, name.trimmed().toStdString()});
        }
    });
}

} // namespace edits
