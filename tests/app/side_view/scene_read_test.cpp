// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/lettering.h"
#include "app/side_view/side_painter.h"
#include "app/side_view/side_scene.h"
#include "tests/app/support/recorded_pages.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using side_view::Cut;
using side_view::CutSample;
using side_view::SideFrame;
using side_view::SideScene;
using support::Drawn;
using support::RecordedPages;
using surface::TrustName;

const QRectF page(0.0, 0.0, 1000.0, 400.0);

/// 100 m along, dropping from 2 m to 12 m; land in the first tenth, a guess beyond 80 m.
SideScene slope(preferences::UnitSystem units = preferences::UnitSystem::metric) {
    SideScene scene;
    scene.words = wording::Words(units);
    scene.cut.path = {{0.0, 0.0}, {100.0, 0.0}};
    for (int i = 0; i <= 100; ++i) {
        const double along = i;
        CutSample sample{along,
                         {along, 0.0},
                         2.0 + 0.1 * along,
                         0.2 + 0.01 * along,
                         along > 80.0 ? TrustName::guess : TrustName::sounded,
                         0.0};
        if (i < 10) {
            sample = {along, {along, 0.0}, {}, 0.0, TrustName::sounded, 0.0};
        }
        scene.cut.samples.push_back(sample);
    }
    return scene;
}

RecordedPages& paint(RecordedPages& pages, const SideScene& scene) {
    QPainter painter(&pages);
    side_view::paintScene(painter, scene, page);
    return pages;
}

std::vector<Drawn> filledWith(const RecordedPages& pages, const QColor& colour) {
    std::vector<Drawn> found;
    for (const Drawn& drawn : pages.all(Drawn::Kind::polygon)) {
        if (drawn.brush.color() == colour) {
            found.push_back(drawn);
        }
    }
    return found;
}

TEST(SceneRead, TheGroundLiesUnderEverySampleAtItsDepth) {
    RecordedPages pages;
    const SideScene scene = slope();
    paint(pages, scene);
    const SideFrame frame = side_view::frameOf(scene, page);
    const auto ground = filledWith(pages, chart::Palette::screen().bed);
    ASSERT_EQ(ground.size(), 1U);
    ASSERT_EQ(ground[0].points.size(), 103);
    for (int i = 0; i <= 100; ++i) {
        const QPointF expected = frame.at(i, i < 10 ? 0.0 : 2.0 + 0.1 * i);
        EXPECT_NEAR(ground[0].points[i].x(), expected.x(), 1e-6) << i;
        EXPECT_NEAR(ground[0].points[i].y(), expected.y(), 1e-6) << i;
    }
}

TEST(SceneRead, TheShadeGoesFromTheDepthLessItsTrustToTheDepthAndItsTrust) {
    RecordedPages pages;
    const SideScene scene = slope();
    paint(pages, scene);
    const SideFrame frame = side_view::frameOf(scene, page);
    for (const Drawn& drawn : pages.all(Drawn::Kind::polygon)) {
        if (drawn.points.size() != 2 * 91) {
            continue;
        }
        for (int i = 0; i < 91; ++i) {
            const double along = 10.0 + i;
            const double depth = 2.0 + 0.1 * along;
            const double half = 0.2 + 0.01 * along;
            EXPECT_NEAR(drawn.points[i].y(), frame.at(along, depth - half).y(), 1e-6);
            EXPECT_NEAR(drawn.points[181 - i].y(), frame.at(along, depth + half).y(), 1e-6);
        }
        return;
    }
    ADD_FAILURE() << "no shade over the water";
}

TEST(SceneRead, AGuessIsDashedAndHatchedAndWhatIsSoundedIsNot) {
    RecordedPages pages;
    const SideScene scene = slope();
    paint(pages, scene);
    const SideFrame frame = side_view::frameOf(scene, page);
    const double from = frame.at(80.0, 0.0).x();
    std::optional<QRectF> dashed;
    std::optional<QRectF> whole;
    std::optional<QRectF> hatched;
    for (const Drawn& path : pages.all(Drawn::Kind::path)) {
        const QRectF box = path.path.boundingRect();
        if (path.pen.widthF() == 1.8) {
            (path.pen.style() == Qt::SolidLine ? whole : dashed) = box;
        } else if (path.pen.widthF() == 0.9) {
            hatched = box;
        }
    }
    ASSERT_TRUE(dashed && whole && hatched);
    EXPECT_NEAR(dashed->left(), from, 1e-6);
    EXPECT_NEAR(dashed->right(), page.right(), 1e-6);
    EXPECT_NEAR(whole->right(), from, 1e-6);
    EXPECT_NEAR(whole->left(), page.left(), 1e-6);
    EXPECT_GT(hatched->left(), from - 3.1);
    EXPECT_GT(hatched->width(), 100.0);
}

TEST(SceneRead, DepthsStandAtTheirHeightInTheUsersUnit) {
    for (const auto units : {preferences::UnitSystem::metric, preferences::UnitSystem::imperial}) {
        const bool isMetric = units == preferences::UnitSystem::metric;
        RecordedPages pages;
        const SideScene scene = slope(units);
        paint(pages, scene);
        const SideFrame frame = side_view::frameOf(scene, page);
        const QFont font = chart::typeface(chart::TypeSize::small, 0.92);
        EXPECT_EQ(pages.lettered(isMetric ? "0 m" : "0 ft", font).size(), 1U);
        for (const int n : {isMetric ? 2 : 5, 10, isMetric ? 16 : 40}) {
            const auto at = pages.lettered(QString::number(n), font);
            ASSERT_EQ(at.size(), 1U) << n;
            EXPECT_NEAR(at[0].y(), frame.at(0.0, n * (isMetric ? 1.0 : 0.3048)).y(), 0.01) << n;
        }
    }
}

TEST(SceneRead, SaysHowLongItIsAndHowMuchHigherItIsDrawn) {
    RecordedPages pages;
    paint(pages, slope());
    // 10 pixels a metre along; 400 / (1.55 * 13.2) = 19.55 down: as much as goes, in halves, 1.5.
    EXPECT_EQ(pages
                  .lettered("100 m long, heights × 1.5; shaded: trust ±",
                            chart::typeface(chart::TypeSize::small, 0.92))
                  .size(),
              1U);
    RecordedPages feet;
    SideScene scene = slope(preferences::UnitSystem::imperial);
    paint(feet, scene);
    EXPECT_EQ(feet.lettered("328 ft long, heights × 1.5; shaded: trust ±",
                            chart::typeface(chart::TypeSize::small, 0.92))
                  .size(),
              1U);
}

TEST(SceneRead, WherePointedItSaysDepthAndTrustBesideTheLine) {
    SideScene scene = slope();
    scene.pointed_m = 40.0;
    RecordedPages pages;
    paint(pages, scene);
    const QFont font = chart::typeface(chart::TypeSize::small, 1.0, chart::TypeStyle::bold);
    const auto at = pages.lettered("6.0 m  ±0.6 m", font);
    ASSERT_EQ(at.size(), 1U);
    const SideFrame frame = side_view::frameOf(scene, page);
    EXPECT_GT(at[0].x(), frame.at(40.0, 0.0).x());
    EXPECT_NEAR(at[0].y(), 0.5 * (frame.at(0, 0).y() + frame.at(0, 6).y()), 0.01);
    scene.pointed_m = 5.0; // on land
    RecordedPages land;
    paint(land, scene);
    EXPECT_TRUE(land.lettered("0.0 m  ±0.0 m", font).empty());
}

TEST(SceneRead, AFishIsAtItsBaitOrOnTheBottomAndALostOneIsHollow) {
    SideScene scene = slope();
    scene.fish = {{40.0, 3.0, true}, {60.0, {}, false}};
    RecordedPages pages;
    paint(pages, scene);
    const SideFrame frame = side_view::frameOf(scene, page);
    std::vector<Drawn> fish;
    for (const Drawn& path : pages.all(Drawn::Kind::path)) {
        if (path.pen.color() == chart::Palette::screen().plum) {
            fish.push_back(path);
        }
    }
    ASSERT_EQ(fish.size(), 2U);
    EXPECT_NEAR(fish[0].path.boundingRect().center().x(), frame.at(40.0, 0.0).x(), 0.5);
    EXPECT_NEAR(fish[0].path.boundingRect().center().y(), frame.at(0.0, 3.0).y(), 1.0);
    EXPECT_EQ(fish[0].brush.color(), chart::Palette::screen().plum);
    EXPECT_NEAR(fish[1].path.boundingRect().center().y(), frame.at(0.0, 8.0).y() - 8.5, 1.0);
    EXPECT_EQ(fish[1].brush.color(), chart::Palette::screen().card);
}

TEST(SceneRead, WeedStandsOnTheBottomNoHigherThanIsLikely) {
    SideScene scene = slope();
    for (std::size_t i = 30; i <= 50; ++i) {
        scene.cut.samples[i].weed_m = 1.4;
    }
    RecordedPages pages;
    paint(pages, scene);
    const SideFrame frame = side_view::frameOf(scene, page);
    for (const Drawn& path : pages.all(Drawn::Kind::path)) {
        if (path.pen.color() == chart::Palette::screen().reed && !path.path.isEmpty()) {
            const QRectF box = path.path.boundingRect();
            EXPECT_NEAR(box.left(), frame.at(30.0, 0.0).x(), 4.0);
            EXPECT_NEAR(box.right(), frame.at(50.0, 0.0).x(), 10.0);
            EXPECT_NEAR(box.bottom(), frame.at(0.0, 7.0).y(), 0.1);
            EXPECT_GE(box.top(), frame.at(0.0, 5.0 - 1.4).y() - 0.1);
            EXPECT_LT(box.top(), frame.at(0.0, 5.0 - 0.7).y());
            return;
        }
    }
    ADD_FAILURE() << "no weed";
}

TEST(SceneRead, BandsAreLevelsOfTheirOwnColourBelowTheSurface) {
    SideScene scene = slope();
    RecordedPages pages;
    paint(pages, scene);
    const SideFrame frame = side_view::frameOf(scene, page);
    const chart::Palette& palette = chart::Palette::screen();
    for (std::size_t i = 0; i < 4; ++i) {
        const auto level =
            filledWith(pages, chart::withAlpha(palette.band(i, scene.bands.count()), 0.30));
        ASSERT_EQ(level.size(), 1U) << i;
        const QRectF box = level[0].points.boundingRect();
        EXPECT_NEAR(box.top(), frame.at(0.0, scene.bands.from(i).inMetres()).y(), 1e-6);
        EXPECT_NEAR(box.bottom(), frame.at(0.0, scene.bands.to(i)->inMetres()).y(), 1e-6);
    }
}

TEST(SideFrameTable, HeightsAreDrawnLargerByARoundNumberAsFarAsThePageGoes) {
    struct Row {
        double length_m;
        double deepest_m;
        double exaggeration;
    };
    // A page of 1000 x 310: what is deepest may take 1 / 1.55 of it, 200 pixels.
    for (const Row& row : {Row{100.0, 20.0, 1.0},
                           {100.0, 13.3, 1.5},
                           {100.0, 9.9, 2.0},
                           {100.0, 6.0, 3.0},
                           {100.0, 2.01, 9.0},
                           {200.0, 3.9, 10.0},
                           {1000.0, 11.0, 15.0},
                           {100.0, 40.0, 0.5},
                           {110.0, 0.1, 20.0}}) {
        const auto frame =
            SideFrame::showing(QRectF(0, 0, 1000, 310), row.length_m, row.deepest_m, 0.4);
        EXPECT_NEAR(frame.exaggeration(), row.exaggeration, 1e-9) << row.deepest_m;
        EXPECT_EQ(frame.from_m, 0.0);
        EXPECT_EQ(frame.to_m, row.length_m);
        EXPECT_GE(frame.deepest_m, 1.1 * std::max(row.deepest_m, 1.0) - 1e-9);
        EXPECT_NEAR(frame.air_m, std::max(0.4, 0.2 * (frame.air_m + frame.deepest_m)), 1e-9);
    }
    EXPECT_NEAR(SideFrame::showing(QRectF(0, 0, 1000, 310), 100.0, 2.0, 9.0).air_m, 9.0, 1e-9);
    EXPECT_EQ(SideFrame::showing(QRectF(0, 0, 1000, 310), 0.0, 2.0, 1.0).to_m, 1.0);
}

} // namespace
