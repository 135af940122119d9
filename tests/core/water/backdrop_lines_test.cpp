// SPDX-License-Identifier: GPL-3.0-or-later
// Lines under the chart: each in its place, none lost, none from beyond the window.
#include "core/water/steps/show_backdrop.h"

#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace {

using support::ScratchFolder;

const geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
const geo::Box lake{-300.0, -200.0, 300.0, 200.0};

std::string coordinates(const geo::Path& path) {
    std::string text;
    for (const geo::LonLat& p : frame.toEarth(path)) {
        text += (text.empty() ? "[" : ",[") + std::to_string(p.lon_deg) + "," +
                std::to_string(p.lat_deg) + "]";
    }
    return "[" + text + "]";
}

std::filesystem::path geoJson(const ScratchFolder& folder, const std::string& type,
                              const std::string& coordinates) {
    return folder.file("map.geojson",
                       R"({"type":")" + type + R"(","coordinates":)" + coordinates + "}");
}

void expectNear(const geo::Path& path, const geo::Path& wanted) {
    ASSERT_EQ(path.size(), wanted.size());
    for (std::size_t i = 0; i < path.size(); ++i) {
        EXPECT_NEAR(path[i].x_m, wanted[i].x_m, 0.1);
        EXPECT_NEAR(path[i].y_m, wanted[i].y_m, 0.1);
    }
}

constexpr gdal::PictureWindow window{-600.0, 400.0, 4.0, 300, 200}; // to 600 m east, 400 m south

geo::Path onlyLine(const std::filesystem::path& path) {
    base::Progress silent;
    const auto place = water::lookAtBackdrop(path, frame, lake, silent);
    EXPECT_TRUE(place) << place.error().sentence();
    const auto shown = water::showBackdrop(path, *place, window, silent);
    EXPECT_TRUE(shown) << shown.error().sentence();
    EXPECT_EQ(shown->window, window);
    EXPECT_EQ(shown->lines.size(), 1U);
    return shown->lines.empty() ? geo::Path() : shown->lines.front();
}

TEST(BackdropLines, ALineLosesOnlyWhatIsLessThanHalfAPixel) {
    const ScratchFolder folder;
    expectNear(
        onlyLine(geoJson(folder, "LineString",
                         coordinates({{-100, 0}, {0, -0.3}, {100, -3}, {200, 3}, {300, 0}}))),
        {{-100, 0}, {100, -3}, {200, 3}, {300, 0}});
}

TEST(BackdropLines, AnAreaIsClosedIslandsToo) {
    const ScratchFolder folder;
    const geo::Path outer{{-100, -100}, {100, -100}, {100, 100}, {-100, -100}};
    const geo::Path hole{{40, -60}, {60, -60}, {60, -40}, {40, -60}};
    const auto path =
        geoJson(folder, "Polygon", "[" + coordinates(outer) + "," + coordinates(hole) + "]");
    base::Progress silent;
    const auto place = water::lookAtBackdrop(path, frame, lake, silent).value();
    EXPECT_NEAR(place.whole.west_m, -100.0, 0.1);
    EXPECT_NEAR(place.whole.north_m, 100.0, 0.1);
    const auto shown = water::showBackdrop(path, place, window, silent).value();
    ASSERT_EQ(shown.lines.size(), 2U);
    expectNear(shown.lines[0], outer);
    expectNear(shown.lines[1], hole);
    EXPECT_EQ(shown.whole.west_m, place.whole.west_m);
}

TEST(BackdropLines, APlaceAloneIsADashOfFourPixels) {
    const ScratchFolder folder;
    expectNear(onlyLine(geoJson(folder, "MultiPoint", coordinates({{50, 20}, {900, 20}}))),
               {{42, 20}, {58, 20}});
}

TEST(BackdropLines, WhatLiesBeyondEachSideOfTheWindowIsLeftOut) {
    const ScratchFolder folder;
    const geo::Path lines[] = {{{-605, 0}, {-650, 0}},
                               {{605, 0}, {650, 0}},
                               {{0, 405}, {0, 450}},
                               {{0, -405}, {0, -450}},
                               {{-590, 390}, {-650, 450}}};
    std::string all;
    for (const geo::Path& line : lines) {
        all += (all.empty() ? "" : ",") + coordinates(line);
    }
    const geo::Path met = onlyLine(geoJson(folder, "MultiLineString", "[" + all + "]"));
    expectNear(met, lines[4]);
}

TEST(BackdropLines, FiveKilometresBesideTheWaterAreOfUseAndNoMore) {
    const ScratchFolder folder;
    base::Progress silent;
    struct Row {
        geo::WaterPoint at;
        bool isOfUse;
    };
    for (const Row& row : {Row{{5290.0, 0.0}, true},
                           {{5310.0, 0.0}, false},
                           {{-5310.0, 0.0}, false},
                           {{0.0, 5190.0}, true},
                           {{0.0, 5210.0}, false},
                           {{0.0, -5210.0}, false},
                           {{3310.0, 4210.0}, false},
                           {{3290.0, 4180.0}, true}}) {
        const auto path = geoJson(folder, "LineString",
                                  coordinates({row.at, {row.at.x_m * 1.001, row.at.y_m * 1.001}}));
        const auto place = water::lookAtBackdrop(path, frame, lake, silent);
        EXPECT_EQ(place.has_value(), row.isOfUse) << row.at.x_m << ' ' << row.at.y_m;
        EXPECT_TRUE(water::lookAtBackdrop(path, frame, {}, silent)) << "anywhere will do";
    }
}

TEST(BackdropLines, AFileWithNothingToDrawIsRefused) {
    const ScratchFolder folder;
    base::Progress silent;
    const auto empty = water::lookAtBackdrop(
        folder.file("e.geojson", R"({"type":"FeatureCollection","features":[]})"), frame, lake,
        silent);
    ASSERT_FALSE(empty);
    EXPECT_EQ(empty.error().what, "the map holds nothing that can be drawn");
    EXPECT_EQ(water::lookAtBackdrop(folder.path() / "none.tif", frame, lake, silent).error().what,
              "there is no such file");
}

} // namespace
