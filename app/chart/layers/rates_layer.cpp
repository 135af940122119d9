// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/rates_layer.h"

#include "app/chart/rate_shade.h"
#include "app/chart/water_path.h"
#include "core/structure/zone_kinds.h"

namespace chart {

namespace {

void shade(LayerContext& on, const std::vector<geo::Piece>& pieces, const std::string& row) {
    const QPainterPath path = screenPath(pieces, on.view);
    if (path.isEmpty()) {
        return;
    }
    const ShownRates& rates = *on.content.rates;
    const auto rate = rates.of(row);
    if (!rate || !rates.isTried(row)) {
        on.painter.fillPath(path, on.palette.card);
        slant(on, path);
        return;
    }
    on.painter.fillPath(path, shadeOf(on.palette, rate->per10RodHours, rates.most()));
    breakUp(on, path, surenessOf(*rate));
}

} // namespace

void RatesLayer::paint(LayerContext& on) const {
    const water::Derived& derived = on.content.derived;
    if (!on.content.rates) {
        return;
    }
    if (on.content.rates->by == water::ReviewBy::section && derived.sections) {
        for (const sections::Section& section : derived.sections->sections) {
            shade(on, section.pieces, section.name);
        }
    }
    if (on.content.rates->by == water::ReviewBy::zone && derived.structure) {
        for (const structure::ZoneMap* map :
             {derived.structure.get(), derived.weed ? &derived.weed->zones : nullptr}) {
            for (std::size_t i = 0; map != nullptr && i < map->zones.size(); ++i) {
                shade(on, map->zones[i].pieces, std::string(structure::nameOf(map->zones[i].kind)));
            }
        }
    }
}

} // namespace chart
