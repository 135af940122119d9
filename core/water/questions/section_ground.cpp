// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/section_ground.h"

#include <array>

namespace water {

std::vector<std::vector<KindShare>> groundOfSections(const Derived& derived) {
    if (!derived.structure || !derived.sections) {
        return {};
    }
    const structure::ZoneMap& zones = *derived.structure;
    std::vector<std::vector<KindShare>> grounds;
    grounds.reserve(derived.sections->sections.size());
    for (const sections::Section& section : derived.sections->sections) {
        std::array<std::size_t, structure::allZoneKinds.size()> cells{};
        for (const std::size_t cell : section.cells) {
            const structure::ZoneNumber zone =
                cell < zones.zoneOfCell.size() ? zones.zoneOfCell[cell] : structure::noZone;
            if (zone != structure::noZone) {
                ++cells[static_cast<std::size_t>(zones.zones[static_cast<std::size_t>(zone)].kind)];
            }
        }
        std::vector<KindShare>& ground = grounds.emplace_back();
        for (const structure::ZoneKind kind : structure::allZoneKinds) {
            if (const std::size_t count = cells[static_cast<std::size_t>(kind)]; count > 0) {
                ground.push_back(
                    {kind, static_cast<double>(count) / static_cast<double>(section.cells.size())});
            }
        }
    }
    return grounds;
}

} // namespace water
