// SPDX-License-Identifier: GPL-3.0-or-later
// The reduction as the program runs it, from survey days to what is drawn: nothing that a rule
// finds in its own unit may be lost on the way.
#include "core/water/document/water.h"
#include "core/water/steps/derive.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace {

using soundings::Verdict;

constexpr double usual_m = 6.0;
constexpr std::size_t perPass = 60;

/// A square of 200 m with its middle at 3.1 E 55.2 N; 0.0001 degrees of latitude are 11.13 m.
const geo::WaterFrame& frame() {
    static const geo::WaterFrame made = *geo::WaterFrame::centredOn({3.1, 55.2});
    return made;
}

/// A pass eastwards through the square, a sounding each three metres and a second and a half.
soundings::SurveyDay passAt(double y_m, int day, double depth_m = usual_m) {
    soundings::SurveyDay made;
    made.id = soundings::SurveyDayId(day + 1);
    made.name = "day " + std::to_string(day);
    made.passStarts = {0};
    const auto start = units::Moment(std::chrono::hours(490000 + 24 * day));
    for (std::size_t i = 0; i < perPass; ++i) {
        const geo::WaterPoint p{-88.5 + 3.0 * static_cast<double>(i), y_m};
        made.soundings.edit().push_back({frame().toEarth(p), units::Depth::metres(depth_m),
                                         start + std::chrono::milliseconds(1500 * i)});
    }
    return made;
}

water::Water waterWith(std::vector<soundings::SurveyDay> days) {
    water::Water water;
    water.frame = frame();
    geo::LonLatPiece shore;
    for (const auto& [x_m, y_m] :
         {std::pair{-100.0, -100.0}, {100.0, -100.0}, {100.0, 100.0}, {-100.0, 100.0}}) {
        shore.outer.push_back(frame().toEarth(geo::WaterPoint{x_m, y_m}));
    }
    water.shoreline = {shore};
    water.days = std::move(days);
    water.settings.cell = units::Length::metres(5.0);
    return water;
}

water::Derived derived(const water::Water& water, water::Step upTo = water::Step::reduce) {
    base::Progress progress;
    auto made = water::derive(water, {}, upTo, progress);
    EXPECT_TRUE(made);
    EXPECT_TRUE(made->failures.empty());
    return made.value_or(water::Derived());
}

std::size_t countOf(const water::Derived& made, std::size_t day, Verdict verdict) {
    return static_cast<std::size_t>(
        std::ranges::count(made.checked->survey.days.at(day).verdicts, verdict));
}

TEST(WholeReduction, SetsAPassAsideThatTwoOthersContradict) {
    // 5 x (0.15 m + 1.5 % of 6 m) = 1.2 m.
    for (const auto& [off_m, isAside] : {std::pair{1.25, true}, {-1.25, true}, {1.15, false}}) {
        const auto made =
            derived(waterWith({passAt(0, 0), passAt(4, 1, usual_m + off_m), passAt(8, 2)}));
        EXPECT_EQ(countOf(made, 0, Verdict::kept), perPass) << off_m;
        EXPECT_EQ(countOf(made, 2, Verdict::kept), perPass) << off_m;
        EXPECT_EQ(countOf(made, 1, Verdict::disagrees), isAside ? perPass : 0U) << off_m;
        EXPECT_EQ(made.checked->kept.size(), isAside ? 2 * perPass : 3 * perPass);
        for (const soundings::KeptSounding& one : made.checked->kept) {
            EXPECT_TRUE(one.day != 1 || !isAside);
        }
    }
}

TEST(WholeReduction, GivesEachFaultItsOwnReasonAndDrawsFromNoneOfThem) {
    std::vector<soundings::SurveyDay> days{passAt(-20, 0), passAt(0, 1), passAt(40, 2)};
    const auto show = [&](std::size_t i, double depth_m) {
        days[1].soundings.edit()[i].shown = units::Depth::metres(depth_m);
    };
    const auto moveTo = [&](std::size_t day, std::size_t i, double x_m, double y_m) {
        days[day].soundings.edit()[i].place = frame().toEarth(geo::WaterPoint{x_m, y_m});
    };
    show(5, 0.0);
    show(12, 17.0);
    for (const std::size_t i : {20U, 21U, 22U, 23U, 24U, 25U}) {
        show(i, 2.0 * usual_m);
    }
    moveTo(1, 35, 16.5, 70.0);
    days[1].setAsideByHand = {45};
    for (std::size_t i = 0; i < perPass; ++i) { // Out over the shore with its last ten.
        if (i >= perPass - 10) {
            const double beyond_m = 3.0 * static_cast<double>(i - (perPass - 10));
            moveTo(2, i, 61.5 + beyond_m / 3.0, 101.0 + beyond_m);
        } else if (i >= perPass - 30) {
            moveTo(2, i, 1.5 + 3.0 * static_cast<double>(i - (perPass - 30)),
                   40.0 + 3.0 * static_cast<double>(i - (perPass - 30)));
        }
    }
    const auto made = derived(waterWith(days), water::Step::draw);
    const auto& verdicts = made.checked->survey.days[1].verdicts;
    EXPECT_EQ(verdicts[5], Verdict::dropOut);
    EXPECT_EQ(verdicts[12], Verdict::spike);
    for (const std::size_t i : {20U, 23U, 25U}) {
        EXPECT_EQ(verdicts[i], Verdict::doubleEcho) << i;
    }
    EXPECT_EQ(verdicts[35], Verdict::positionJump);
    EXPECT_EQ(verdicts[45], Verdict::byHand);
    EXPECT_EQ(made.checked->survey.setAsideCounts(),
              (std::map<std::string, std::size_t>{{"drop_out", 1},
                                                  {"spike", 1},
                                                  {"double_echo", 6},
                                                  {"position_jump", 1},
                                                  {"by_hand", 1},
                                                  {"outside_shore", 10}}));
    EXPECT_EQ(made.checked->kept.size(), 3 * perPass - 20);
    for (const soundings::KeptSounding& one : made.checked->kept) {
        EXPECT_NEAR(one.depth_m, usual_m, 1e-9);
    }
    // The bottom is level where it was sounded: nothing was drawn from what is set aside.
    ASSERT_TRUE(made.drawn);
    for (double x_m = -70.0; x_m <= 60.0; x_m += 5.0) {
        const auto depth = made.drawn->depth.at(geo::WaterPoint{x_m, 0.0});
        ASSERT_TRUE(depth) << x_m;
        EXPECT_NEAR(depth->inMetres(), usual_m, 0.05) << x_m;
    }
}

TEST(WholeReduction, TheHandWinsOverEveryRule) {
    std::vector<soundings::SurveyDay> days{passAt(0, 0), passAt(4, 1), passAt(8, 2)};
    days[1].soundings.edit()[10].shown = units::Depth::metres(0.0);
    days[1].soundings.edit()[20].shown = units::Depth::metres(17.0);
    days[1].soundings.edit()[30].place = frame().toEarth(geo::WaterPoint{1.5, 70.0});
    days[1].soundings.edit()[40].shown = units::Depth::metres(2.0 * usual_m);
    days[1].keptByHand = {10, 20, 30, 40};
    days[1].setAsideByHand = {50};
    const auto made = derived(waterWith(days));
    EXPECT_EQ(countOf(made, 1, Verdict::kept), perPass - 1);
    EXPECT_EQ(made.checked->survey.days[1].verdicts[50], Verdict::byHand);
    days[0].soundings.edit()[3].place = frame().toEarth(geo::WaterPoint{-79.5, -105.0});
    days[0].keptByHand = {3};
    EXPECT_EQ(countOf(derived(waterWith(days)), 0, Verdict::kept), perPass);
}

TEST(WholeReduction, BringsEveryDayToChartLevelByAllThatIsKnownOfIt) {
    // Three days that show what they would on a level bottom 6 m below chart level, each with its
    // own level, draft, water and offset; by Marczak's 1482.380 m/s at 20 C.
    std::vector<soundings::SurveyDay> days{passAt(-20, 0, usual_m + 0.4),
                                           passAt(0, 1, (usual_m - 0.3) * 1500.0 / 1482.380),
                                           passAt(20, 2, usual_m - 0.25)};
    days[0].gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(1.4));
    days[1].gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(1.0));
    days[1].sounder.draft = units::Depth::metres(0.3);
    days[1].waterTemperature = units::Temperature::celsius(20.0);
    days[2].agreedOffset = units::Length::metres(0.25);
    water::Water water = waterWith(days);
    water.chartLevel = units::WaterLevel::metresOnGauge(1.0);
    const auto made = derived(water);
    ASSERT_EQ(made.checked->kept.size(), 3 * perPass);
    for (const soundings::KeptSounding& one : made.checked->kept) {
        EXPECT_NEAR(one.depth_m, usual_m, 1e-4) << one.day;
    }
}

TEST(WholeReduction, MovesTheDayThatAgreedToADelay) {
    std::vector<soundings::SurveyDay> days{passAt(-20, 0), passAt(20, 1)};
    days[1].agreedDelay_s = 1.5; // Three metres, one sounding on.
    const auto made = derived(waterWith(days));
    ASSERT_EQ(made.checked->kept.size(), 2 * perPass);
    for (std::size_t i = 0; i < perPass; ++i) {
        const double x_m = -88.5 + 3.0 * static_cast<double>(i);
        EXPECT_NEAR(made.checked->kept[i].x_m, x_m, 1e-6);
        EXPECT_NEAR(made.checked->kept[perPass + i].x_m, x_m + 3.0, 1e-6);
    }
}

TEST(WholeReduction, FindsCrossingsTiesAndTheirCheckInWhatIsKept) {
    // Five passes east on a held day, one north on a day that shows 0.30 m too much.
    soundings::SurveyDay east = passAt(-40, 0);
    for (const double y_m : {-20.0, 0.0, 20.0, 40.0}) {
        const soundings::SurveyDay more = passAt(y_m, 0);
        east.passStarts.edit().push_back(east.soundings.size());
        east.soundings.edit().insert(east.soundings.end(), more.soundings.begin(),
                                     more.soundings.end());
    }
    for (soundings::Sounding& one : east.soundings.edit()) {
        one.time.reset();
    }
    east.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(1.0));
    soundings::SurveyDay north = passAt(0, 1, usual_m + 0.30);
    for (std::size_t i = 0; i < perPass; ++i) {
        const geo::WaterPoint p{1.0, -88.0 + 3.0 * static_cast<double>(i)};
        north.soundings.edit()[i].place = frame().toEarth(p);
    }
    water::Water water = waterWith({east, north});
    water.chartLevel = units::WaterLevel::metresOnGauge(1.0);
    const auto made = derived(water);
    ASSERT_EQ(made.checked->crossings.size(), 5U);
    EXPECT_EQ(made.checked->check.count, 5U);
    EXPECT_NEAR(made.checked->check.mean_m, 0.30, 1e-9);
    ASSERT_EQ(made.checked->tie.offsets.size(), 2U);
    EXPECT_NEAR(made.checked->tie.offsets[1].inMetres(), -0.30, 1e-5);
    EXPECT_EQ(made.checked->tie.isHeld, (std::vector<bool>{true, false}));
    EXPECT_EQ(made.checked->delays.size(), 2U);
    EXPECT_FALSE(made.checked->delays[0].isKnown);
}

} // namespace
