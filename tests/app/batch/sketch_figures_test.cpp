// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of sketch against the formulas of a paraboloid of radius R = 150 m and depth
// D = 8 m: area pi R^2, below depth z the area A (1 - z/D) and the volume A D/2 (1 - z/D)^2.
#include "core/gdal/coordinates.h"
#include "core/gdal/raster_file.h"
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/app/batch/opened_water.h"

#include <QImage>

#include <set>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;
using Json = nlohmann::json;
namespace dish = batch_tests::dish;

constexpr double wholeArea_m2 = std::numbers::pi * dish::radius_m * dish::radius_m;
constexpr double wholeVolume_m3 = wholeArea_m2 * dish::depth_m / 2.0;

void expectTheDish(const Json& report) {
    const Json& water = report["water"];
    EXPECT_NEAR(water["area_m2"], wholeArea_m2, 0.005 * wholeArea_m2);
    EXPECT_NEAR(water["volume_m3"], wholeVolume_m3, 0.01 * wholeVolume_m3);
    EXPECT_NEAR(water["mean_depth_m"], 4.0, 0.04);
    EXPECT_NEAR(water["max_depth_m"], 8.0, 0.06);
    EXPECT_NEAR(water["shoreline_m"], 2.0 * std::numbers::pi * dish::radius_m, 2.0);
    EXPECT_NEAR(water["shoreline_development"], 1.0, 0.005) << "that of a circle";
    ASSERT_GE(report["hypsography"].size(), 8U);
    for (std::size_t i = 0; i < 8; ++i) {
        const Json& row = report["hypsography"][i];
        const double left = 1.0 - static_cast<double>(i) / dish::depth_m;
        EXPECT_EQ(row["depth_m"], static_cast<double>(i));
        EXPECT_NEAR(row["area_m2"], wholeArea_m2 * left, 0.02 * wholeArea_m2) << i;
        EXPECT_NEAR(row["volume_m3"], wholeVolume_m3 * left * left, 0.015 * wholeVolume_m3) << i;
    }
    // All water above the bottom between two depths: A / 2D (z2^2 - z1^2). Bands of one round step
    // that end at the usual limit, which nothing lies below.
    const std::vector<double> edges{0.0, 1.5, 3.0, 4.5, 6.0, 7.5, 9.0};
    ASSERT_GE(report["bands"].size(), 6U);
    for (std::size_t i = 0; i < 6; ++i) {
        const Json& band = report["bands"][i];
        const double foot = std::min(edges[i + 1], dish::depth_m);
        EXPECT_EQ(band["from_m"], edges[i]);
        EXPECT_EQ(band["to_m"], edges[i + 1]);
        EXPECT_NEAR(band["area_m2"], wholeArea_m2 * (foot - edges[i]) / dish::depth_m,
                    0.02 * wholeArea_m2);
        EXPECT_NEAR(band["volume_m3"],
                    wholeArea_m2 / (2.0 * dish::depth_m) * (foot * foot - edges[i] * edges[i]),
                    0.02 * wholeVolume_m3);
    }
}

TEST(SketchFigures, AreThoseOfTheFormulas) {
    const DishFolder folder;
    const Call done = call(folder.sketchWords());
    ASSERT_EQ(done.exitCode, 0) << done.error;
    const Json report = done.report();
    expectTheDish(report);
    const std::string table = dish::trueSoundings();
    EXPECT_EQ(report["soundings"]["read"], std::ranges::count(table, '\n') - 1);
    EXPECT_EQ(report["soundings"]["kept"], report["soundings"]["read"]);
    EXPECT_EQ(report["soundings"]["set_aside"], Json::object());
    double divided_m2 = 0.0;
    for (const Json& section : report["sections"]) {
        divided_m2 += section["area_m2"].get<double>();
    }
    EXPECT_NEAR(divided_m2, wholeArea_m2, 0.01 * wholeArea_m2) << "all of it is within the limit";
    for (const char* key : {"read", "reduce", "set_aside", "draw", "trust", "contours", "structure",
                            "weed", "sections", "write"}) {
        EXPECT_GE(report["timing_s"].at(key), 0.0) << key;
    }
    EXPECT_GT(report["timing_s"]["read"], 0.0);
    EXPECT_GT(report["timing_s"]["write"], 0.0);
    EXPECT_EQ(report["next_lines"], Json::array()) << "no time was given for them";
}

/// Speed of sound in fresh water after Del Grosso and Mader 1972, J. Acoust. Soc. Am. 52, 1442: not
/// the formula that the program takes, and within 0.04 m/s of it.
double soundSpeed_m_s(double t) {
    return 1402.38754 +
           t * (5.03711129 + t * (-5.80852166e-2 +
                                  t * (3.34198834e-4 + t * (-1.47800417e-6 + t * 3.14643091e-9))));
}

/// What a sounder shows that is set to 1510 m/s and hangs 0.5 m below the surface, in water of 4
/// degrees (0.4 m of 8 m less) that stands 0.75 m above chart level.
TEST(SketchFigures, AreReducedToChartLevelByWhatTheOptionsSay) {
    const DishFolder folder;
    folder.write("shown.csv", dish::soundings("2026-09-05", false, [](double metres) {
                     return std::max((metres + 0.75 - 0.5) * 1510.0 / soundSpeed_m_s(4.0), 0.05);
                 }));
    const Call done =
        call(folder.sketchWords({"--draft", "0.5", "--level", "1.25", "--chart-level", "0.5",
                                 "--water-temperature", "4", "--assumed-sound-speed", "1510"},
                                "shown.csv"));
    ASSERT_EQ(done.exitCode, 0) << done.error;
    expectTheDish(done.report());
    EXPECT_NEAR(done.report()["reduction"]["sound_speed_m_s"], soundSpeed_m_s(4.0), 0.04);
}

class GridFile {
public:
    explicit GridFile(const std::string& path)
        : raster_(gdal::readRasterFile(path).value()),
          coordinates_(gdal::Coordinates::ofWkt(raster_.wkt).value()) {}
    [[nodiscard]] float at(double x_m, double y_m) const {
        const auto p = coordinates_.fromEarth(dish::at(x_m, y_m)).value();
        const auto col = static_cast<std::size_t>((p.x - raster_.transform[0]) / 6.0);
        const auto row = static_cast<std::size_t>((raster_.transform[3] - p.y) / 6.0);
        return raster_.bands[0].at(row * static_cast<std::size_t>(raster_.cols) + col);
    }
    [[nodiscard]] double cell_m() const { return raster_.transform[1]; }

private:
    gdal::Raster raster_;
    gdal::Coordinates coordinates_;
};

TEST(SketchFigures, FilesHoldWhatTheirOptionNames) {
    const DishFolder folder;
    const Call done = call(
        folder.sketchWords({"--grid", folder.at("depth.tif"), "--trust", folder.at("trust.tif"),
                            "--contours", folder.at("lines.geojson"), "--picture",
                            folder.at("chart.png"), "--report", folder.at("report.json")}));
    ASSERT_EQ(done.exitCode, 0) << done.error;
    EXPECT_EQ(done.out, "") << "the report has a file";
    expectTheDish(Json::parse(support::ScratchFolder::textOf(folder.at("report.json"))));
    const GridFile depth(folder.at("depth.tif"));
    const GridFile trust(folder.at("trust.tif"));
    EXPECT_EQ(depth.cell_m(), 6.0);
    for (const auto& [x_m, y_m] :
         {std::pair(0.0, 0.0), {100.0, 0.0}, {0.0, -70.0}, {-60.0, 60.0}}) {
        // The middle of a cell lies up to 4.3 m away, on a bottom that falls by at most 1 in 9.
        EXPECT_NEAR(depth.at(x_m, y_m), dish::bottom_m(x_m, y_m), 0.45) << x_m << ' ' << y_m;
        EXPECT_GT(trust.at(x_m, y_m), 0.0F);
        EXPECT_LT(trust.at(x_m, y_m), 0.5F);
    }
    EXPECT_TRUE(std::isnan(depth.at(165.0, 0.0))) << "land";
    EXPECT_TRUE(std::isnan(trust.at(165.0, 0.0)));
    const Json lines = Json::parse(support::ScratchFolder::textOf(folder.at("lines.geojson")));
    std::set<double> depths;
    for (const Json& feature : lines["features"]) {
        const double at_m = feature["properties"]["depth_m"];
        depths.insert(at_m);
        // A circle of R sqrt(1 - z/D) about the middle, told by the bottom's formula: a metre off
        // the line is 0.1 m of depth.
        const geo::LonLat middle = dish::at(0.0, 0.0);
        const geo::LonLat unit = dish::at(1.0, 1.0);
        for (const Json& place : feature["geometry"]["coordinates"]) {
            const double x_m =
                (place[0].get<double>() - middle.lon_deg) / (unit.lon_deg - middle.lon_deg);
            const double y_m =
                (place[1].get<double>() - middle.lat_deg) / (unit.lat_deg - middle.lat_deg);
            EXPECT_NEAR(dish::bottom_m(x_m, y_m), at_m, 0.25);
        }
    }
    for (const double edge_m : {2.0, 4.0, 6.0}) {
        EXPECT_TRUE(depths.contains(edge_m)) << edge_m;
    }
    const QImage picture(QString::fromStdString(folder.at("chart.png")));
    EXPECT_EQ(picture.size(), QSize(1600, 1200));
    EXPECT_EQ(folder.names(),
              (std::vector<std::string>{"chart.png", "depth.tif", "dish.gpkg", "lines.geojson",
                                        "report.json", "shore.geojson", "true.csv", "trust.tif"}));
}

/// Two days with a gauge reading for the first alone; the second was drawn 0.3 m higher.
TEST(SketchFigures, DayWithoutAGaugeIsTiedOnlyWhereThatIsAskedFor) {
    const DishFolder folder;
    folder.write("high.csv", dish::soundings("2026-09-12", true,
                                             [](double m) { return std::max(m - 0.3, 0.05); }));
    const std::string days = folder.write(
        "days.csv", "day,file,water_level_m\n2026-09-05,true.csv,0\n2026-09-12,high.csv,\n");
    const auto sketch = [&](const std::vector<std::string>& more) {
        std::vector<std::string> all{folder.at("high.csv"), "--survey-days", days};
        all.insert(all.end(), more.begin(), more.end());
        const Call done = call(folder.sketchWords(all));
        EXPECT_EQ(done.exitCode, 0) << done.error;
        return done.report();
    };
    const Json as = sketch({});
    EXPECT_GT(as["crossings"]["count"], 300);
    EXPECT_NEAR(as["crossings"]["mean_m"], -0.3, 0.03) << "later minus earlier pass";
    EXPECT_NEAR(as["crossings"]["rms_m"], 0.3, 0.03);
    EXPECT_NEAR(as["crossings"]["day_offsets_m"]["2026-09-12"], 0.3, 0.02) << "an offer";
    EXPECT_EQ(as["crossings"]["day_offsets_m"]["2026-09-05"], 0.0);
    EXPECT_LT(as["crossings"]["rms_if_tied_m"], 0.05);
    EXPECT_FALSE(batch_tests::loadedWater(folder.at("dish.gpkg")).days[1].agreedOffset);
    const Json tied = sketch({"--tie-days"});
    EXPECT_LT(tied["crossings"]["rms_m"], 0.05);
    EXPECT_NEAR(tied["reduction"]["survey_days"][1]["agreed_offset_m"], 0.3, 0.02);
    EXPECT_TRUE(tied["reduction"]["survey_days"][0]["agreed_offset_m"].is_null());
    expectTheDish(tied);
    ASSERT_EQ(tied["notes"].size(), as["notes"].size() + 1);
    EXPECT_NE(tied["notes"].dump().find("were tied to the others"), std::string::npos);
    // Without any reading one day is held where it is, and the other comes to it.
    const Call loose = call(folder.sketchWords({folder.at("high.csv"), "--tie-days"}));
    ASSERT_EQ(loose.exitCode, 0) << loose.error;
    const Json both = loose.report()["reduction"]["survey_days"];
    EXPECT_NE(both[0]["agreed_offset_m"].is_null(), both[1]["agreed_offset_m"].is_null());
}

TEST(SketchFigures, RowsOfNotesThatCannotBeUsedAreTold) {
    const DishFolder folder;
    folder.write("weed.csv", "lon,lat,kind,height_m\n3.1,551.2,none,\n3.1,55.2,thick,1.2\n");
    const Call done = call(folder.sketchWords({"--weed", folder.at("weed.csv")}));
    ASSERT_EQ(done.exitCode, 0) << done.error;
    const std::string notes = done.report()["notes"].dump();
    EXPECT_NE(
        notes.find("weed.csv: 1 row not used: 1 without a position (line 2: '3.1,551.2,none,')."),
        std::string::npos)
        << notes;
}

/// A receiver that gives each position 1.5 s late: the boat at 2 m/s is 3 m farther on its line.
TEST(SketchFigures, DelayIsTakenOutOnlyWhereThatIsAskedFor) {
    const DishFolder folder;
    const auto late = [](const std::string& day, bool alongMeridians) {
        return dish::soundings(
            day, alongMeridians, [](double m) { return std::max(m, 0.05); },
            "lon,lat,depth_m,time\n", 3.0);
    };
    folder.write("late.csv", late("2026-09-05", false));
    folder.write("across.csv", late("2026-09-06", true));
    const auto delayOf = [&](const std::vector<std::string>& more) {
        std::vector<std::string> all{folder.at("across.csv")};
        all.insert(all.end(), more.begin(), more.end());
        const Call done = call(folder.sketchWords(all, "late.csv"));
        EXPECT_EQ(done.exitCode, 0) << done.error;
        return done.report();
    };
    const Json as = delayOf({});
    EXPECT_TRUE(as["reduction"]["survey_days"][0]["agreed_delay_s"].is_null());
    const Json taken = delayOf({"--take-delays"});
    for (const Json& day : taken["reduction"]["survey_days"]) {
        EXPECT_NEAR(day["agreed_delay_s"], 1.5, 0.3) << day;
    }
    EXPECT_LT(taken["crossings"]["rms_m"].get<double>(),
              0.5 * as["crossings"]["rms_m"].get<double>());
    EXPECT_NE(taken["notes"].dump().find("moved along their tracks"), std::string::npos);
    // Where there is none, none is taken.
    folder.write("late.csv", dish::trueSoundings());
    folder.write("across.csv", dish::soundings("2026-09-06", true, [](double m) { return m; }));
    const Json none = delayOf({"--take-delays"});
    EXPECT_TRUE(none["reduction"]["survey_days"][0]["agreed_delay_s"].is_null());
    EXPECT_TRUE(none["reduction"]["survey_days"][1]["agreed_delay_s"].is_null());
    EXPECT_EQ(none["notes"].dump().find("moved along their tracks"), std::string::npos);
}

TEST(SketchFigures, LinesAreProposedForTheMinutesGiven) {
    const DishFolder folder;
    // Of the east nothing is known.
    std::istringstream all(dish::trueSoundings());
    std::string west;
    for (std::string line; std::getline(all, line);) {
        if (line.starts_with("lon") || line < "3.0998") {
            west += line + '\n';
        }
    }
    folder.write("west.csv", west);
    const auto lengthIn = [&](const char* minutes) {
        std::vector<std::string> words = folder.sketchWords({}, "west.csv");
        words.back() = minutes;
        const Call done = call(words);
        EXPECT_EQ(done.exitCode, 0) << done.error;
        double sum_m = 0.0;
        const Json report = done.report();
        for (const Json& line : report["next_lines"]) {
            const geo::LonLat from{line["from"][0], line["from"][1]};
            const geo::LonLat to{line["to"][0], line["to"][1]};
            EXPECT_NEAR(line["length_m"], geo::courseBetween(from, to).distance.inMetres(), 0.1);
            EXPECT_LT(geo::courseBetween(from, {3.1, 55.2}).distance.inMetres(), 151.0);
            EXPECT_GT(line["gain"], 0.0);
            sum_m += line["length_m"].get<double>();
        }
        return sum_m;
    };
    EXPECT_EQ(lengthIn("0"), 0.0);
    const double short_m = lengthIn("20");
    EXPECT_GT(short_m, 50.0);
    EXPECT_GT(lengthIn("90"), short_m + 100.0) << "more time, more line";
}

} // namespace
