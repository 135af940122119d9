// SPDX-License-Identifier: GPL-3.0-or-later
// Rates of a small log, counted by hand.
#include "core/store/write_water.h"
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/app/batch/opened_water.h"

#include <QImage>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;
using Json = nlohmann::json;

logbook::Stay stayOf(const char* start, int minutes, int rods, const char* bait) {
    logbook::Stay stay;
    stay.start = units::momentFrom(start, units::Clock()).value();
    stay.end = stay.start + std::chrono::minutes(minutes);
    stay.place = {3.1, 55.2};
    stay.rods = rods;
    stay.bait = bait;
    return stay;
}

void land(logbook::Stay& stay, const char* species, std::optional<double> kilograms) {
    logbook::Fish fish;
    fish.time = stay.start + std::chrono::minutes(10);
    fish.species = species;
    fish.bait = stay.bait;
    if (kilograms) {
        fish.weight = units::Weight::kilograms(*kilograms);
    }
    stay.runs.push_back(fish);
}

/// Roach: 2 x 2.5 h and 3 x 5 h, 20 rod-hours, three pike and a lost run. Smelt: 1 x 4 h, a blank;
/// 2 x 3 h, a perch: 10 rod-hours.
logbook::Log handLog() {
    logbook::Log log{stayOf("2026-09-01T08:00:00Z", 150, 2, "roach"),
                     stayOf("2026-09-30T07:00:00Z", 300, 3, "roach"),
                     stayOf("2026-10-01T08:00:00Z", 240, 1, "smelt"),
                     stayOf("2026-10-31T09:00:00Z", 180, 2, "smelt")};
    land(log[0], "pike", 4.5);
    land(log[1], "pike", 9.625);
    land(log[1], "Pike", std::nullopt);
    log[1].runs.push_back(log[1].runs.front());
    log[1].runs.back().landed = false;
    land(log[3], "perch", 1.25);
    std::int64_t id = 0;
    for (logbook::Stay& stay : log) {
        stay.id = logbook::StayId(++id);
        for (logbook::Fish& fish : stay.runs) {
            fish.id = logbook::FishId(++id);
        }
    }
    return log;
}

class ReviewVerb : public testing::Test {
protected:
    ReviewVerb() {
        water::Water water;
        water.name = "Dish";
        water.log = handLog();
        water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
        base::Progress quiet;
        EXPECT_TRUE(store::writeWater(path, water, {}, {}, quiet).has_value());
    }
    Call review(const std::vector<std::string>& more) const {
        std::vector<std::string> words{"review", path};
        words.insert(words.end(), more.begin(), more.end());
        return call(words);
    }
    Json reportOf(const std::vector<std::string>& more) const {
        const Call done = review(more);
        EXPECT_EQ(done.exitCode, 0) << done.error;
        return done.report();
    }
    DishFolder folder;
    std::string path = folder.at("dish.gpkg");
};

Json rowNamed(const Json& report, const std::string& name) {
    for (const Json& row : report["rows"]) {
        if (row["name"] == name) {
            return row;
        }
    }
    return nullptr;
}

/// Garwood's exact 95 % interval of a Poisson count: for 3 counted 0.6187 to 8.7673, for 1 0.0253
/// to 5.5716 (Garwood 1936, table; half the quantiles of chi-squared).
TEST_F(ReviewVerb, RowsAreCountedByHand) {
    const Json report = reportOf({"--by", "bait"});
    EXPECT_EQ(report["by"], "bait");
    ASSERT_EQ(report["rows"].size(), 2U);
    Json roach = rowNamed(report, "roach");
    EXPECT_GT(roach["shrunk_rate"].get<double>(), 1.0);
    EXPECT_LT(roach["shrunk_rate"].get<double>(), 1.5) << "drawn towards the other row";
    EXPECT_EQ(roach["steadied_rate"], roach["shrunk_rate"]);
    // Two days each: their scatter widens the exact intervals of a day's count.
    EXPECT_GT(report["dispersion"].get<double>(), 1.0);
    EXPECT_LT(roach["rate_low"].get<double>(), 0.3093);
    EXPECT_GT(roach["rate_high"].get<double>(), 4.3836);
    EXPECT_LT(roach["steadied_low"].get<double>(), roach["steadied_rate"].get<double>());
    EXPECT_GT(roach["steadied_high"].get<double>(), roach["steadied_rate"].get<double>());
    EXPECT_EQ(roach["shrunk_low"], roach["steadied_low"]);
    EXPECT_EQ(roach["shrunk_high"], roach["steadied_high"]);
    const auto counts = [](Json row) {
        for (const char* key : {"steadied_rate", "steadied_low", "steadied_high", "shrunk_rate",
                                "shrunk_low", "shrunk_high", "rate_low", "rate_high"}) {
            row.erase(key);
        }
        return row;
    };
    EXPECT_EQ(counts(roach),
              Json::parse(R"({"name": "roach", "rod_hours": 20.0, "stays": 2, "blanks": 0,
        "runs": 4, "fish": 3, "best_kg": 9.625, "rate_per_10_rod_hours": 1.5,
        "share_of_effort": 0.6667})"));
    Json smelt = rowNamed(report, "smelt");
    EXPECT_EQ(counts(smelt),
              Json::parse(R"({"name": "smelt", "rod_hours": 10.0, "stays": 2, "blanks": 1,
        "runs": 1, "fish": 1, "best_kg": 1.25, "rate_per_10_rod_hours": 1.0, "share_of_effort": 0.3333})"));
    const Json& overall = report["overall"];
    EXPECT_EQ(overall["rod_hours"], 30.0);
    EXPECT_EQ(overall["stays"], 4);
    EXPECT_EQ(overall["blanks"], 1);
    EXPECT_EQ(overall["runs"], 5);
    EXPECT_EQ(overall["fish"], 4);
    EXPECT_EQ(overall["best_kg"], 9.625);
    EXPECT_EQ(overall["rate_per_10_rod_hours"], 1.3333);
    EXPECT_EQ(overall["share_of_effort"], 1.0);
    EXPECT_FALSE(report["notes"].empty()) << "so few fish bear little";
}

TEST_F(ReviewVerb, OptionsAskForPartOfTheLog) {
    struct Row {
        std::vector<std::string> options;
        int stays;
        int fish;
        double rodHours;
    };
    for (const Row& row : {Row{{}, 4, 4, 30.0},
                           {{"--from", "2026-09-30"}, 3, 3, 25.0},
                           {{"--from", "2026-10-01"}, 2, 1, 10.0},
                           {{"--to", "2026-09-30"}, 2, 3, 20.0},
                           {{"--to", "2026-09-29"}, 1, 1, 5.0},
                           {{"--from", "2026-09-30", "--to", "2026-10-01"}, 2, 2, 19.0},
                           {{"--species", "pike"}, 4, 3, 30.0},
                           {{"--species", "perch"}, 4, 1, 30.0},
                           {{"--min-weight", "4.5"}, 4, 2, 30.0},
                           {{"--min-weight", "4.6"}, 4, 1, 30.0},
                           {{"--min-weight", "1", "--species", "perch"}, 4, 1, 30.0}}) {
        std::vector<std::string> words{"--by", "month"};
        words.insert(words.end(), row.options.begin(), row.options.end());
        const Json overall = reportOf(words)["overall"];
        const std::string what = testing::PrintToString(row.options);
        EXPECT_EQ(overall["stays"], row.stays) << what;
        EXPECT_EQ(overall["fish"], row.fish) << what;
        EXPECT_EQ(overall["rod_hours"], row.rodHours) << what;
    }
}

TEST_F(ReviewVerb, ByNamesTheRows) {
    for (const auto& [by, name] : {std::pair<std::string, std::string>{"bait", "roach"},
                                   {"month", "September"},
                                   {"hour", "08-10"}}) {
        EXPECT_FALSE(rowNamed(reportOf({"--by", by}), name).is_null())
            << reportOf({"--by", by})["rows"];
    }
    EXPECT_GT(reportOf({"--by", "mark"})["rows"].size(), 0U);
    EXPECT_GT(reportOf({"--by", "wind"})["rows"].size(), 0U);
    for (const char* by : {"section", "zone", "band"}) { // There is nothing to draw.
        expectRefused(review({"--by", by}), 3, {"soundings"});
    }
}

TEST_F(ReviewVerb, ByPlaceDrawsTheWaterFirst) {
    std::filesystem::remove(path);
    const auto words = folder.sketchWords({"--band-edges", "2,4,6,9", "--limit-depth", "9"});
    ASSERT_EQ(call(words).exitCode, 0);
    const std::string log =
        folder.write("log.csv", "kind,stay,start,end,time,lon,lat,rods\n"
                                "stay,1,2026-10-01T08:00,2026-10-01T12:00,,3.1,55.2,2\n"
                                "fish,1,,,2026-10-01T09:00,,,\n"
                                "stay,2,2026-10-02T08:00,2026-10-02T09:00,,3.105,55.2,1\n");
    ASSERT_EQ(call({"log", path, "--add", log}).exitCode, 0);
    const std::string section =
        batch_tests::drawnWater(path).derived.sections->sections.front().name;
    const Json sections = reportOf({"--by", "section"});
    EXPECT_FALSE(rowNamed(sections, section).is_null()) << "fished or not";
    EXPECT_EQ(rowNamed(sections, "elsewhere")["rod_hours"], 1.0) << "on land";
    EXPECT_EQ(sections["overall"]["rod_hours"], 9.0);
    const Json band = rowNamed(reportOf({"--by", "band"}), "6 to 9 m");
    EXPECT_EQ(band["fish"], 1) << reportOf({"--by", "band"})["rows"];
    EXPECT_EQ(band["rod_hours"], 8.0);
    EXPECT_EQ(reportOf({"--by", "zone"})["overall"]["fish"], 1);
}

TEST_F(ReviewVerb, FilesHoldWhatTheReportSays) {
    const Call done = review({"--by", "bait", "--report", folder.at("r.json"), "--csv",
                              folder.at("r.csv"), "--picture", folder.at("r.png")});
    ASSERT_EQ(done.exitCode, 0) << done.error;
    EXPECT_EQ(done.out + done.error, "");
    const Json report = Json::parse(support::ScratchFolder::textOf(folder.at("r.json")));
    EXPECT_EQ(report, reportOf({"--by", "bait"}));
    std::istringstream table(support::ScratchFolder::textOf(folder.at("r.csv")));
    std::string line;
    std::getline(table, line);
    EXPECT_EQ(line, "name,rod_hours,stays,blanks,runs,fish,best_kg,rate_per_10_rod_hours,rate_low,"
                    "rate_high,shrunk_rate,share_of_effort,steadied_rate");
    std::vector<Json> rows = report["rows"].get<std::vector<Json>>();
    rows.push_back(report["overall"]);
    for (const Json& row : rows) {
        std::getline(table, line);
        std::istringstream cells(line);
        std::string cell;
        std::getline(cells, cell, ',');
        EXPECT_EQ(cell, row["name"]);
        for (const char* key :
             {"rod_hours", "stays", "blanks", "runs", "fish", "best_kg", "rate_per_10_rod_hours",
              "rate_low", "rate_high", "shrunk_rate", "share_of_effort", "steadied_rate"}) {
            std::getline(cells, cell, ',');
            EXPECT_NEAR(std::stod(cell), row[key].get<double>(), 0.51e-4) << key << line;
        }
    }
    EXPECT_FALSE(std::getline(table, line)) << "nothing after the whole";
    EXPECT_EQ(QImage(QString::fromStdString(folder.at("r.png"))).size(), QSize(1600, 1200));
}

TEST_F(ReviewVerb, WrongUseAndUnusableFilesAreRefusedByName) {
    expectRefused(call({"review", path}), 2, {"--by"});
    expectRefused(call({"review", "--by", "bait"}), 2, {"water"});
    expectRefused(review({"--by", "moon"}), 2, {"--by", "moon", "bait"});
    expectRefused(review({"--by", "bait", "--from", "soon"}), 2, {"--from", "soon"});
    expectRefused(review({"--by", "bait", "--to", "late"}), 2, {"--to", "late"});
    expectRefused(review({"--by", "bait", "--from", "2026-10-02", "--to", "2026-10-01"}), 2, {});
    for (const char* weight : {"0", "-1", "heavy", "nan"}) {
        expectRefused(review({"--by", "bait", "--min-weight", weight}), 2, {"--min-weight"});
    }
    const std::string none = folder.at("none.gpkg");
    expectRefused(call({"review", none, "--by", "bait"}), 3, {none});
    for (const char* option : {"--report", "--csv", "--picture"}) {
        const std::string closed = folder.at("no/such/file");
        expectRefused(review({"--by", "bait", option, closed}), 4, {closed});
    }
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"dish.gpkg", "shore.geojson", "true.csv"}));
}

} // namespace
