// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/locate.h"

#include "core/water/document/chosen_scale.h"

namespace water {

namespace {

const structure::Zone* zoneAt(const structure::ZoneMap& map, geo::WaterPoint place) {
    const grid::Cell cell = map.zoneOfCell.frame().cellOf(place);
    if (!map.zoneOfCell.frame().holds(cell) || map.zoneOfCell[cell] == structure::noZone) {
        return nullptr;
    }
    return &map.zones[static_cast<std::size_t>(map.zoneOfCell[cell])];
}

} // namespace

Located locate(const Water& water, const Derived& derived, geo::WaterPoint place) {
    Located found;
    if (derived.drawn) {
        found.depth = derived.drawn->depth.at(place);
        found.trust = derived.drawn->trust.halfWidthAt(place);
        found.trustName = derived.drawn->trust.at(place);
    }
    if (found.depth) {
        found.band = bandsOf(water, derived).bandOf(*found.depth);
    }
    if (derived.structure) {
        found.zone = zoneAt(*derived.structure, place);
    }
    if (derived.weed) {
        found.weedZone = zoneAt(derived.weed->zones, place);
    }
    if (derived.sections) {
        const sections::SectionNumber number = sections::sectionAt(*derived.sections, place);
        found.section = number == sections::noSection
                            ? nullptr
                            : &derived.sections->sections[static_cast<std::size_t>(number)];
    }
    return found;
}

std::optional<units::Depth> depthThatDay(const Water& water, const Derived& derived,
                                         geo::WaterPoint place) {
    const auto depth = derived.drawn ? derived.drawn->depth.at(place) : std::nullopt;
    if (!depth) {
        return std::nullopt;
    }
    const units::Depth that =
        units::Depth::metres(depth->inMetres() + water.plan.day.levelChange.inMetres());
    return that.inMetres() > 0.0 ? std::optional(that) : std::nullopt;
}

} // namespace water
