// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/backdrop_keeper.h"

#include "app/days/chart_link.h"
#include "app/edits/set_shoreline.h"
#include "tests/support/bowl.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace {

using chart::LayerKind;
using days::BackdropKeeper;
using preferences::Preferences;

/// At the desk, with the shore of a bowl and a file of lines across it.
class BackdropKeeperTest : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(path("bowl.gpkg"), "Skarrow Water"));
        ASSERT_TRUE(edits::setShoreline(open_, support::bowlShore()));
        open_.deriveUpTo(water::Step::reduce);
        finish();
        lines_ = QString::fromStdString(
            folder_
                .file(
                    "lines.geojson",
                    R"({"type":"FeatureCollection","features":[{"type":"Feature","properties":{},)"
                    R"("geometry":{"type":"LineString","coordinates":[[3.097,55.199],[3.101,55.2],)"
                    R"([3.103,55.201]]}}]})")
                .string());
    }
    QString path(const char* name) const {
        return QString::fromStdString((folder_.path() / name).string());
    }
    void finish() { open_.jobs().finishAll(); }
    bool isShown() const { return chart_.content().shown.contains(LayerKind::backdrop); }
    preferences::BackdropChoice kept() const { return Preferences::backdropOf(open_.path()); }

    support::ScratchFolder folder_;
    open_water::OpenWater open_;
    Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    BackdropKeeper keeper_{{open_, preferences_, chart_}};
    QString lines_;
};

TEST_F(BackdropKeeperTest, LaysTheChosenFileUnderTheChartAndRemembersIt) {
    QSignalSpy changed(&keeper_, &BackdropKeeper::changed);
    keeper_.choose(lines_);
    finish();
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(keeper_.path(), lines_);
    EXPECT_EQ(kept().path, lines_);
    EXPECT_TRUE(isShown());
    ASSERT_TRUE(chart_.content().backdrop);
    const geo::WaterFrame& frame = *open_.water()->frame;
    const geo::Box& whole = chart_.content().backdrop->whole;
    EXPECT_NEAR(whole.west_m, frame.toWater({3.097, 55.199}).x_m, 0.5);
    EXPECT_NEAR(whole.south_m, frame.toWater({3.097, 55.199}).y_m, 0.5);
    EXPECT_NEAR(whole.east_m, frame.toWater({3.103, 55.201}).x_m, 0.5);
    EXPECT_NEAR(whole.north_m, frame.toWater({3.103, 55.201}).y_m, 0.5);
}

TEST_F(BackdropKeeperTest, FetchesWhatIsLookedAtOnceTheHandRests) {
    keeper_.choose(lines_);
    finish();
    EXPECT_TRUE(chart_.content().backdrop->lines.empty());
    const auto view = chart::ViewFrame::showing({-200.0, -100.0, 200.0, 100.0}, {400, 200}, 0.0);
    keeper_.look(view);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !chart_.content().backdrop->lines.empty(); }, 20000));
    const gdal::PictureWindow& window = chart_.content().backdrop->window;
    // A quarter of the view more on each side, a pixel for a pixel.
    EXPECT_NEAR(window.pixel_m, 1.0, 1e-9);
    EXPECT_EQ(window.cols, 600);
    EXPECT_EQ(window.rows, 300);
    EXPECT_NEAR(window.west_m, -300.0, 1e-6);
    EXPECT_NEAR(window.north_m, 150.0, 1e-6);
}

TEST_F(BackdropKeeperTest, KeepsTheOldOneAndSaysWhyWhereAFileIsNone) {
    keeper_.choose(lines_);
    finish();
    QSignalSpy failed(&open_, &open_water::OpenWater::failed);
    keeper_.choose(path("not-there.tif"));
    finish();
    EXPECT_EQ(failed.count(), 1);
    EXPECT_EQ(keeper_.path(), lines_);
    EXPECT_EQ(kept().path, lines_);
    EXPECT_TRUE(chart_.content().backdrop);
}

TEST_F(BackdropKeeperTest, GoesWithAWaterThatMoves) {
    keeper_.choose(lines_);
    finish();
    const QString before = open_.path();
    open_.moveTo(path("moved.gpkg"));
    ASSERT_TRUE(open_.finishKeeping());
    ASSERT_NE(open_.path(), before);
    EXPECT_EQ(kept().path, lines_);
}

TEST_F(BackdropKeeperTest, StrengthIsHeldBetweenNothingAndAll) {
    keeper_.choose(lines_);
    finish();
    for (const auto& [asked, held] : {std::pair(0.3, 0.3), {-1.0, 0.0}, {7.0, 1.0}}) {
        keeper_.setStrength(asked);
        EXPECT_EQ(keeper_.strength(), held);
        EXPECT_EQ(chart_.content().backdropStrength, held);
        EXPECT_EQ(kept().strength, held);
    }
}

TEST_F(BackdropKeeperTest, TakenAwayItIsGoneFromChartAndPreferences) {
    keeper_.choose(lines_);
    finish();
    keeper_.takeAway();
    EXPECT_FALSE(chart_.content().backdrop);
    EXPECT_EQ(keeper_.path(), "");
    EXPECT_EQ(kept().path, "");
}

TEST_F(BackdropKeeperTest, ComesBackWithItsWaterAsStrongAndAsHiddenAsItWas) {
    const QString own = open_.path();
    for (const bool shown : {true, false}) {
        keeper_.choose(lines_);
        finish();
        keeper_.setStrength(0.35);
        chart_.setShown(LayerKind::backdrop, shown);
        EXPECT_EQ(kept().isShown, shown);
        ASSERT_TRUE(open_.create(path(shown ? "one.gpkg" : "two.gpkg"), "Other Water"));
        finish();
        EXPECT_FALSE(chart_.content().backdrop) << "another water has none";
        EXPECT_EQ(keeper_.path(), "");
        ASSERT_TRUE(open_.open(own));
        finish();
        EXPECT_EQ(keeper_.path(), lines_);
        EXPECT_EQ(keeper_.strength(), 0.35);
        EXPECT_TRUE(chart_.content().backdrop);
        EXPECT_EQ(chart_.content().backdropStrength, 0.35);
        EXPECT_EQ(isShown(), shown);
        EXPECT_EQ(kept().isShown, shown);
    }
}

TEST_F(BackdropKeeperTest, AWaterWithoutAFrameGetsThatOfItsBackdrop) {
    ASSERT_TRUE(open_.create(path("bare.gpkg"), "Bare Water"));
    ASSERT_FALSE(open_.water()->frame);
    keeper_.choose(lines_);
    finish();
    ASSERT_TRUE(open_.water()->frame);
    EXPECT_NEAR(open_.water()->frame->centre().lon_deg, 3.1, 0.02);
    EXPECT_NEAR(open_.water()->frame->centre().lat_deg, 55.2, 0.02);
}

} // namespace
