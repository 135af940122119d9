// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/section_use.h"

#include "core/rates/grouping.h"
#include "core/wind/fetch.h"
#include "core/wind/waves.h"

#include <algorithm>
#include <cmath>

namespace water {

namespace {

void countStay(const logbook::Stay& stay, SectionUse& use) {
    const rates::GroupedStay whole = rates::wholeStay(stay, {});
    const auto landed =
        std::ranges::count_if(whole.runs, [](const logbook::Fish* fish) { return fish->landed; });
    ++use.stays;
    use.blanks += landed == 0 ? 1 : 0;
    if (!stay.rodHours()) {
        ++use.effortUnknown; // fish over no effort would make any rate
        return;
    }
    use.tally.fish += static_cast<double>(landed);
    use.tally.rodHours += whole.rodHours;
}

/// Marks the cells whose middle lies within a cast of the place.
void markCast(geo::WaterPoint place, double cast_m, grid::Grid<std::uint8_t>& reached) {
    const grid::GridFrame& frame = reached.frame();
    const int reach = static_cast<int>(std::ceil(cast_m / frame.cell_m()));
    const grid::Cell middle = frame.cellOf(place);
    for (int row = middle.row - reach; row <= middle.row + reach; ++row) {
        for (int col = middle.col - reach; col <= middle.col + reach; ++col) {
            const grid::Cell cell{col, row};
            if (frame.holds(cell) && geo::distance_m(frame.centre(cell), place) <= cast_m) {
                reached[cell] = 1;
            }
        }
    }
}

double reachedShare(const sections::Section& section, const grid::Grid<std::uint8_t>& reached,
                    const grid::Mask& mask) {
    double whole = 0.0;
    double part = 0.0;
    for (const std::size_t cell : section.cells) {
        const auto wet = static_cast<double>(mask.share(cell));
        whole += wet;
        part += reached[cell] != 0 ? wet : 0.0;
    }
    return whole > 0.0 ? part / whole : 0.0;
}

} // namespace

std::vector<SectionUse> useOfSections(const Water& water, const Derived& derived) {
    if (!water.frame || !derived.sections || !derived.drawn || !derived.outline) {
        return {};
    }
    const sections::SectionMap& map = *derived.sections;
    std::vector<SectionUse> uses(map.sections.size());
    grid::Grid<std::uint8_t> reached(map.sectionOfCell.frame(), 0);
    for (const logbook::Stay& stay : water.log) {
        const geo::WaterPoint place = water.frame->toWater(stay.place);
        markCast(place, water.plan.tackle.cast.inMetres(), reached);
        if (const auto section = sections::sectionAt(map, place); section != sections::noSection) {
            countStay(stay, uses[static_cast<std::size_t>(section)]);
        }
    }
    const logbook::Wind& wind = water.plan.day.wind;
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const sections::Section& section = map.sections[i];
        uses[i].fishedShare = reachedShare(section, reached, derived.drawn->mask);
        if (wind.from) {
            uses[i].fetch = wind::fetchAt(*derived.outline, section.middle, *wind.from).effective;
        }
        if (wind.speed && uses[i].fetch) {
            uses[i].waves = wind::wavesOnDeepWater(*wind.speed, *uses[i].fetch).significantHeight;
        }
    }
    return uses;
}

} // namespace water
