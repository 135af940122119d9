// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/structure_view.h"

#include "app/wording/tongue.h"

namespace days::survey_day {

namespace {

using wording::Words;

QString used(const structure::StructureReport& report, const Words& words) {
    const auto fine = [&words](units::Length rise) {
        return words.fineDepth(units::Depth::fromLength(rise));
    };
    return wording::Tongue::tr(
               "In use: a drop-off has a slope of %1 somewhere and reaches on down to "
               "%2; shelves and flats are gentler than %3. Ground is high or low from "
               "%4 above or below what lies within %5. Slope is taken over %6. Pieces "
               "below %7 join what surrounds them (%8 did).")
        .arg(Words::slope(report.dropOffFrom_percent), Words::slope(report.dropOffDownTo_percent),
             Words::slope(report.gentleBelow_percent), fine(report.highGround),
             words.length(report.broadScale), words.length(report.fineScale),
             words.area(report.leastArea), Words::count(report.piecesJoined));
}

} // namespace

StructureView structureViewOf(const ViewInput& input) {
    const water::StructureChoice& chosen = input.water.settings.structure;
    const auto length = [&input](const std::optional<units::Length>& value) {
        return value ? input.words.length(*value) : QString();
    };
    StructureView view;
    view.dropOff =
        chosen.dropOffFrom_percent ? Words::slope(*chosen.dropOffFrom_percent) : QString();
    view.highGround = chosen.highGround
                          ? input.words.fineDepth(units::Depth::fromLength(*chosen.highGround))
                          : QString();
    view.leastSize = chosen.leastArea ? input.words.area(*chosen.leastArea) : QString();
    view.fineScale = length(chosen.fineScale);
    view.broadScale = length(chosen.broadScale);
    if (input.derived.structure && input.derived.structure->report) {
        view.used = used(*input.derived.structure->report, input.words);
    }
    return view;
}

} // namespace days::survey_day
