// SPDX-License-Identifier: GPL-3.0-or-later
// Each option of marks against a plan in which only the member that it names was changed: the
// reports have to be the same to the last figure, and another than without the option.
#include "app/batch/marks_report.h"
#include "app/batch/picture_file.h"
#include "core/water/steps/derive.h"
#include "core/water/steps/plan_day.h"
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/app/batch/opened_water.h"
#include "tests/core/store/file_rows.h"

#include <QImage>

#include <functional>

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;
using Json = nlohmann::json;
using marks::Plan;
using units::Length;

/// The dish with a launch of its own in the plan, and its clock an hour off.
class MarksVerb : public testing::Test {
protected:
    static void SetUpTestSuite() {
        folder = new DishFolder;
        const std::string facts =
            folder->write("facts.json", R"({"name": "Dish & more", "time_zone": "Europe/London",
                              "launch": {"lon": 3.1018, "lat": 55.2}})");
        std::vector<std::string> sketch =
            folder->sketchWords({"--facts", facts, "--limit-depth", "3.5"});
        *(std::ranges::find(sketch, "--cell") + 1) = "10"; // Forty plans are made of it.
        ASSERT_EQ(call(sketch).exitCode, 0);
        opened = new batch::OpenedWater(batch_tests::drawnWater(folder->at("dish.gpkg")));
    }
    static void TearDownTestSuite() {
        delete opened;
        delete folder;
    }
    static std::vector<std::string> words(const std::vector<std::string>& more = {}) {
        std::vector<std::string> all{"marks",        folder->at("dish.gpkg"),
                                     "--wind-from",  "225",
                                     "--wind-speed", "5",
                                     "--date",       "2026-10-03",
                                     "--count",      "2"};
        for (std::size_t i = 0; i + 1 < more.size(); i += 2) {
            const auto known = std::ranges::find(all, more[i]);
            if (known != all.end()) {
                *(known + 1) = more[i + 1];
            } else {
                all.insert(all.end(), {more[i], more[i + 1]});
            }
        }
        return all;
    }
    /// The plan that words() asks for.
    static Plan plan() {
        Plan asked = opened->water.plan;
        asked.day.day = units::dayFrom("2026-10-03").value();
        asked.day.wind = {units::Bearing::degrees(225.0), units::Speed::metresPerSecond(5.0)};
        asked.day.levelChange = {};
        asked.count = 2;
        return asked;
    }
    /// What the report has to be; sections are named as seen from the launch that is asked for.
    static Json wanted(const Plan& asked, water::Water water) {
        water.plan = asked;
        base::Progress quiet;
        const auto derived =
            water::derive(water, opened->derived, water::Step::sections, quiet).value();
        return batch::marksReport(water, water::planDay(water, derived, asked, quiet).value());
    }
    static Json reportOf(const Call& done) {
        EXPECT_EQ(done.exitCode, 0) << done.error;
        EXPECT_EQ(done.error, "");
        return done.exitCode == 0 ? done.report() : Json();
    }
    static inline DishFolder* folder = nullptr;
    static inline batch::OpenedWater* opened = nullptr;
};

struct OptionRow {
    const char* option;
    const char* given;
    std::function<void(Plan&)> change;
};

const std::vector<OptionRow>& optionRows() {
    static const std::vector<OptionRow> rows{
        {"--wind-from", "90", [](Plan& p) { p.day.wind.from = units::Bearing::degrees(90.0); }},
        {"--wind-speed", "9",
         [](Plan& p) { p.day.wind.speed = units::Speed::metresPerSecond(9.0); }},
        {"--date", "2026-12-24", [](Plan& p) { p.day.day = units::dayFrom("2026-12-24").value(); }},
        {"--start", "07:40", [](Plan& p) { p.day.start = std::chrono::minutes(460); }},
        {"--end", "21:30", [](Plan& p) { p.day.end = std::chrono::minutes(1290); }},
        {"--ashore-by", "15:10", [](Plan& p) { p.day.end = std::chrono::minutes(910); }},
        {"--stay-hours", "1.25", [](Plan& p) { p.day.stay = std::chrono::minutes(75); }},
        {"--level-change", "-0.75", [](Plan& p) { p.day.levelChange = Length::metres(-0.75); }},
        {"--water-temperature", "4",
         [](Plan& p) { p.day.waterTemperature = units::Temperature::celsius(4.0); }},
        {"--launch", "3.0985,55.2005",
         [](Plan& p) {
             p.launch = geo::LonLat{3.0985, 55.2005};
         }},
        {"--boat-speed", "0.5",
         [](Plan& p) { p.tackle.boatSpeed = units::Speed::metresPerSecond(0.5); }},
        {"--rods", "2", [](Plan& p) { p.tackle.rods = 2; }},
        {"--cast", "18", [](Plan& p) { p.tackle.cast = Length::metres(18.0); }},
        {"--bow-rope", "8", [](Plan& p) { p.tackle.bowRope = Length::metres(8.0); }},
        {"--scope", "4.5", [](Plan& p) { p.tackle.scope = 4.5; }},
        {"--over-depth", "0.7", [](Plan& p) { p.tackle.overDepth = Length::metres(0.7); }},
        {"--anchors", "1", [](Plan& p) { p.tackle.toOneAnchor = true; }},
        {"--count", "3", [](Plan& p) { p.count = 3; }},
        {"--weights", "shelter=3,depth=0", [](Plan& p) {
             p.weights.set(marks::FactorKind::shelter, 3.0);
             p.weights.set(marks::FactorKind::depth, 0.0);
         }}};
    return rows;
}

TEST_F(MarksVerb, EachOptionReachesTheValueThatItNamesWithSignAndUnit) {
    const Json plain = reportOf(call(words()));
    EXPECT_EQ(plain, wanted(plan(), opened->water));
    for (const OptionRow& row : optionRows()) {
        SCOPED_TRACE(row.option);
        Plan asked = plan();
        row.change(asked);
        const Json report = reportOf(call(words({row.option, row.given})));
        EXPECT_EQ(report, wanted(asked, opened->water));
        EXPECT_NE(report, plain) << "it changes nothing";
    }
}

/// The two best marks lie so shallow that their ropes are shorter still.
TEST_F(MarksVerb, AShortSternRopeReachesTheMarksThatLieDeeper) {
    Plan asked = plan();
    asked.count = 12;
    const Json plain = reportOf(call(words({"--count", "12"})));
    EXPECT_EQ(plain, wanted(asked, opened->water));
    asked.tackle.sternRope = Length::metres(5.0);
    const Json held = reportOf(call(words({"--count", "12", "--stern-rope", "5"})));
    EXPECT_EQ(held, wanted(asked, opened->water));
    EXPECT_NE(held, plain);
}

TEST_F(MarksVerb, ADayThatEndsBeforeItStartsEndsOnTheNextMorning) {
    Plan asked = plan();
    asked.day.start = std::chrono::hours(20);
    asked.day.end = std::chrono::hours(27);
    asked.day.windLater =
        marks::LaterWind{std::chrono::hours(25),
                         {units::Bearing::degrees(90.0), units::Speed::metresPerSecond(3.0)}};
    const Json report = reportOf(
        call(words({"--start", "20:00", "--end", "04:00", "--ashore-by", "03:00", "--wind-later-at",
                    "01:00", "--wind-later-from", "90", "--wind-later-speed", "3"})));
    EXPECT_EQ(report, wanted(asked, opened->water));
    EXPECT_EQ(report["wind_later"]["at"], "01:00");
}

TEST_F(MarksVerb, NoMarkLiesWhereItIsBannedForThisPlanAndTheFileStaysAsItWas) {
    const Json plain = reportOf(call(words()));
    const Json& best = plain["marks"][0];
    const geo::LonLat place{best["lon"].get<double>(), best["lat"].get<double>()};
    const std::string at = fmt::format("{},{}", place.lon_deg, place.lat_deg);
    const auto nearest_m = [place](const Json& report) {
        double least = 1e9;
        for (const Json& mark : report["marks"]) {
            const geo::LonLat other{mark["lon"].get<double>(), mark["lat"].get<double>()};
            least = std::min(least, geo::courseBetween(place, other).distance.inMetres());
        }
        return least;
    };
    EXPECT_LT(nearest_m(plain), 0.1);
    EXPECT_EQ(plain["excluded_m2"]["banned"], 0.0);
    EXPECT_EQ(plain["banned"], Json::array());
    const Json usual = reportOf(call(words({"--ban", at})));
    EXPECT_GE(nearest_m(usual), 59.9) << "two casts of 30 m";
    EXPECT_GT(usual["excluded_m2"]["banned"].get<double>(), 3000.0);
    ASSERT_EQ(usual["banned"].size(), 1U);
    EXPECT_NEAR(usual["banned"][0]["area_m2"].get<double>(), 3600.0 * 3.1416, 60.0);
    const Json near = reportOf(call(words({"--ban", at + ",10"})));
    EXPECT_GE(nearest_m(near), 9.9);
    EXPECT_NEAR(near["banned"][0]["area_m2"].get<double>(), 314.2, 3.0);
    EXPECT_EQ(reportOf(call(words())), plain) << "a ban of one plan is not kept";
    expectRefused(call(words({"--ban", at + ",0.5"})), 2, {"1 m to 2 km"});
}

TEST_F(MarksVerb, AnOwnMarkInBannedWaterIsKeptAndSaysSo) {
    const Json plain = reportOf(call(words()));
    const Json& best = plain["marks"][0];
    const std::string at =
        fmt::format("{},{}", best["lon"].get<double>(), best["lat"].get<double>());
    std::vector<std::string> both = words({"--ban", at});
    both.insert(both.end(), {"--keep", at + ",Mine"});
    const Json report = reportOf(call(both));
    std::vector<std::string> cautions;
    for (const Json& mark : report["marks"]) {
        for (const Json& caution : mark["cautions"]) {
            cautions.push_back(caution.get<std::string>());
        }
    }
    EXPECT_THAT(cautions, testing::Contains("Your mark lies in water that you banned."));
}

TEST_F(MarksVerb, AnOwnMarkOffTheWaterIsNotDroppedInSilence) {
    const Json report = reportOf(call(words({"--keep", "3.2,55.2,Far"})));
    EXPECT_THAT(report["notes"].get<std::vector<std::string>>(),
                testing::Contains("your mark Far cannot be anchored on: it lies on no water of "
                                  "this chart today"));
}

TEST_F(MarksVerb, LimitDepthDividesTheWaterAnew) {
    water::Water shallow = opened->water;
    shallow.settings.limit = units::Depth::metres(2.5);
    const Json report = reportOf(call(words({"--limit-depth", "2.5"})));
    EXPECT_EQ(report, wanted(plan(), shallow));
    for (const Json& mark : report["marks"]) {
        EXPECT_LE(mark["depth_m"], 2.5);
    }
}

/// The places of anchors and marks in the GPX are those of the report, and all pictures are drawn.
TEST_F(MarksVerb, FilesHoldWhatTheReportSays) {
    const Call done =
        call(words({"--gpx", folder->at("m.gpx"), "--sheet", folder->at("m.pdf"), "--picture",
                    folder->at("m.png"), "--report", folder->at("m.json")}));
    ASSERT_EQ(done.exitCode, 0) << done.error;
    EXPECT_EQ(done.out + done.error, "");
    const Json report = Json::parse(support::ScratchFolder::textOf(folder->at("m.json")));
    EXPECT_EQ(report, wanted(plan(), opened->water));
    const std::string gpx = support::ScratchFolder::textOf(folder->at("m.gpx"));
    EXPECT_NE(gpx.find("<metadata><name>Dish &amp; more</name>"), std::string::npos);
    const auto placeText = [](const Json& at) {
        return "lat=\"" + base::fixedText(at["lat"], 7) + "\" lon=\"" +
               base::fixedText(at["lon"], 7) + "\"";
    };
    std::size_t at = 0;
    ASSERT_EQ(report["marks"].size(), 2U);
    ASSERT_EQ(report["day"].size(), 2U);
    // In the order of the day.
    for (const Json& stop : report["day"]) {
        const Json& mark = report["marks"][stop["rank"].get<std::size_t>() - 1];
        for (const std::string& text :
             {"<wpt " + placeText(mark),
              "<mm:depth_m>" + base::fixedText(mark["depth_m"], 2) + "</mm:depth_m>",
              "<mm:trust_m>" + base::fixedText(mark["trust_m"], 2) + "</mm:trust_m>",
              "<mm:bow_anchor " + placeText(mark["anchors"]["bow"]),
              "<mm:stern_anchor " + placeText(mark["anchors"]["stern"])}) {
            at = gpx.find(text, at);
            ASSERT_NE(at, std::string::npos) << text << " is not in its place in\n" << gpx;
        }
    }
    EXPECT_EQ(QImage(QString::fromStdString(folder->at("m.png"))).size(), QSize(1600, 1200));
    ASSERT_TRUE(
        batch::writePicture(folder->at("plain.png"), opened->water, opened->derived, nullptr)
            .has_value());
    EXPECT_NE(support::ScratchFolder::textOf(folder->at("m.png")),
              support::ScratchFolder::textOf(folder->at("plain.png")))
        << "the marks are on it";
    EXPECT_TRUE(support::ScratchFolder::textOf(folder->at("m.pdf")).starts_with("%PDF-"));
    for (const std::string& name : folder->names()) {
        EXPECT_EQ(name.find(".part"), std::string::npos) << name;
    }
}

TEST_F(MarksVerb, WithoutADateTheDayIsTomorrow) {
    const auto today = [] {
        return opened->water.clock.dayOf(
            std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now()));
    };
    const auto next = [](units::Day day) {
        return units::isoText(units::Day(std::chrono::sys_days(day) + std::chrono::days(1)));
    };
    const std::string before = next(today());
    const Json report = reportOf(call({"marks", folder->at("dish.gpkg"), "--wind-from", "0",
                                       "--wind-speed", "0", "--count", "1"}));
    const std::string after = next(today()); // Midnight may fall between.
    EXPECT_TRUE(report["date"] == before || report["date"] == after) << report["date"];
    EXPECT_EQ(report["marks"].size(), 1U);
    EXPECT_EQ(report["level_change_m"], 0.0);
}

/// Where no wind is given none is made up: neither a calm, nor that of another day in the file.
TEST_F(MarksVerb, AWindThatNobodySaidIsNoCalm) {
    const std::vector<std::string> bare{
        "marks", folder->at("dish.gpkg"), "--date", "2026-10-03", "--count", "2"};
    const std::string sentence = "Strength of the wind: not said; waves and shelter are not "
                                 "counted. How strong the wind will be is not known: "
                                 "look at the forecast before you go out.";
    Plan asked = plan();
    asked.day.wind = {};
    const Call none = call(bare);
    ASSERT_EQ(none.exitCode, 0) << none.error;
    EXPECT_EQ(none.error, "meremark-batch: " + sentence + "\n");
    const Json report = none.report();
    EXPECT_EQ(report, wanted(asked, opened->water));
    EXPECT_EQ(report["wind"], Json(nullptr));
    EXPECT_EQ(report["notes"].front(),
              "Strength of the wind: not said; waves and shelter are not counted.");
    EXPECT_EQ(report["marks"][0]["wave_height_m"], Json(nullptr));
    EXPECT_EQ(none.out.find("Force"), std::string::npos) << none.out;

    auto half = bare;
    half.insert(half.end(), {"--wind-from", "225"});
    const Call from = call(half);
    EXPECT_NE(from.error.find(sentence), std::string::npos) << from.error;
    EXPECT_EQ(from.report()["wind"], Json({{"from_deg", 225.0}, {"speed_m_s", nullptr}}));

    auto variable = bare;
    variable.insert(variable.end(), {"--wind-speed", "5"});
    const Json open = reportOf(call(variable));
    EXPECT_EQ(open["wind"], Json({{"from_deg", nullptr}, {"speed_m_s", 5.0}}));
    EXPECT_GT(open["marks"][0]["wave_height_m"], 0.0);
}

TEST_F(MarksVerb, ALaterWindIsThatOfItsOptionsAndIsReported) {
    Plan asked = plan();
    asked.day.windLater =
        marks::LaterWind{std::chrono::minutes(750),
                         {units::Bearing::degrees(40.0), units::Speed::metresPerSecond(3.5)}};
    const Json report = reportOf(call(words(
        {"--wind-later-at", "12:30", "--wind-later-from", "40", "--wind-later-speed", "3.5"})));
    EXPECT_EQ(report, wanted(asked, opened->water));
    EXPECT_EQ(report["wind_later"],
              Json({{"at", "12:30"}, {"from_deg", 40.0}, {"speed_m_s", 3.5}}));
    EXPECT_EQ(reportOf(call(words()))["wind_later"], Json(nullptr));
    asked.day.windLater->wind.from.reset();
    EXPECT_EQ(reportOf(call(words({"--wind-later-at", "12:30", "--wind-later-speed", "3.5"}))),
              wanted(asked, opened->water));
    expectRefused(call(words({"--wind-later-speed", "3.5"})), 2, {"--wind-later-at"});
    expectRefused(call(words({"--wind-later-from", "40"})), 2, {"--wind-later-at"});
    expectRefused(call(words({"--wind-later-at", "12:30"})), 2,
                  {"--wind-later-from", "--wind-later-speed"});
}

TEST_F(MarksVerb, WhatTheFileKeepsOfTheStepsChangesNoFigure) {
    const std::string bare = folder->at("bare.gpkg");
    std::filesystem::copy_file(folder->at("dish.gpkg"), bare);
    ASSERT_EQ(support::rowsOf(bare, "step", "step_results").size(), 4U);
    support::changeFile(bare, "DELETE FROM step_results");
    std::vector<std::string> ofBare = words();
    ofBare[1] = bare;
    const Call kept = call(words());
    const Call anew = call(ofBare);
    ASSERT_EQ(kept.exitCode, 0) << kept.error;
    EXPECT_EQ(kept.report().at("marks"), anew.report().at("marks"));
    EXPECT_EQ(kept.report().at("day"), anew.report().at("day"));
}

TEST_F(MarksVerb, OutOfTheirRangeAndUnreadableOptionsAreRefusedByName) {
    struct Row {
        const char* option;
        std::vector<const char*> bad;
    };
    for (const Row& row : {Row{"--wind-from", {"-0.1", "360.1", "west", "nan"}},
                           {"--wind-speed", {"-0.1", "60.1", "gale", "nan"}},
                           {"--wind-later-at", {"24:00", "noon"}},
                           {"--wind-later-from", {"-0.1", "360.1", "west", "nan"}},
                           {"--wind-later-speed", {"-0.1", "60.1", "gale", "nan"}},
                           {"--level-change", {"-100.1", "100.1", "up", "nan"}},
                           {"--water-temperature", {"cold", "nan"}},
                           {"--limit-depth", {"0", "-1", "deep", "nan"}},
                           {"--boat-speed", {"0.29", "8.1", "slow", "nan"}},
                           {"--rods", {"0", "9", "2.5"}},
                           {"--cast", {"4.9", "100.1", "far", "nan"}},
                           {"--bow-rope", {"4.9", "200.1", "long", "nan"}},
                           {"--stern-rope", {"4.9", "200.1", "long", "nan"}},
                           {"--scope", {"1.4", "10.1", "x", "nan"}},
                           {"--count", {"0", "41", "1.5"}},
                           {"--date", {"tomorrow", "2026-02-30"}},
                           {"--start", {"24:00", "early"}},
                           {"--end", {"24:00", "late"}},
                           {"--ashore-by", {"24:00", "dusk"}},
                           {"--stay-hours", {"0.09", "12.1", "long", "nan"}},
                           {"--over-depth", {"-0.1", "3.1", "x", "nan"}},
                           {"--anchors", {"0", "3", "bow", "1.5"}},
                           {"--keep", {"3.1", "3.1;55.2", "3.1,95"}},
                           {"--ban", {"3.1", "3.1;55.2", "3.1,95", "3.1,55.2,wide", "3.1,55.2,"}},
                           {"--launch", {"3.1", "3.1;55.2", "3.1,95"}},
                           {"--weights", {"depth", "luck=1", "depth=-1"}}}) {
        for (const char* bad : row.bad) {
            SCOPED_TRACE(std::string(row.option) + ' ' + bad);
            expectRefused(call(words({row.option, bad})), 2, {row.option});
        }
    }
    expectRefused(call(words({"--start", "10:00", "--end", "10:00"})), 2, {"--end", "--start"});
    expectRefused(call(words({"--start", "20:00"})), 2, {"--end", "--start"});
    expectRefused(call({"marks", "--wind-from", "3", "--wind-speed", "3"}), 2, {"water"});
}

TEST_F(MarksVerb, LimitsOfTheRangesAreTaken) {
    // The water is not there: what is complained of comes after the options were taken.
    for (const auto& [option, given] :
         std::vector<std::pair<const char*, const char*>>{{"--wind-from", "0"},
                                                          {"--wind-from", "360"},
                                                          {"--wind-speed", "60"},
                                                          {"--level-change", "-100"},
                                                          {"--level-change", "100"},
                                                          {"--boat-speed", "0.3"},
                                                          {"--boat-speed", "8"},
                                                          {"--rods", "1"},
                                                          {"--rods", "8"},
                                                          {"--cast", "5"},
                                                          {"--cast", "100"},
                                                          {"--bow-rope", "5"},
                                                          {"--bow-rope", "200"},
                                                          {"--stern-rope", "5"},
                                                          {"--stern-rope", "200"},
                                                          {"--scope", "1.5"},
                                                          {"--scope", "10"},
                                                          {"--count", "1"},
                                                          {"--count", "40"}}) {
        std::vector<std::string> all = words({option, given});
        all[1] = folder->at("missing.gpkg");
        expectRefused(call(all), 3, {"missing.gpkg"});
    }
}

TEST_F(MarksVerb, ClosedFoldersAreRefusedByName) {
    for (const char* option : {"--gpx", "--sheet", "--picture", "--report"}) {
        const std::string closed = folder->at("no/such/file");
        expectRefused(call(words({option, closed, "--count", "1"})), 4, {closed});
    }
}

} // namespace
