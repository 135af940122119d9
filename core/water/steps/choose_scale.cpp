// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/choose_scale.h"

#include "core/contours/choose_bands.h"
#include "core/sections/choose_size.h"

namespace water {

namespace {

units::Area fishableOf(const surface::DrawnWater& drawn, const contours::Bands& bands) {
    double area_m2 = 0.0;
    for (std::size_t i = 0; i < drawn.depth.frame().size(); ++i) {
        if (drawn.mask.isActive(i) && drawn.depth.has(i) &&
            bands.isFishable(units::Depth::metres(static_cast<double>(drawn.depth.raw_m()[i])))) {
            area_m2 += static_cast<double>(drawn.mask.share(i)) * drawn.depth.frame().cellArea_m2();
        }
    }
    return units::Area::squareMetres(area_m2);
}

} // namespace

void chooseScale(const Water& water, Derived& derived) {
    if (!derived.drawn) {
        return;
    }
    const Settings& wanted = water.settings;
    const surface::DrawnWater& drawn = *derived.drawn;
    derived.bands = wanted.bands
                        ? *wanted.bands
                        : contours::chooseBands(contours::depthToChooseBy(drawn.depth, drawn.mask),
                                                wanted.countsIn, wanted.limit);
    derived.sectionArea =
        wanted.sectionArea
            ? *wanted.sectionArea
            : sections::chooseSectionSize(fishableOf(drawn, derived.bands),
                                          wanted.countsIn == contours::CountsIn::feet);
}

} // namespace water
