// SPDX-License-Identifier: GPL-3.0-or-later
// What the layers paint of the water, and where: closed water, bands and contours with their
// labels, the shore, soundings and what is set aside, structure, weed, sections.
#include "app/chart/chart_painter.h"
#include "app/chart/contour_runs.h"
#include "app/chart/depth_colours.h"
#include "app/chart/set_aside_sign.h"
#include "app/chart/water_path.h"
#include "core/water/document/chosen_scale.h"
#include "tests/app/support/recorded.h"
#include "tests/app/support/star_water.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using chart::ChartContent;
using chart::LayerKind;
using chart::Palette;
using chart::ViewFrame;
using geo::WaterPoint;
using support::Drawn;
using support::Recorded;

const QSize page(900, 700);

ViewFrame near(WaterPoint middle, double pixelsPerMetre) {
    const ViewFrame view = ViewFrame::showing({-1, -1, 1, 1}, page, 0.0).centredOn(middle);
    return view.zoomed(pixelsPerMetre / view.pixelsPerMetre(), {450.0, 350.0});
}

double apart(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

ChartContent only(LayerKind kind) {
    ChartContent content = support::starContent();
    content.shown = {kind};
    return content;
}

TEST(ClosedPainted, EveryPieceIsCrossedThroughAndItsIslandsAreNot) {
    ChartContent content = only(LayerKind::closed);
    auto water = std::make_shared<water::Water>(*content.water);
    const auto ring = [](double x_m, double y_m, double half_m) {
        return geo::Ring{{x_m - half_m, y_m - half_m},
                         {x_m + half_m, y_m - half_m},
                         {x_m + half_m, y_m + half_m},
                         {x_m - half_m, y_m + half_m}};
    };
    water->houseRules.closed = {
        {"reserve",
         {geo::toEarth(geo::Piece{ring(-80, 0, 40), {ring(-80, 0, 12)}}, *water->frame),
          geo::toEarth(geo::Piece{ring(80, 0, 30), {}}, *water->frame)}},
        {"", {geo::toEarth(geo::Piece{ring(0, 100, 20), {}}, *water->frame)}}};
    content.water = water;
    const ViewFrame view = near({0, 0}, 2.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto hatched = drawn.strokes(Palette::screen().ink, 0.8);
    ASSERT_EQ(hatched.size(), 2U) << "one for each closed water";
    const auto isClosed = [&](WaterPoint p) {
        return std::ranges::any_of(
            hatched, [&](const Drawn& lines) { return lines.clip.contains(view.toScreen(p)); });
    };
    EXPECT_TRUE(isClosed({-110, 0}));
    EXPECT_FALSE(isClosed({-80, 0})) << "an island in it is open";
    EXPECT_TRUE(isClosed({80, 0})) << "its second piece too";
    EXPECT_TRUE(isClosed({0, 100}));
    EXPECT_FALSE(isClosed({0, 0}));
    for (const Drawn& lines : hatched) {
        const QRectF box = lines.path.boundingRect().adjusted(-0.1, -0.1, 0.1, 0.1);
        EXPECT_TRUE(box.contains(lines.clip.boundingRect())) << "crossed through from edge to edge";
    }
    EXPECT_EQ(drawn.strokes(Palette::screen().ink, 2.0).size(), 2U) << "with their borders";
    ASSERT_EQ(drawn.texts("closed: reserve").size(), 1U);
    EXPECT_NEAR(drawn.texts("closed: reserve")[0].at.x(), view.toScreen({-5.0, 0.0}).x(), 1.0);
    EXPECT_EQ(drawn.texts("closed").size(), 1U);
}

TEST(ClosedPainted, IsCutOffAtTheShore) {
    ChartContent content = only(LayerKind::closed);
    const ViewFrame view = chart::wholeWater(content, page);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto hatched = drawn.strokes(Palette::screen().ink, 0.8);
    ASSERT_EQ(hatched.size(), 1U);
    EXPECT_TRUE(hatched[0].clip.contains(view.toScreen(support::starPoint(0.85, 160.0))));
    EXPECT_FALSE(hatched[0].clip.contains(view.toScreen(support::starPoint(0.6, 160.0))));
    EXPECT_FALSE(hatched[0].clip.contains(view.toScreen(support::starPoint(1.02, 160.0))));
    EXPECT_TRUE(drawn.says("closed: nursery bay"));
}

TEST(BandsPainted, HaveTheColourOfTheirDepthAndTheShoreIsBrokenWhereItIsAssumed) {
    ChartContent content = only(LayerKind::depth);
    const ViewFrame view = chart::wholeWater(content, page);
    const Palette& palette = Palette::screen();
    const auto& bands = water::bandsOf(*content.water, content.derived);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    for (std::size_t band = 0; band < bands.count(); ++band) {
        const auto painted = drawn.strokes(palette.band(band, bands.count()), 0.9);
        ASSERT_GE(painted.size(), 1U) << band;
        EXPECT_EQ(painted[0].brush.color(), palette.band(band, bands.count()));
    }
    const auto shore = drawn.strokes(palette.ink, 1.8);
    ASSERT_EQ(shore.size(), 1U);
    EXPECT_EQ(shore[0].pen.style(), Qt::SolidLine);
    content.derived.outlineIsAssumed = true;
    Recorded assumed(page);
    support::paintOn(assumed, content, view);
    ASSERT_EQ(assumed.strokes(palette.ink, 1.8).size(), 1U);
    EXPECT_EQ(assumed.strokes(palette.ink, 1.8)[0].pen.style(), Qt::CustomDashLine);
}

TEST(BandsPainted, AreSeenInTheDrawingBeforeTheyAreMade) {
    const ChartContent made = only(LayerKind::depth);
    ChartContent early = made;
    early.derived.form = nullptr;
    early.derived.today = nullptr;
    const ViewFrame view = chart::wholeWater(made, page);
    const auto painted = [&view](const ChartContent& content) {
        QImage image(page, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        chart::paintChart(painter, view, content);
        return image;
    };
    const QImage bands = painted(made);
    const QImage cells = painted(early);
    const contours::Bands& edges = chart::bandsOf(made);
    int looked = 0;
    for (int i = 0; i < 72; ++i) {
        const WaterPoint p = support::starPoint(0.05 + 0.013 * i, 25.0 * i);
        const auto deeper = [p](double metres) {
            return units::Depth::metres(support::starDepth_m(p) + metres);
        };
        if (edges.bandOf(deeper(-0.7)) == edges.bandOf(deeper(0.7))) { // Not on an edge.
            const QPoint at = view.toScreen(p).toPoint();
            EXPECT_EQ(QColor(bands.pixel(at)).name(), QColor(cells.pixel(at)).name()) << i;
            ++looked;
        }
    }
    EXPECT_GT(looked, 20);
}

TEST(BandsPainted, GuessesAreHatchedAndNothingElseIs) {
    const ChartContent content = only(LayerKind::depth);
    const ViewFrame view = near({-220.0, 60.0}, 2.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto hatching = drawn.strokes(Palette::screen().ink, 0.8);
    ASSERT_EQ(hatching.size(), 1U);
    const auto points = hatching[0].points();
    ASSERT_GT(points.size(), 20U);
    for (const QPointF point : points) {
        const double off_m = geo::distance_m(view.toWater(point), {-220.0, 60.0});
        EXPECT_LT(off_m, 120.0 + 10.0) << "the patch that nobody sounded";
    }
    EXPECT_LT(apart(hatching[0].middle(), view.toScreen({-220.0, 60.0})), 12.0);
}

TEST(ContoursPainted, LabelsSayTheDepthOfThePlaceThatTheyStandOn) {
    ChartContent content = only(LayerKind::contours);
    for (const bool isMetric : {true, false}) {
        content.words = wording::Words(isMetric ? preferences::UnitSystem::metric
                                                : preferences::UnitSystem::imperial);
        const ViewFrame view = near(support::starPoint(0.8, 300.0), 1.6);
        Recorded drawn(page);
        support::paintOn(drawn, content, view);
        int labels = 0;
        for (int metres = 1; metres < 20; ++metres) {
            const units::Depth depth = units::Depth::metres(metres);
            const QString text =
                isMetric ? QString::number(metres) : content.words.shortDepthNumber(depth);
            for (const support::Lettered& label : drawn.texts(text)) {
                ++labels;
                EXPECT_NEAR(support::starDepth_m(view.toWater(label.at)), metres, 0.4)
                    << text.toStdString();
                EXPECT_LE(std::abs(label.angle_deg), 90.01) << "read from below";
            }
        }
        EXPECT_GE(labels, 5);
    }
    content.words = wording::Words(preferences::UnitSystem::imperial);
    EXPECT_EQ(content.words.shortDepthNumber(units::Depth::feet(30.0)), "30");
    EXPECT_EQ(content.words.shortDepthNumber(units::Depth::metres(4.0)), "13.1");
}

TEST(ContoursPainted, FineLinesComeFromNearAndAreLetteredFromNearerStill) {
    const ChartContent content = only(LayerKind::contours);
    const auto drawnAt = [&](double pixelsPerMetre) {
        auto drawn = std::make_unique<Recorded>(page);
        support::paintOn(*drawn, content, near(support::starPoint(0.6, 300.0), pixelsPerMetre));
        return drawn;
    };
    const auto count = [](const Recorded& drawn, double width) {
        return drawn
            .those([&](const Drawn& d) {
                return d.pen.style() != Qt::NoPen && std::abs(d.pen.widthF() - width) < 1e-6;
            })
            .size();
    };
    EXPECT_GT(count(*drawnAt(0.449), 1.0), 3U) << "edges of bands";
    EXPECT_EQ(count(*drawnAt(0.449), 0.7), 0U);
    EXPECT_GT(count(*drawnAt(0.451), 0.7), 8U);
    const auto says = [](const Recorded& drawn, std::initializer_list<int> depths) {
        return std::ranges::any_of(depths,
                                   [&](int depth) { return drawn.says(QString::number(depth)); });
    };
    EXPECT_TRUE(says(*drawnAt(1.29), {2, 4, 6, 14}));
    EXPECT_FALSE(says(*drawnAt(1.29), {3, 5, 7, 8, 9, 10, 11, 12, 13, 15}));
    EXPECT_TRUE(says(*drawnAt(1.31), {3, 5, 7, 8, 9, 10, 11, 12, 13, 15}));
}

TEST(ContoursPainted, AreBrokenWhereTheyAreAGuess) {
    const ChartContent content = only(LayerKind::contours);
    const auto runs = chart::contourRuns(content.derived);
    int guesses = 0;
    for (const chart::ContourRun& run : *runs) {
        guesses += run.isGuess ? 1 : 0;
        for (std::size_t i = 1; i + 1 < run.line.size(); ++i) {
            const double off_m = geo::distance_m(run.line[i], {-220.0, 60.0});
            if (std::abs(off_m - 120.0) > 12.0) {
                EXPECT_EQ(run.isGuess, off_m < 120.0);
            }
        }
        for (const WaterPoint p : run.line) {
            EXPECT_NEAR(support::starDepth_m(p), run.depth.inMetres(), 0.01);
            EXPECT_TRUE(run.box.holds(p));
        }
    }
    EXPECT_GT(guesses, 3);
    Recorded drawn(page);
    support::paintOn(drawn, content, near({-220.0, 60.0}, 1.5));
    const auto dashed =
        drawn.those([](const Drawn& d) { return d.pen.style() == Qt::CustomDashLine; });
    EXPECT_GT(dashed.size(), 3U);
    for (const Drawn& line : dashed) {
        EXPECT_LT(geo::distance_m(near({-220.0, 60.0}, 1.5).toWater(line.middle()), {-220.0, 60.0}),
                  120.0 + 10.0);
    }
}

/// The star with three soundings kept and one set aside for each family of reasons.
ChartContent fewSoundings() {
    ChartContent content = only(LayerKind::soundings);
    auto checked = std::make_shared<water::CheckedSurvey>();
    checked->survey.days.resize(1);
    using soundings::Verdict;
    auto& day = checked->survey.days[0];
    day.points = {{-100, 0}, {-50, 20}, {0, 40}, {50, 60}, {100, 80}, {150, 100}};
    day.verdicts = {Verdict::kept,         Verdict::spike,     Verdict::kept,
                    Verdict::positionJump, Verdict::disagrees, Verdict::kept};
    day.depth_m.resize(6);
    content.derived.checked = checked;
    auto water = std::make_shared<water::Water>(*content.water);
    for (const auto& [x_m, bottom] : {std::pair(-150.0, std::optional(soundings::Bottom::soft)),
                                      {-170.0, soundings::Bottom::gravel},
                                      {-190.0, soundings::Bottom::rock},
                                      {-130.0, soundings::Bottom::weed},
                                      {-110.0, std::nullopt}}) {
        water->leadLine.edit().push_back(
            {{}, water->frame->toEarth({x_m, -100.0 + x_m}), units::Depth::metres(3.0), bottom});
    }
    content.water = water;
    return content;
}

TEST(SoundingsPainted, KeptOnesAreDotsAndEachReasonHasItsSignAtItsPlace) {
    const ChartContent content = fewSoundings();
    const ViewFrame view = near({0, 0}, 1.5);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const Palette& palette = Palette::screen();
    const auto& points = content.derived.checked->survey.days[0].points;
    const auto dots = drawn.strokes(palette.ink, 1.2);
    const auto kept =
        std::ranges::find_if(dots, [](const Drawn& d) { return d.path.elementCount() == 6; });
    ASSERT_NE(kept, dots.end());
    for (const auto& [k, i] : {std::pair(0U, 0U), {1U, 2U}, {2U, 5U}}) {
        EXPECT_LT(apart(kept->points()[2 * k], view.toScreen(points[i])), 0.01);
    }
    for (const auto& [colour, i] :
         {std::pair(palette.rust, 1U), {palette.plum, 3U}, {palette.ink, 4U}}) {
        const auto signs = drawn.those([&, at = view.toScreen(points[i])](const Drawn& d) {
            return d.isStroke(colour, 1.5) && apart(d.middle(), at) < 0.01;
        });
        EXPECT_EQ(signs.size(), 1U) << i;
    }
}

TEST(SoundingsPainted, LeadsStandAtTheirPlacesWithWhatTheyFelt) {
    const ChartContent content = fewSoundings();
    const ViewFrame view = near({-100.0, -200.0}, 2.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    // IHO INT 1, section J.
    const std::vector<QString> signs{"so", "G", "R", "Wd"};
    for (std::size_t i = 0; i < signs.size(); ++i) {
        const QPointF at =
            view.toScreen(content.water->frame->toWater(content.water->leadLine[i].place));
        const auto found = drawn.texts(signs[i]);
        ASSERT_EQ(found.size(), 1U) << signs[i].toStdString();
        EXPECT_LT(apart(found[0].at, at), 25.0) << signs[i].toStdString();
    }
    const auto drops = drawn.those([](const Drawn& d) {
        return d.brush.style() == Qt::SolidPattern && d.path.elementCount() == 4 &&
               d.pen.widthF() == 1.2;
    });
    EXPECT_EQ(drops.size(), 5U) << "also where nothing was felt";
}

TEST(SignFamilies, HoldEveryReasonAndLookDifferent) {
    using chart::ReasonFamily;
    using soundings::Verdict;
    for (const auto& [verdict, family] : {std::pair(Verdict::dropOut, ReasonFamily::echo),
                                          {Verdict::spike, ReasonFamily::echo},
                                          {Verdict::doubleEcho, ReasonFamily::echo},
                                          {Verdict::stuckDepth, ReasonFamily::echo},
                                          {Verdict::positionJump, ReasonFamily::position},
                                          {Verdict::stuckPosition, ReasonFamily::position},
                                          {Verdict::outsideShore, ReasonFamily::position},
                                          {Verdict::disagrees, ReasonFamily::others},
                                          {Verdict::byHand, ReasonFamily::others}}) {
        EXPECT_EQ(chart::familyOf(verdict), family);
    }
    EXPECT_FALSE(chart::familyOf(Verdict::kept));
    const Palette& palette = Palette::screen();
    EXPECT_EQ(chart::colourOf(palette, ReasonFamily::echo), palette.rust);
    EXPECT_EQ(chart::colourOf(palette, ReasonFamily::position), palette.plum);
    EXPECT_EQ(chart::colourOf(palette, ReasonFamily::others), palette.ink);
    QPainterPath upright;
    chart::addSign(upright, ReasonFamily::position, {10.0, 10.0}, 2.0);
    EXPECT_EQ(upright.boundingRect(), QRectF(7.4, 7.4, 5.2, 5.2));
    QPainterPath square;
    chart::addSign(square, ReasonFamily::others, {10.0, 10.0}, 2.0);
    EXPECT_EQ(square.boundingRect(), QRectF(8.0, 8.0, 4.0, 4.0));
    EXPECT_TRUE(square.contains(QPointF(10.0, 10.0)));
}

TEST(StructurePainted, HachuresHangFromTheTopsDownTheSlope) {
    const ChartContent content = only(LayerKind::structure);
    const ViewFrame view = near(support::starPoint(0.86, 100.0), 1.5);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    int strokes = 0;
    for (const Drawn& d : drawn.all()) {
        const auto points = d.points();
        if (d.pen.style() == Qt::NoPen || std::abs(d.pen.widthF() - 0.9) > 1e-6 ||
            std::abs(d.pen.color().alphaF() - 0.62F) > 0.01F || points.size() % 2 != 0) {
            continue;
        }
        for (std::size_t i = 0; i + 1 < points.size(); i += 2) {
            const double length = apart(points[i], points[i + 1]);
            const double down_m = support::starDepth_m(view.toWater(points[i + 1])) -
                                  support::starDepth_m(view.toWater(points[i]));
            if (length >= 4.0 && std::abs(down_m) > 0.05) {
                EXPECT_GT(down_m, 0.0) << "downhill";
                EXPECT_LE(length, 12.01);
                ++strokes;
            }
        }
    }
    EXPECT_GT(strokes, 40);
}

TEST(StructurePainted, SignsFillTheirOwnZoneAndTheChosenOneIsOutlinedAndNamed) {
    ChartContent content = only(LayerKind::structure);
    const ViewFrame view = near({40.0, 20.0}, 2.0);
    content.selection.zone = 1;
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto& zones = content.derived.structure->zones;
    const auto chosen = drawn.strokes(Palette::screen().rust, 2.0);
    ASSERT_EQ(chosen.size(), 1U);
    EXPECT_LT(apart(chosen[0].middle(), view.toScreen(zones[1].middle)), 1.0);
    ASSERT_EQ(drawn.texts("Hole 1").size(), 1U);
    EXPECT_EQ(drawn.texts("Hole 1")[0].colour.rgb(), Palette::screen().rust.rgb());
    ASSERT_EQ(drawn.texts("Hump 1").size(), 1U);
    EXPECT_LT(apart(drawn.texts("Hump 1")[0].at, view.toScreen(zones[0].middle)), 15.0);
    // Dots of the hump: strokes of 1.5 pixels, all of them within it.
    std::size_t dots = 0;
    for (const Drawn& d : drawn.all()) {
        if (d.pen.style() != Qt::NoPen && d.pen.widthF() == 1.5) {
            for (const QPointF point : d.points()) {
                EXPECT_LT(geo::distance_m(view.toWater(point), zones[0].middle), 60.0);
                ++dots;
            }
        }
    }
    EXPECT_GT(dots, 500U);
}

TEST(StructurePainted, AHoleIsFilledWithBowlsThatHangDown) {
    const ChartContent content = only(LayerKind::structure);
    const ViewFrame view = near({40.0, 20.0}, 2.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto& hole = content.derived.structure->zones[1];
    std::size_t bowls = 0;
    for (const Drawn& d : drawn.all()) {
        for (int i = 0; i + 3 < d.path.elementCount(); ++i) {
            if (!d.path.elementAt(i + 1).isCurveTo() || d.pen.style() == Qt::NoPen) {
                continue;
            }
            const QPointF from = d.path.elementAt(i);
            const QPointF to = d.path.elementAt(i + 3);
            if (std::abs(apart(from, to) - 6.0) < 0.01) {
                EXPECT_GT(QPointF(d.path.elementAt(i + 2)).y(), from.y() + 1.0);
                EXPECT_LT(geo::distance_m(view.toWater(from), hole.middle), 60.0);
                ++bowls;
            }
        }
    }
    EXPECT_GT(bowls, 5U);
}

} // namespace
