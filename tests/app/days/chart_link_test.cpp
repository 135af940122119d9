// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"

#include "app/edits/set_plan.h"
#include "app/edits/set_shoreline.h"
#include "tests/support/desk_bowl.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>

namespace {

using chart::LayerKind;
using chart::SoundingPick;
using chart::ToolKind;
using chart::ZonesPicked;
using days::ChartLink;
using side_view::BrushAct;

class ChartLinkTest : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
    }
    /// Reduces the soundings of the bowl twice over: two survey days.
    void bringInTwoDays() {
        ASSERT_TRUE(edits::addSurveyDay(open_, support::bowlDay()));
        ASSERT_TRUE(edits::setShoreline(open_, support::bowlShore()));
        auto second = support::bowlDay();
        second.soundings.edit().resize(40);
        ASSERT_TRUE(edits::addSurveyDay(open_, second));
        open_.deriveUpTo(water::Step::reduce);
        open_.jobs().finishAll();
        ASSERT_TRUE(link_.content().derived.checked);
        ASSERT_EQ(link_.content().derived.checked->survey.days.size(), 2U);
    }
    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    ChartLink link_{open_, preferences_};
};

TEST_F(ChartLinkTest, ShowsTheWaterThatIsOpenInTheUsersUnits) {
    EXPECT_EQ(link_.content().water, open_.water());
    EXPECT_TRUE(link_.content().words.isMetric());
    preferences_.setUnits(preferences::UnitSystem::imperial);
    EXPECT_FALSE(link_.content().words.isMetric());
    preferences_.setUnits(preferences::UnitSystem::metric);
    edits::setPlan(open_, "Set", [](marks::Plan& plan) { plan.count = 5; });
    EXPECT_EQ(link_.content().water->plan.count, 5);
}

TEST_F(ChartLinkTest, ShowsWhatIsSeenFirstOfAWaterAndLetsNothingBeDoneToIt) {
    open_water::OpenWater other;
    ChartLink link(other, preferences_);
    open_water::FirstLook look{std::make_shared<const water::Water>(), {}};
    look.kept.drawn = std::make_shared<const surface::DrawnWater>();
    bool isGiven = false;
    link.ask<chart::PointMade>("Where?", ToolKind::note,
                               [&](const chart::PointMade&) { isGiven = true; });
    emit other.glimpsed(look);
    EXPECT_FALSE(link.isAsking()) << "what was asked belongs to another water";
    EXPECT_EQ(link.content().water, look.water);
    EXPECT_EQ(link.content().derived.drawn, look.kept.drawn);
    EXPECT_TRUE(link.content().age.isBeingRead);
    link.ask<chart::PointMade>("Where?", ToolKind::note,
                               [&](const chart::PointMade&) { isGiven = true; });
    link.give(chart::PointMade{});
    EXPECT_FALSE(isGiven);
    preferences_.setUnits(preferences::UnitSystem::imperial);
    EXPECT_EQ(link.content().water, look.water) << "in other units, still the same";
    emit other.openingEnded(); // in vain
    EXPECT_EQ(link.content().water, other.water());
    EXPECT_FALSE(link.content().derived.drawn);
    EXPECT_FALSE(link.content().age.isBeingRead);
    link.give(chart::PointMade{});
    EXPECT_TRUE(isGiven);
}

TEST_F(ChartLinkTest, BeginsWithClosedWaterOnTheChartAndWithoutTracksMarksAndLog) {
    for (const LayerKind kind : chart::allLayerKinds) {
        const bool isLater = kind == LayerKind::soundings || kind == LayerKind::crossings ||
                             kind == LayerKind::nextLines || kind == LayerKind::marks ||
                             kind == LayerKind::log || kind == LayerKind::rates ||
                             kind == LayerKind::change || kind == LayerKind::graticule;
        EXPECT_EQ(link_.content().shown.contains(kind), !isLater) << static_cast<int>(kind);
    }
    QSignalSpy changed(&link_, &ChartLink::contentChanged);
    link_.setShown(LayerKind::marks, true);
    link_.setShown(LayerKind::marks, true);
    EXPECT_TRUE(link_.content().shown.contains(LayerKind::marks));
    link_.setShown(LayerKind::marks, false);
    EXPECT_FALSE(link_.content().shown.contains(LayerKind::marks));
    EXPECT_EQ(changed.count(), 2);
}

TEST_F(ChartLinkTest, EachChoiceReachesItsOwnMemberAndIsToldOnce) {
    QSignalSpy changed(&link_, &ChartLink::contentChanged);
    const auto& content = link_.content();
    link_.selectMark(3);
    link_.selectMark(3);
    EXPECT_EQ(content.selection.mark, 3);
    EXPECT_EQ(changed.count(), 1);
    link_.selectSection(4);
    link_.selectZone(5);
    link_.selectStay(logbook::StayId(6));
    EXPECT_EQ(content.selection.mark, 3);
    EXPECT_EQ(content.selection.section, 4);
    EXPECT_EQ(content.selection.zone, 5);
    EXPECT_EQ(content.selection.stay, logbook::StayId(6));
    EXPECT_EQ(changed.count(), 4);
    const auto lines = std::make_shared<surface::SurveyTrip>();
    const auto track = std::make_shared<rates::Track>();
    const auto rates = std::make_shared<chart::ShownRates>();
    const auto offered = std::make_shared<std::vector<logbook::Stay>>();
    const auto backdrop = std::make_shared<water::Backdrop>();
    link_.setNextLines(lines);
    link_.setDayTrack(track);
    link_.setRates(rates);
    link_.setOfferedStays(offered);
    link_.setLogAsked(water::ReviewQuestion());
    link_.setBackdrop(backdrop, 0.3);
    EXPECT_EQ(content.nextLines, lines);
    EXPECT_EQ(content.dayTrack, track);
    EXPECT_EQ(content.rates, rates);
    EXPECT_EQ(content.offeredStays, offered);
    EXPECT_EQ(content.logAsked, water::ReviewQuestion());
    EXPECT_EQ(content.backdrop, backdrop);
    EXPECT_EQ(content.backdropStrength, 0.3);
    EXPECT_EQ(changed.count(), 10);
    link_.setBackdrop(backdrop, 0.4);
    EXPECT_EQ(content.backdropStrength, 0.4);
    EXPECT_EQ(changed.count(), 11);
    link_.setBackdrop(backdrop, 0.4);
    link_.setNextLines(lines);
    link_.setLogAsked(water::ReviewQuestion());
    link_.setRates(rates);
    link_.setOfferedStays(offered);
    EXPECT_EQ(changed.count(), 11);
}

TEST_F(ChartLinkTest, PickingZonesOfAnotherFamilyLetsGoOfTheChosenOne) {
    link_.pickZones(ZonesPicked::structure);
    link_.selectZone(2);
    link_.pickZones(ZonesPicked::structure);
    EXPECT_EQ(link_.content().selection.zone, 2);
    link_.stopPickingZones(ZonesPicked::weed);
    EXPECT_EQ(link_.content().zonesPicked, ZonesPicked::structure);
    EXPECT_EQ(link_.content().selection.zone, 2);
    link_.pickZones(ZonesPicked::weed);
    EXPECT_EQ(link_.content().zonesPicked, ZonesPicked::weed);
    EXPECT_FALSE(link_.content().selection.zone);
    link_.stopPickingZones(ZonesPicked::weed);
    EXPECT_EQ(link_.content().zonesPicked, ZonesPicked::none);
}

TEST_F(ChartLinkTest, AnotherWaterForgetsWhatWasChosenInTheOneBefore) {
    link_.selectMark(1);
    link_.selectSection(2);
    link_.selectZone(3);
    link_.selectStay(logbook::StayId(4));
    QSignalSpy chosen(&link_, &ChartLink::selectionChanged);
    link_.setNextLines(std::make_shared<surface::SurveyTrip>());
    link_.setDayTrack(std::make_shared<rates::Track>());
    link_.setRates(std::make_shared<chart::ShownRates>());
    link_.setOfferedStays(std::make_shared<std::vector<logbook::Stay>>());
    link_.setLogAsked(water::ReviewQuestion());
    ASSERT_TRUE(open_.create(folder_.filePath("other.gpkg"), "Other Water"));
    const auto& content = link_.content();
    EXPECT_EQ(content.water->name, "Other Water");
    EXPECT_EQ(link_.selection(), chart::Selection());
    EXPECT_GE(chosen.count(), 1);
    EXPECT_FALSE(content.nextLines || content.dayTrack || content.rates || content.offeredStays ||
                 content.logAsked);
}

TEST_F(ChartLinkTest, PlacesAreTakenUntilThereAreEnough) {
    QSignalSpy asking(&link_, &ChartLink::askingChanged);
    std::vector<geo::WaterPoint> taken;
    link_.give(chart::PointMade{{9, 9}});
    link_.ask<chart::PointMade>("Point at two", ToolKind::note, [&](const chart::PointMade& made) {
        taken.push_back(made.at);
        return taken.size() < 2;
    });
    EXPECT_EQ(link_.tool(), ToolKind::note);
    EXPECT_EQ(link_.prompt(), "Point at two");
    EXPECT_TRUE(link_.isAsking());
    link_.give(chart::PointMade{{1, 2}});
    EXPECT_TRUE(link_.isAsking());
    link_.give(chart::PointMade{{3, 4}});
    EXPECT_FALSE(link_.isAsking());
    EXPECT_EQ(link_.prompt(), "");
    link_.give(chart::PointMade{{5, 6}});
    EXPECT_EQ(taken, (std::vector<geo::WaterPoint>{{1, 2}, {3, 4}}));
    EXPECT_EQ(asking.count(), 2);
}

TEST_F(ChartLinkTest, WhatTakesAPlaceMayAskForTheNextThing) {
    bool isLineTaken = false;
    link_.ask<chart::PointMade>("Point", ToolKind::note, [&](const chart::PointMade&) {
        link_.ask<chart::StrokeMade>("Draw", ToolKind::stroke, [&](const chart::StrokeMade& made) {
            isLineTaken = made.line.size() == 2;
            return false;
        });
        return false;
    });
    link_.give(chart::PointMade{{1, 1}});
    EXPECT_EQ(link_.prompt(), "Draw");
    EXPECT_EQ(link_.tool(), ToolKind::stroke);
    link_.give(chart::StrokeMade{{{0, 0}, {1, 1}}});
    EXPECT_TRUE(isLineTaken);
    EXPECT_FALSE(link_.isAsking());
}

TEST_F(ChartLinkTest, LinesAreTakenUntilOneIsEnough) {
    int lines = 0;
    link_.ask<chart::StrokeMade>("Draw", ToolKind::stroke,
                                 [&](const chart::StrokeMade&) { return ++lines < 2; });
    link_.give(chart::StrokeMade{{{0, 0}, {1, 1}}});
    EXPECT_TRUE(link_.isAsking());
    link_.give(chart::StrokeMade{{{0, 0}, {1, 1}}});
    EXPECT_FALSE(link_.isAsking());
    EXPECT_EQ(lines, 2);
}

TEST_F(ChartLinkTest, ARingIsTakenOnceWithTheToolAskedFor) {
    for (const ToolKind tool : {ToolKind::polygon, ToolKind::lasso}) {
        std::vector<geo::Ring> rings;
        link_.ask<chart::RingMade>("Go round", tool, [&](const chart::RingMade& made) {
            EXPECT_FALSE(link_.isAsking()) << "what is said of it now is not wiped out";
            rings.push_back(made.ring);
        });
        EXPECT_EQ(link_.tool(), tool);
        link_.give(chart::RingMade{{{0, 0}, {1, 0}, {1, 1}}});
        EXPECT_FALSE(link_.isAsking());
        link_.give(chart::RingMade{{{0, 0}, {1, 0}, {1, 1}}});
        ASSERT_EQ(rings.size(), 1U);
        EXPECT_EQ(rings[0].size(), 3U);
    }
}

TEST_F(ChartLinkTest, TheShoreIsReshapedUntilAskingIsStopped) {
    std::vector<double> east_m;
    link_.ask<chart::ShoreMade>("Reshape", ToolKind::shore, [&](const chart::ShoreMade& made) {
        east_m.push_back(made.at.x_m);
        return true;
    });
    EXPECT_EQ(link_.tool(), ToolKind::shore);
    chart::ShoreMade made;
    made.at = {7, 8};
    link_.give(made);
    link_.give(made);
    EXPECT_TRUE(link_.isAsking());
    link_.stopAsking();
    link_.give(made);
    EXPECT_EQ(east_m, (std::vector<double>{7, 7}));
}

TEST_F(ChartLinkTest, AskingForSomethingElseDropsWhatWasAskedBefore) {
    int taken = 0;
    const auto count = [&](auto&&...) { ++taken; };
    link_.ask<chart::ShoreMade>("Shore", ToolKind::shore, count);
    link_.askSoundings("Soundings", BrushAct::takeBack, count);
    EXPECT_EQ(link_.brush(), BrushAct::takeBack);
    link_.ask<chart::PointMade>("Place", ToolKind::note,
                                [](const chart::PointMade&) { return true; });
    EXPECT_FALSE(link_.brush());
    link_.give(chart::ShoreMade{});
    link_.give(chart::RingMade{{{0, 0}, {1, 0}, {1, 1}}});
    link_.giveSoundings(0, {1});
    EXPECT_EQ(taken, 0);
}

TEST_F(ChartLinkTest, SoundingsGivenAreThoseThatTheActCanChangeOfTheirOwnDay) {
    bringInTwoDays();
    auto water = *open_.water();
    std::vector<water::SoundingChoice> choices;
    const auto take = [&](const water::SoundingChoice& choice) { choices.push_back(choice); };
    link_.askSoundings("Set aside", BrushAct::setAside, take);
    EXPECT_EQ(link_.tool(), ToolKind::lasso);
    const auto& verdicts = link_.content().derived.checked->survey.days[1].verdicts;
    std::vector<std::size_t> kept;
    std::vector<std::size_t> aside;
    for (std::size_t i = 3; i < 9; ++i) {
        (verdicts[i] == soundings::Verdict::kept ? kept : aside).push_back(i);
    }
    ASSERT_FALSE(kept.empty());
    link_.giveSoundings(1, {3, 4, 5, 6, 7, 8});
    link_.askSoundings("Take back", BrushAct::takeBack, take);
    link_.giveSoundings(1, {3, 4, 5, 6, 7, 8});
    ASSERT_EQ(choices.size(), 2U);
    EXPECT_EQ(choices[0], (water::SoundingChoice{{}, kept}));
    EXPECT_EQ(choices[1], (water::SoundingChoice{{}, aside}));
    EXPECT_TRUE(link_.isAsking()) << "until it is stopped";
}

TEST_F(ChartLinkTest, SoundingsGoneRoundAreThoseWithinTheRing) {
    bringInTwoDays();
    std::vector<water::SoundingChoice> choices;
    link_.askSoundings("Set aside", BrushAct::setAside,
                       [&](const water::SoundingChoice& choice) { choices.push_back(choice); });
    const geo::Ring ring{{-60, -60}, {60, -60}, {60, 60}, {-60, 60}};
    link_.give(chart::RingMade{ring});
    ASSERT_EQ(choices.size(), 1U);
    const auto& days = link_.content().derived.checked->survey.days;
    ASSERT_EQ(choices[0].size(), 2U);
    std::vector<std::size_t> expected;
    for (std::size_t i = 0; i < days[0].points.size(); ++i) {
        const geo::WaterPoint p = days[0].points[i];
        if (std::fabs(p.x_m) < 60 && std::fabs(p.y_m) < 60 &&
            days[0].verdicts[i] == soundings::Verdict::kept) {
            expected.push_back(i);
        }
    }
    EXPECT_FALSE(expected.empty());
    EXPECT_EQ(choices[0][0], expected);
    EXPECT_TRUE(link_.isAsking());
}

TEST_F(ChartLinkTest, OneSoundingOrOneCrossingIsChosenThatIsThere) {
    bringInTwoDays();
    QSignalSpy chosen(&link_, &ChartLink::selectionChanged);
    QSignalSpy content(&link_, &ChartLink::contentChanged);
    link_.selectSounding(SoundingPick{1, 39});
    EXPECT_EQ(link_.selection().sounding, (SoundingPick{1, 39}));
    EXPECT_EQ(link_.chosenOnTrack(), (SoundingPick{1, 39}));
    ASSERT_TRUE(link_.chosenPlace());
    EXPECT_EQ(*link_.chosenPlace(), link_.content().derived.checked->survey.days[1].points[39]);
    EXPECT_EQ(chosen.count(), 1);
    EXPECT_EQ(content.count(), 0) << "the layers need not be painted again";
    link_.selectSounding(SoundingPick{1, 39});
    EXPECT_EQ(chosen.count(), 1) << "nothing new";
    link_.selectSounding(SoundingPick{1, 40});
    EXPECT_FALSE(link_.selection().sounding) << "there is no such sounding";
    EXPECT_FALSE(link_.chosenPlace());
    link_.selectSounding(SoundingPick{2, 0});
    EXPECT_FALSE(link_.selection().sounding) << "there is no such day";
    link_.selectCrossing(link_.content().derived.checked->crossings.size());
    EXPECT_FALSE(link_.selection().crossing);
}

TEST_F(ChartLinkTest, LookingAlongATrackIsOfTheDayAskedForUntilStopped) {
    std::vector<std::optional<int>> looked;
    QObject::connect(&link_, &ChartLink::lookedAlong,
                     [&](std::optional<int> day) { looked.push_back(day); });
    std::vector<geo::WaterPoint> places;
    QObject::connect(&link_, &ChartLink::lookedAt,
                     [&](geo::WaterPoint place) { places.push_back(place); });
    link_.lookAlong(1);
    link_.stopLookingAlong();
    link_.lookAt({3, 4});
    EXPECT_EQ(looked, (std::vector<std::optional<int>>{1, std::nullopt}));
    EXPECT_EQ(places, (std::vector<geo::WaterPoint>{{3, 4}}));
}

} // namespace
