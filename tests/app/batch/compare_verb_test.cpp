// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/raster_file.h"
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"

#include <cmath>
#include <filesystem>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;
using batch_tests::expectRefused;
using Json = nlohmann::json;

/// The dish, and the same soundings read with the transducer 0.4 m deeper.
class CompareVerb : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_EQ(call(folder_.sketchWords({"--draft", "0.4"})).exitCode, 0);
        std::filesystem::rename(folder_.at("dish.gpkg"), folder_.at("earlier.gpkg"));
        ASSERT_EQ(call(folder_.sketchWords({})).exitCode, 0);
    }
    Call compared(const std::vector<std::string>& more = {}) {
        std::vector<std::string> words{"compare", folder_.at("dish.gpkg"),
                                       folder_.at("earlier.gpkg")};
        words.insert(words.end(), more.begin(), more.end());
        return call(words);
    }
    DishFolder folder_;
};

TEST_F(CompareVerb, TellsHowFarTheBottomHasRisen) {
    const Call run = compared({"--grid", folder_.at("rise.tif"), "--trust", folder_.at("t.tif")});
    ASSERT_EQ(run.exitCode, 0) << run.error;
    const Json report = run.report();
    EXPECT_NEAR(report["median_rise_m"].get<double>(), 0.4, 0.06);
    EXPECT_GT(report["risen_m2"].get<double>(), 0.3 * report["compared_m2"].get<double>());
    EXPECT_EQ(report["fallen_m2"], 0.0);
    EXPECT_NEAR(report["filled_m3"].get<double>(), 0.4 * report["risen_m2"].get<double>(),
                0.1 * report["risen_m2"].get<double>());
    EXPECT_EQ(report["taken_off_m"], nullptr);
    ASSERT_GE(report["notes"].size(), 1U);
    EXPECT_TRUE(report["notes"][0].get<std::string>().starts_with("Half of the bottom has risen"));
    const gdal::Raster rise = gdal::readRasterFile(folder_.at("rise.tif")).value();
    const gdal::Raster trust = gdal::readRasterFile(folder_.at("t.tif")).value();
    ASSERT_EQ(rise.bands[0].size(), trust.bands[0].size());
    double sum_m = 0.0;
    int cells = 0;
    for (std::size_t i = 0; i < rise.bands[0].size(); ++i) {
        ASSERT_EQ(std::isnan(rise.bands[0][i]), std::isnan(trust.bands[0][i]));
        if (!std::isnan(rise.bands[0][i])) {
            sum_m += static_cast<double>(rise.bands[0][i]);
            ++cells;
            ASSERT_GT(trust.bands[0][i], 0.0F);
        }
    }
    EXPECT_NEAR(sum_m / cells, 0.38, 0.06) << "positive where it has risen; none at the shore";
}

TEST_F(CompareVerb, TakesOffWhatIsALevel) {
    const Json report = compared({"--is-level"}).report();
    EXPECT_NEAR(report["taken_off_m"].get<double>(), 0.4, 0.06);
    EXPECT_NEAR(report["median_rise_m"].get<double>(), 0.0, 1e-3);
    EXPECT_LT(report["risen_m2"].get<double>(), 0.1 * report["compared_m2"].get<double>());
}

TEST_F(CompareVerb, RefusesToWriteOverEitherWaterAndToReadNone) {
    expectRefused(compared({"--grid", folder_.at("earlier.gpkg")}), 4, {"--grid"});
    expectRefused(compared({"--report", folder_.at("dish.gpkg")}), 4, {"--report"});
    expectRefused(call({"compare", folder_.at("dish.gpkg")}), 2, {"earlier"});
    expectRefused(call({"compare", folder_.at("dish.gpkg"), folder_.at("none.gpkg")}), 3,
                  {"none.gpkg"});
    EXPECT_EQ(call({"check", folder_.at("earlier.gpkg")}).exitCode, 0) << "both are as they were";
}

} // namespace
