// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/app/batch/opened_water.h"

#include "core/store/write_water.h"

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;
using batch_tests::loadedWater;
using Json = nlohmann::json;
namespace dish = batch_tests::dish;

constexpr const char* header =
    "kind,stay,start,end,time,lon,lat,rods,bait,species,weight_kg,length_mm,bait_depth_m,"
    "wind_from_deg,wind_speed_m_s,water_temperature_c,note\n";

units::Moment at(const char* text) {
    return units::momentFrom(text, units::Clock()).value();
}

/// An undrawn water with a clock of its own: the log asks for nothing more.
class LogVerb : public testing::Test {
protected:
    LogVerb() {
        water::Water water;
        water.name = "Dish";
        water.clock = units::Clock::inZone("Europe/London").value();
        water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
        base::Progress quiet;
        EXPECT_TRUE(store::writeWater(path, water, {}, {}, quiet).has_value());
    }
    Call log(const std::string& option, const std::string& file,
             const std::vector<std::string>& more = {}) const {
        std::vector<std::string> words{"log", path, option, file};
        words.insert(words.end(), more.begin(), more.end());
        return call(words);
    }
    DishFolder folder;
    std::string path = folder.at("dish.gpkg");
};

TEST_F(LogVerb, EveryColumnReachesTheLogWithItsUnit) {
    const std::string table = folder.write(
        "log.csv",
        std::string(header) +
            "fish,9,,,2026-10-03T10:15,,,,smelt,pike,9.625,1021.5,3.5,,,,at the edge\n"
            "stay,9,2026-10-03T08:10,2026-10-03T11:40,,3.1002,55.2003,3,roach,,,,,231.5,4.25,11.5,"
            "\"calm, then not\"\n"
            "run,9,,,2026-10-03T09:15,,,,,,,,,,,,\n"
            "stay,3,2026-10-01T08:00Z,2026-10-01T09:00Z,,3.1,55.2,,,,,,,,,,\n");
    const Call added = log("--add", table);
    ASSERT_EQ(added.exitCode, 0) << added.error;
    EXPECT_EQ(added.report(), Json::parse(R"({"added": 2, "updated": 0, "known": 0, "questions": [],
                              "added_stays": 2, "known_stays": 0, "bad_fields": [],
                              "bad_rows": {}, "notes": []})"));
    const logbook::Log kept = loadedWater(path).log.copied();
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept[0].start, at("2026-10-01T08:00:00Z")) << "the log is in the order of time";
    EXPECT_FALSE(kept[0].rods) << "nobody said how many";
    const logbook::Stay& stay = kept[1];
    EXPECT_EQ(stay.start, at("2026-10-03T07:10:00Z")) << "summer time";
    EXPECT_EQ(stay.end, at("2026-10-03T10:40:00Z"));
    EXPECT_EQ(stay.place, (geo::LonLat{3.1002, 55.2003}));
    EXPECT_EQ(stay.rods, 3);
    EXPECT_EQ(stay.bait, "roach");
    EXPECT_EQ(stay.note, "calm, then not");
    EXPECT_EQ(stay.conditions, (logbook::Conditions{units::Bearing::degrees(231.5),
                                                    units::Speed::metresPerSecond(4.25),
                                                    units::Temperature::celsius(11.5),
                                                    std::nullopt,
                                                    {}}));
    ASSERT_EQ(stay.runs.size(), 2U);
    EXPECT_FALSE(stay.runs[0].landed);
    EXPECT_EQ(stay.runs[0].bait, "") << "on which of the rods nobody says";
    const logbook::Fish& fish = stay.runs[1];
    EXPECT_TRUE(fish.landed);
    EXPECT_EQ(fish.time, at("2026-10-03T09:15:00Z"));
    EXPECT_EQ(fish.species, "pike");
    EXPECT_EQ(fish.bait, "smelt");
    EXPECT_EQ(fish.weight, units::Weight::kilograms(9.625));
    EXPECT_EQ(fish.length, units::Length::metres(1.0215));
    EXPECT_EQ(fish.baitDepth, units::Depth::metres(3.5));
    EXPECT_EQ(fish.note, "at the edge");
}

TEST_F(LogVerb, WhatWasWrittenOutComesInAsKnownAndChangesNothing) {
    const std::string first = folder.write(
        "log.csv", std::string(header) +
                       "stay,1,2026-10-03T08:10,2026-10-03T11:40,,3.1002,55.2003,3,roach,,,,,,,,\n"
                       "fish,1,,,2026-10-03T10:15,,,,smelt,pike,9.625,1021.5,3.5,,,,\n");
    ASSERT_EQ(log("--add", first).exitCode, 0);
    const logbook::Log kept = loadedWater(path).log.copied();
    const Call out = log("--out", folder.at("out.csv"));
    EXPECT_EQ(out.exitCode, 0) << out.error;
    EXPECT_EQ(out.out + out.error, "");
    const std::string text = support::ScratchFolder::textOf(folder.at("out.csv"));
    const std::string columns(header);
    EXPECT_TRUE(text.starts_with(columns.substr(0, columns.find('\n')) + ",level_m,sky,")) << text;
    EXPECT_NE(text.find(",2026-10-03T08:10:00+01:00,2026-10-03T11:40:00+01:00,,3.1002,55.2003,3,"),
              std::string::npos)
        << text;
    // One more beside those that are known: only it is added, and all keep their order.
    const Call again =
        log("--add", folder.write("more.csv", text + "stay,77,2026-10-02T08:00,2026-10-02T09:30,,"
                                                     "3.1,55.2,2,,,,,,,,,\n"));
    ASSERT_EQ(again.exitCode, 0) << again.error;
    EXPECT_EQ(again.report()["added_stays"], 1);
    EXPECT_EQ(again.report()["known_stays"], 1);
    const logbook::Log after = loadedWater(path).log.copied();
    ASSERT_EQ(after.size(), 2U);
    EXPECT_EQ(after[0].rods, 2) << "the earlier one comes first";
    EXPECT_EQ(after[1], kept[0]);
    EXPECT_NE(after[0].id, after[1].id);
}

TEST_F(LogVerb, BadRowsAreCountedAndTheFirstOfEachReasonQuoted) {
    const std::string table = folder.write(
        "log.csv", std::string(header) +
                       "stay,1,2026-10-03T08:10,2026-10-03T11:40,,3.1002,55.2003,3,,,,,,,,,\n"
                       "moon,1,,,,,,,,,,,,,,,\n"
                       "stay,2,2026-10-03T12:10,2026-10-03T11:40,,3.1,55.2,,,,,,,,,,\n"
                       "moon,2,,,,,,,,,,,,,,,\n");
    const Call added = log("--add", table);
    ASSERT_EQ(added.exitCode, 0) << added.error;
    EXPECT_EQ(added.report()["added_stays"], 2);
    EXPECT_EQ(added.report()["bad_rows"], Json::parse(R"({
        "unknown_kind": {"count": 2, "first_line": 3, "first_text": "moon,1,,,,,,,,,,,,,,,"}})"));
    // An end before the start loses the end, not the stay.
    EXPECT_EQ(added.report()["bad_fields"],
              Json::parse(R"([{"row": 4, "column": "end", "text": "2026-10-03T11:40"}])"));
}

/// A boat that lies an hour at one place, sails 200 m, and lies half an hour at another.
std::string trackText() {
    std::string text = "<gpx version=\"1.1\"><trk><trkseg>\n";
    const auto add = [&text](double x_m, double y_m, int second) {
        const geo::LonLat p = dish::at(x_m, y_m);
        text += "<trkpt lat=\"" + base::fixedText(p.lat_deg, 7) + "\" lon=\"" +
                base::fixedText(p.lon_deg, 7) + "\"><time>" +
                units::isoText(at("2026-10-03T07:00:00Z") + std::chrono::seconds(second)) +
                "</time></trkpt>\n";
    };
    for (int s = 0; s <= 3600; s += 30) {
        add(-100.0 + 0.5 * (s % 90) / 30.0, 10.0, s);
    }
    for (int s = 3630; s < 3800; s += 30) {
        add(-100.0 + 200.0 * (s - 3600) / 200.0, 10.0, s);
    }
    for (int s = 3810; s <= 5610; s += 30) {
        add(100.0, -30.0, s);
    }
    return text + "</trkseg></trk></gpx>\n";
}

TEST_F(LogVerb, StaysOfATrackHaveTheirTimesPlacesAndRods) {
    const std::string track = folder.write("track.gpx", trackText());
    const Call found = log("--from-track", track, {"--rods", "3"});
    ASSERT_EQ(found.exitCode, 0) << found.error;
    EXPECT_EQ(found.report()["added_stays"], 2);
    const logbook::Log kept = loadedWater(path).log.copied();
    ASSERT_EQ(kept.size(), 2U);
    const Json stays = found.report()["stays"];
    ASSERT_EQ(stays.size(), 2U);
    const std::vector<geo::LonLat> places{dish::at(-99.5, 10.0), dish::at(100.0, -30.0)};
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(kept[i].rods, 3);
        EXPECT_EQ(stays[i]["rods"], 3);
        EXPECT_EQ(kept[i].bait, "");
        EXPECT_TRUE(kept[i].runs.empty());
        EXPECT_NEAR(stays[i]["lon"], places[i].lon_deg, 3e-5);
        EXPECT_NEAR(stays[i]["lat"], places[i].lat_deg, 2e-5);
        EXPECT_NEAR(kept[i].place.lon_deg, stays[i]["lon"], 0.51e-7);
        EXPECT_NEAR(kept[i].place.lat_deg, stays[i]["lat"], 0.51e-7);
        EXPECT_EQ(stays[i]["start"], units::isoLocalText(kept[i].start, loadedWater(path).clock));
        EXPECT_EQ(stays[i]["end"], units::isoLocalText(kept[i].end, loadedWater(path).clock));
    }
    const auto within = [](units::Moment a, const char* b) {
        return std::chrono::abs(a - at(b)) <= std::chrono::seconds(90);
    };
    EXPECT_TRUE(within(kept[0].start, "2026-10-03T07:00:00Z"));
    EXPECT_TRUE(within(kept[0].end, "2026-10-03T08:00:00Z"));
    EXPECT_TRUE(within(kept[1].start, "2026-10-03T08:03:30Z"));
    EXPECT_TRUE(within(kept[1].end, "2026-10-03T08:33:30Z"));
    EXPECT_TRUE(stays[0]["start"].get<std::string>().ends_with("+01:00")) << "the water's clock";
}

TEST_F(LogVerb, TheSameTrackTwiceDoublesNoStay) {
    const std::string track = folder.write("track.gpx", trackText());
    ASSERT_EQ(log("--from-track", track).exitCode, 0);
    const water::Water once = loadedWater(path);
    const Call again = log("--from-track", track);
    ASSERT_EQ(again.exitCode, 0) << again.error;
    EXPECT_EQ(again.report()["added_stays"], 0);
    EXPECT_EQ(again.report()["known_stays"], 2);
    EXPECT_EQ(loadedWater(path).log, once.log);
}

TEST_F(LogVerb, RodsOfATrackThatNobodySaysAreNotKnown) {
    const Call found = log("--from-track", folder.write("track.gpx", trackText()));
    ASSERT_EQ(found.exitCode, 0);
    EXPECT_FALSE(loadedWater(path).log.front().rods);
    EXPECT_TRUE(found.report()["stays"][0]["rods"].is_null());
    ASSERT_EQ(log("--out", folder.at("out.csv")).exitCode, 0);
    const std::string text = support::ScratchFolder::textOf(folder.at("out.csv"));
    ASSERT_EQ(log("--add", folder.at("out.csv")).report()["known"], 2) << text;
}

TEST_F(LogVerb, AStayThatSaysMoreUpdatesTheKnownOneAndOneElsewhereIsAsked) {
    const auto row = [](const char* times, const char* place, const char* rest) {
        return std::string("stay,1,") + times + ",," + place + "," + rest + "\n";
    };
    const char* times = "2026-10-03T08:00,2026-10-03T10:00";
    ASSERT_EQ(log("--add", folder.write("a.csv", std::string(header) +
                                                     row(times, "3.1002,55.2003", ",,,,,,,,,")))
                  .exitCode,
              0);
    const Call again =
        log("--add",
            folder.write("b.csv", std::string(header) +
                                      row("2026-10-03T08:10,2026-10-03T10:00", "3.1002,55.2003",
                                          "3,roach,,,,,,,,") +
                                      "fish,1,,,2026-10-03T09:15,,,,,pike,21-4x,,,,,,\n" +
                                      "stay,2,2026-10-03T08:30,2026-10-03T09:30,,3.1102,55.2003,2,,"
                                      ",,,,,,,\n"));
    ASSERT_EQ(again.exitCode, 0) << again.error;
    const Json report = again.report();
    EXPECT_EQ(report["added"], 0);
    EXPECT_EQ(report["updated"], 1);
    ASSERT_EQ(report["questions"].size(), 1U);
    EXPECT_EQ(report["questions"][0]["row"], 4);
    EXPECT_EQ(report["questions"][0]["what"],
              "Sat 3 Oct 2026, 08:30 to 09:30: the log has the boat in another stay then, 08:10 to "
              "10:00. Which one is right?");
    EXPECT_EQ(report["bad_fields"],
              Json::parse(R"([{"row": 3, "column": "weight_kg", "text": "21-4x"}])"));
    const logbook::Log kept = loadedWater(path).log.copied();
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept[0].rods, 3);
    EXPECT_EQ(kept[0].bait, "roach");
    ASSERT_EQ(kept[0].runs.size(), 1U);
    EXPECT_EQ(kept[0].runs[0].species, "pike");
    EXPECT_FALSE(kept[0].runs[0].weight);
}

TEST_F(LogVerb, WrongUseAndUnusableFilesAreRefusedByName) {
    expectRefused(call({"log", path}), 2, {"--add", "--from-track", "--out"});
    expectRefused(call({"log", path, "--add", "a", "--out", "b"}), 2, {"--add", "--out"});
    expectRefused(call({"log", "--out", "b.csv"}), 2, {"water"});
    for (const char* rods : {"0", "9", "2.5", "two"}) {
        expectRefused(log("--from-track", "t.gpx", {"--rods", rods}), 2, {"--rods"});
    }
    const std::string none = folder.at("none");
    expectRefused(call({"log", none, "--out", folder.at("out.csv")}), 3, {none});
    expectRefused(log("--add", none), 3, {none});
    expectRefused(log("--from-track", none), 3, {none});
    const std::string empty = folder.write("empty.csv", header);
    expectRefused(log("--add", empty), 3, {empty});
    const std::string headless = folder.write("headless.csv", "lon,lat\n3.1,55.2\n");
    expectRefused(log("--add", headless), 3, {"headless.csv"});
    const std::string still = folder.write("still.gpx", "<gpx version=\"1.1\"></gpx>");
    expectRefused(log("--from-track", still), 3, {"still.gpx"});
    const std::string closed = folder.at("no/such/out.csv");
    expectRefused(log("--out", closed), 4, {closed});
    EXPECT_TRUE(loadedWater(path).log.empty()) << "nothing was changed";
}

} // namespace
