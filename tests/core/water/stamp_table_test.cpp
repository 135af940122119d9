// SPDX-License-Identifier: GPL-3.0-or-later
// What each step stands on, member by member: a table against the stamps, against what derive()
// makes again, and against what the steps really read.
#include "core/water/steps/derive.h"
#include "core/water/steps/plan_day.h"
#include "core/water/steps/stamps.h"

#include "tests/core/water/stamp_rows_of_ground.h"
#include "tests/core/water/stamp_rows_of_plan.h"
#include "tests/core/water/stamp_rows_of_survey.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstring>
#include <set>
#include <span>

namespace {

using namespace water;

std::vector<StampRow> allRows() {
    std::vector<StampRow> rows;
    for (const std::span<const StampRow> some :
         {std::span<const StampRow>(dayRows), std::span<const StampRow>(factRows),
          std::span<const StampRow>(noteRows), std::span<const StampRow>(settingRows),
          std::span<const StampRow>(planRows), std::span<const StampRow>(logRows)}) {
        rows.insert(rows.end(), some.begin(), some.end());
    }
    return rows;
}

/// No member is forgotten: one more of them, and this does not compile. Then it needs a row above,
/// a place in the stamps or none, and in the parts that an edit swaps.
TEST(StampTable, KnowsAllMembers) {
    const Water w = support::fullWater();
    [[maybe_unused]] const auto& [name, clock, chartLevel, frame, shoreline, days, leadLine,
                                  weedNotes, places, houseRules, settings, sectionNames,
                                  sectionChanges, numbering, pinnedMarks, banned, beliefProfiles,
                                  dayByHand, plan, sheets, log] = w;
    [[maybe_unused]] const auto& [sheetDay, sheetStops] = sheets[0];
    [[maybe_unused]] const auto& [stopRank, stopCalled, stopPlace, stopFrom, stopTo] =
        sheetStops[0];
    [[maybe_unused]] const auto& [bannedName, bannedRing] = banned[0];
    [[maybe_unused]] const auto& [profileName, profileWeights] = beliefProfiles[0];
    [[maybe_unused]] const auto& [pinName, pinPlace, pinLaid] = pinnedMarks[0];
    [[maybe_unused]] const auto& [laidBow, laidStern, laidBaits, laidWind] = pinLaid;
    [[maybe_unused]] const auto& [handOrder, handStays] = dayByHand;
    [[maybe_unused]] const auto& [handPlace, handLength] = handStays[0];
    [[maybe_unused]] const auto& [id, dayName, source, sounder, gauge, temperature, offset, delay,
                                  soundings, passStarts, setAside, kept] = days[1];
    [[maybe_unused]] const auto& [draft, soundSpeed, bySound] = sounder;
    [[maybe_unused]] const auto& [place, shown, time] = soundings[0];
    [[maybe_unused]] const auto& [leadId, leadPlace, leadDepth, bottom] = leadLine[0];
    [[maybe_unused]] const auto& [noteId, notePlace, growth, height, seen, extent, corners] =
        weedNotes[0];
    [[maybe_unused]] const auto& [rodLimit, closed, season, notes] = houseRules;
    [[maybe_unused]] const auto& [closedName, closedPieces] = closed[0];
    [[maybe_unused]] const auto& [cell, bands, limit, countsIn, sectionArea, secchi, weedLeft,
                                  structure] = settings;
    [[maybe_unused]] const auto& [fine, broad, dropOff, high, least] = structure;
    [[maybe_unused]] const auto& [seed, sectionName, numberOfName] = sectionNames[0];
    [[maybe_unused]] const auto& [numbered, parts, dividedFor] = numbering;
    [[maybe_unused]] const auto& [number, isOnMap, pieces] = numbered[0];
    [[maybe_unused]] const auto& [kind, changePlaces, line] = sectionChanges[0];
    [[maybe_unused]] const auto& [day, tackle, weights, launch, count, tryNew] = plan;
    [[maybe_unused]] const auto& [date, start, end, wind, windLater, levelChange, expected, stay] =
        day;
    [[maybe_unused]] const auto& [boatSpeed, boatLength, bowHeight, bowRope, sternRope, scope, rods,
                                  cast, overDepth, toOneAnchor] = tackle;
    [[maybe_unused]] const auto& [stayId, stayStart, stayEnd, stayPlace, stayRods, bait, conditions,
                                  note, runs, stayWho, stayBaitPlace, stayPhotograph, stayOthers] =
        log[0];
    [[maybe_unused]] const auto& [windFrom, windSpeed, warmth, level, sky] = conditions;
    [[maybe_unused]] const auto& [fishId, taken, landed, species, fishBait, weight, length,
                                  baitDepth, fishNote, fishWho, hooked, returned, fishBaitPlace,
                                  fishPhotograph, fishOthers] = runs[0];
    std::set<std::string_view> members;
    for (const StampRow& row : allRows()) {
        EXPECT_TRUE(members.insert(row.member).second) << row.member << " stands there twice";
    }
}

std::string stepsTouched(const Water& before, const Water& after) {
    const Stamps was = Stamps::of(before);
    const Stamps is = Stamps::of(after);
    std::string steps;
    for (const Step step : allSteps) {
        if (is.at(step) != was.at(step)) {
            steps += std::string(nameOf(step)) + ' ';
        }
    }
    return is.ofPlan() == was.ofPlan() ? steps : steps + std::string(onlyPlan);
}

/// The steps of the map among them.
std::string mapSteps(std::string_view steps) {
    return std::string(steps.substr(0, steps.find(onlyPlan)));
}

TEST(StampTable, EachMemberTouchesJustTheStepsThatDependOnIt) {
    const Water before = support::fullWater();
    for (const StampRow& row : allRows()) {
        Water after = before;
        row.change(after);
        EXPECT_NE(after, before) << row.member << " is not changed by its row";
        EXPECT_EQ(stepsTouched(before, after), row.steps) << row.member;
    }
}

/// A value that stands in the member beside it is another choice, though the numbers are the same.
TEST(StampTable, AnAbsentValueIsToldFromTheOneBesideIt) {
    Water fine;
    fine.settings.structure.fineScale = units::Length::metres(30.0);
    Water broad;
    broad.settings.structure.broadScale = units::Length::metres(30.0);
    EXPECT_NE(stampOf(fine, Step::structure), stampOf(broad, Step::structure));
}

TEST(StampTable, NoWeightOfTheRankingTouchesAStep) {
    const Water before = support::fullWater();
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        Water after = before;
        after.plan.weights.set(kind, 7.5);
        EXPECT_NE(after, before);
        EXPECT_EQ(stepsTouched(before, after), onlyPlan) << marks::nameOf(kind);
    }
}

TEST(StampTable, EveryStepHasAStampOfItsOwn) {
    std::set<std::uint64_t> values{Stamps::of(support::fullWater()).ofPlan().value()};
    for (const Step step : allSteps) {
        const Stamp stamp = stampOf(support::fullWater(), step);
        EXPECT_TRUE(stamp.isMade());
        EXPECT_EQ(stamp, stampOf(support::fullWater(), step));
        values.insert(stamp.value());
    }
    EXPECT_EQ(values.size(), allSteps.size() + 1);
}

/// What each step holds, by identity: what is kept is the very same object.
std::array<const void*, allSteps.size()> held(const Derived& derived) {
    return {derived.checked.get(), derived.drawn.get(),     derived.form.get(),
            derived.today.get(),   derived.structure.get(), derived.weed.get(),
            derived.sections.get()};
}

std::string stepsMadeAgain(const Derived& before, const Derived& after) {
    std::string steps;
    const auto was = held(before);
    const auto is = held(after);
    for (std::size_t i = 0; i < allSteps.size(); ++i) {
        EXPECT_NE(is.at(i), nullptr) << nameOf(allSteps.at(i));
        if (is.at(i) != was.at(i)) {
            steps += std::string(nameOf(allSteps.at(i))) + ' ';
        }
    }
    return steps;
}

Derived derivedFrom(const Water& water, const Derived& before = {}) {
    base::Progress silent;
    auto derived = derive(water, before, Step::sections, silent);
    EXPECT_TRUE(derived) << derived.error().sentence();
    for (const auto& [step, error] : derived->failures) {
        ADD_FAILURE() << nameOf(step) << ": " << error.sentence();
    }
    return std::move(*derived);
}

/// The figures that a step comes to, as text, to see whether two makings agree.
std::string figuresOf(const Derived& d, Step step) {
    std::string text;
    const auto add = [&text](auto value) {
        text.append(reinterpret_cast<const char*>(&value), sizeof value);
    };
    const auto addForm = [&add](const WaterForm& form) {
        add(form.rise.inMetres());
        add(form.hypsography.area.inSquareMetres());
        add(form.hypsography.volume.inCubicMetres());
        for (const contours::Contour& contour : form.contours) {
            add(contour.depth.inMetres());
        }
        for (const contours::BandMeasure& band : form.bandMeasures) {
            add(band.area.inSquareMetres());
        }
    };
    switch (step) {
    case Step::reduce:
        for (const soundings::KeptSounding& kept : d.checked->kept) {
            add(kept.x_m);
            add(kept.y_m);
            add(kept.depth_m);
            add(kept.day);
            add(kept.pass);
        }
        break;
    case Step::draw:
        for (const float depth_m : d.drawn->depth.raw_m()) {
            add(depth_m);
        }
        break;
    case Step::bands:
        addForm(*d.form);
        break;
    case Step::level:
        addForm(*d.today);
        break;
    case Step::structure:
        for (const structure::ZoneNumber zone : d.structure->zoneOfCell.values()) {
            add(zone);
        }
        for (const structure::Zone& zone : d.structure->zones) {
            text += zone.name;
        }
        add(d.structure->report->fineScale.inMetres());
        add(d.structure->report->broadScale.inMetres());
        break;
    case Step::weed:
        for (const float share : d.weed->probability.values()) {
            add(share);
        }
        for (const float height_m : d.weed->height_m.values()) {
            add(height_m);
        }
        break;
    case Step::sections:
        for (const sections::SectionNumber section : d.sections->sectionOfCell.values()) {
            add(section);
        }
        for (const sections::Section& section : d.sections->sections) {
            text += section.name;
            add(section.fromLaunch.inMetres());
            add(section.weedShare);
        }
        for (const sections::ChangeRefused& refused : d.sections->refused) {
            add(refused.change);
            text += refused.why.sentence();
        }
        break;
    }
    return text;
}

bool isTouched(const StampRow& row, Step step) {
    return row.steps.find(std::string(nameOf(step)) + ' ') != std::string_view::npos;
}

TEST(StampTable, DeriveMakesJustTheStepsTouchedAgainAndToOtherFigures) {
    const Water before = support::fullWater();
    const Derived was = derivedFrom(before);
    EXPECT_EQ(stepsMadeAgain(was, derivedFrom(before, was)), noStep);
    for (const StampRow& row : allRows()) {
        if (row.steps == fromReduce && row.member != "sounder.draft" &&
            row.member != "chartLevel") {
            continue; // they are made as these two are, which the stamps tell
        }
        Water after = before;
        row.change(after);
        const Derived is = derivedFrom(after, was);
        EXPECT_EQ(stepsMadeAgain(was, is), mapSteps(row.steps)) << row.member;
        // A row that changes nothing would hide a member that no step reads.
        const bool isSeen = std::ranges::any_of(allSteps, [&](Step step) {
            return isTouched(row, step) && figuresOf(is, step) != figuresOf(was, step);
        });
        EXPECT_EQ(isSeen, !mapSteps(row.steps).empty()) << row.member;
    }
}

// The other half: what a stamp does not know, the step does not read. All members that touch the
// same steps are changed together, and all is derived afresh.
TEST(StampTable, MembersThatDoNotTouchAStepChangeNoFigureOfIt) {
    const Water before = support::fullWater();
    const Derived was = derivedFrom(before);
    for (const std::string_view steps : {noStep, onlyPlan, levelAndPlan, fromSections, fromWeed,
                                         fromStructure, fromBands, fromDraw}) {
        Water after = before;
        for (const StampRow& row : allRows()) {
            if (row.steps == steps) {
                row.change(after);
            }
        }
        // What was shown before is no figure of the water: a map made afresh goes by it.
        after.numbering = before.numbering;
        const Derived afresh = derivedFrom(after);
        for (const Step step : allSteps) {
            if (steps.find(std::string(nameOf(step)) + ' ') == std::string_view::npos) {
                EXPECT_TRUE(figuresOf(afresh, step) == figuresOf(was, step))
                    << "what touches '" << steps << "' changes " << nameOf(step);
            }
        }
    }
}

/// What a planned day comes to, as text.
std::string figuresOf(const PlannedDay& planned) {
    std::string text;
    const auto add = [&text](double value) { text += std::to_string(value) + ' '; };
    for (const marks::Mark& mark : planned.marks) {
        text += mark.name + ' ';
        for (const marks::Factor& factor : mark.factors) {
            add(factor.value);
            add(factor.times);
        }
        add(mark.place.x_m);
        add(mark.place.y_m);
        add(mark.score);
        text += mark.sectionName + (mark.near ? mark.near->name : "") + ' ';
        add(mark.near ? mark.near->distance.inMetres() : -1.0);
        add(mark.anchors.bow.rope.inMetres());
        add(mark.anchors.stern ? mark.anchors.stern->rope.inMetres() : -1.0);
        for (const rods::RodPlace& rod : mark.spread.rods) {
            add(rod.stopKnot.inMetres());
        }
    }
    for (const marks::DayStop& stop : planned.day.stops) {
        text += std::to_string(stop.rank) + ' ' + units::isoText(stop.arrive) + ' ' +
                units::isoText(stop.leave) + ' ';
        for (const geo::WaterPoint corner : stop.way) {
            add(corner.x_m + corner.y_m);
        }
    }
    for (const DayCaution& caution : planned.cautions) {
        add(static_cast<double>(caution.index()));
    }
    for (const DayRule& rule : planned.rules) {
        const auto* note = std::get_if<HouseNote>(&rule);
        text += std::to_string(rule.index()) + (note != nullptr ? note->text : "") + ' ';
    }
    for (const FishCare care : planned.fishCare) {
        add(static_cast<double>(care));
    }
    for (const RefusedMark& refused : planned.refused) {
        text += refused.name + ' ' + refused.why.what + ' ';
    }
    for (const int rank : planned.day.leftOut) {
        text += std::to_string(rank) + ' ';
    }
    return text;
}

PlannedDay plannedFrom(const Water& water, const Derived& derived) {
    base::Progress silent;
    auto planned = planDay(water, derived, water.plan, silent);
    EXPECT_TRUE(planned) << planned.error().sentence();
    return std::move(*planned);
}

TEST(StampTable, MembersThatDoNotTouchThePlanChangeNothingInTheDay) {
    const Water before = support::fullWater();
    Water after = before;
    for (const StampRow& row : allRows()) {
        if (row.steps == noStep) {
            row.change(after);
        }
    }
    after.numbering = before.numbering; // As above.
    ASSERT_NE(after, before);
    EXPECT_EQ(figuresOf(plannedFrom(after, derivedFrom(after))),
              figuresOf(plannedFrom(before, derivedFrom(before))));
}

TEST(StampTable, APlannedDayKnowsWhatItWasMadeFrom) {
    const Water water = support::fullWater();
    const Derived derived = derivedFrom(water);
    EXPECT_EQ(plannedFrom(water, derived).madeFrom, Stamps::of(water).ofPlan());
    Water scoped = water;
    scoped.plan.tackle.scope = 4.5;
    EXPECT_NE(plannedFrom(water, derived).madeFrom, Stamps::of(scoped).ofPlan());
    base::Progress silent;
    EXPECT_EQ(planDay(water, derived, scoped.plan, silent)->madeFrom, Stamps::of(scoped).ofPlan())
        << "the plan asked with counts, not the one in the water";
    Water cleared = water;
    cleared.weedNotes = {};
    EXPECT_NE(plannedFrom(cleared, derived).madeFrom, Stamps::of(cleared).ofPlan())
        << "planned on the sections of before, it is of before";
}

TEST(StampTable, AListIsReadOnceHoweverOftenItsWaterIsAsked) {
    const Water water = support::fullWater();
    const Stamps stamps = Stamps::of(water);
    const auto never = [](const auto& /*items*/) -> std::uint64_t {
        ADD_FAILURE() << "read again";
        return 1;
    };
    Water after = water;
    after.days[1].setAsideByHand = {5, 7};
    EXPECT_NE(Stamps::of(after), stamps);
    EXPECT_NE(after.days[1].soundings.workedOutOnce(0, never), 0U);
    EXPECT_NE(after.days[0].passStarts.workedOutOnce(0, never), 0U);
    EXPECT_NE(after.shoreline.workedOutOnce(0, never), 0U);
    EXPECT_NE(after.leadLine.workedOutOnce(0, never), after.leadLine.workedOutOnce(1, never));
    EXPECT_NE(after.weedNotes.workedOutOnce(0, never), 0U);
    for (const auto& chunk : after.log.chunks()) {
        const auto effort = static_cast<std::size_t>(logbook::OfChunk::effort);
        EXPECT_NE(chunk->workedOutOnce(effort, never), 0U);
    }
    after.days[1].setAsideByHand = {5};
    EXPECT_EQ(Stamps::of(after), stamps) << "what was undone is as it was";
}

} // namespace
