// SPDX-License-Identifier: GPL-3.0-or-later
// From the options of sketch to what the water file holds.
#include "core/gdal/coordinates.h"
#include "core/store/water_store.h"
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/app/batch/opened_water.h"

#include <array>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;
using batch_tests::loadedWater;
using units::Depth;
namespace dish = batch_tests::dish;

void expectDone(const Call& done) {
    ASSERT_EQ(done.exitCode, 0) << done.error;
    EXPECT_EQ(done.error, "");
}

constexpr const char* factsJson =
    R"({"name": "Round Mere", "time_zone": "Europe/Oslo", "chart_level_m": 3.5,
        "secchi_depth_m": 1.75, "launch": {"lon": 3.1021, "lat": 55.2003},
        "places": [{"name": "jetty", "lon": 3.1022, "lat": 55.2004}]})";
constexpr const char* rulesJson =
    R"({"rods_per_boat": 3, "notes": ["no live bait"], "season": {"from": "10-01", "to": "03-14"},
        "closed_waters": [{"name": "reeds", "geometry": {"type": "Polygon", "coordinates":
          [[[3.0990, 55.1990], [3.0995, 55.1990], [3.0995, 55.1993], [3.0990, 55.1990]]]}}]})";

TEST(SketchVerb, OptionsReachTheWaterFileWithSignAndUnit) {
    const DishFolder folder;
    expectDone(call(folder.sketchWords(
        {"--facts",
         folder.write("facts.json", factsJson),
         "--house-rules",
         folder.write("rules.json", rulesJson),
         "--weed",
         folder.write("weed.csv", "lon,lat,kind,height_m\n3.1005,55.2002,thick,0.75\n"),
         "--lead-line",
         folder.write("lead.csv", "lon,lat,depth_m,bottom\n3.1,55.2,8.1,gravel\n"),
         "--limit-depth",
         "5.5",
         "--band-edges",
         "1.5,3,7",
         "--section-area",
         "12500",
         "--draft",
         "0.4",
         "--level",
         "-0.25",
         "--chart-level",
         "-0.5",
         "--water-temperature",
         "13.5",
         "--assumed-sound-speed",
         "1475",
         "--secchi-depth",
         "2.5"})));
    const water::Water water = loadedWater(folder.at("dish.gpkg"));
    EXPECT_EQ(water.name, "Round Mere");
    EXPECT_EQ(water.clock.zone(), "Europe/Oslo");
    EXPECT_EQ(water.chartLevel, units::WaterLevel::metresOnGauge(-0.5)) << "over that of the facts";
    ASSERT_TRUE(water.frame.has_value());
    EXPECT_NEAR(water.frame->centre().lon_deg, 3.1, 1e-9);
    EXPECT_NEAR(water.frame->centre().lat_deg, 55.2, 1e-9);
    EXPECT_EQ(water.settings.cell, units::Length::metres(6.0));
    EXPECT_EQ(water.settings.bands->edges(),
              (std::vector{Depth::metres(1.5), Depth::metres(3.0), Depth::metres(7.0)}));
    EXPECT_EQ(water.settings.bands->limit(), Depth::metres(5.5));
    EXPECT_EQ(water.settings.sectionArea, units::Area::squareMetres(12500.0));
    EXPECT_EQ(water.settings.secchi, Depth::metres(2.5)) << "over that of the facts";
    EXPECT_EQ(water.plan.launch, (geo::LonLat{3.1021, 55.2003}));
    EXPECT_EQ(water.places, (std::vector{water::NamedPlace{"jetty", {3.1022, 55.2004}}}));
    ASSERT_EQ(water.weedNotes.size(), 1U);
    EXPECT_EQ(water.weedNotes[0].growth, weed::Growth::thick);
    EXPECT_EQ(water.weedNotes[0].height, units::Length::metres(0.75));
    ASSERT_EQ(water.leadLine.size(), 1U);
    EXPECT_EQ(water.leadLine[0].depth, Depth::metres(8.1));
    EXPECT_EQ(water.leadLine[0].bottom, soundings::Bottom::gravel);
    EXPECT_EQ(water.houseRules.rodLimit, 3);
    ASSERT_EQ(water.houseRules.closed.size(), 1U);
    EXPECT_EQ(water.houseRules.closed[0].name, "reeds");
    EXPECT_EQ(water.houseRules.notes, std::vector<std::string>{"no live bait"});
    ASSERT_EQ(water.shoreline.size(), 1U);
    EXPECT_EQ(water.shoreline[0].outer.size(), 180U);
    ASSERT_EQ(water.days.size(), 1U);
    const soundings::SurveyDay& day = water.days[0];
    EXPECT_EQ(day.name, "2026-09-05");
    EXPECT_EQ(day.source, "true.csv");
    EXPECT_EQ(day.sounder.draft, Depth::metres(0.4));
    EXPECT_EQ(day.sounder.assumedSoundSpeed, units::Speed::metresPerSecond(1475.0));
    EXPECT_EQ(day.gauge.constantLevel(), units::WaterLevel::metresOnGauge(-0.25));
    EXPECT_EQ(day.waterTemperature, units::Temperature::celsius(13.5));
    EXPECT_FALSE(day.agreedOffset.has_value());
    EXPECT_FALSE(day.agreedDelay_s.has_value());
}

TEST(SketchVerb, WithoutOptionsTheWaterHasTheDefaults) {
    const DishFolder folder;
    expectDone(call(folder.sketchWords()));
    const water::Water water = loadedWater(folder.at("dish.gpkg"));
    const water::Water fresh;
    EXPECT_EQ(water.name, "dish") << "that of its file";
    EXPECT_EQ(water.clock.zone(), "Etc/UTC");
    EXPECT_EQ(water.chartLevel, units::WaterLevel::metresOnGauge(0.0));
    EXPECT_EQ(water.settings.bands, fresh.settings.bands);
    EXPECT_EQ(water.settings.sectionArea, fresh.settings.sectionArea);
    EXPECT_FALSE(water.settings.secchi.has_value());
    ASSERT_EQ(water.days.size(), 1U);
    EXPECT_EQ(water.days[0].sounder, soundings::Sounder{});
    EXPECT_FALSE(water.days[0].gauge.isKnown());
    EXPECT_FALSE(water.days[0].waterTemperature.has_value());
    EXPECT_TRUE(water.houseRules.closed.empty());
}

/// Columns in another order, feet, and metres east and north of zone 31, as the options say.
TEST(SketchVerb, ColumnsUnitAndReferenceSystemSayHowTheFileIsRead) {
    const DishFolder folder;
    const auto zone31 = gdal::Coordinates::ofEpsg(32631).value();
    const auto planeText = [&zone31](double x_m, double y_m) {
        const auto p = zone31.fromEarth(dish::at(x_m, y_m)).value();
        return std::pair(base::fixedText(p.x, 3), base::fixedText(p.y, 3));
    };
    std::string table = "a,b,c,d\n";
    for (int row = -6; row <= 6; ++row) {
        for (int col = -6; col <= 6; ++col) {
            const auto [east, north] = planeText(20.0 * col, 15.0 * row);
            const double feet = dish::bottom_m(20.0 * col, 15.0 * row) / 0.3048;
            table += "2026-09-05T07:0" + std::to_string(row < 0 ? 0 : row) + ":00," +
                     base::fixedText(std::max(feet, 1.0), 3) + "," + north + "," + east + "\n";
        }
    }
    folder.write("feet.csv", table);
    std::string ring;
    for (int i = 0; i <= 90; ++i) {
        const double angle = 2.0 * std::numbers::pi * (i % 90) / 90.0;
        const auto [east, north] = planeText(150.0 * std::cos(angle), 150.0 * std::sin(angle));
        ring += (i == 0 ? "[" : ",[") + east + "," + north + "]";
    }
    folder.write("shore.geojson", R"({"type":"Polygon","coordinates":[[)" + ring + "]]}");
    const Call done =
        call(folder.sketchWords({"--columns", "x=d,y=c,depth=b,time=a", "--unit", "ft", "--crs",
                                 "EPSG:32631", "--facts", folder.write("facts.json", factsJson)},
                                "feet.csv"));
    expectDone(done);
    const water::Water water = loadedWater(folder.at("dish.gpkg"));
    ASSERT_EQ(water.days.size(), 1U);
    ASSERT_EQ(water.days[0].soundings.size(), 169U);
    const soundings::Sounding& first = water.days[0].soundings.front();
    EXPECT_NEAR(first.place.lon_deg, dish::at(-120, -90).lon_deg, 1e-6);
    EXPECT_NEAR(first.place.lat_deg, dish::at(-120, -90).lat_deg, 1e-6);
    const soundings::Sounding& middle = water.days[0].soundings[84];
    EXPECT_NEAR(middle.shown.inMetres(), 8.0, 1e-3);
    // A time without a zone is that of the water's clock: summer time in Oslo.
    EXPECT_EQ(middle.time, units::momentFrom("2026-09-05T05:00:00Z", units::Clock()));
    EXPECT_NEAR(water.shoreline[0].outer[0].lon_deg, dish::at(150, 0).lon_deg, 1e-6);
    EXPECT_NEAR(done.report()["water"]["max_depth_m"], 8.0, 0.6);
}

/// The table of days goes by the file's name and before the options, which hold for all days.
TEST(SketchVerb, TableOfDaysTellsWhatWasTrueOnEach) {
    const DishFolder folder;
    folder.write("feet.csv",
                 dish::soundings(
                     "2026-09-12", true, [](double m) { return m / 0.3048; }, "lon,lat,d,time\n"));
    expectDone(call(folder.sketchWords(
        {folder.at("feet.csv"), "--draft", "0.4", "--level", "0.3", "--water-temperature", "11",
         "--assumed-sound-speed", "1490", "--survey-days",
         folder.write("days.csv", "day,file,water_level_m,water_temperature_c,draft_m,"
                                  "assumed_sound_speed_m_s,depth_unit\n"
                                  "a day,feet.csv,-0.75,8.5,0.25,1450,ft\n"
                                  "another,other.csv,9,9,2.9,1600,fathom\n")})));
    const water::Water water = loadedWater(folder.at("dish.gpkg"));
    ASSERT_EQ(water.days.size(), 2U);
    const soundings::SurveyDay& first = water.days[0];
    EXPECT_EQ(first.name, "2026-09-05");
    EXPECT_EQ(first.sounder.draft, Depth::metres(0.4));
    EXPECT_EQ(first.gauge.constantLevel(), units::WaterLevel::metresOnGauge(0.3));
    EXPECT_EQ(first.waterTemperature, units::Temperature::celsius(11.0));
    EXPECT_EQ(first.sounder.assumedSoundSpeed, units::Speed::metresPerSecond(1490.0));
    const soundings::SurveyDay& second = water.days[1];
    EXPECT_EQ(second.name, "a day");
    EXPECT_EQ(second.source, "feet.csv");
    EXPECT_EQ(second.sounder.draft, Depth::metres(0.25));
    EXPECT_EQ(second.gauge.constantLevel(), units::WaterLevel::metresOnGauge(-0.75));
    EXPECT_EQ(second.waterTemperature, units::Temperature::celsius(8.5));
    EXPECT_EQ(second.sounder.assumedSoundSpeed, units::Speed::metresPerSecond(1450.0));
    EXPECT_NE(first.id, second.id);
    double deepest_m = 0.0;
    for (const soundings::Sounding& sounding : second.soundings) {
        deepest_m = std::max(deepest_m, sounding.shown.inMetres());
    }
    EXPECT_NEAR(deepest_m, 8.0, 0.001) << "feet, as the table says";
}

/// What is said of all files goes before the table only for the unit: it is how the file is read.
TEST(SketchVerb, UnitThatIsAskedForGoesBeforeThatOfTheTable) {
    const DishFolder folder;
    expectDone(call(folder.sketchWords(
        {"--unit", "m", "--survey-days",
         folder.write("days.csv", "day,file,depth_unit\n2026-09-05,true.csv,fathom\n")})));
    EXPECT_NEAR(loadedWater(folder.at("dish.gpkg")).days[0].soundings[0].shown.inMetres(), 0.7,
                0.5);
}

TEST(SketchVerb, NotesOnAFileNameIt) {
    const DishFolder folder;
    std::string swapped = "a,b,depth_m\n";
    for (int i = -14; i <= 14; ++i) {
        const geo::LonLat place = dish::at(10.0 * i, 3.0);
        swapped += base::fixedText(place.lat_deg, 7) + "," + base::fixedText(place.lon_deg, 7) +
                   "," + base::fixedText(dish::bottom_m(10.0 * i, 3.0), 2) + "\n";
    }
    folder.write("turned.csv", swapped);
    const Call done =
        call(folder.sketchWords({"--columns", "x=a,y=b,depth=depth_m"}, "turned.csv"));
    expectDone(done);
    EXPECT_NE(done.report()["notes"].dump().find("turned.csv: "), std::string::npos)
        << done.report()["notes"];
    EXPECT_NEAR(loadedWater(folder.at("dish.gpkg")).days[0].soundings[0].place.lat_deg, 55.2, 0.01);
}

TEST(SketchVerb, DrawingAnewKeepsTheRestOfTheWaterAndFollowsTheShore) {
    const DishFolder folder;
    expectDone(call(folder.sketchWords(
        {"--facts", folder.write("facts.json", factsJson), "--weed",
         folder.write("weed.csv", "lon,lat,kind,height_m\n3.1005,55.2002,thin,\n")})));
    expectDone(call({"log", folder.at("dish.gpkg"), "--add",
                     folder.write("log.csv", "kind,stay,start,end,lon,lat\nstay,1,"
                                             "2026-10-01T08:00,2026-10-01T09:00,3.1,55.2\n")}));
    const water::Water before = loadedWater(folder.at("dish.gpkg"));
    folder.write("new.csv", dish::soundings("2026-09-12", true, [](double m) { return m + 0.5; }));
    expectDone(call(folder.sketchWords({"--limit-depth", "6"}, "new.csv")));
    const water::Water after = loadedWater(folder.at("dish.gpkg"));
    EXPECT_EQ(after.log, before.log);
    EXPECT_EQ(after.log.size(), 1U);
    EXPECT_EQ(after.name, "Round Mere");
    EXPECT_EQ(after.weedNotes, before.weedNotes);
    EXPECT_EQ(after.places, before.places);
    EXPECT_EQ(after.settings.limit, Depth::metres(6.0));
    ASSERT_EQ(after.days.size(), 1U) << "soundings are replaced";
    EXPECT_EQ(after.days[0].source, "new.csv");
    EXPECT_EQ(after.frame, before.frame) << "the shore is the same";
    const auto frameOfAShoreAt = [&folder](double east_m) {
        folder.write("shore.geojson", dish::circleJson(150.0, east_m, 0.0));
        std::string moved = "lon,lat,depth_m\n";
        for (int i = -12; i <= 12; ++i) {
            moved += dish::placeText(east_m + 10.0 * i, 5.0) + ",4.5\n";
        }
        folder.write("moved.csv", moved);
        expectDone(call(folder.sketchWords({}, "moved.csv")));
        return loadedWater(folder.at("dish.gpkg")).frame;
    };
    EXPECT_EQ(frameOfAShoreAt(1500.0), before.frame) << "as at the desk, what is near keeps it";
    EXPECT_GT(frameOfAShoreAt(30'000.0)->centre().lon_deg, 3.4) << "out of its reach";
}

TEST(SketchVerb, AddsToTheNotesThereAreAndDoublesNothing) {
    const DishFolder folder;
    const std::vector<std::string> words{
        "--weed", folder.write("weed.csv", "lon,lat,kind,height_m\n3.1005,55.2002,thin,\n"),
        "--lead-line", folder.write("lead.csv", "lon,lat,depth_m,bottom\n3.1002,55.2,4.1,soft\n")};
    expectDone(call(folder.sketchWords(words)));
    const water::Water once = loadedWater(folder.at("dish.gpkg"));
    ASSERT_EQ(once.weedNotes.size(), 1U);
    ASSERT_EQ(once.leadLine.size(), 1U);
    expectDone(call(folder.sketchWords(words)));
    const water::Water twice = loadedWater(folder.at("dish.gpkg"));
    EXPECT_EQ(twice.weedNotes, once.weedNotes);
    EXPECT_EQ(twice.leadLine, once.leadLine);
    folder.write("weed.csv", "lon,lat,kind,height_m\n3.1002,55.2003,thick,\n");
    folder.write("lead.csv", "lon,lat,depth_m,bottom\n3.1001,55.2001,4.2,rock\n");
    expectDone(call(folder.sketchWords(words)));
    const water::Water more = loadedWater(folder.at("dish.gpkg"));
    ASSERT_EQ(more.weedNotes.size(), 2U);
    EXPECT_EQ(more.weedNotes[0], once.weedNotes[0]);
    ASSERT_EQ(more.leadLine.size(), 2U);
    EXPECT_EQ(more.leadLine[0], once.leadLine[0]);
}

TEST(SketchVerb, KeepsWhatWasSetAsideByHandAndTakesAFileOnce) {
    const DishFolder folder;
    expectDone(call(folder.sketchWords({})));
    base::Progress quiet;
    water::Water water = loadedWater(folder.at("dish.gpkg"));
    water.days.at(0).setAsideByHand = {3, 4};
    ASSERT_TRUE(store::open(folder.at("dish.gpkg"))
                    .value()
                    ->save(water, std::array{water::Part::days}, quiet));
    expectDone(call(folder.sketchWords({})));
    const water::Water again = loadedWater(folder.at("dish.gpkg"));
    EXPECT_EQ(again.days, water.days);
    auto words = folder.sketchWords({});
    words.insert(words.begin() + 1, words.at(1));
    batch_tests::expectRefused(call(words), 3, {"true.csv", "has these soundings already"});
    EXPECT_EQ(loadedWater(folder.at("dish.gpkg")), again) << "nothing was written";
}

} // namespace
