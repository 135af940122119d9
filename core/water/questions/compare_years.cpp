// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/compare_years.h"

#include "core/surface/compare_drawings.h"

#include <algorithm>
#include <cmath>

namespace water {

namespace {

/// Two marks nearer than this are one (ours).
constexpr double sameMark_m = 5.0;

MarkThen markThen(const PinnedMark& mark, const Water& later, const surface::BottomChange& change) {
    MarkThen then{mark.name, mark.place, std::nullopt, {}};
    const grid::GridFrame& frame = change.rise_m.frame();
    const grid::Cell cell = frame.cellOf(later.frame->toWater(mark.place));
    if (frame.holds(cell) && !std::isnan(change.rise_m[cell])) {
        then.rise = units::Length::metres(static_cast<double>(change.rise_m[cell]));
        then.halfWidth = units::Length::metres(static_cast<double>(change.halfWidth_m[cell]));
    }
    return then;
}

std::vector<MarkThen> marksThen(const Water& later, const Water& earlier,
                                const surface::BottomChange& change) {
    std::vector<MarkThen> marks;
    for (const PinnedMark& mark : later.pinnedMarks) {
        marks.push_back(markThen(mark, later, change));
    }
    for (const PinnedMark& mark : earlier.pinnedMarks) {
        const bool isKnown = std::ranges::any_of(later.pinnedMarks, [&](const PinnedMark& known) {
            return geo::courseBetween(known.place, mark.place).distance.inMetres() < sameMark_m;
        });
        if (!isKnown) {
            marks.push_back(markThen(mark, later, change));
        }
    }
    return marks;
}

} // namespace

base::Result<YearsCompared> compareYears(const Water& later, const Derived& derived,
                                         const Water& earlier,
                                         const surface::DrawnWater& earlierDrawn, CommonRise common,
                                         base::Progress& progress) {
    if (!later.frame || !derived.drawn || !earlier.frame) {
        return base::fail(base::ErrorKind::wrongUse,
                          "two surveys can only be compared once both are drawn", "",
                          "draw the water first");
    }
    const surface::PlacedDrawing now{*derived.drawn, *later.frame};
    const surface::PlacedDrawing before{earlierDrawn, *earlier.frame};
    const units::Length levelRise = later.chartLevel - earlier.chartLevel;
    auto change = surface::compareDrawings(now, before, levelRise, progress);
    if (!change) {
        return std::unexpected(change.error());
    }
    YearsCompared compared;
    compared.change = std::move(*change);
    compared.sums = surface::sumUp(compared.change, now.drawn.mask);
    if (common == CommonRise::isOfLevel) {
        compared.takenOff = compared.sums.middle;
        for (float& rise_m : compared.change.rise_m.values()) {
            rise_m -= static_cast<float>(compared.takenOff->inMetres());
        }
        compared.sums = surface::sumUp(compared.change, now.drawn.mask);
    }
    compared.marks = marksThen(later, earlier, compared.change);
    compared.daysWithoutLevel =
        now.drawn.report.daysWithoutLevel + earlierDrawn.report.daysWithoutLevel;
    return compared;
}

} // namespace water
