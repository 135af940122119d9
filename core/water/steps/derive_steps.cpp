// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/derive_steps.h"

#include "core/contours/choose_bands.h"
#include "core/contours/find_bands.h"
#include "core/contours/trace_contours.h"
#include "core/geo/hull.h"
#include "core/reduction/correct_depths.h"
#include "core/reduction/correct_positions.h"
#include "core/reduction/find_crossings.h"
#include "core/reduction/find_day_differences.h"
#include "core/reduction/find_delays.h"
#include "core/reduction/set_aside_along_track.h"
#include "core/reduction/set_aside_disagreeing.h"
#include "core/reduction/set_aside_outside_shore.h"
#include "core/surface/measure_water.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <deque>

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

bool hasNoLevel(const soundings::SurveyDay& day) {
    return !day.gauge.isKnown() && !day.agreedOffset;
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

std::size_t daysWithoutLevel(const Water& water) {
    return water.days.size() < 2
               ? 0
               : static_cast<std::size_t>(std::ranges::count_if(water.days, hasNoLevel));
}

grid::Grid<std::uint8_t> levelUnknownOn(const grid::GridFrame& cells, const Water& water,
                                        const CheckedSurvey& checked) {
    constexpr std::uint8_t notReached = 2;
    grid::Grid<std::uint8_t> unknown(cells, notReached);
    std::deque<grid::Cell> waiting;
    const auto reach = [&](grid::Cell c, std::uint8_t what) {
        if (cells.holds(c) && unknown[c] == notReached) {
            unknown[c] = what;
            waiting.push_back(c);
        }
    };
    for (const soundings::KeptSounding& kept : checked.kept) {
        const bool hasNone = hasNoLevel(water.days[static_cast<std::size_t>(kept.day)]);
        reach(cells.cellOf({kept.x_m, kept.y_m}), hasNone ? 1 : 0);
    }
    while (!waiting.empty()) {
        const grid::Cell c = waiting.front();
        waiting.pop_front();
        for (int dr = -1; dr <= 1; ++dr) {
            for (int dc = -1; dc <= 1; ++dc) {
                reach({c.col + dc, c.row + dr}, unknown[c]);
            }
        }
    }
    return unknown;
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
    checked.differences = reduction::findDayDifferences(checked.crossings, {});
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

Result<WaterForm> formOf(contours::CountsIn unit, const contours::Bands& bands,
                         const surface::DrawnWater& drawn, const geo::Outline& outline,
                         units::Length rise, Progress& progress) {
    WaterForm form;
    form.rise = rise;
    const grid::DepthGrid depth = drawn.depth.shiftedBy(rise);
    const units::Depth deepest = depth.deepest().value_or(units::Depth());
    auto contours = contours::traceContours(
        depth, drawn.mask, contours::contourLevels(bands, deepest, unit), progress);
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
