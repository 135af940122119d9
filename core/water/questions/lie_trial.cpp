// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/lie_trial.h"

#include "core/marks/rank_marks.h"
#include "core/marks/winds_of_day.h"
#include "core/water/steps/lie_at.h"
#include "core/water/steps/stay_winds.h"

#include <algorithm>

namespace water {

using base::Result;

LieTrial::LieTrial(std::shared_ptr<const Water> water, std::shared_ptr<const PlannedDay> planned,
                   std::shared_ptr<const DayGround> ground, marks::Mark mark)
    : water_(std::move(water)), planned_(std::move(planned)), ground_(std::move(ground)),
      mark_(std::move(mark)), wind_(marks::windsOf(planned_->plan.day).front().wind) {
    const auto stop = std::ranges::find(planned_->day.stops, mark_.rank, &marks::DayStop::rank);
    if (stop != planned_->day.stops.end()) {
        wind_ = stop->wind;
    }
}

Result<LieTrial> LieTrial::of(std::shared_ptr<const Water> water, const Derived& derived,
                              std::shared_ptr<const PlannedDay> planned, int rank) {
    const auto mark = std::ranges::find(planned->marks, rank, &marks::Mark::rank);
    if (mark == planned->marks.end() || !water->frame || !derived.drawn || !derived.structure ||
        !derived.weed || !derived.sections || !derived.outline) {
        return base::fail(base::ErrorKind::wrongUse, "there is no such mark to lay", "marks",
                          "find marks first");
    }
    auto ground = DayGround::make(*water, derived, planned->plan.day.levelChange);
    if (!ground) {
        return std::unexpected(ground.error());
    }
    marks::Mark found = *mark;
    return LieTrial(std::move(water), std::move(planned), std::move(*ground), std::move(found));
}

Result<marks::Mark> LieTrial::with(const PinnedMark& asked) const {
    base::Progress progress;
    const LieWork work{*water_, *ground_, planned_->plan.tackle, progress};
    const geo::WaterPoint place = water_->frame->toWater(asked.place);
    auto lying = lyingIn(wind_, place, &asked.laid, work);
    if (!lying) {
        return std::unexpected(lying.error());
    }
    auto spread = rodsAt(lying->anchors, &asked.laid, work);
    if (!spread) {
        return std::unexpected(spread.error());
    }
    marks::Mark mark = mark_;
    mark.isPinned = true;
    mark.pinnedAt = place;
    mark.place = lying->anchors.lie.centre;
    mark.lonLat = water_->frame->toEarth(mark.place);
    mark.depth = ground_->ground().depthAt(mark.place).value_or(mark.depth);
    mark.anchors = std::move(lying->anchors);
    mark.spread = std::move(*spread);
    layIn(lying->waves, mark);
    std::erase_if(mark.cautions, isOfTheLie);
    const auto cautions = marks::lyingCautions(
        mark.waveHeight, static_cast<int>(mark.spread.rods.size()), planned_->plan.tackle.rods);
    mark.cautions.insert(mark.cautions.end(), cautions.begin(), cautions.end());
    return mark;
}

} // namespace water
