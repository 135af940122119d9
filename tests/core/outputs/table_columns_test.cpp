// SPDX-License-Identifier: GPL-3.0-or-later
// Tables compared to the letter: every column with a figure that is in no other.
#include "core/outputs/table_field.h"
#include "core/outputs/write_b12.h"
#include "core/outputs/write_hypsography.h"
#include "core/outputs/write_rates.h"
#include "core/outputs/write_table.h"
#include "tests/support/scratch_folder.h"

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace {

using soundings::Verdict;
using support::ScratchFolder;
using units::Depth;

const units::Clock london = units::Clock::inZone("Europe/London").value();

units::Moment at(const std::string& text) {
    return units::momentFrom(text, units::Clock()).value();
}

class TableColumns : public testing::Test {
protected:
    std::string read() const { return ScratchFolder::textOf(path); }
    ScratchFolder folder;
    std::filesystem::path path = folder.path() / "out.csv";
};

TEST(TableField, IsQuotedWhereItMustBe) {
    const std::vector<std::pair<std::string, std::string>> cases{
        {"plain text", "plain text"},
        {"", ""},
        {"a,b", "\"a,b\""},
        {"say \"x\"", "\"say \"\"x\"\"\""},
        {"two\nlines", "\"two lines\""},
        {"two\rlines", "\"two lines\""},
        {" blank first", "\" blank first\""},
        {"blank last ", "\"blank last \""},
        {"=1+1", "'=1+1"},
        {"+1", "'+1"},
        {"-a", "'-a"},
        {"@sum(a,b)", "\"'@sum(a,b)\""},
        {"\tx", "'\tx"},
        {"'=", "''="},
        {"a\u202e\x1b[1mb", "a [1mb"},
        {"semi;colon", "semi;colon"}};
    for (const auto& [text, wanted] : cases) {
        EXPECT_EQ(outputs::field(text), wanted);
    }
}

/// Two days: the first reduced, with a sounding for each verdict; the second not.
struct TwoDays {
    std::vector<soundings::SurveyDay> days{2};
    reduction::ReducedSurvey survey;
    TwoDays() {
        days[0].name = "2026-09-05";
        days[1].name = "a, b";
        survey.days.resize(1);
        for (std::size_t i = 0; i < soundings::allVerdicts.size(); ++i) {
            const double step = static_cast<double>(i);
            days[0].soundings.edit().push_back(
                {{3.1 + 0.001 * step, -55.2 - 0.002 * step},
                 Depth::metres(4.125 + step),
                 at("2026-09-05T07:00:00Z") + std::chrono::milliseconds(1250) * i});
            survey.days[0].depth_m.push_back(5.25 + 2.0 * step);
            survey.days[0].verdicts.push_back(soundings::allVerdicts[i]);
        }
        survey.days[0].depth_m[1] = NAN;
        days[1].soundings.edit().push_back({{-3.0, 1.5}, Depth::feet(10.0), std::nullopt});
        days[1].soundings.edit().push_back(
            {{-3.5, 1.25}, Depth::fathoms(1.0), at("2026-12-05T07:00:00Z")});
    }
};

constexpr const char* unreduced = "-3.0000000,1.5000000,,\"a, b\",3.048,,\n"
                                  "-3.5000000,1.2500000,2026-12-05T07:00:00Z,\"a, b\",1.829,,\n";

TEST_F(TableColumns, OfSoundingsHaveWhatWasShownWhatItBecameAndWhyItIsSetAside) {
    const TwoDays given;
    ASSERT_TRUE(outputs::writeSoundingsTable(path, given.days, &given.survey).has_value());
    EXPECT_EQ(
        read(),
        std::string(
            "lon,lat,time,survey_day,shown_depth_m,depth_m,set_aside\n"
            "3.1000000,-55.2000000,2026-09-05T07:00:00Z,2026-09-05,4.125,5.250,\n"
            "3.1010000,-55.2020000,2026-09-05T07:00:01.250Z,2026-09-05,5.125,,drop_out\n"
            "3.1020000,-55.2040000,2026-09-05T07:00:02.500Z,2026-09-05,6.125,9.250,spike\n"
            "3.1030000,-55.2060000,2026-09-05T07:00:03.750Z,2026-09-05,7.125,11.250,double_echo\n"
            "3.1040000,-55.2080000,2026-09-05T07:00:05Z,2026-09-05,8.125,13.250,stuck_depth\n"
            "3.1050000,-55.2100000,2026-09-05T07:00:06.250Z,2026-09-05,9.125,15.250,position_jump\n"
            "3.1060000,-55.2120000,2026-09-05T07:00:07.500Z,2026-09-05,10.125,17.250,"
            "stuck_position\n"
            "3.1070000,-55.2140000,2026-09-05T07:00:08.750Z,2026-09-05,11.125,19.250,"
            "outside_shore\n"
            "3.1080000,-55.2160000,2026-09-05T07:00:10Z,2026-09-05,12.125,21.250,disagrees\n"
            "3.1090000,-55.2180000,2026-09-05T07:00:11.250Z,2026-09-05,13.125,23.250,by_hand\n") +
            unreduced);
}

TEST_F(TableColumns, OfSoundingsStayEmptyWhereTheReductionIsOfAnotherDay) {
    TwoDays given;
    given.days.erase(given.days.begin());
    const std::string wanted =
        std::string("lon,lat,time,survey_day,shown_depth_m,depth_m,set_aside\n") + unreduced;
    ASSERT_TRUE(outputs::writeSoundingsTable(path, given.days, &given.survey).has_value());
    EXPECT_EQ(read(), wanted) << "as many depths as soundings, or none";
    given.survey.days[0].depth_m.resize(2);
    ASSERT_TRUE(outputs::writeSoundingsTable(path, given.days, &given.survey).has_value());
    EXPECT_EQ(read(), wanted) << "the verdicts are too many";
    given.survey.days[0].depth_m.resize(3);
    given.survey.days[0].verdicts.resize(2);
    ASSERT_TRUE(outputs::writeSoundingsTable(path, given.days, &given.survey).has_value());
    EXPECT_EQ(read(), wanted) << "the depths are too many";
}

TEST_F(TableColumns, OfB12AreWhatWasShownOfWhatIsKeptAndHasATime) {
    const TwoDays given;
    ASSERT_TRUE(outputs::writeB12Table(path, given.days, &given.survey).has_value());
    EXPECT_EQ(read(), "LON,LAT,DEPTH,TIME\n"
                      "3.1000000,-55.2000000,4.125,2026-09-05T07:00:00.000Z\n"
                      "-3.5000000,1.2500000,1.829,2026-12-05T07:00:00.000Z\n");
    ASSERT_TRUE(outputs::writeB12Table(path, given.days, nullptr).has_value());
    EXPECT_EQ(std::ranges::count(read(), '\n'), 1 + 10 + 1) << "nothing is known to be set aside";
    EXPECT_NE(read().find("3.1010000,-55.2020000,5.125,2026-09-05T07:00:01.250Z\n"),
              std::string::npos);
    ASSERT_TRUE(outputs::writeB12Geojson(path, given.days, &given.survey).has_value());
    const auto features = nlohmann::json::parse(read())["features"];
    ASSERT_EQ(features.size(), 2U);
    EXPECT_EQ(features[1],
              nlohmann::json::parse(
                  R"({"type":"Feature","geometry":{"type":"Point","coordinates":[-3.5,1.25]},)"
                  R"("properties":{"depth":1.829,"time":"2026-12-05T07:00:00.000Z"}})"));
}

TEST_F(TableColumns, OfB12SayTheyAreNeitherReducedNorElevations) {
    ASSERT_TRUE(outputs::writeB12Geojson(path, {}, nullptr).has_value());
    EXPECT_EQ(nlohmann::json::parse(read()),
              nlohmann::json::parse(
                  R"({"type":"FeatureCollection","properties":{"trustedNode":{)"
                  R"("convention":"GeoJSON CSB 3.0","providerLogger":"Meremark",)"
                  R"("navigationCRS":"EPSG:4326","verticalReferenceOfDepth":"Transducer",)"
                  R"("vesselPositionReferencePoint":"GNSS"},"platform":{"type":"Private vessel"},)"
                  R"("depthUnits":"meters","timeUnits":"ISO 8601","processing":)"
                  R"("none: as the sounder showed it, not corrected for sound speed, draft or )"
                  R"(water level"},"lineage":[],"features":[]})"));
}

TEST(B12Soundings, AreThereWhereOneIsKeptAndHasATime) {
    TwoDays given;
    EXPECT_TRUE(outputs::hasB12Soundings(given.days, &given.survey));
    given.survey.days[0].verdicts[0] = Verdict::spike;
    EXPECT_TRUE(outputs::hasB12Soundings(given.days, &given.survey)) << "on the second day";
    given.days.pop_back();
    EXPECT_FALSE(outputs::hasB12Soundings(given.days, &given.survey)) << "all are set aside";
    EXPECT_TRUE(outputs::hasB12Soundings(given.days, nullptr));
    for (soundings::Sounding& sounding : given.days[0].soundings.edit()) {
        sounding.time.reset();
    }
    EXPECT_FALSE(outputs::hasB12Soundings(given.days, nullptr)) << "none has a time";
}

TEST_F(TableColumns, OfTheLogAreThoseOfTheContractInItsUnits) {
    logbook::Stay stay;
    stay.id = logbook::StayId(41);
    stay.start = at("2026-09-27T09:06:40Z");
    stay.end = at("2026-11-27T11:36:00Z");
    stay.place = {3.1012345678, 55.2087654321};
    stay.rods = 3;
    stay.bait = "roach, dead";
    stay.conditions = {units::Bearing::degrees(231.5), units::Speed::metresPerSecond(4.25),
                       units::Temperature::celsius(-0.5), units::WaterLevel::metresOnGauge(31.25),
                       "=overcast"};
    stay.who = "Anna, Ben";
    stay.baitPlace = {3.102, 55.209};
    stay.photograph = "morning.jpg";
    stay.others = {{"air, C", "-3"}};
    stay.note = "say \"hi\"\nand go";
    logbook::Fish fish;
    fish.time = at("2026-09-27T09:40:00.500Z");
    fish.species = "pike, big";
    fish.bait = "smelt";
    fish.weight = units::Weight::kilograms(9.625);
    fish.length = units::Length::metres(1.0215);
    fish.baitDepth = Depth::metres(3.5);
    fish.note = "at the edge";
    fish.who = "Ben";
    fish.hooked = "scissors";
    fish.returned = true;
    fish.baitPlace = {3.103, 55.21};
    fish.photograph = "pike.jpg";
    fish.others = {{"moon", "full"}};
    logbook::Fish run;
    run.time = at("2026-11-27T10:00:00Z");
    run.landed = false;
    run.returned = false;
    stay.runs = {fish, run};
    logbook::Stay bare;
    bare.id = logbook::StayId(7);
    bare.start = at("2026-12-01T09:00:00Z");
    bare.end = at("2026-12-01T10:00:00Z");
    bare.place = {-3.5, -55.25};
    ASSERT_TRUE(outputs::writeLogTable(path, {stay, bare}, london).has_value());
    EXPECT_EQ(read(),
              "kind,stay,start,end,time,lon,lat,rods,bait,species,weight_kg,length_mm,"
              "bait_depth_m,wind_from_deg,wind_speed_m_s,water_temperature_c,note,level_m,sky,"
              "bait_lon,bait_lat,hooked,returned,photograph,who,\"air, C\",moon\n"
              "stay,41,2026-09-27T10:06:40+01:00,2026-11-27T11:36:00+00:00,,3.1012345678,"
              "55.2087654321,3,\"roach, dead\",,,,,231.5,4.25,-0.5,\"say \"\"hi\"\"\nand go\","
              "31.25,'=overcast,3.102,55.209,,,morning.jpg,\"Anna, Ben\",'-3,\n"
              "fish,41,,,2026-09-27T10:40:00.500+01:00,,,,smelt,\"pike, big\",9.625,1021.5,3.5,,,,"
              "at the edge,,,3.103,55.21,scissors,yes,pike.jpg,Ben,,full\n"
              "run,41,,,2026-11-27T10:00:00+00:00,,,,,,,,,,,,,,,,,,no,,,,\n"
              "stay,7,2026-12-01T09:00:00+00:00,2026-12-01T10:00:00+00:00,,-3.5,-55.25,,,,,,,,,,,"
              ",,,,,,,,,\n");
    bare.id =
        logbook::StayId(41); // One number for two stays tells nothing: both are numbered anew.
    ASSERT_TRUE(outputs::writeLogTable(path, {stay, bare}, london).has_value());
    EXPECT_NE(read().find("\nstay,1,2026-09-27"), std::string::npos) << read();
    EXPECT_NE(read().find("\nrun,1,,,"), std::string::npos) << read();
    EXPECT_NE(read().find("\nstay,2,2026-12-01"), std::string::npos) << read();
}

/// A cone of 40 m radius and 2.5 m depth has at each depth the area and the volume of a smaller
/// cone; given here as a table of three steps, straight between them.
TEST_F(TableColumns, OfTheFormAreAreaAndVolumeBelowEachMetre) {
    surface::Hypsography form;
    form.maxDepth = Depth::metres(2.5);
    const auto step = [](double depth_m, double area_m2, double below_m3) {
        return surface::HypsographyStep{Depth::metres(depth_m), units::Area::squareMetres(area_m2),
                                        units::Volume::cubicMetres(below_m3)};
    };
    form.steps = {step(0.0, 5000.0, 6250.0), step(1.0, 3000.0, 2250.0), step(2.0, 1000.0, 250.0)};
    ASSERT_TRUE(outputs::writeHypsographyTable(path, form).has_value());
    EXPECT_EQ(read(), "depth_m,area_m2,volume_m3\n0.0,5000.0,6250.0\n1.0,3000.0,2250.0\n"
                      "2.0,1000.0,250.0\n");
}

TEST_F(TableColumns, OfRatesAreCountsEffortAndIntervals) {
    rates::RateTable table;
    rates::RateRow row;
    row.name = "roach, \"dead\"";
    row.rodHours = 12.3456;
    row.stays = 7;
    row.blanks = 5;
    row.runs = 4;
    row.fish = 2;
    row.best = units::Weight::kilograms(9.6254);
    row.rate = rates::Rate{1.62001, 0.19622, 5.85003};
    row.shrunk = rates::Rate{1.34567, 0.31, 3.01};
    row.shareOfEffort = 0.25004;
    rates::RateRow untried;
    untried.name = "smelt";
    table.rows = {row, untried};
    table.overall = row;
    table.overall.name = "all";
    table.overall.rodHours = 49.0;
    ASSERT_TRUE(outputs::writeRatesTable(path, table).has_value());
    EXPECT_EQ(read(), "name,rod_hours,stays,blanks,runs,fish,best_kg,rate_per_10_rod_hours,"
                      "rate_low,rate_high,shrunk_rate,share_of_effort,steadied_rate\n"
                      "\"roach, \"\"dead\"\"\",12.346,7,5,4,2,9.625,1.6200,0.1962,5.8500,1.3457,"
                      "0.2500,1.3457\n"
                      "smelt,0.000,0,0,0,0,,,,,,0.0000,\n"
                      "all,49.000,7,5,4,2,9.625,1.6200,0.1962,5.8500,1.3457,0.2500,1.3457\n");
}

TEST_F(TableColumns, SayWhereTheyCannotBeWritten) {
    const auto nowhere = folder.path() / "no" / "such.csv";
    for (const auto& written :
         {outputs::writeLogTable(nowhere, {}, london), outputs::writeB12Table(nowhere, {}, nullptr),
          outputs::writeB12Geojson(nowhere, {}, nullptr),
          outputs::writeHypsographyTable(nowhere, {}), outputs::writeRatesTable(nowhere, {})}) {
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
        EXPECT_NE(written.error().sentence().find(nowhere.string()), std::string::npos);
    }
}

} // namespace
