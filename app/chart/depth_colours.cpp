// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/depth_colours.h"

#include "app/chart/todays_form.h"
#include "core/water/document/chosen_scale.h"

namespace chart {

const contours::Bands& bandsOf(const ChartContent& content) {
    return content.water ? water::bandsOf(*content.water, content.derived) : content.derived.bands;
}

QColor colourOf(const Palette& palette, const contours::Bands& bands, units::Depth depth) {
    return palette.band(bands.bandOf(depth), bands.count());
}

QColor groundAt(const ChartContent& content, const Palette& palette, geo::WaterPoint p) {
    if (!content.derived.drawn) {
        return palette.paper;
    }
    const auto depth = content.derived.drawn->depth.at(p);
    const auto& form = formOf(content.derived);
    const units::Depth today = depth.value_or(units::Depth()) +
                               units::Depth::fromLength(form ? form->rise : units::Length());
    return depth && today.inMetres() >= 0.0 ? colourOf(palette, bandsOf(content), today)
                                            : palette.paper;
}

QColor lineOn(const Palette& palette, const QColor& ground) {
    return labFrom(srgbFrom(ground)).l < 54.0 ? palette.card : palette.ink;
}

} // namespace chart
