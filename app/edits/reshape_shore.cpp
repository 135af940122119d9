// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/reshape_shore.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/shore.h"

namespace edits {

base::Result<void> moveShoreCorner(open_water::OpenWater& open, water::ShoreCorner corner,
                                   geo::WaterPoint to) {
    return tryAct(open, wording::Tongue::tr("Move shore corner"), [&](const water::Water& water) {
        return acts::moveShoreCorner(water, corner, to);
    });
}

base::Result<void> addShoreCorner(open_water::OpenWater& open, water::ShoreCorner after,
                                  geo::WaterPoint at) {
    return tryAct(open, wording::Tongue::tr("Add shore corner"), [&](const water::Water& water) {
        return acts::addShoreCorner(water, after, at);
    });
}

base::Result<void> removeShoreCorner(open_water::OpenWater& open, water::ShoreCorner corner) {
    return tryAct(
        open, wording::Tongue::tr("Take away shore corner"),
        [&](const water::Water& water) { return acts::removeShoreCorner(water, corner); });
}

base::Result<void> addIsland(open_water::OpenWater& open, const geo::Ring& island) {
    return tryAct(open, wording::Tongue::tr("Draw island"),
                  [&](const water::Water& water) { return acts::addIsland(water, island); });
}

base::Result<void> removeIslandAt(open_water::OpenWater& open, geo::WaterPoint at) {
    return tryAct(open, wording::Tongue::tr("Take away island"),
                  [&](const water::Water& water) { return acts::removeIslandAt(water, at); });
}

base::Result<void> traceShore(open_water::OpenWater& open, const geo::Ring& shore) {
    return tryAct(open, wording::Tongue::tr("Trace shoreline"),
                  [&](const water::Water& water) { return acts::traceShore(water, shore); });
}

} // namespace edits
