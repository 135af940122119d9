// SPDX-License-Identifier: GPL-3.0-or-later
// What the steps of the survey day say, whole sentences and rows, in both unit systems.
#include "app/days/survey_day/bands_view.h"
#include "app/days/survey_day/check_view.h"
#include "app/days/survey_day/crossings_view.h"
#include "app/days/survey_day/drawing_view.h"
#include "app/days/survey_day/hypsography_view.h"
#include "app/days/survey_day/lead_line_view.h"
#include "app/days/survey_day/next_view.h"
#include "app/days/survey_day/sections_view.h"
#include "app/days/survey_day/shoreline_view.h"
#include "app/days/survey_day/sounding_view.h"
#include "app/days/survey_day/soundings_view.h"
#include "app/days/survey_day/structure_view.h"
#include "app/days/survey_day/survey_day_fields.h"
#include "app/days/survey_day/weed_view.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace survey_day = days::survey_day;

namespace {

using preferences::UnitSystem;
using soundings::Verdict;
using units::Area;
using units::Depth;
using units::Length;
using units::Volume;

const wording::Words metric(UnitSystem::metric);
const wording::Words imperial(UnitSystem::imperial);

/// The star with a form of which every figure is another.
struct Star {
    Star() {
        auto chart = std::make_shared<water::WaterForm>(*derived.form);
        auto& h = chart->hypsography;
        h.area = Area::hectares(50.0);
        h.volume = Volume::cubicMetres(2.5e6);
        h.meanDepth = Depth::metres(5.0);
        h.maxDepth = Depth::metres(12.5);
        h.shoreLength = Length::metres(3200.0);
        h.shoreDevelopment = 1.277;
        h.steps = {{Depth(), h.area, h.volume},
                   {Depth::metres(6.0), Area::hectares(20.0), Volume::cubicMetres(6e5)}};
        auto low = std::make_shared<water::WaterForm>(*chart);
        low->rise = Length::metres(-0.5);
        low->hypsography.area = Area::hectares(45.0);
        low->hypsography.volume = Volume::cubicMetres(2.2e6);
        low->hypsography.meanDepth = Depth::metres(4.8);
        low->hypsography.maxDepth = Depth::metres(12.0);
        low->hypsography.steps = {
            {Depth(), Area::hectares(45.0), Volume::cubicMetres(2.2e6)},
            {Depth::metres(6.0), Area::hectares(18.0), Volume::cubicMetres(5e5)}};
        low->bandMeasures = {
            {Depth(), Depth::metres(2), Area::hectares(9.0), Volume::cubicMetres(90000.0)},
            {Depth::metres(2), std::nullopt, Area::hectares(36.0), Volume::cubicMetres(2.11e6)}};
        derived.form = chart;
        derived.today = low;
    }
    survey_day::ViewInput input(const wording::Words& words) const {
        return {water, derived, words, {}};
    }
    water::Water water = support::starWater();
    water::Derived derived = support::starDerived();
};

TEST(DrawingFigures, TellTheFormAtBothLevels) {
    const Star star;
    const auto view = survey_day::drawingViewOf(star.input(metric));
    EXPECT_TRUE(view.hasToday);
    EXPECT_EQ(view.form, (std::vector<QStringList>{{"area", "50.0 ha", "45.0 ha"},
                                                   {"volume", QStringLiteral("2.50 million m³"),
                                                    QStringLiteral("2.20 million m³")},
                                                   {"mean depth", "5.0 m", "4.8 m"},
                                                   {"deepest", "12.5 m", "12.0 m"},
                                                   {"bank", "3.2 km", ""},
                                                   {"shore development", "1.28", ""}}));
    const auto feet = survey_day::drawingViewOf(star.input(imperial));
    EXPECT_EQ(feet.form[0], (QStringList{"area", "124 ac", "111 ac"}));
    EXPECT_EQ(feet.form[3], (QStringList{"deepest", "41.0 ft", "39.4 ft"}));
}

TEST(DrawingFigures, TellHowItWasDrawn) {
    Star star;
    auto drawn = std::make_shared<surface::DrawnWater>(*star.derived.drawn);
    auto& report = drawn->report;
    report.cell = Length::metres(5.0);
    report.cells = 22800;
    report.soundingsUsed = 4120;
    report.spikes = {1, 2, 3};
    report.heldOut = surface::HeldOutError{0.17, 0.24, 1480};
    report.stiffness = 300.0;
    report.contourStiffness = 30.0;
    star.derived.drawn = drawn;
    star.water.settings.cell = Length::metres(5.0);
    star.water.plan.day.levelChange = Length::metres(-0.5);
    star.derived.notes = {"No gauge was read."};
    auto view = survey_day::drawingViewOf(star.input(metric));
    EXPECT_EQ(view.state, "cells of 5.0 m, off by 0.17 m");
    EXPECT_EQ(view.how, (std::vector<QStringList>{{"cells", "22,800 of 5.0 m"},
                                                  {"soundings used", "4,120"},
                                                  {"left out as spikes", "3"},
                                                  {"usual error at soundings kept back", "0.17 m"},
                                                  {"mean error at soundings kept back", "0.24 m"},
                                                  {"stiffness, along contours", "300, 30"}}));
    EXPECT_EQ(view.cell, "5.0 m");
    EXPECT_EQ(view.level, QStringLiteral("−0.50 m"));
    EXPECT_EQ(view.notes, (std::vector<QString>{"No gauge was read."}));
    const auto& trust = drawn->trust;
    using surface::TrustName;
    EXPECT_EQ(view.trust, QStringLiteral("%1 sounded, %2 inferred, %3 a guess")
                              .arg(wording::Words::share(trust.shareOf(TrustName::sounded)),
                                   wording::Words::share(trust.shareOf(TrustName::inferred)),
                                   wording::Words::share(trust.shareOf(TrustName::guess))));
    for (const auto& [stiffness, along, says] :
         {std::tuple(100.0, 0.0, "Light smoothing, no smoother along contours than across"),
          {300.0, 10.0, "Moderate smoothing, smoother along contours than across"},
          {1000.0, 11.0, "Strong smoothing, much smoother along"},
          {1001.0, 100.0, "Very strong smoothing, much"}}) {
        report.stiffness = stiffness;
        report.contourStiffness = along;
        EXPECT_TRUE(survey_day::drawingViewOf(star.input(metric)).chosen.contains(says)) << says;
    }
    report.isChoiceKept = true;
    EXPECT_TRUE(survey_day::drawingViewOf(star.input(metric)).chosen.contains("kept from"));
    report.heldOut.reset();
    view = survey_day::drawingViewOf(star.input(metric));
    EXPECT_TRUE(view.chosen.contains("for want of soundings"));
    EXPECT_EQ(view.state, "cells of 5.0 m");
    star.derived.failures[water::Step::level] = {base::ErrorKind::unusableInput,
                                                 "no water is left at -9.00 m", "level",
                                                 "choose a higher level"};
    EXPECT_TRUE(survey_day::drawingViewOf(star.input(metric)).notes.back().contains("no water is"));
    EXPECT_TRUE(view.canDraw == !star.water.days.empty());
    star.water.leadLine.edit().resize(1);
    EXPECT_TRUE(survey_day::drawingViewOf(star.input(metric)).canDraw);
}

TEST(HypsographyFigures, PutChartAndTodayIntoTheirOwnColumns) {
    const Star star;
    const auto view = survey_day::hypsographyViewOf(star.input(metric));
    const auto row = std::ranges::find_if(view.rows, [](const auto& r) { return r[0] == "6"; });
    ASSERT_NE(row, view.rows.end());
    EXPECT_EQ(*row, (QStringList{"6", "20.00", "600.0", "18.00", "500.0"}));
    EXPECT_TRUE(view.about.contains(QStringLiteral("today at −0.50 m from it")));
    EXPECT_EQ(view.depthTitle, "depth, m");
    EXPECT_EQ(view.areaTitle, "area, ha");
    EXPECT_EQ(view.volumeTitle, QStringLiteral("volume, 1000 m³"));
    EXPECT_NEAR(view.area.front().x(), 45.0, 1e-9);
    EXPECT_NEAR(view.volume.front().x(), 2200.0, 1e-9);
    EXPECT_NEAR(view.chartArea.front().x(), 50.0, 1e-9);
    EXPECT_NEAR(view.chartVolume.front().x(), 2500.0, 1e-9);
    EXPECT_EQ(view.depthTick, 5.0) << "12.5 m in fewer than six";
    EXPECT_EQ(view.rows[1][0], "0.5") << "12.5 m in fewer than thirty";
    EXPECT_EQ(view.rows.size(), 26U);
}

TEST(BandsFigures, AreTodaysAndReachDownToTheLimit) {
    const Star star;
    const auto view = survey_day::bandsViewOf(star.input(metric));
    EXPECT_EQ(view.bands, (std::vector<QStringList>{
                              {"0 to 2 m", "9.0 ha", "20 %", QStringLiteral("90,000 m³")},
                              {"over 2 m", "36.0 ha", "80 %", QStringLiteral("2.11 million m³")}}));
    // At 9.144 m: 18 ha x (1 - 3.144 / 6) = 8.568 ha are deeper.
    EXPECT_EQ(view.worthFishing,
              QStringLiteral("Down to the limit: 36.4 ha (90.0 ac), 81 % of the water at today's "
                             "level, −0.50 m."));
    EXPECT_EQ(view.edges, "2, 4, 6, 9.1, 14, 20 m");
    EXPECT_EQ(view.limit, "9.1 m");
    EXPECT_EQ(view.state, "7 bands, 4 zones");
    auto without = star;
    without.derived.structure.reset();
    EXPECT_EQ(survey_day::bandsViewOf(without.input(metric)).state, "7 bands, limit 9.1 m");
}

TEST(StructureFigures, SayWhatWasChosenAndWhatWasUsed) {
    Star star;
    auto zones = std::make_shared<structure::ZoneMap>(*star.derived.structure);
    structure::StructureReport report;
    report.dropOffFrom_percent = 12.6;
    report.dropOffDownTo_percent = 9.6;
    report.gentleBelow_percent = 6.0;
    report.highGround = Length::metres(0.45);
    report.broadScale = Length::metres(60.0);
    report.fineScale = Length::metres(15.0);
    report.leastArea = Area::squareMetres(500.0);
    report.piecesJoined = 17;
    zones->report = report;
    star.derived.structure = zones;
    auto& chosen = star.water.settings.structure;
    chosen.dropOffFrom_percent = 12.6;
    chosen.highGround = Length::metres(0.45);
    chosen.leastArea = Area::hectares(0.3);
    chosen.fineScale = Length::metres(11.0);
    chosen.broadScale = Length::metres(70.0);
    const auto view = survey_day::structureViewOf(star.input(metric));
    EXPECT_EQ(view.dropOff, "13 %");
    EXPECT_EQ(view.highGround, "0.45 m");
    EXPECT_EQ(view.leastSize, "0.3 ha");
    EXPECT_EQ(view.fineScale, "11.0 m");
    EXPECT_EQ(view.broadScale, "70.0 m");
    EXPECT_EQ(view.used,
              "In use: a drop-off has a slope of 13 % somewhere and reaches on down to 9.6 %; "
              "shelves and flats are gentler than 6 %. Ground is high or low from 0.45 m above or "
              "below what lies within 60.0 m. Slope is taken over 15.0 m. Pieces below 0.05 ha "
              "join what surrounds them (17 did).");
    chosen = {};
    const auto usual = survey_day::structureViewOf(star.input(metric));
    EXPECT_EQ(usual.dropOff + usual.highGround + usual.leastSize + usual.fineScale +
                  usual.broadScale,
              "");
}

TEST(WeedFigures, SayHowDeepItGrowsAndWhatDoesNotCount) {
    Star star;
    auto map = std::make_shared<weed::WeedMap>(*star.derived.weed);
    map->growthLimit = Depth::metres(3.0);
    map->growthLimitLow = Depth::metres(2.5);
    map->growthLimitHigh = Depth::metres(3.6);
    map->notesOutside = 2;
    star.derived.weed = map;
    star.water.settings.secchi = Depth::metres(2.2);
    star.water.settings.weedLeft = 0.7;
    const auto view = survey_day::weedViewOf(star.input(metric));
    EXPECT_EQ(view.growth, "Weed grows down to about 3.0 m (published relations: 2.5 to 3.6 m). "
                           "2 notes lie outside the water and do not count.");
    EXPECT_EQ(view.secchi, "2.2 m");
    EXPECT_EQ(view.weedLeft, 0.7);
    EXPECT_EQ(view.state, "no notes, weed to 3.0 m");
    EXPECT_TRUE(survey_day::weedViewOf(star.input(imperial)).growth.contains("8.2 to 11.8 ft"));
    map->growthLimit.reset();
    EXPECT_TRUE(survey_day::weedViewOf(star.input(metric)).growth.startsWith("Without a Secchi"));
}

TEST(ShorelineFigures, TellAreaIslandsBankLevelAndLaunch) {
    Star star;
    star.water.shoreline.edit().resize(1);
    star.water.shoreline.edit()[0].islands.resize(1);
    star.water.chartLevel = units::WaterLevel::metresOnGauge(12.3);
    const auto& outline = *star.derived.outline;
    const auto view = survey_day::shorelineViewOf(star.input(metric));
    EXPECT_EQ(view.facts,
              QStringLiteral("%1 of water, no island, %2 of bank.")
                  .arg(metric.area(outline.area()), metric.length(outline.shoreLength())));
    EXPECT_EQ(view.state, metric.area(outline.area()) + ", no island");
    EXPECT_EQ(view.chartLevel, "+12.30 m");
    EXPECT_EQ(view.launch, wording::Words::place(*star.water.plan.launch));
    EXPECT_TRUE(view.hasShore && view.hasIslands && view.canTrace);
    star.derived.outlineIsAssumed = true;
    EXPECT_EQ(survey_day::shorelineViewOf(star.input(metric)).state, "brought in");
    star.water.shoreline.edit().clear();
    EXPECT_EQ(survey_day::shorelineViewOf(star.input(metric)).state, "assumed round the soundings");
    const std::vector<geo::Ring> islands{{{0, 0}, {0, 9}, {9, 0}}, {{50, 0}, {50, 9}, {59, 0}}};
    star.water.shoreline.edit().resize(1);
    star.derived.outlineIsAssumed = false;
    star.derived.outline = std::make_shared<geo::Outline>(
        geo::Outline::make({{{{-200, -200}, {200, -200}, {200, 200}, {-200, 200}}, islands}},
                           *star.water.frame)
            .value());
    EXPECT_TRUE(survey_day::shorelineViewOf(star.input(metric)).state.endsWith(", 2 islands"));
}

TEST(FieldFigures, SayWhatWasTrueThatDay) {
    soundings::SurveyDay day;
    day.name = "first";
    day.source = "log.csv";
    day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(-0.35));
    day.waterTemperature = units::Temperature::celsius(12.5);
    day.sounder.draft = Depth::metres(0.25);
    day.sounder.assumedSoundSpeed = units::Speed::metresPerSecond(1463.0);
    const auto fields = survey_day::surveyDayFieldsOf(day, metric);
    EXPECT_EQ(fields.name, "first");
    EXPECT_EQ(fields.source, "log.csv");
    EXPECT_EQ(fields.level, QStringLiteral("−0.35 m"));
    EXPECT_EQ(fields.waterTemperature, QStringLiteral("12.5 °C"));
    EXPECT_EQ(fields.draft, "0.25 m");
    EXPECT_EQ(fields.soundSpeed, "1463 m/s");
    water::Water water;
    water.days = {day};
    water.days[0].soundings.edit().resize(3);
    const auto view = survey_day::soundingsViewOf({water, {}, imperial, {}});
    EXPECT_EQ(view.rows[0],
              (QStringList{"first", "3", QStringLiteral("−1.1 ft"), QStringLiteral("54.5 °F")}));
    EXPECT_EQ(view.state, "1 day, 3 soundings");
    water.leadLine.edit().resize(2);
    EXPECT_EQ(survey_day::soundingsViewOf({water, {}, metric, {}}).others,
              "and 2 soundings by lead line");
    water.days[0].gauge = soundings::Gauge::table(
        {{units::Moment(), units::WaterLevel::metresOnGauge(1.0)},
         {units::Moment(std::chrono::hours(1)), units::WaterLevel::metresOnGauge(1.2)}});
    EXPECT_EQ(survey_day::soundingsViewOf({water, {}, metric, {}}).rows[0][2], "table");
    water.chartLevel = units::WaterLevel::metresOnGauge(0.8);
    EXPECT_TRUE(survey_day::leadLineViewOf({water, {}, metric, {}})
                    .about.startsWith("Depths count from chart level (+0.80 m on the gauge)"));
    EXPECT_EQ(survey_day::bottomNames(),
              (QStringList{"not felt", "soft", "gravel", "rock", "weed"}));
    EXPECT_EQ(survey_day::bottomAt(1), soundings::Bottom::soft);
    EXPECT_EQ(survey_day::bottomAt(4), soundings::Bottom::weed);
    EXPECT_FALSE(survey_day::bottomAt(0) || survey_day::bottomAt(5));
}

TEST(SectionFigures, ACardHasEveryFigureOfItsSection) {
    Star star;
    auto map = std::make_shared<sections::SectionMap>(*star.derived.sections);
    sections::Section& s = map->sections[1];
    s.area = Area::hectares(4.2);
    s.meanDepth = Depth::metres(3.1);
    s.maxDepth = Depth::metres(7.7);
    s.bandShare = {0.30, 0.004, 0.0, 0.696, 0.0, 0.0, 0.0};
    s.dropOff = Length::metres(310.0);
    s.weedShare = 0.23;
    s.shore = Length::metres(415.0);
    s.fromLaunch = Length::metres(640.0);
    s.trustShare = {0.5, 0.3, 0.2};
    star.derived.sections = map;
    const auto fact = [&](const wording::Words& words, const char* name) {
        const auto view = survey_day::sectionsViewOf(
            star.input(words), survey_day::countSections(star.water, star.derived));
        for (const auto& [what, says] : view.cards[1]) {
            if (what == name) {
                return QString(says).replace(QChar::Nbsp, ' ');
            }
        }
        return QStringLiteral("(nothing)");
    };
    EXPECT_EQ(fact(metric, "Area"), "4.2 ha (10.4 ac)");
    EXPECT_EQ(fact(imperial, "Area"), "10.4 ac (4.2 ha)");
    EXPECT_EQ(fact(metric, "Depth"), "3.1 m on average, down to 7.7 m");
    EXPECT_EQ(fact(metric, "Bands"), QStringLiteral("0 to 2 m 30 % · 6 to 9.1 m 70 %"));
    EXPECT_EQ(fact(metric, "Drop-off"), "310 m of edge");
    EXPECT_EQ(fact(metric, "Weed"), "likely on 23 %");
    EXPECT_EQ(fact(metric, "Bank"), "415 m");
    EXPECT_EQ(fact(metric, "Launch"), "640 m away over water");
    EXPECT_EQ(fact(metric, "Trust"), QStringLiteral("sounded 50 % · inferred 30 % · a guess 20 %"));
    const auto view = survey_day::sectionsViewOf(
        star.input(metric), survey_day::countSections(star.water, star.derived));
    EXPECT_EQ(view.rows[1].mid(0, 4), (QStringList{"Kiln Bay", "4.2 ha", "3.1 m", "23 %"}));
    EXPECT_EQ(view.state, "8 sections of about 4.0 ha");
    star.water.plan.launch.reset();
    EXPECT_EQ(fact(metric, "Launch"), "(nothing)");
    EXPECT_EQ(fact(metric, "Tomorrow"),
              "wind not said under Tomorrow: what it raises here is not known");
    star.water.plan.day.wind = {units::Bearing(), units::Speed()};
    EXPECT_EQ(fact(metric, "Tomorrow"), "calm");
}

} // namespace
