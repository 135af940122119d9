// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/never_fished.h"

#include "app/chart/placed_things.h"

#include <algorithm>

namespace chart {

std::vector<bool> neverFished(const ChartContent& content) {
    if (!content.water || content.water->log.empty() || !content.derived.sections) {
        return {};
    }
    const sections::SectionMap& map = *content.derived.sections;
    std::vector<bool> never(map.sections.size(), true);
    PlacedThings::forStays(content.water, [&](const logbook::Stay&, geo::WaterPoint place) {
        if (const auto number = sections::sectionAt(map, place); number != sections::noSection) {
            never[static_cast<std::size_t>(number)] = false;
        }
    });
    return never;
}

bool showsNeverFished(const ChartContent& content) {
    // Where rates are shown, they say so in words.
    return content.shown.contains(LayerKind::sections) && !content.rates &&
           std::ranges::count(neverFished(content), true) > 0;
}

} // namespace chart
