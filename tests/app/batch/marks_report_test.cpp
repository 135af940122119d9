// SPDX-License-Identifier: GPL-3.0-or-later
// The whole report of a made-up day of which no two figures are alike.
#include "app/batch/marks_report.h"

#include "core/geo/water_frame.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using Json = nlohmann::json;
using structure::ZoneKind;
using units::Bearing;
using units::Depth;
using units::Length;

units::Moment at(const char* text) {
    return units::momentFrom(text, units::Clock()).value();
}

marks::Mark firstMark() {
    marks::Mark mark;
    mark.rank = 1;
    mark.lonLat = {3.12345678, 55.23456789};
    mark.depth = Depth::metres(5.126);
    mark.trust = Depth::metres(0.374);
    mark.sectionName = "Heron Bay";
    mark.zones = {ZoneKind::dropOff, ZoneKind::weedEdge};
    mark.score = 0.71236;
    mark.factors = {
        {marks::FactorKind::dropOff, 0.81236, 1.25,
         marks::DropOffNear{Length::metres(58.0), Depth::metres(4.0), Depth::metres(9.0)}, 1.1},
        {marks::FactorKind::lessTried, 0.2, 0.30004, marks::NeverTried{}, 1.0},
        {marks::FactorKind::hour, 0.0, 0.0, marks::HoursPlanned{}, 0.6476}};
    mark.expected = marks::ExpectedCatch{1.42472, 0.71236, 2.9};
    mark.toLearn = true;
    mark.fetch = Length::metres(432.6);
    mark.waveHeight = Length::metres(0.126);
    mark.cautions = {marks::WavesHere{Length::metres(0.44)}, marks::ClosedWaterNear{}};
    mark.anchors.cautions = {anchoring::ShortOfRoom{2.9}};
    mark.anchors.bow = {{40.0, 25.0}, Depth::metres(6.254), Length::metres(21.56), 3.236};
    mark.anchors.stern = {{-35.0, -20.0}, Depth::metres(4.756), Length::metres(13.34), 2.476, true};
    mark.anchors.lie.heading = Bearing::degrees(231.26);
    mark.spread.rods = {{{10.0, 15.0},
                         Bearing::degrees(11.14),
                         Length::metres(22.26),
                         Depth::metres(3.336),
                         Depth::metres(3.646),
                         ZoneKind::hump,
                         true},
                        {{-10.0, 5.0},
                         Bearing::degrees(201.0),
                         Length::metres(7.0),
                         Depth::metres(4.0),
                         Depth::metres(4.3),
                         std::nullopt}};
    return mark;
}

struct MadeUpPlan {
    water::Water water;
    water::PlannedDay planned;
    MadeUpPlan() {
        water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
        water.clock = units::Clock::inZone("Europe/London").value();
        planned.plan.day.day = units::dayFrom("2026-09-27").value();
        planned.plan.day.wind = {Bearing::degrees(231.46), units::Speed::metresPerSecond(6.125)};
        planned.plan.day.levelChange = Length::metres(-0.4567);
        planned.plan.day.stay = std::chrono::minutes(75);
        planned.marks = {firstMark(), marks::Mark{}};
        planned.marks[0].near =
            marks::NearPlace{"Mill", Length::metres(123.456), Bearing::degrees(44.94)};
        planned.marks[1].rank = 2;
        planned.marks[1].anchors.swing = anchoring::Swing{Length::metres(22.46), 30.0};
        planned.day.stops = {{2,
                              at("2026-09-27T07:10:00Z"),
                              at("2026-09-27T10:00:00.900Z"),
                              Length::metres(345.4),
                              {}},
                             {1,
                              at("2026-09-27T10:30:00Z"),
                              at("2026-09-27T14:00:00Z"),
                              Length::metres(77.5),
                              {},
                              std::chrono::minutes(200),
                              true}};
        planned.day.stops[0].wind = planned.plan.day.wind;
        planned.day.isOrderByHand = true;
        planned.light.sunrise = at("2026-09-27T05:55:12.345Z");
        planned.light.sunset = at("2026-09-27T17:47:59.999Z");
        planned.light.civilDawn = at("2026-09-27T05:00:00Z");
        planned.looked = 96;
        planned.unanchorable = 7;
        planned.cautions = {water::StayAshore{7}, water::FallingIn{water::ColdWater{false}, true}};
        planned.rules = {water::RodLimit{3}};
        planned.fishCare = {water::FishCare::warmWater};
        planned.day.leftOut = {3, 5};
        planned.day.leastStay = std::chrono::minutes(30);
        planned.refused = {{"Hole",
                            {base::ErrorKind::unusableInput, "the ropes are too short", {}, {}},
                            {3.1, 55.2}}};
        planned.plan.tryNew = 0.75;
        planned.meanPer10RodHours = 2.0;
        planned.basis = {water::WaterLeftOut{
            2, 8, {{marks::Exclusion::tooDeep, units::Area::hectares(120.06)}}}};
        planned.beliefs = {{marks::FactorKind::dropOff, 1.5, {{1.25, 0.75, 2.0}}, 1.106, true},
                           {marks::FactorKind::trust, 0.3, std::nullopt, 1.0, false}};
        planned.excluded[0] = units::Area::squareMetres(120.4);
        planned.excluded[5] = units::Area::squareMetres(64.0);
        planned.excluded[6] = units::Area::squareMetres(32.0);
        planned.excluded[7] = units::Area::squareMetres(16.4);
        planned.excluded[8] = units::Area::squareMetres(8.0);
        planned.marks[0].bowGround = {0.1234, std::nullopt};
        planned.marks[0].sternGround = {std::nullopt, soundings::Bottom::gravel};
        water.banned = {{"snags", onEarth({{0, 0}, {0, 20}, {40, 20}, {40, 0}})},
                        {"", onEarth({{0, 0}, {10, 0}, {10, 10}})}};
    }
    geo::LonLatRing onEarth(const geo::Ring& ring) const {
        return water.frame->toEarth(std::span(ring));
    }
    Json report() const { return batch::marksReport(water, planned); }
    Json place(double x_m, double y_m, Json with) const {
        const geo::LonLat p = water.frame->toEarth(geo::WaterPoint{x_m, y_m});
        with["lon"] = std::round(p.lon_deg * 1e7) / 1e7;
        with["lat"] = std::round(p.lat_deg * 1e7) / 1e7;
        return with;
    }
};

TEST(MarksReport, HasEveryFigureOfAMarkUnderItsKey) {
    const MadeUpPlan given;
    Json wanted = Json::parse(R"({
        "rank": 1, "lon": 3.1234568, "lat": 55.2345679, "depth_m": 5.13, "trust_m": 0.37,
        "section": "Heron Bay", "near": {"name": "Mill", "distance_m": 123.5, "bearing_deg": 44.9}, "zones": ["drop-off", "weed edge"], "score": 0.71236,
        "times_mean": 0.71236, "expected_per_10_rod_hours": 1.42472, "expected_low": 0.71236,
        "expected_high": 2.9, "to_learn": true,
        "factors": [
            {"name": "drop_off", "value": 0.81236, "weight": 1.25, "times": 1.1,
             "because": "58 m of drop-off, 4.0 to 9.0 m, within a cast"},
            {"name": "less_tried", "value": 0.2, "weight": 0.30004, "times": 1.0,
             "because": "never tried"},
            {"name": "hour", "times": 0.6476, "because": "at the hours planned"}],
        "fetch_m": 433.0, "wave_height_m": 0.13, "cautions": ["Waves of about 0.4 m here.", "Closed water lies within a cast.",
            "Room or rope for scope 2.9 only: take a bearing ashore and watch whether she drags."]})");
    wanted["anchors"] = {{"heading_deg", 231.3},
                         {"bow", given.place(40, 25,
                                             {{"depth_m", 6.25},
                                              {"rope_m", 21.6},
                                              {"scope", 3.24},
                                              {"by_hand", false},
                                              {"slope_percent", 12.3},
                                              {"bottom", nullptr}})},
                         {"stern", given.place(-35, -20,
                                               {{"depth_m", 4.76},
                                                {"rope_m", 13.3},
                                                {"scope", 2.48},
                                                {"by_hand", true},
                                                {"slope_percent", nullptr},
                                                {"bottom", "gravel"}})}};
    wanted["rods"] = {given.place(10, 15,
                                  {{"bearing_deg", 11.1},
                                   {"distance_m", 22.3},
                                   {"depth_m", 3.34},
                                   {"stop_knot_m", 3.65},
                                   {"by_hand", true},
                                   {"over", "hump"}}),
                      given.place(-10, 5,
                                  {{"bearing_deg", 201.0},
                                   {"distance_m", 7.0},
                                   {"depth_m", 4.0},
                                   {"stop_knot_m", 4.3},
                                   {"by_hand", false},
                                   {"over", nullptr}})};
    const Json marks = given.report()["marks"];
    ASSERT_EQ(marks.size(), 2U);
    EXPECT_EQ(marks[0], wanted);
    EXPECT_EQ(marks[1]["rank"], 2);
    EXPECT_TRUE(marks[1]["anchors"]["stern"].is_null()) << "it lies to one anchor";
    EXPECT_EQ(marks[1]["anchors"]["swing_m"], 22.5);
    EXPECT_EQ(marks[1]["anchors"]["swing_to_each_side_deg"], 30);
    EXPECT_TRUE(marks[1]["section"].is_null()) << "it lies in none";
    EXPECT_TRUE(marks[1]["near"].is_null());
    EXPECT_EQ(marks[1]["zones"], Json::array());
    EXPECT_TRUE(marks[1]["expected_per_10_rod_hours"].is_null()) << "there is no log";
    EXPECT_TRUE(marks[1]["expected_low"].is_null());
    EXPECT_EQ(marks[1]["to_learn"], false);
}

TEST(MarksReport, HasTheDayByTheClockOfTheWater) {
    Json report = MadeUpPlan().report();
    report.erase("marks");
    EXPECT_EQ(report, Json::parse(R"({
        "date": "2026-09-27", "wind": {"from_deg": 231.5, "speed_m_s": 6.13}, "wind_later": null,
        "level_change_m": -0.457, "clock": "Europe/London", "stay_hours": 1.25, "try": 0.75,
        "mean_per_10_rod_hours": 2.0, "notes": ["2 of 8 marks found. Left out: 120.1 ha deeper than the limit.",
            "The order of the day is yours.", "Stays that you set: on mark 1.",
            "your mark Hole cannot be anchored on: the ropes are too short",
            "There is no time or no way for marks 3, 5 with stays of 30 minutes."],
        "beliefs": [
            {"name": "drop_off", "said": 1.5, "said_times": 1.106,
             "log_says": {"times": 1.25, "low": 0.75, "high": 2.0},
             "in_words": "You count it more than usual, ×1.11; your log cannot tell yet: ×1.25, with 80 % between ×0.75 and ×2.00."},
            {"name": "trust", "said": 0.3, "said_times": 1.0, "log_says": null,
             "in_words": "You count it as usual; no fish can speak for it: it is of the chart."}],
        "excluded_m2": {"closed": 120.0, "too_shallow": 0.0, "too_deep": 0.0,
                        "no_room_to_swing": 0.0, "ropes_too_short": 0.0, "too_rough": 64.0,
                        "banned": 32.0, "too_steep_for_an_anchor": 16.0, "no_room_for_anchors": 8.0},
        "banned": [{"name": "snags", "area_m2": 800.0}, {"name": null, "area_m2": 50.0}],
        "too_rough_in_their_hours": [],
        "day": [
            {"rank": 2, "arrive": "2026-09-27T08:10:00+01:00",
             "leave": "2026-09-27T11:00:00+01:00", "move_m": 345.0, "stay_hours": 0.0,
             "stay_by_hand": false, "wind": {"from_deg": 231.5, "speed_m_s": 6.13}},
            {"rank": 1, "arrive": "2026-09-27T11:30:00+01:00",
             "leave": "2026-09-27T15:00:00+01:00", "move_m": 78.0, "stay_hours": 3.333,
             "stay_by_hand": true, "wind": null}],
        "order_by_hand": true,
        "light": {"sunrise": "2026-09-27T06:55:12+01:00", "sunset": "2026-09-27T18:47:59+01:00",
                  "civil_dusk": null},
        "cautions": ["Force 7 is no weather for a small open boat: stay ashore.",
            "Water below 15 °C is cold: the shock of falling in can kill within a minute. Wear the lifejacket, do not stow it. If you fall in, float on your back until your breathing settles. Where there is ice, stay ashore: never break out through it."],
        "rules": ["At most 3 rods in a boat."],
        "fish_care": ["Above 20 °C pike often die after capture in water this warm: consider not fishing for them, or for any species that dies of it."],
        "places_looked_at": 96, "places_that_hold_no_anchors": 7})"));
    MadeUpPlan dusk;
    dusk.planned.light.civilDusk = at("2026-09-27T18:20:30Z");
    EXPECT_EQ(dusk.report()["light"]["civil_dusk"], "2026-09-27T19:20:30+01:00");
}

} // namespace
