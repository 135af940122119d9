// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/stamps.h"

#include "core/water/document/stamp_values.h"
#include "core/water/steps/derive.h"
#include "core/water/steps/year_of_weed.h"

namespace water {

namespace {

/// Raised whenever a derivation changes so that what was kept from an earlier version no longer
/// holds.
constexpr int methodVersion = 4;

void takeClosed(Stamp& stamp, const logbook::HouseRules& rules) {
    const auto& [rodLimit, closed, season, notes] = rules;
    leaveOut(rodLimit, season, notes);
    stamp.take(closed.size());
    for (const logbook::ClosedWater& one : closed) {
        const auto& [name, pieces] = one;
        leaveOut(name);
        take(stamp, pieces);
    }
}

void takeLaunch(Stamp& stamp, const std::optional<geo::LonLat>& launch) {
    stamp.take(launch.has_value());
    if (launch) {
        take(stamp, *launch);
    }
}

template <class T>
void takeEach(Stamp& stamp, const std::vector<T>& items) {
    stamp.take(items.size());
    for (const T& item : items) {
        take(stamp, item);
    }
}

} // namespace

Stamps Stamps::of(const Water& water) {
    const auto& [name, clock, chartLevel, frame, shoreline, days, leadLine, weedNotes, places,
                 houseRules, settings, sectionNames, sectionChanges, numbering, pinnedMarks, banned,
                 beliefProfiles, dayByHand, plan, sheets, log] = water;
    leaveOut(name, numbering, beliefProfiles, sheets);
    leaveOut(clock, places, pinnedMarks, banned, dayByHand, log); // of the plan alone
    const auto& [cell, bands, limit, countsIn, sectionArea, secchi, weedLeft, structureChoice] =
        settings;
    const auto& [day, tackle, weights, launch, count, tryNew] = plan;
    leaveOut(tackle, weights, count, tryNew);
    const auto& [date, start, end, wind, windLater, levelChange, waterTemperature, stay] = day;
    leaveOut(date, start, end, wind, windLater, waterTemperature, stay);

    Stamp reduce;
    reduce.take(methodVersion).take(chartLevel.inMetresOnGauge()).take(frame.has_value());
    if (frame) {
        take(reduce, frame->centre());
    }
    reduce.take(water::stampOf(shoreline));
    takeEach(reduce, days);

    Stamp draw = reduce;
    takeIfAny(draw, cell, &units::Length::inMetres);
    draw.take(depthsOf(leadLine));

    Stamp form = draw;
    form.take(bands.has_value()).take(countsIn);
    if (bands) {
        take(form, *bands);
    }
    takeIfAny(form, limit, &units::Depth::inMetres);

    Stamp level = form;
    level.take(levelChange.inMetres());

    Stamp structure = form;
    takeLaunch(structure, launch);
    take(structure, structureChoice);

    Stamp weed = draw;
    takeIfAny(weed, secchi, &units::Depth::inMetres);
    weed.take(weedLeft).take(water::stampOf(weedNotes)).take(bottomsOf(leadLine));
    takeIfAny(weed, yearOfWeed(water), [](std::chrono::year year) { return int(year); });

    Stamp sections = structure;
    sections.take(weed);
    takeIfAny(sections, sectionArea, &units::Area::inSquareMetres);
    takeClosed(sections, houseRules);
    takeEach(sections, sectionNames);
    takeEach(sections, sectionChanges);

    Stamps stamps;
    stamps.ofSteps_ = {reduce, draw, form, level, structure, weed, sections};
    stamps.ofPlan_ = stampOfPlan(water, plan, sections);
    return stamps;
}

Stamp stampOfPlan(const Water& water, const marks::Plan& plan, Stamp sections) {
    const auto& [name, clock, chartLevel, frame, shoreline, days, leadLine, weedNotes, places,
                 houseRules, settings, sectionNames, sectionChanges, numbering, pinnedMarks, banned,
                 beliefProfiles, dayByHand, ownPlan, sheets, log] = water;
    leaveOut(name, numbering, beliefProfiles, ownPlan, sheets);
    // These the sections stand on.
    leaveOut(chartLevel, frame, shoreline, days, leadLine, weedNotes, settings, sectionNames,
             sectionChanges);
    Stamp stamp;
    stamp.take(sections).take(std::string_view(clock.zone()));
    take(stamp, houseRules);
    stamp.take(places.size()); // marks are called by what is near them
    for (const NamedPlace& one : places) {
        const auto& [placeName, place] = one;
        stamp.take(std::string_view(placeName));
        take(stamp, place);
    }
    stamp.take(pinnedMarks.size());
    for (const PinnedMark& mark : pinnedMarks) {
        const auto& [markName, place, laid] = mark;
        stamp.take(std::string_view(markName));
        take(stamp, place);
        take(stamp, laid);
    }
    take(stamp, banned);
    take(stamp, dayByHand);
    take(stamp, plan);
    return stamp.take(effortOf(log));
}

Stamp stampOf(const Water& water, Step step) {
    return Stamps::of(water).at(step);
}

} // namespace water
