// SPDX-License-Identifier: GPL-3.0-or-later
// The whole job on the sample water, as a user would do it: what comes out is held against
// sample-survey/expected, which the generator works out from its own formulas.
#include "core/units/moment.h"
#include "tests/whole_day/sample_day.h"

#include <fstream>
#include <set>

namespace {

using whole_day::BatchRun;
using whole_day::expected;
using whole_day::GridFile;
using whole_day::Json;
using whole_day::readJson;
using whole_day::runBatch;
using whole_day::SampleDay;
using whole_day::sampleFile;

TEST_F(SampleDay, WaterHasTheAreaDepthAndVolumeOfItsFormulas) {
    const Json truth = expected("water.json");
    for (const char* key : {"area_m2", "volume_m3", "mean_depth_m", "max_depth_m", "shoreline_m"}) {
        EXPECT_NEAR(sketched["water"][key].get<double>(), truth[key]["value"].get<double>(),
                    truth[key]["tolerance"].get<double>())
            << key;
    }
}

TEST_F(SampleDay, DepthsAreThoseOfTheBottomAtTheCheckPoints) {
    const GridFile depth(at("depth.tif"));
    int beyond = 0;
    int count = 0;
    const Json points = expected("check-points.json")["points"];
    for (const Json& point : points) {
        if (point["thin"].get<bool>()) {
            continue;
        }
        ++count;
        const double drawn_m = depth.at(point["lon"], point["lat"]);
        beyond += std::fabs(drawn_m - point["depth_m"].get<double>()) <=
                          point["tolerance_m"].get<double>()
                      ? 0
                      : 1;
    }
    EXPECT_GE(count, 40);
    EXPECT_LE(beyond, count / 20) << "95 of 100 within tolerance";
}

TEST_F(SampleDay, TrustHoldsAtTheCheckPointsAsOftenAsItSays) {
    const GridFile depth(at("depth.tif"));
    const GridFile trust(at("trust.tif"));
    int within = 0;
    int count = 0;
    const Json points = expected("check-points.json")["points"];
    for (const Json& point : points) {
        const double error_m =
            std::fabs(depth.at(point["lon"], point["lat"]) - point["depth_m"].get<double>());
        within += error_m <= trust.at(point["lon"], point["lat"]) ? 1 : 0;
        ++count;
    }
    // About sixty points: 95 % of them, less three standard deviations of that count.
    EXPECT_GE(within, static_cast<int>(0.95 * count - 3.0 * std::sqrt(0.95 * 0.05 * count)));
}

TEST_F(SampleDay, DayWithoutAGaugeReadingIsTiedToTheOthers) {
    for (const Json& day : sketched["reduction"]["survey_days"]) {
        if (day["survey_day"] == "2026-09-12") {
            // Its true level is -0.10 m: taken at chart level, its depths would come out 0.10 m too
            // shallow.
            EXPECT_NEAR(day["agreed_offset_m"].get<double>(), 0.10, 0.05);
        } else {
            EXPECT_TRUE(day["agreed_offset_m"].is_null());
        }
    }
}

TEST_F(SampleDay, FaultsAreSetAsideAndBadRowsCounted) {
    const Json& soundings = sketched["soundings"];
    double faults = 0.0;
    const Json days = expected("soundings.json")["days"];
    for (const Json& day : days) {
        for (const auto& [kind, sum] : day["faults"].items()) {
            if (kind == "spike" || kind == "double_echo" || kind == "position_jump" ||
                kind == "stuck" || kind == "zero_depth") {
                faults += sum["soundings"].get<double>();
            }
        }
    }
    double setAside = 0.0;
    for (const auto& [reason, count] : soundings["set_aside"].items()) {
        setAside += count.get<double>();
    }
    EXPECT_GE(setAside, 0.8 * faults);
    EXPECT_LE(setAside, 2.0 * faults) << "good soundings are kept";
    EXPECT_EQ(soundings["bad_rows"]["bad_checksum"], 9);
    EXPECT_GT(soundings["kept"].get<int>(), 29000);
}

TEST_F(SampleDay, CrossingsAgreeOnceTheDaysAreTied) {
    EXPECT_GT(sketched["crossings"]["count"].get<int>(), 1000);
    EXPECT_LT(sketched["crossings"]["rms_m"].get<double>(), 0.25);
    EXPECT_GT(sketched["crossings"]["within_order_1b"].get<double>(), 0.9);
}

TEST_F(SampleDay, SectionsAreNamedAndNearTheWantedSize) {
    const Json& sections = sketched["sections"];
    ASSERT_GE(sections.size(), 10U);
    std::set<std::string> names;
    int near = 0;
    for (const Json& section : sections) {
        names.insert(section["name"].get<std::string>());
        const double area_m2 = section["area_m2"];
        near += area_m2 >= 0.5 * 40000.0 && area_m2 <= 1.6 * 40000.0 ? 1 : 0;
        const double shares = section["trust_share"]["sounded"].get<double>() +
                              section["trust_share"]["inferred"].get<double>() +
                              section["trust_share"]["guess"].get<double>();
        EXPECT_NEAR(shares, 1.0, 0.01);
    }
    EXPECT_EQ(names.size(), sections.size());
    EXPECT_GE(near, static_cast<int>(0.8 * static_cast<double>(sections.size())));
}

TEST_F(SampleDay, StructureOfTheBottomIsFound) {
    std::set<std::string> kinds;
    for (const Json& zone : sketched["zones"]) {
        kinds.insert(zone["kind"].get<std::string>());
    }
    for (const char* kind : {"drop-off", "hump", "hole", "weed bed", "weed edge"}) {
        EXPECT_TRUE(kinds.contains(kind)) << kind;
    }
}

TEST_F(SampleDay, FileIsWhole) {
    const BatchRun run = runBatch({"check", water()});
    EXPECT_EQ(run.exitCode, 0) << run.error;
    const Json found = Json::parse(run.out);
    EXPECT_TRUE(found["whole"]);
    EXPECT_EQ(found["survey_days"], 3);
    EXPECT_TRUE(found["has_drawing"]);
}

TEST_F(SampleDay, LogComesInOnceAndOutAsItWent) {
    ASSERT_EQ(logRun.exitCode, 0) << logRun.error;
    const Json truth = expected("log.json")["whole_log"];
    EXPECT_EQ(Json::parse(logRun.out)["added_stays"], truth["stays"]);
    ASSERT_EQ(runBatch({"log", water(), "--out", at("log.csv")}).exitCode, 0);
    const BatchRun again = runBatch({"log", water(), "--add", at("log.csv")});
    ASSERT_EQ(again.exitCode, 0) << again.error;
    EXPECT_EQ(Json::parse(again.out)["added_stays"], 0);
    EXPECT_EQ(Json::parse(again.out)["known_stays"], truth["stays"]);
}

TEST_F(SampleDay, StaysOfTheTrackAreFound) {
    const std::string copy = at("track.gpkg");
    std::filesystem::copy_file(water(), copy, std::filesystem::copy_options::overwrite_existing);
    const BatchRun run =
        runBatch({"log", copy, "--from-track", sampleFile("day-track.gpx"), "--rods", "3"});
    ASSERT_EQ(run.exitCode, 0) << run.error;
    const Json found = Json::parse(run.out)["stays"];
    const Json truth = expected("stays.json");
    ASSERT_EQ(found.size(), truth["stays"].size());
    const auto seconds = [](const Json& text) {
        return units::momentFrom(text.get<std::string>(), units::Clock())
                   ->time_since_epoch()
                   .count() /
               1000;
    };
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_LE(std::abs(seconds(found[i]["start"]) - seconds(truth["stays"][i]["start"])),
                  truth["time_tolerance_s"].get<int>());
        EXPECT_LE(std::abs(seconds(found[i]["end"]) - seconds(truth["stays"][i]["end"])),
                  truth["time_tolerance_s"].get<int>());
    }
}

TEST_F(SampleDay, GivesEverythingInOpenFormats) {
    const BatchRun run = runBatch({"give", water(), "--to", at("given")});
    ASSERT_EQ(run.exitCode, 0) << run.error;
    for (const char* file :
         {"depth.tif", "trust.tif", "soundings.csv", "soundings-b12.geojson", "soundings-b12.csv",
          "shoreline.geojson", "contours.geojson", "bands.geojson", "hypsography.csv",
          "zones.geojson", "sections.geojson", "marks.gpx", "log.csv"}) {
        EXPECT_GT(std::filesystem::file_size(scratch / "given" / file), 100U) << file;
    }
    std::ifstream readMe(scratch / "given" / "read-me.txt");
    const std::string said{std::istreambuf_iterator<char>(readMe), {}};
    EXPECT_NE(said.find("not for navigation"), std::string::npos);
    std::ifstream soundings(scratch / "given" / "soundings.csv");
    std::string header;
    std::getline(soundings, header);
    EXPECT_EQ(header.substr(0, header.find('\r')),
              "lon,lat,time,survey_day,shown_depth_m,depth_m,set_aside");
}

TEST_F(SampleDay, GivesSectionsWithWhatIsKnownOfThemAndZonesWithTheirTrust) {
    ASSERT_EQ(runBatch({"give", water(), "--to", at("given")}).exitCode, 0);
    const Json sections = readJson(scratch / "given" / "sections.geojson")["features"];
    const Json& reported = sketched["sections"];
    ASSERT_EQ(sections.size(), reported.size());
    int stays = 0;
    int never = 0;
    for (std::size_t i = 0; i < sections.size(); ++i) {
        const Json& given = sections[i]["properties"];
        EXPECT_EQ(given["name"], reported[i]["name"]);
        EXPECT_NEAR(given["area_m2"], reported[i]["area_m2"], 0.1);
        EXPECT_NEAR(given["drop_off_m"], reported[i]["drop_off_m"], 0.1);
        EXPECT_EQ(given["never_fished"].get<bool>(), given["stays"] == 0);
        stays += given["stays"].get<int>();
        never += given["never_fished"] ? 1 : 0;
        double known = 0.0;
        for (const auto& [kind, share] : reported[i]["structure_share"].items()) {
            known += share.get<double>();
        }
        EXPECT_LE(known, 1.001);
    }
    EXPECT_GT(stays, 0) << "the log is in";
    EXPECT_LE(stays, expected("log.json")["whole_log"]["stays"].get<int>());
    EXPECT_GT(never, 0);
    EXPECT_LT(never, static_cast<int>(sections.size()));
    for (const Json& zone : readJson(scratch / "given" / "zones.geojson")["features"]) {
        EXPECT_GT(zone["properties"]["trust_m"], 0.0) << zone["properties"]["name"];
        EXPECT_LE(zone["properties"]["shallowest_m"], zone["properties"]["deepest_m"]);
        EXPECT_GT(zone["properties"]["area_m2"], 0.0);
        const bool isDropOff = zone["properties"]["kind"] == "drop-off";
        EXPECT_TRUE(!isDropOff || zone["properties"]["edge_m"].is_number());
    }
}

TEST_F(SampleDay, DrawingAnewKeepsTheLog) {
    const std::string copy = at("again.gpkg");
    std::filesystem::copy_file(water(), copy, std::filesystem::copy_options::overwrite_existing);
    ASSERT_EQ(runBatch({"sketch", sampleFile("survey-2026-09-05.nmea"), "--shore",
                        sampleFile("shoreline.geojson"), "--water", copy, "--next-minutes", "0",
                        "--report", at("again.json")})
                  .exitCode,
              0);
    const Json found = Json::parse(runBatch({"check", copy}).out);
    EXPECT_EQ(found["survey_days"], 1);
    EXPECT_EQ(found["stays"], expected("log.json")["whole_log"]["stays"]);
}

} // namespace
