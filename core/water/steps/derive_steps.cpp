// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/derive_steps.h"

#include "core/contours/find_bands.h"
#include "core/contours/trace_contours.h"
#include "core/geo/hull.h"
#include "core/reduction/correct_depths.h"
#include "core/reduction/correct_positions.h"
#include "core/reduction/find_crossings.h"
#include "core/reduction/find_delays.h"
#include "core/reduction/set_aside_along_track.h"
#include "core/reduction/set_aside_disagreeing.h"
#include "core/reduction/set_aside_outside_shore.h"
#include "core/surface/measure_water.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <set>

namespace water {

using base::Progress;
using base::Result;

namespace {

constexpr double assumedShore_m = 15.0;
/// Fine enough that depths in feet can be read off between its steps.
constexpr units::Length hypsographyStep = units::Length::metres(0.1);

/// Depths reduced and the faults along the tracks set aside: all that can be told without a shore.
Result<reduction::ReducedSurvey> reduceAlongTracks(const Water& water, Progress& progress) {
    auto survey = reduction::correctDepths(water.days, *water.frame, reductionOf(water), progress);
    if (!survey) {
        return survey;
    }
    survey = reduction::setAsideAlongTrack(water.days, std::move(*survey), {}, progress);
    if (survey) {
        survey = reduction::correctPositions(water.days, std::move(*survey));
    }
    return survey;
}

Result<WaterOutline> assumedOutline(const Water& water) {
    Progress silent;
    std::vector<geo::WaterPoint> places;
    auto survey = reduceAlongTracks(water, silent);
    if (!survey) {
        return std::unexpected(survey.error());
    }
    for (const soundings::KeptSounding& kept : reduction::keptSoundings(water.days, *survey)) {
        places.push_back({kept.x_m, kept.y_m});
    }
    if (places.empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "there is neither a shoreline nor a sounding to draw from", "",
                          "bring in soundings or a shoreline");
    }
    auto outline = geo::Outline::make(
        std::vector{geo::Piece{geo::hullOf(places, assumedShore_m), {}}}, *water.frame);
    if (!outline) {
        return std::unexpected(outline.error());
    }
    return WaterOutline{std::move(*outline), true};
}

/// Levels for contours: every band edge, and round steps that leave some fifteen lines.
std::vector<units::Depth> contourLevels(const contours::Bands& bands, units::Depth deepest) {
    static constexpr std::array steps_m{0.25, 0.5, 1.0, 2.0, 5.0, 10.0};
    const double wanted_m = deepest.inMetres() / 15.0;
    const auto* step =
        std::find_if(steps_m.begin(), steps_m.end() - 1, [&](double s) { return s >= wanted_m; });
    std::set<double> levels_m;
    for (double level_m = *step; level_m < deepest.inMetres(); level_m += *step) {
        levels_m.insert(level_m);
    }
    for (const units::Depth edge : bands.edges()) {
        if (edge < deepest) {
            levels_m.insert(edge.inMetres());
        }
    }
    std::vector<units::Depth> levels;
    std::transform(levels_m.begin(), levels_m.end(), std::back_inserter(levels),
                   [](double m) { return units::Depth::metres(m); });
    return levels;
}

} // namespace

reduction::ReductionSettings reductionOf(const Water& water) {
    reduction::ReductionSettings settings;
    settings.chartLevel = water.chartLevel;
    for (const soundings::SurveyDay& day : water.days) {
        settings.dayOffsets.push_back(day.agreedOffset.value_or(units::Length()));
    }
    return settings;
}

Result<WaterOutline> outlineOf(const Water& water) {
    if (water.shoreline.empty()) {
        return assumedOutline(water);
    }
    auto outline = geo::Outline::make(water.shoreline, *water.frame);
    if (!outline) {
        return std::unexpected(outline.error());
    }
    return WaterOutline{std::move(*outline), false};
}

Result<CheckedSurvey> checkSurvey(const Water& water, const geo::Outline& outline,
                                  Progress& progress) {
    const auto start = std::chrono::steady_clock::now();
    auto survey = reduceAlongTracks(water, progress);
    if (survey && survey->soundingCount() > 0) {
        survey = reduction::setAsideOutsideShore(water.days, std::move(*survey), outline,
                                                 *water.frame, {}, progress);
    }
    if (survey) {
        survey = reduction::setAsideDisagreeing(water.days, std::move(*survey), {}, progress);
    }
    if (!survey) {
        return std::unexpected(survey.error());
    }
    CheckedSurvey checked;
    checked.setAsideSeconds =
        std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    checked.kept = reduction::keptSoundings(water.days, *survey);
    checked.survey = std::move(*survey);
    auto crossings = reduction::findCrossings(checked.kept, {}, progress);
    if (!crossings) {
        return std::unexpected(crossings.error());
    }
    checked.crossings = std::move(*crossings);
    checked.check = reduction::checkOf(checked.crossings);
    auto tie = reduction::tieDays(checked.crossings, water.days, {}, progress);
    if (!tie) {
        return std::unexpected(tie.error());
    }
    checked.tie = std::move(*tie);
    auto delays =
        reduction::findDelays(checked.kept, checked.crossings, water.days.size(), {}, progress);
    if (!delays) {
        return std::unexpected(delays.error());
    }
    checked.delays = std::move(*delays);
    return checked;
}

std::vector<soundings::KeptSounding> soundingsToDraw(const Water& water,
                                                     const CheckedSurvey& checked) {
    std::vector<soundings::KeptSounding> all = checked.kept;
    int pass = all.empty() ? 0 : all.back().pass + 1;
    for (const soundings::LeadLineSounding& sounding : water.leadLine) {
        const geo::WaterPoint at = water.frame->toWater(sounding.place);
        all.push_back({sounding.place, at.x_m, at.y_m, sounding.depth.inMetres(),
                       static_cast<int>(water.days.size()), pass++});
    }
    return all;
}

Result<WaterForm> formOf(const contours::Bands& bands, const surface::DrawnWater& drawn,
                         const geo::Outline& outline, units::Length rise, Progress& progress) {
    WaterForm form;
    form.rise = rise;
    const grid::DepthGrid depth = drawn.depth.shiftedBy(rise);
    const units::Depth deepest = depth.deepest().value_or(units::Depth());
    auto contours =
        contours::traceContours(depth, drawn.mask, contourLevels(bands, deepest), progress);
    if (!contours) {
        return std::unexpected(contours.error());
    }
    form.contours = std::move(*contours);
    auto found = contours::findBands(depth, drawn.mask, bands, progress);
    if (!found) {
        return std::unexpected(found.error());
    }
    form.bandPolygons = std::move(found->polygons);
    form.bandMeasures = std::move(found->measures);
    if (rise < units::Length()) {
        auto left = contours::findWater(depth, progress);
        if (!left) {
            return std::unexpected(left.error());
        }
        form.waterLeft = std::move(*left);
    }
    surface::MeasureSettings settings;
    settings.rise = rise;
    settings.step = hypsographyStep;
    auto hypsography = surface::measureWater(drawn.depth, drawn.mask, outline, settings, progress);
    if (!hypsography) {
        return std::unexpected(hypsography.error());
    }
    form.hypsography = std::move(*hypsography);
    return form;
}

} // namespace water
