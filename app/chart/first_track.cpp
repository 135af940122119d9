// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/first_track.h"

#include "app/chart/pointer_cache.h"

#include <algorithm>

namespace chart {

namespace {

constexpr std::size_t mostOfDay = 20000;

geo::Path placesIn(const water::Water& water) {
    geo::Path places;
    if (!water.frame) {
        return places;
    }
    for (const soundings::SurveyDay& day : water.days) {
        const std::size_t step = std::max<std::size_t>(1, day.soundings.size() / mostOfDay);
        for (std::size_t i = 0; i < day.soundings.size(); i += step) {
            places.push_back(water.frame->toWater(day.soundings[i].place));
        }
    }
    return places;
}

} // namespace

bool showsFirstTrack(const ChartContent& content) {
    return !content.derived.drawn && content.water && content.water->frame &&
           !content.water->days.empty();
}

std::shared_ptr<const geo::Path> firstTrackOf(const ChartContent& content) {
    static PointerCache<water::Water, geo::Path> cache;
    return content.water ? cache.of(content.water, placesIn) : std::make_shared<const geo::Path>();
}

void paintFirstTrack(LayerContext& on) {
    const auto places = firstTrackOf(on.content);
    const geo::Box sight = on.view.box();
    QPolygonF dots;
    for (const geo::WaterPoint place : *places) {
        if (sight.holds(place)) {
            dots.append(on.view.toScreen(place));
        }
    }
    on.painter.setPen(
        QPen(withAlpha(on.palette.ink, 0.8), 1.6 * on.scale, Qt::SolidLine, Qt::RoundCap));
    on.painter.drawPoints(dots);
}

} // namespace chart
