// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"
#include "core/store/write_water.h"
#include "core/water/steps/plan_day.h"
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/app/batch/opened_water.h"

#include <fstream>
#include <map>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;
using Json = nlohmann::json;
using support::ScratchFolder;

/// Two days of three and one sounding, two stays with three runs between them; nothing is drawn.
void writeSmallWater(const std::string& path) {
    water::Water water;
    water.name = "Small";
    water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    const soundings::Sounding sounding{{3.1, 55.2}, units::Depth::metres(4.0), std::nullopt};
    water.days.resize(2);
    water.days[0].id = soundings::SurveyDayId(1);
    water.days[0].soundings = {sounding, sounding, sounding};
    water.days[0].passStarts = {0};
    water.days[1].id = soundings::SurveyDayId(2);
    water.days[1].soundings = {sounding};
    water.days[1].passStarts = {0};
    logbook::Stay stay;
    stay.id = logbook::StayId(3);
    stay.place = {3.1, 55.2};
    stay.end = stay.start + std::chrono::hours(1);
    water.log = {stay, stay};
    water.log.edit(1).id = logbook::StayId(4);
    water.log.edit(0).runs.resize(2);
    water.log.edit(1).runs.resize(1);
    std::int64_t id = 5;
    for (std::size_t i = 0; i < water.log.size(); ++i) {
        for (logbook::Fish& fish : water.log.edit(i).runs) {
            fish.id = logbook::FishId(id++);
        }
    }
    base::Progress quiet;
    ASSERT_TRUE(store::writeWater(path, water, {}, {}, quiet).has_value());
}

TEST(CheckVerb, LaysWhatCanBeReadOfADamagedFileIntoANewOne) {
    const support::ScratchFolder folder;
    const std::string path = (folder.path() / "water.gpkg").string();
    const std::string to = (folder.path() / "rescued.gpkg").string();
    writeSmallWater(path);
    {
        const auto file =
            store::Connection::open(path, store::Connection::Access::existing).value();
        file->execute("PRAGMA ignore_check_constraints = TRUE;"
                      "UPDATE soundings SET shown_depth_m = 2e16 WHERE fid = 2");
        ASSERT_TRUE(file->outcome().has_value());
    }
    const Call damaged = call({"check", path});
    EXPECT_EQ(damaged.exitCode, 5);
    EXPECT_NE(damaged.error.find("--rescue"), std::string::npos) << damaged.error;
    const Call rescued = call({"check", path, "--rescue", to});
    ASSERT_EQ(rescued.exitCode, 0) << rescued.error;
    EXPECT_EQ(rescued.report()["soundings"], 3);
    EXPECT_EQ(rescued.report()["stays"], 2);
    EXPECT_EQ(rescued.report()["whole"], true);
    EXPECT_EQ(rescued.report()["rescued_to"], to);
    EXPECT_FALSE(rescued.report()["lost"].empty());
    EXPECT_NE(rescued.error.find("not everything could be read"), std::string::npos);
    EXPECT_EQ(call({"check", to}).report()["whole"], true);
    batch_tests::expectRefused(call({"check", path, "--rescue", to}), 4, {"rescued.gpkg"});
    batch_tests::expectRefused(call({"check", path, "--rescue", path}), 4, {"--rescue"});
}

TEST(CheckVerb, FindsWhatAnotherVerbWouldStopAt) {
    const support::ScratchFolder folder;
    const std::string path = (folder.path() / "water.gpkg").string();
    writeSmallWater(path);
    for (const auto& [change, told] : std::map<std::string, std::string>{
             {"UPDATE plan SET value='5' WHERE key='over_depth_m'", "an over-depth from 0 to 3 m"},
             {"UPDATE plan SET value='10000' WHERE key='end_s'", "ends before it starts"},
             {"UPDATE plan SET value='0.001' WHERE key='stern_rope_m'", "the stern rope"}}) {
        SCOPED_TRACE(change);
        std::filesystem::remove(path);
        writeSmallWater(path);
        EXPECT_EQ(call({"check", path}).exitCode, 0);
        const auto file =
            store::Connection::open(path, store::Connection::Access::existing).value();
        file->execute(change);
        ASSERT_TRUE(file->outcome().has_value());
        const Call checked = call({"check", path});
        EXPECT_EQ(checked.exitCode, 3) << checked.error;
        EXPECT_NE(checked.error.find(told), std::string::npos) << checked.error;
    }
}

TEST(CheckVerb, LooksAtAFileOfANewerVersionThatNothingIsSavedInto) {
    const support::ScratchFolder folder;
    const std::string path = (folder.path() / "water.gpkg").string();
    writeSmallWater(path);
    {
        const auto file =
            store::Connection::open(path, store::Connection::Access::existing).value();
        file->execute("UPDATE water_file SET value='99' WHERE key='schema_step'");
        ASSERT_TRUE(file->outcome().has_value());
    }
    const std::string bytes = support::ScratchFolder::textOf(path);
    const std::string table = (folder.path() / "log.csv").string();
    EXPECT_EQ(call({"check", path}).exitCode, 0);
    EXPECT_EQ(call({"log", path, "--out", table}).exitCode, 0);
    batch_tests::expectRefused(call({"log", path, "--add", table}), 3, {"water.gpkg", "newer"});
    EXPECT_TRUE(support::ScratchFolder::textOf(path) == bytes);
}

TEST(CheckVerb, CountsWhatAWholeFileHolds) {
    const DishFolder folder;
    const std::string path = folder.at("small.gpkg");
    writeSmallWater(path);
    const Call checked = call({"check", path});
    EXPECT_EQ(checked.exitCode, 0) << checked.error;
    EXPECT_EQ(checked.error, "");
    EXPECT_EQ(checked.report(), Json::parse(R"({"whole": true, "survey_days": 2, "soundings": 4,
        "stays": 2, "runs": 3, "has_drawing": false, "faults": [], "problems": []})"));
}

/// A file that opens and contradicts itself: everything is reported, and the first fault said.
TEST(CheckVerb, TellsWhatContradictsItself) {
    const DishFolder folder;
    const std::string path = folder.at("small.gpkg");
    writeSmallWater(path);
    {
        auto connection =
            store::Connection::open(path, store::Connection::Access::existing).value();
        connection->execute("PRAGMA foreign_keys=OFF; PRAGMA ignore_check_constraints=ON;"
                            "UPDATE stays SET rods=0");
        ASSERT_TRUE(connection->outcome().has_value());
    }
    const Call checked = call({"check", path});
    EXPECT_EQ(checked.exitCode, 5) << checked.error;
    const Json report = checked.report();
    EXPECT_EQ(report["whole"], false);
    EXPECT_EQ(report["survey_days"], 2);
    ASSERT_GE(report["faults"].size(), 1U);
    const std::string first = report["faults"][0];
    EXPECT_NE(checked.error.find(first), std::string::npos) << checked.error;
    EXPECT_NE(checked.error.find(path), std::string::npos);
    EXPECT_NE(checked.error.find("go back to a copy"), std::string::npos);
    EXPECT_EQ(std::ranges::count(checked.error, '\n'), 1) << checked.error;
}

/// Every verb that opens a water tells a damaged, a foreign and a missing one.
TEST(WaterFiles, ThatCannotBeUsedAreRefusedByEveryVerb) {
    const DishFolder folder;
    const std::string cut = folder.at("cut.gpkg");
    writeSmallWater(cut);
    std::filesystem::resize_file(cut, std::filesystem::file_size(cut) / 2);
    const std::string foreign = folder.write("foreign.gpkg", "a letter to a friend");
    const std::string missing = folder.at("missing.gpkg");
    const auto before = folder.names();
    for (const auto& [path, code] :
         {std::pair<std::string, int>{cut, 5}, {foreign, 3}, {missing, 3}}) {
        for (const std::vector<std::string>& words :
             {std::vector<std::string>{"check", path},
              {"give", path, "--to", folder.at("given")},
              {"marks", path, "--wind-from", "0", "--wind-speed", "0"},
              {"log", path, "--out", folder.at("log.csv")},
              {"review", path, "--by", "bait"},
              {"review", path, "--by", "section"}}) {
            SCOPED_TRACE(words[0] + ' ' + path);
            expectRefused(call(words), code, {path});
        }
    }
    const std::string shore = folder.at("shore.geojson");
    expectRefused(call({"sketch", folder.at("true.csv"), "--shore", shore, "--water", cut}), 5,
                  {cut});
    expectRefused(call({"sketch", folder.at("true.csv"), "--shore", shore, "--water", foreign}), 4,
                  {foreign, "--water"});
    EXPECT_EQ(ScratchFolder::textOf(foreign), "a letter to a friend");
    EXPECT_EQ(folder.names(), before) << "nothing was left behind";
}

TEST(GiveVerb, WritesTheWaterWithTheMarksOfItsPlan) {
    const DishFolder folder;
    ASSERT_EQ(call(folder.sketchWords()).exitCode, 0);
    const Call given = call({"give", folder.at("dish.gpkg"), "--to", folder.at("a/b")});
    ASSERT_EQ(given.exitCode, 0) << given.error;
    EXPECT_EQ(given.out + given.error, "");
    std::map<std::string, std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder.at("a/b"))) {
        files[entry.path().filename().string()] = ScratchFolder::textOf(entry.path());
    }
    EXPECT_EQ(files.size(), 14U);
    const auto opened = batch_tests::drawnWater(folder.at("dish.gpkg"));
    base::Progress quiet;
    const auto planned =
        water::planDay(opened.water, opened.derived, opened.water.plan, quiet).value();
    ASSERT_FALSE(planned.marks.empty());
    std::size_t at = 0;
    for (const marks::Mark& mark : planned.marks) {
        at = files["marks.gpx"].find("<wpt lat=\"" + base::fixedText(mark.lonLat.lat_deg, 7) +
                                         "\" lon=\"" + base::fixedText(mark.lonLat.lon_deg, 7) +
                                         "\"><name>" + std::to_string(mark.rank),
                                     at);
        ASSERT_NE(at, std::string::npos) << mark.rank << " is missing or out of order";
    }
    EXPECT_EQ(Json::parse(files["sections.geojson"])["features"].size(),
              opened.derived.sections->sections.size());
    EXPECT_EQ(std::ranges::count(files["soundings.csv"], '\n'),
              std::ranges::count(ScratchFolder::textOf(folder.at("true.csv")), '\n'));
}

/// A water too small to anchor on is given all the same; why there are no marks is said.
TEST(GiveVerb, GivesAWaterWithoutMarksWhereNoneHolds) {
    const DishFolder folder;
    folder.write("shore.geojson", batch_tests::dish::circleJson(150.0));
    ASSERT_EQ(call(folder.sketchWords({"--limit-depth", "0.001"})).exitCode, 0);
    const Call given = call({"give", folder.at("dish.gpkg"), "--to", folder.at("given")});
    EXPECT_EQ(given.exitCode, 0) << given.error;
    EXPECT_TRUE(given.error.starts_with("meremark-batch: without marks: ")) << given.error;
    EXPECT_EQ(std::ranges::count(given.error, '\n'), 1) << given.error;
    EXPECT_EQ(ScratchFolder::textOf(folder.at("given/marks.gpx")).find("<wpt"), std::string::npos);
    EXPECT_TRUE(std::filesystem::exists(folder.at("given/depth.tif")));
}

TEST(GiveVerb, WrongUseAndClosedFoldersAreRefusedByName) {
    const DishFolder folder;
    ASSERT_EQ(call(folder.sketchWords()).exitCode, 0);
    expectRefused(call({"give", folder.at("dish.gpkg")}), 2, {"--to"});
    expectRefused(call({"give", "--to", folder.at("given")}), 2, {"water"});
    expectRefused(call({"check"}), 2, {"water"});
    const std::string inTheWay = folder.at("true.csv");
    expectRefused(call({"give", folder.at("dish.gpkg"), "--to", inTheWay}), 4, {inTheWay});
}

} // namespace
