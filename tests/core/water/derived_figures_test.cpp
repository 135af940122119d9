// SPDX-License-Identifier: GPL-3.0-or-later
// Every choice and member reaches the job that it is for, with its sign and unit.
#include "core/water/document/chosen_scale.h"
#include "core/water/steps/derive.h"

#include "core/reduction/sound_speed.h"
#include "core/sections/section_settings.h"
#include "core/water/questions/locate.h"
#include "core/water/questions/section_ground.h"
#include "core/water/questions/sounding_terms.h"
#include "core/water/steps/derive_steps.h"

#include "tests/support/full_water.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace {

using namespace water;

const Derived& fullDerived() {
    static const Derived made = [] {
        base::Progress silent;
        return derive(support::fullWater(), {}, Step::sections, silent).value();
    }();
    return made;
}

Derived derivedOf(const Water& w, Step upTo = Step::sections) {
    base::Progress silent;
    return derive(w, {}, upTo, silent).value();
}

TEST(ReductionOf, TakesTheWatersChartLevelAndTheOffsetsThatItsDaysAgreedTo) {
    const auto settings = reductionOf(support::fullWater());
    EXPECT_EQ(settings.chartLevel, units::WaterLevel::metresOnGauge(10.0));
    EXPECT_EQ(settings.dayOffsets, (std::vector{units::Length(), units::Length::metres(0.05)}));
}

// The level at 08:00 is 10.20 m and rises to 10.30 m within the hour; sounding 60 comes after
// 4 x 60 + 1200 = 1440 s, at 10.24 m, that is 0.24 m above chart level.
TEST(SoundingTerms, AreThoseOfTheDayWithTheLevelAtThatTime) {
    const Water w = support::fullWater();
    const auto terms = soundingTerms(w, 1, 60);
    const double shown_m = w.days[1].soundings[60].shown.inMetres();
    const double factor =
        reduction::soundSpeedIn(units::Temperature::celsius(18.0)).inMetresPerSecond() / 1500.0;
    EXPECT_NEAR(terms.soundSpeed.inMetres(), shown_m * (factor - 1.0), 1e-9);
    EXPECT_NEAR(terms.draft.inMetres(), 0.3, 1e-9);
    EXPECT_NEAR(terms.level.inMetres(), -0.24, 1e-9);
    EXPECT_NEAR(terms.dayOffset.inMetres(), 0.05, 1e-9);
    EXPECT_NEAR(terms.reduced.inMetres(), shown_m * factor + 0.3 - 0.24 + 0.05, 1e-9);
    const auto first = soundingTerms(w, 0, 7);
    EXPECT_NEAR(first.level.inMetres(), -0.1, 1e-9);
    EXPECT_EQ(first.dayOffset, units::Length());
    EXPECT_EQ(fullDerived().checked->survey.days[1].depth_m[60], terms.reduced.inMetres());
}

TEST(SoundingsToDraw, AreTheKeptOnesAndTheLeadLineEachAPassOfItsOwn) {
    const Water w = support::fullWater();
    const CheckedSurvey& checked = *fullDerived().checked;
    const auto all = soundingsToDraw(w, checked);
    ASSERT_EQ(all.size(), checked.kept.size() + 2);
    for (std::size_t i = 0; i < 2; ++i) {
        const soundings::KeptSounding& lead = all[checked.kept.size() + i];
        const geo::WaterPoint at = w.frame->toWater(w.leadLine[i].place);
        EXPECT_EQ(lead.place, w.leadLine[i].place);
        EXPECT_EQ(lead.x_m, at.x_m);
        EXPECT_EQ(lead.y_m, at.y_m);
        EXPECT_EQ(lead.depth_m, w.leadLine[i].depth.inMetres());
        EXPECT_EQ(lead.day, 2) << "a day beyond the survey's";
        EXPECT_EQ(lead.pass, checked.kept.back().pass + 1 + static_cast<int>(i));
    }
    EXPECT_EQ(soundingsToDraw(w, CheckedSurvey()).front().pass, 0);
}

TEST(CheckSurvey, SetsAsideWhatIsOnLandSpikesAndByHandAndTellsTheCrossings) {
    Water w = support::fullWater();
    w.days[0].soundings.edit()[395].shown = units::Depth::metres(25.0);
    w.days[0].soundings.edit()[880].place.lat_deg = 55.2021; // 11 m outside the shore
    base::Progress silent;
    const auto outline = outlineOf(w).value();
    EXPECT_FALSE(outline.isAssumed);
    const auto checked = checkSurvey(w, outline.outline, silent).value();
    EXPECT_EQ(checked.survey.days[0].verdicts[395], soundings::Verdict::spike);
    EXPECT_EQ(checked.survey.days[0].verdicts[880], soundings::Verdict::outsideShore);
    EXPECT_EQ(checked.survey.days[1].verdicts[5], soundings::Verdict::byHand);
    EXPECT_EQ(checked.kept.size(), checked.survey.keptCount());
    EXPECT_EQ(checked.survey.soundingCount(), 990U);
    EXPECT_EQ(checked.tie.offsets.size(), 2U);
    EXPECT_TRUE(checked.tie.isHeld[0] && checked.tie.isHeld[1]) << "both have a gauge";
    EXPECT_EQ(checked.delays.size(), 2U);
}

/// A line of soundings of one depth, 3 m apart, through the middle of the bowl.
soundings::SurveyDay lineDay(bool isToTheEast, double depth_m) {
    soundings::SurveyDay day;
    day.passStarts = {0};
    for (int i = 0; i < 60; ++i) {
        const double along_m = 3.0 * i - 88.0;
        const geo::WaterPoint p =
            isToTheEast ? geo::WaterPoint{along_m, 0.5} : geo::WaterPoint{0.5, along_m};
        day.soundings.edit().push_back(
            {support::fullWater().frame->toEarth(p), units::Depth::metres(depth_m), {}});
    }
    return day;
}

TEST(CheckSurvey, TellsTheCrossingsAndWhatTheyAskFor) {
    Water w;
    w.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    w.days = {lineDay(true, 5.0), lineDay(false, 5.3)};
    const Derived d = derivedOf(w, Step::reduce);
    ASSERT_EQ(d.checked->crossings.size(), 1U);
    EXPECT_NEAR(d.checked->crossings[0].depthA_m, 5.0, 1e-6);
    EXPECT_NEAR(d.checked->crossings[0].depthB_m, 5.3, 1e-6);
    EXPECT_EQ(d.checked->check.count, 1U);
    EXPECT_NEAR(d.checked->check.mean_m, 0.3, 1e-6);
    EXPECT_EQ(d.checked->tie.crossingsWithOthers, (std::vector<std::size_t>{1, 1}));
    EXPECT_EQ(d.checked->delays.size(), 2U);
}

TEST(CheckSurvey, SetsAsideAPassThatTwoOthersContradict) {
    Water w = support::fullWater();
    soundings::SurveyDay wrong = support::timedBowlDay();
    wrong.setAsideByHand.edit().clear();
    wrong.keptByHand.edit().clear();
    w.days.push_back(wrong);
    for (int i = 0; i < 30; ++i) { // the middle line of the third day, 2 m too deep
        w.days[2].soundings.edit()[static_cast<std::size_t>(30 + i)].shown +=
            units::Depth::metres(2.0);
    }
    const Derived d = derivedOf(w, Step::reduce);
    std::size_t disagreeing = 0;
    for (std::size_t i = 30; i < 60; ++i) {
        disagreeing +=
            d.checked->survey.days[2].verdicts[i] == soundings::Verdict::disagrees ? 1 : 0;
    }
    EXPECT_GE(disagreeing, 24U);
}

TEST(OutlineOf, IsAssumedFifteenMetresOutsideTheSoundingsKept) {
    Water w = support::fullWater();
    w.shoreline.edit().clear();
    w.days.pop_back();
    w.days[0].soundings.edit()[450].place = {3.2, 55.2}; // a jump: no part of the hull
    const auto outline = outlineOf(w).value();
    EXPECT_TRUE(outline.isAssumed);
    const geo::WaterPoint corner = w.frame->toWater(geo::LonLat{3.1 + 0.0038, 55.2 + 0.0019});
    EXPECT_NEAR(outline.outline.box().east_m, corner.x_m + 15.0, 0.1);
    EXPECT_NEAR(outline.outline.box().west_m, -corner.x_m - 15.0, 0.1);
    EXPECT_NEAR(outline.outline.box().north_m, corner.y_m + 15.0, 0.1);
    EXPECT_NEAR(outline.outline.box().south_m, -corner.y_m - 15.0, 0.1);
    EXPECT_NEAR(outlineOf(support::fullWater())->outline.box().east_m,
                w.frame->toWater(geo::LonLat{3.104, 55.198}).x_m, 0.2);
}

TEST(Drawing, TakesTheCellThatWasChosenAndTheLeadLine) {
    EXPECT_EQ(fullDerived().drawn->report.cell, units::Length::metres(14.0));
    EXPECT_EQ(fullDerived().drawn->depth.frame().cell_m(), 14.0);
    EXPECT_EQ(fullDerived().drawn->report.soundingsUsed +
                  fullDerived().drawn->report.soundingsOutside +
                  fullDerived().drawn->report.spikes.size(),
              fullDerived().checked->kept.size() + 2);
}

TEST(Structure, TakesEachThresholdThatWasChosen) {
    const structure::StructureReport& chosen = *fullDerived().structure->report;
    Water w = support::fullWater();
    w.settings.structure = {units::Length::metres(47.0), units::Length::metres(150.0), 17.0,
                            units::Length::metres(0.7), units::Area::squareMetres(900.0)};
    const structure::StructureReport other = *derivedOf(w, Step::structure).structure->report;
    EXPECT_EQ(chosen.fineScale, units::Length::metres(43.0));
    EXPECT_EQ(chosen.broadScale, units::Length::metres(130.0));
    EXPECT_EQ(chosen.dropOffFrom_percent, 2.5);
    EXPECT_EQ(chosen.highGround, units::Length::metres(0.2));
    EXPECT_EQ(chosen.leastArea, units::Area::squareMetres(600.0));
    EXPECT_EQ(other.fineScale, units::Length::metres(47.0));
    EXPECT_EQ(other.broadScale, units::Length::metres(150.0));
    EXPECT_EQ(other.dropOffFrom_percent, 17.0);
    EXPECT_EQ(other.highGround, units::Length::metres(0.7));
    EXPECT_EQ(other.leastArea, units::Area::squareMetres(900.0));
    w.settings.structure = {};
    w.settings.cell = units::Length::metres(6.0); // three times that is less than the defaults
    const structure::StructureReport plain = *derivedOf(w, Step::structure).structure->report;
    EXPECT_EQ(plain.fineScale, units::Length::metres(18.0));
    EXPECT_EQ(plain.broadScale, units::Length::metres(60.0));
    EXPECT_EQ(plain.leastArea, units::Area::squareMetres(500.0));
    EXPECT_GE(plain.dropOffFrom_percent, 10.0);
}

TEST(Weed, IsLeftByTheShareChosenAndItsZonesTellTheTrustOfTheirCells) {
    Water w = support::fullWater();
    w.settings.weedLeft = 1.0;
    const Derived summer = derivedOf(w, Step::weed);
    w.settings.weedLeft = 0.5;
    const Derived autumn = derivedOf(w, Step::weed);
    for (std::size_t i = 0; i < summer.weed->probability.size(); ++i) {
        if (summer.drawn->depth.has(i)) {
            EXPECT_NEAR(autumn.weed->probability[i], 0.5F * summer.weed->probability[i], 1e-6F);
        }
    }
    ASSERT_FALSE(summer.weed->zones.zones.empty());
    for (const structure::Zone& zone : summer.weed->zones.zones) {
        double sum_m = 0.0;
        for (const std::size_t cell : zone.cells) {
            sum_m += static_cast<double>(summer.drawn->trust.halfWidths_m()[cell]);
        }
        EXPECT_NEAR(zone.meanTrust_m, sum_m / static_cast<double>(zone.cells.size()), 1e-9);
    }
}

TEST(Sections, KeepOutOfClosedAndTooDeepWaterAndTellTrustAndWayFromTheLaunch) {
    Water w = support::fullWater();
    w.sectionChanges.clear();
    const Derived d = derivedOf(w);
    const grid::GridFrame& f = d.drawn->depth.frame();
    const auto closed = geo::Outline::make(w.houseRules.closed[0].pieces, *w.frame).value();
    std::size_t inside = 0;
    for (std::size_t i = 0; i < f.size(); ++i) {
        const bool isShut = closed.contains(f.centre(f.cellAt(i)));
        const bool isDeep = d.drawn->depth.has(i) && d.drawn->depth.raw_m()[i] > 7.0F; // the limit
        if (isShut || isDeep || !d.drawn->mask.isActive(i)) {
            EXPECT_EQ(d.sections->sectionOfCell[i], sections::noSection) << i;
        } else {
            inside += d.sections->sectionOfCell[i] != sections::noSection ? 1 : 0;
        }
    }
    EXPECT_GT(inside, f.size() / 2);
    for (const sections::Section& section : d.sections->sections) {
        std::array<double, 3> share{};
        double all = 0.0;
        for (const std::size_t cell : section.cells) {
            const double part = static_cast<double>(d.drawn->mask.share(cell));
            share.at(static_cast<std::size_t>(d.drawn->trust.names()[cell])) += part;
            all += part;
        }
        for (std::size_t k = 0; k < 3; ++k) {
            EXPECT_NEAR(section.trustShare.at(k), share.at(k) / all, 0.02) << section.name;
        }
        const double straight_m = geo::distance_m(w.frame->toWater(*w.plan.launch), section.middle);
        EXPECT_NEAR(section.fromLaunch.inMetres(), straight_m, 0.1 * straight_m + 20.0);
        EXPECT_EQ(section.bandShare.size(), 3U);
    }
    w.settings.sectionArea = units::Area::hectares(9.0);
    EXPECT_LT(derivedOf(w).sections->sections.size(), d.sections->sections.size());
}

TEST(Sections, ChangesKeepTheReportOfTheDivisionAndThePocketsThatAreTooSmall) {
    Water w = support::fullWater();
    w.sectionChanges.resize(1);
    const Derived changed = derivedOf(w);
    w.sectionChanges.clear();
    const Derived plain = derivedOf(w);
    EXPECT_TRUE(changed.sections->refused.empty());
    EXPECT_NE(changed.sections->sectionOfCell, plain.sections->sectionOfCell);
    EXPECT_EQ(changed.sections->report.compactness, plain.sections->report.compactness);
    EXPECT_GT(plain.sections->report.compactness, 0.0);
}

TEST(Locate, TellsWhatEachLayerHoldsAtAPlace) {
    const Water w = support::fullWater();
    const Derived& d = fullDerived();
    const grid::GridFrame& f = d.drawn->depth.frame();
    std::size_t zones = 0, weeds = 0, parts = 0;
    for (std::size_t i = 0; i < f.size(); i += 3) {
        const geo::WaterPoint p = f.centre(f.cellAt(i));
        const Located here = locate(w, d, p);
        ASSERT_EQ(here.depth.has_value(), d.drawn->depth.has(i));
        EXPECT_EQ(here.trust, d.drawn->trust.halfWidthAt(p));
        EXPECT_EQ(here.trustName, d.drawn->trust.at(p));
        EXPECT_EQ(here.band,
                  here.depth ? std::optional(bandsOf(w, d).bandOf(*here.depth)) : std::nullopt);
        const auto zoneOf = [i](const structure::ZoneMap& map) {
            const auto number = map.zoneOfCell[i];
            return number < 0 ? nullptr : &map.zones[static_cast<std::size_t>(number)];
        };
        EXPECT_EQ(here.zone, zoneOf(*d.structure));
        EXPECT_EQ(here.weedZone, zoneOf(d.weed->zones));
        const auto section = d.sections->sectionOfCell[i];
        EXPECT_EQ(here.section,
                  section < 0 ? nullptr : &d.sections->sections[static_cast<std::size_t>(section)]);
        zones += here.zone != nullptr ? 1 : 0;
        weeds += here.weedZone != nullptr ? 1 : 0;
        parts += here.section != nullptr ? 1 : 0;
    }
    EXPECT_TRUE(zones > 0 && weeds > 0 && parts > 0);
    const Located nowhere = locate(w, d, {9000.0, 0.0});
    EXPECT_FALSE(nowhere.depth || nowhere.trust || nowhere.trustName || nowhere.band);
    EXPECT_TRUE(nowhere.zone == nullptr && nowhere.section == nullptr);
    EXPECT_FALSE(locate(w, {}, {0.0, 0.0}).depth);
}

TEST(GroundOfSections, SharesAreThoseOfTheCellsOfEachSection) {
    const Derived& d = fullDerived();
    const auto ground = groundOfSections(d);
    ASSERT_EQ(ground.size(), d.sections->sections.size());
    for (std::size_t s = 0; s < ground.size(); ++s) {
        const auto& cells = d.sections->sections[s].cells;
        std::vector<KindShare> wanted;
        for (const structure::ZoneKind kind : structure::allZoneKinds) {
            const auto count = std::ranges::count_if(cells, [&](std::size_t cell) {
                const auto zone = d.structure->zoneOfCell[cell];
                return zone >= 0 && d.structure->zones[static_cast<std::size_t>(zone)].kind == kind;
            });
            if (count > 0) {
                wanted.push_back(
                    {kind, static_cast<double>(count) / static_cast<double>(cells.size())});
            }
        }
        ASSERT_EQ(ground[s].size(), wanted.size());
        for (std::size_t k = 0; k < wanted.size(); ++k) {
            EXPECT_EQ(ground[s][k].kind, wanted[k].kind);
            EXPECT_DOUBLE_EQ(ground[s][k].share, wanted[k].share);
        }
    }
    Derived part = d;
    part.structure.reset();
    EXPECT_TRUE(groundOfSections(part).empty());
    part = d;
    part.sections.reset();
    EXPECT_TRUE(groundOfSections(part).empty());
}

} // namespace
