// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/lettering.h"
#include "app/side_view/side_painter.h"
#include "app/side_view/side_scene.h"
#include "core/water/document/chosen_scale.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using preferences::UnitSystem;
using side_view::SideFrame;
using side_view::SideScene;
using support::Drawn;
using support::RecordedPages;
using support::Said;

const QRectF page(40.0, 30.0, 1400.0, 420.0);

/// The pinned mark of the day, cut along its ropes: stern anchor 25 m from where the cut begins,
/// boat 9 m on, bow anchor 19 m on from there.
constexpr double stern_m = 25.0;
constexpr double lie_m = 34.0;
constexpr double bow_m = 53.0;

QFont letters() {
    return chart::typeface(chart::TypeSize::small, 1.0);
}

class RigOnPaper : public testing::Test {
protected:
    explicit RigOnPaper(UnitSystem units = UnitSystem::metric)
        : content_(support::contentToRead(units)), scene_(side_view::sceneOfMark(content_, 1)),
          frame_(side_view::frameOf(scene_, page)) {
        QPainter painter(&pages_);
        side_view::paintScene(painter, scene_, page);
    }
    const marks::Mark& mark() const { return content_.planned->marks[0]; }
    /// Lines of this colour and width, in the order in which they were drawn.
    std::vector<QLineF> lines(const QColor& colour, double width, Qt::PenStyle style) const {
        std::vector<QLineF> found;
        for (const Drawn& line : pages_.all(Drawn::Kind::line)) {
            if (line.pen.color() == colour && line.pen.widthF() == width &&
                line.pen.style() == style) {
                found.emplace_back(line.points[0], line.points[1]);
            }
        }
        return found;
    }
    /// Where along the cut a place is nearest to it: looked for every centimetre.
    double alongOf(geo::WaterPoint p) const {
        double nearest = 0.0;
        double least = 1e9;
        for (double along = 0.0; along <= scene_.cut.length_m(); along += 0.01) {
            const double apart = geo::distance_m(scene_.cut.placeAt(along), p);
            if (apart < least) {
                least = apart;
                nearest = along;
            }
        }
        return nearest;
    }

    chart::ChartContent content_;
    SideScene scene_;
    SideFrame frame_;
    RecordedPages pages_;
    const chart::Palette& palette_ = chart::Palette::screen();
};

class RigOnPaperInFeet : public RigOnPaper {
protected:
    RigOnPaperInFeet() : RigOnPaper(UnitSystem::imperial) {}
};

void expectAt(QPointF drawn, QPointF expected, double within = 0.01) {
    EXPECT_NEAR(drawn.x(), expected.x(), within);
    EXPECT_NEAR(drawn.y(), expected.y(), within);
}

TEST_F(RigOnPaper, EachRopeRunsFromItsEndOfTheBoatToItsOwnAnchorAtItsDepth) {
    const auto ropes = lines(palette_.rust, 1.8, Qt::SolidLine);
    ASSERT_EQ(ropes.size(), 2U);
    // Half of 4.3 m ahead and astern, 0.6 m above the water.
    expectAt(ropes[0].p1(), frame_.at(lie_m + 2.15, -0.6));
    expectAt(ropes[0].p2(), frame_.at(bow_m, 6.31));
    expectAt(ropes[1].p1(), frame_.at(lie_m - 2.15, -0.6));
    expectAt(ropes[1].p2(), frame_.at(stern_m, 3.14));
}

TEST_F(RigOnPaper, TheBoatLiesBetweenThemBowAhead) {
    for (const Drawn& path : pages_.all(Drawn::Kind::path)) {
        if (path.pen.color() != palette_.rust || path.pen.widthF() != 2.0) {
            continue;
        }
        const QRectF box = path.path.boundingRect();
        EXPECT_NEAR(box.left(), frame_.at(lie_m - 2.15, 0.0).x(), 0.01);
        EXPECT_NEAR(box.right(), frame_.at(lie_m + 2.15, 0.0).x(), 0.01);
        EXPECT_NEAR(box.bottom(), frame_.at(0.0, 0.15).y(), 0.01);
        // The bow is the higher end.
        double highest = box.bottom();
        double highestAt = 0.0;
        for (int i = 0; i < path.path.elementCount(); ++i) {
            if (path.path.elementAt(i).y < highest) {
                highest = path.path.elementAt(i).y;
                highestAt = path.path.elementAt(i).x;
            }
        }
        EXPECT_GT(highestAt, frame_.at(lie_m, 0.0).x());
        return;
    }
    ADD_FAILURE() << "no boat";
}

TEST_F(RigOnPaper, EveryBaitHangsAtItsOwnDepthUnderItsFloat) {
    std::vector<QPointF> floats;
    std::vector<QPointF> baits;
    for (const Drawn& dot : pages_.all(Drawn::Kind::ellipse)) {
        const QRectF box = dot.points.boundingRect();
        if (std::fabs(box.width() - 6.4) < 0.01) {
            EXPECT_EQ(dot.brush.color(), palette_.card);
            floats.push_back(box.center());
        } else if (std::fabs(box.width() - 4.8) < 0.01) {
            EXPECT_EQ(dot.brush.color(), palette_.plum);
            baits.push_back(box.center());
        }
    }
    ASSERT_EQ(floats.size(), 3U);
    ASSERT_EQ(baits.size(), 3U);
    const double pixel = 0.01 * frame_.pixelsPerMetreAlong() + 0.01;
    for (std::size_t i = 0; i < 3; ++i) {
        const rods::RodPlace& rod = mark().spread.rods[i];
        const double along = alongOf(rod.place);
        expectAt(floats[i], frame_.at(along, 0.0), pixel);
        expectAt(baits[i], frame_.at(along, rod.depth.inMetres()), pixel);
    }
    // From the rods' tips, above the rail in the middle of the boat, along the surface.
    const auto casts = lines(palette_.plum, 1.1, Qt::SolidLine);
    ASSERT_EQ(casts.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        expectAt(casts[i].p1(), frame_.at(lie_m, -0.9));
        expectAt(casts[i].p2(), floats[i]);
    }
}

TEST_F(RigOnPaper, WhereTheCutIsShallowerThanTheBaitTheLineIsOnlyHintedAt) {
    const auto drops = lines(palette_.plum, 1.5, Qt::SolidLine);
    ASSERT_EQ(drops.size(), 3U);
    std::size_t hinted = 0;
    std::vector<QLineF> hints;
    for (const Drawn& line : pages_.all(Drawn::Kind::line)) {
        if (line.pen.color() == palette_.plum && line.pen.style() == Qt::CustomDashLine) {
            hints.emplace_back(line.points[0], line.points[1]);
        }
    }
    for (std::size_t i = 0; i < 3; ++i) {
        const rods::RodPlace& rod = mark().spread.rods[i];
        const double bottom_m = scene_.cut.depthAt_m(*scene_.cut.alongOf(rod.place, 1e6));
        const double bait_m = rod.depth.inMetres();
        EXPECT_NEAR(drops[i].p2().y(), frame_.at(0.0, std::min(bait_m, bottom_m)).y(), 0.01) << i;
        if (bait_m > bottom_m) {
            ASSERT_LT(hinted, hints.size());
            EXPECT_NEAR(hints[hinted].p1().y(), frame_.at(0.0, bottom_m).y(), 0.01);
            EXPECT_NEAR(hints[hinted].p2().y(), frame_.at(0.0, bait_m).y(), 0.01);
            ++hinted;
        }
    }
    EXPECT_EQ(hinted, hints.size());
    EXPECT_GE(hinted, 1U) << "the day is made so that one hangs deeper";
    EXPECT_LT(hinted, 3U) << "and one does not";
}

/// \return the only place where a text stands.
QPointF onlyPlaceOf(const RecordedPages& pages, const QString& text) {
    const auto places = pages.lettered(text, letters());
    EXPECT_EQ(places.size(), 1U) << text.toStdString();
    return places.empty() ? QPointF() : places.front();
}

void expectRopesAndKnots(const RecordedPages& pages, const SideFrame& frame,
                         const marks::Mark& mark, const Said& said,
                         const std::function<double(geo::WaterPoint)>& alongOf) {
    const QPointF bow =
        onlyPlaceOf(pages, "bow rope " + said.length(mark.anchors.bow.rope) + ", scope 3.0");
    const QPointF stern = onlyPlaceOf(pages, "stern rope " + said.length(mark.anchors.stern->rope));
    EXPECT_GT(bow.x(), frame.at(lie_m, 0.0).x()) << "each on the side of its rope";
    EXPECT_LT(stern.x(), frame.at(lie_m, 0.0).x());
    for (std::size_t i = 0; i < mark.spread.rods.size(); ++i) {
        const rods::RodPlace& rod = mark.spread.rods[i];
        const QString text =
            QStringLiteral("rod %1  stop knot %2").arg(i + 1).arg(said.depth(rod.stopKnot));
        const double half = 0.5 * chart::boxOf(letters(), text, {}).width() + 7.0;
        const QPointF at = onlyPlaceOf(pages, text);
        EXPECT_NEAR(std::fabs(at.x() - frame.at(alongOf(rod.place), 0.0).x()), half, 0.3)
            << "beside its own line";
        EXPECT_LT(at.y(), frame.at(0.0, rod.depth.inMetres()).y());
        EXPECT_GT(at.y(), frame.at(0.0, 0.0).y());
    }
}

TEST_F(RigOnPaper, RopesAndStopKnotsAreWrittenBesideTheirOwn) {
    expectRopesAndKnots(pages_, frame_, mark(), Said(UnitSystem::metric),
                        [&](geo::WaterPoint p) { return alongOf(p); });
}

TEST_F(RigOnPaperInFeet, RopesAndStopKnotsAreWrittenBesideTheirOwn) {
    expectRopesAndKnots(pages_, frame_, mark(), Said(UnitSystem::imperial),
                        [&](geo::WaterPoint p) { return alongOf(p); });
}

TEST_F(RigOnPaper, OnACutAlongOneCastNoOtherRodHasASay) {
    ASSERT_EQ(mark().spread.rods.size(), 3U);
    SideScene cast = scene_;
    cast.rod = 1;
    RecordedPages pages;
    QPainter painter(&pages);
    side_view::paintScene(painter, cast, page);
    painter.end();
    const auto floats = std::ranges::count_if(pages.all(Drawn::Kind::ellipse), [](const Drawn& d) {
        return std::fabs(d.points.boundingRect().width() - 6.4) < 0.01;
    });
    EXPECT_EQ(floats, 1);
    for (std::size_t i = 0; i < 3; ++i) {
        const QString text =
            QStringLiteral("rod %1  stop knot %2")
                .arg(i + 1)
                .arg(Said(UnitSystem::metric).depth(mark().spread.rods[i].stopKnot));
        EXPECT_EQ(pages.lettered(text, letters()).size(), i == 1 ? 1U : 0U) << i;
    }
}

TEST_F(RigOnPaper, TheAnchorsAreCrossesAtTheEndsOfTheirRopes) {
    std::vector<QPointF> crosses;
    for (const Drawn& path : pages_.all(Drawn::Kind::path)) {
        if (path.pen.color() == palette_.rust && path.pen.widthF() == 2.4) {
            crosses.push_back(path.path.boundingRect().center());
        }
    }
    ASSERT_EQ(crosses.size(), 2U);
    expectAt(crosses[0], frame_.at(bow_m, 6.31));
    expectAt(crosses[1], frame_.at(stern_m, 3.14));
}

TEST(SceneOfMark, IsThatOfTheRankAskedForWithItsOwnTackle) {
    const auto content = support::contentToRead(UnitSystem::imperial);
    const SideScene second = side_view::sceneOfMark(content, 2);
    ASSERT_TRUE(second.mark);
    EXPECT_EQ(second.mark->sectionName, "Stream Arm");
    EXPECT_DOUBLE_EQ(second.tackle.boatLength.inMetres(), 4.3);
    EXPECT_FALSE(second.words.isMetric());
    EXPECT_EQ(second.bands, water::bandsOf(*content.water, content.derived));
    // 25 m to spare behind the stern anchor, 8 m to the boat, 17 m to the bow anchor, 25 m.
    EXPECT_NEAR(second.cut.length_m(), 75.0, 1e-6);
    EXPECT_NEAR(geo::distance_m(second.cut.placeAt(25.0), second.mark->anchors.stern->place), 0.0,
                1e-6);
    EXPECT_NEAR(geo::distance_m(second.cut.placeAt(50.0), second.mark->anchors.bow.place), 0.0,
                1e-6);
    EXPECT_TRUE(side_view::sceneOfMark(content, 4).cut.isEmpty());
    chart::ChartContent unplanned = content;
    unplanned.planned.reset();
    EXPECT_FALSE(side_view::sceneOfMark(unplanned, 2).mark);
}

TEST(SceneOfMark, LeadsAlongTheCastOfTheRodThatIsChosenAndShowsItAlone) {
    const auto content = support::contentToRead(UnitSystem::metric);
    const marks::Mark& mark = content.planned->marks[0];
    const std::size_t rod = mark.spread.rods.size() - 1;
    const SideScene scene = side_view::sceneOfMark(content, mark.rank, rod);
    ASSERT_EQ(scene.rod, rod);
    const rods::RodPlace& chosen = mark.spread.rods[rod];
    const double cast_m = geo::distance_m(mark.anchors.lie.centre, chosen.place);
    EXPECT_NEAR(scene.cut.length_m(), 8.0 + cast_m + 8.0, 1e-6);
    EXPECT_NEAR(geo::distance_m(scene.cut.placeAt(8.0), mark.anchors.lie.centre), 0.0, 1e-6);
    EXPECT_NEAR(geo::distance_m(scene.cut.placeAt(8.0 + cast_m), chosen.place), 0.0, 1e-6);
    RecordedPages pages;
    QPainter painter(&pages);
    side_view::paintScene(painter, scene, page);
    painter.end();
    const auto isLettered = [&](std::size_t k) {
        return !pages
                    .lettered(QStringLiteral("rod %1  stop knot %2")
                                  .arg(k + 1)
                                  .arg(content.words.depth(mark.spread.rods[k].stopKnot)),
                              letters())
                    .empty();
    };
    EXPECT_TRUE(isLettered(rod));
    EXPECT_FALSE(isLettered(0));
    EXPECT_FALSE(side_view::sceneOfMark(content, mark.rank, 99).rod) << "there is no such rod";
}

TEST(SceneOfMark, IsCutAtTodaysLevel) {
    const auto content = support::contentToRead(UnitSystem::metric); // 0.35 m below the chart's
    const SideScene scene = side_view::sceneOfMark(content, 1);
    const auto chartLevel = side_view::makeCut(content.derived, scene.cut.path, units::Length());
    for (std::size_t i = 0; i < scene.cut.samples.size(); ++i) {
        const auto& there = chartLevel.samples[i].depth_m;
        if (there && *there > 0.4) {
            ASSERT_TRUE(scene.cut.samples[i].depth_m);
            EXPECT_NEAR(*scene.cut.samples[i].depth_m, *there - 0.35, 1e-9);
        }
    }
}

} // namespace
