// SPDX-License-Identifier: GPL-3.0-or-later
// What the chart says of itself: key, scale, north, wind, what crossings mean; what it reads out
// under the pointer; how thick the veil over a guess is.
#include "app/chart/crossing_dot.h"
#include "app/chart/depth_colours.h"
#include "app/chart/furniture.h"
#include "app/chart/layers/backdrop_layer.h"
#include "app/chart/never_fished.h"
#include "app/chart/placed_things.h"
#include "app/chart/read_out.h"
#include "app/chart/todays_form.h"
#include "app/chart/trust_fade.h"
#include "app/chart/verdict_now.h"
#include "core/water/document/chosen_scale.h"
#include "tests/app/support/recorded.h"
#include "tests/app/support/star_water.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace {

using chart::ChartContent;
using chart::LayerKind;
using chart::Palette;
using chart::ViewFrame;
using geo::WaterPoint;
using support::Drawn;
using support::Recorded;

const QSize page(1100, 760);

ChartContent furnished() {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::furniture};
    return content;
}

std::unique_ptr<Recorded> painted(const ChartContent& content) {
    auto drawn = std::make_unique<Recorded>(page);
    support::paintOn(*drawn, content, chart::wholeWater(content, page));
    return drawn;
}

TEST(Key, NamesEveryBandBesideItsColourAndDrawsTheLimitUnderIts) {
    for (const auto units : {preferences::UnitSystem::metric, preferences::UnitSystem::imperial}) {
        ChartContent content = furnished();
        content.words = wording::Words(units);
        const auto drawn = painted(content);
        const bool isMetric = units == preferences::UnitSystem::metric;
        const std::vector<QString> ranges =
            isMetric
                ? std::vector<QString>{"0 to 2",    "2 to 4",   "4 to 6", "6 to 9.1",
                                       "9.1 to 14", "14 to 20", "over 20"}
                : std::vector<QString>{"0 to 6.6",   "6.6 to 13.1",  "13.1 to 19.7", "19.7 to 30",
                                       "30 to 45.9", "45.9 to 65.6", "over 65.6"};
        EXPECT_TRUE(drawn->says(isMetric ? "depth, m" : "depth, ft"));
        EXPECT_TRUE(drawn->says(isMetric ? "limit 9.1" : "limit 30"));
        EXPECT_TRUE(drawn->says("a guess"));
        double under = 0.0;
        for (std::size_t band = 0; band < ranges.size(); ++band) {
            const auto words = drawn->texts(ranges[band]);
            ASSERT_EQ(words.size(), 1U) << ranges[band].toStdString();
            const auto swatch = drawn->fills(Palette::screen().band(band, ranges.size()));
            ASSERT_EQ(swatch.size(), 1U) << band;
            EXPECT_NEAR(swatch[0].middle().y(), words[0].at.y(), 1.0) << band;
            under = band == 3 ? swatch[0].path.boundingRect().bottom() : under;
        }
        const auto limit = drawn->strokes(Palette::screen().rust, 1.6);
        ASSERT_EQ(limit.size(), 1U);
        EXPECT_NEAR(limit[0].middle().y(), under, 0.01);
    }
}

TEST(Key, TellsTheLevelWhereItIsNotTheChartsAndTheSignOfWhatWasNeverFished) {
    ChartContent content = furnished();
    EXPECT_FALSE(painted(content)->says("level +0.35 m"));
    auto today = std::make_shared<water::WaterForm>(*content.derived.form);
    today->rise = units::Length::metres(-0.4);
    content.derived.today = today;
    EXPECT_TRUE(painted(content)->says(QStringLiteral("level −0.40 m")));
    EXPECT_EQ(chart::levelOfDepths(content), QStringLiteral("depths at −0.40 m from chart level"));
    content.derived.today.reset();
    EXPECT_EQ(chart::levelOfDepths(content), "depths at chart level");
    EXPECT_FALSE(painted(content)->says("never fished"));
    content.shown.insert(LayerKind::sections);
    EXPECT_TRUE(painted(content)->says("never fished"));
}

TEST(ScaleBar, IsAsLongAsItSays) {
    for (const auto& [units, pixelsPerMetre, says, metres] :
         {std::tuple(preferences::UnitSystem::metric, 0.6, "200 m", 200.0),
          {preferences::UnitSystem::metric, 0.1, "1 km", 1000.0},
          {preferences::UnitSystem::metric, 8.0, "10 m", 10.0},
          {preferences::UnitSystem::imperial, 0.6, "500 ft", 152.4}}) {
        ChartContent content = furnished();
        content.words = wording::Words(units);
        const ViewFrame whole = chart::wholeWater(content, page);
        Recorded drawn(page);
        support::paintOn(drawn, content,
                         whole.zoomed(pixelsPerMetre / whole.pixelsPerMetre(), {550, 380}));
        const auto words = drawn.texts(says);
        ASSERT_EQ(words.size(), 1U) << says;
        const auto halves = drawn.those([&, at = words[0].at](const Drawn& d) {
            const QRectF box = d.path.boundingRect();
            return std::abs(box.height() - 4.0) < 0.01 &&
                   std::abs(box.center().y() - at.y()) < 20.0;
        });
        ASSERT_EQ(halves.size(), 2U) << says;
        const QRectF bar = halves[0].path.boundingRect().united(halves[1].path.boundingRect());
        EXPECT_NEAR(bar.width(), metres * pixelsPerMetre, 0.01) << says;
        EXPECT_NEAR(halves[0].path.boundingRect().width(), 0.5 * bar.width(), 0.01);
    }
}

TEST(ScaleBar, TakesTheLongestRoundLengthThatFits) {
    const wording::Words metric;
    for (const auto& [pixelsPerMetre, metres] :
         {std::pair(1.0, 100.0), {0.75, 200.0}, {0.76, 100.0}, {0.3, 500.0}, {3.0, 50.0}}) {
        EXPECT_NEAR(chart::roundLength(metric, pixelsPerMetre, 150.0).inMetres(), metres, 1e-9);
    }
    EXPECT_NEAR(
        chart::roundLength(wording::Words(preferences::UnitSystem::imperial), 1.0, 150.0).inFeet(),
        200.0, 1e-9);
}

TEST(North, PointsUp) {
    const auto drawn = painted(furnished());
    const auto letter = drawn->texts("N");
    ASSERT_EQ(letter.size(), 1U);
    const auto needles = drawn->those([&](const Drawn& d) {
        return d.isFill(Palette::screen().ink) &&
               std::abs(d.points().front().x() - letter[0].at.x()) < 0.01 &&
               d.path.elementCount() == 4;
    });
    ASSERT_EQ(needles.size(), 1U);
    EXPECT_NEAR(needles[0].points()[0].y(), letter[0].at.y() - 33.0, 0.01);
    EXPECT_EQ(needles[0].points()[0].y(), needles[0].path.boundingRect().top());
}

TEST(WindOnTheChart, ArrowFliesTheWayItBlowsBesideItsWords) {
    ChartContent content = furnished();
    EXPECT_TRUE(painted(content)->texts(QStringLiteral("WNW 300° 6 m/s")).empty())
        << "the plan's wind is shown with its marks";
    content.shown.insert(chart::LayerKind::marks);
    const auto drawn = painted(content);
    const auto words = drawn->texts(QStringLiteral("WNW 300° 6 m/s"));
    ASSERT_EQ(words.size(), 1U);
    EXPECT_TRUE(drawn->says("force 4, moderate breeze"));
    // From 300 degrees it blows towards 120: to the right and down.
    const auto lines = drawn->strokes(Palette::screen().ink, 2.0);
    ASSERT_GE(lines.size(), 3U);
    const QPointF tail = lines[0].points()[0];
    const QPointF head = lines[0].points()[1];
    EXPECT_NEAR(head.x() - tail.x(), 36.0 * std::sin(120.0 * std::numbers::pi / 180.0), 0.01);
    EXPECT_NEAR(head.y() - tail.y(), -36.0 * std::cos(120.0 * std::numbers::pi / 180.0), 0.01);
    EXPECT_EQ(lines[1].points()[0], head) << "with its barbs at the head";
}

TEST(CrossingKey, SaysWhichSideIsDeeperAndByHowMuch) {
    ChartContent content = furnished();
    content.shown.insert(LayerKind::crossings);
    for (const auto& [units, title, least, most] :
         {std::tuple(preferences::UnitSystem::metric, "crossings, later pass deeper by, m",
                     QStringLiteral("−0.6"), QStringLiteral("+0.6")),
          {preferences::UnitSystem::imperial, "crossings, later pass deeper by, ft",
           QStringLiteral("−2"), QStringLiteral("+2")}}) {
        content.words = wording::Words(units);
        const auto drawn = painted(content);
        EXPECT_TRUE(drawn->says(title)) << title;
        ASSERT_EQ(drawn->texts(least).size(), 1U);
        ASSERT_EQ(drawn->texts(most).size(), 1U);
        EXPECT_LT(drawn->texts(least)[0].at.x(), drawn->texts(most)[0].at.x());
        EXPECT_TRUE(drawn->says("beyond IHO S-44 order 2"));
    }
}

TEST(CrossingColours, AreThoseOfTheirSide) {
    reduction::Crossing crossing;
    crossing.depthA_m = 4.0;
    for (const auto& [later_m, share, colour] : {std::tuple(4.6, 1.0, "#2c5f8a"),
                                                 {5.5, 1.0, "#2c5f8a"},
                                                 {3.4, -1.0, "#b5642a"},
                                                 {4.0, 0.0, "#f4f0e6"}}) {
        crossing.depthB_m = later_m;
        EXPECT_NEAR(chart::dotOf(crossing, 1.0).share, share, 1e-9) << later_m;
        EXPECT_EQ(Palette::screen().difference(share).name(), colour) << later_m;
    }
    crossing.depthB_m = 4.3;
    EXPECT_NEAR(chart::dotOf(crossing, 1.0).share, 0.5, 1e-9);
    EXPECT_NEAR(chart::dotOf(crossing, 2.0).radius, 2.0 * (2.6 + 0.5 * 3.8), 1e-9);
}

TEST(CrossingDots, StandWhereThePassesCross) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::crossings};
    const ViewFrame view = chart::wholeWater(content, page);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto dots = drawn.those([](const Drawn& d) {
        return d.isStroke(Palette::screen().ink, 0.9) && d.brush.style() == Qt::SolidPattern;
    });
    const auto shown = chart::crossingsShown(content, view, 1.0);
    ASSERT_EQ(dots.size(), shown.size());
    for (std::size_t k = 0; k < shown.size(); ++k) {
        const auto& crossing = content.derived.checked->crossings[shown[k]];
        const QPointF off = dots[k].middle() - view.toScreen(crossing.at);
        EXPECT_LT(std::hypot(off.x(), off.y()), 0.01);
        EXPECT_EQ(dots[k].brush.color(),
                  Palette::screen().difference(chart::dotOf(crossing, 1.0).share));
    }
}

// Nothing up to 0.6 of the half-width that makes a guess, then up to 0.78 at three times that.
TEST(Veil, GrowsFromSixTenthsOfAGuessToThreeTimesIt) {
    EXPECT_DOUBLE_EQ(chart::veilOver(3.0, 0.30), 0.0);
    EXPECT_GT(chart::veilOver(3.0, 0.301), 0.0);
    EXPECT_NEAR(chart::veilOver(3.0, 1.5), 0.78, 1e-12);
    EXPECT_NEAR(chart::veilOver(3.0, 99.0), 0.78, 1e-12);
    EXPECT_NEAR(chart::veilOver(3.0, 0.9), 0.78 * 0.5 * 1.5, 1e-12);
    EXPECT_DOUBLE_EQ(chart::veilOver(10.0, 0.60), 0.0) << "a tenth of the depth";
    EXPECT_NEAR(chart::veilOver(10.0, 1.8), 0.78 * 0.5 * 1.5, 1e-12);
}

TEST(Veil, IsAGuessWhereMostOfTheNineCellsAre) {
    const grid::GridFrame frame(0.0, 50.0, 10.0, 5, 5);
    auto drawn = std::make_shared<surface::DrawnWater>();
    drawn->depth = grid::DepthGrid(frame);
    grid::Grid<surface::TrustName> names(frame, surface::TrustName::sounded);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        drawn->depth.set(i, units::Depth::metres(3.0));
        names[i] =
            frame.cellAt(i).col < 2 ? surface::TrustName::guess : surface::TrustName::inferred;
    }
    drawn->trust = surface::TrustGrid(grid::Grid<float>(frame, 1.5F), names);
    const auto fade = chart::TrustFade::of(drawn, chart::Inks::light);
    EXPECT_TRUE(fade->isGuess({15.0, 25.0})) << "six of nine";
    EXPECT_FALSE(fade->isGuess({25.0, 25.0})) << "three of nine";
    EXPECT_FALSE(fade->isGuess({-5.0, 25.0}));
    EXPECT_NEAR(qAlpha(fade->veil.convertToFormat(QImage::Format_ARGB32).pixel(2, 2)),
                std::round(0.78 * 255.0), 1);
}

TEST(ReadOutExactly, SaysEverythingOfThePlaceItself) {
    ChartContent content = support::starContent();
    const WaterPoint p{120.0, -60.0};
    auto map = std::make_shared<sections::SectionMap>(*content.derived.sections);
    map->sectionOfCell[map->sectionOfCell.frame().cellOf(p)] = 2;
    content.derived.sections = map;
    auto weed = std::make_shared<weed::WeedMap>(*content.derived.weed);
    weed->zones.zones.resize(1);
    weed->zones.zones[0].kind = structure::ZoneKind::weedEdge;
    weed->zones.zoneOfCell[weed->zones.zoneOfCell.frame().cellOf(p)] = 0;
    content.derived.weed = weed;
    auto today = std::make_shared<water::WaterForm>(*content.derived.form);
    content.derived.today = today;
    const double chart_m = content.derived.drawn->depth.at(p)->inMetres();
    for (const double rise_m : {-2.0, 0.0, 1.5}) {
        today->rise = units::Length::metres(rise_m);
        const auto out = chart::readOutAt(content, p);
        EXPECT_EQ(out.depth, content.words.depth(units::Depth::metres(chart_m + rise_m)));
        const auto& bands = water::bandsOf(*content.water, content.derived);
        const auto band = bands.bandOf(units::Depth::metres(chart_m + rise_m));
        EXPECT_EQ(out.band, content.words.depthRange(bands.from(band), bands.to(band)));
        EXPECT_EQ(out.zones, "hump, weed edge");
        EXPECT_EQ(out.section, "Long Bar");
        EXPECT_EQ(out.position, wording::Words::place(content.water->frame->toEarth(p)));
        EXPECT_EQ(out.line(), QStringList({out.depth, out.trust, out.band, out.zones, out.section,
                                           out.position})
                                  .join("   "));
    }
    today->rise = units::Length::metres(-chart_m);
    EXPECT_EQ(chart::readOutAt(content, p).depth, "dry");
    const auto halfWidth = content.derived.drawn->trust.halfWidthAt(p);
    const auto word = surface::wordFor(*content.derived.drawn->trust.at(p));
    EXPECT_EQ(chart::readOutAt(content, p).trust,
              QStringLiteral("%1, %2").arg(
                  content.words.plusMinus(units::Depth::fromLength(*halfWidth)),
                  QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()))));
}

TEST(ReadOutExactly, TakesTheLevelOfTheDrawingElseOfThePlanElseOfTheWater) {
    ChartContent content = support::starContent();
    auto water = std::make_shared<water::Water>(*content.water);
    water->plan.day.levelChange = units::Length::metres(0.2);
    content.water = water;
    auto today = std::make_shared<water::WaterForm>();
    today->rise = units::Length::metres(-0.7);
    content.derived.today = today;
    EXPECT_DOUBLE_EQ(chart::riseOf(content).inMetres(), -0.7);
    content.derived.today.reset();
    EXPECT_DOUBLE_EQ(chart::riseOf(content).inMetres(), 0.35);
    content.planned.reset();
    EXPECT_DOUBLE_EQ(chart::riseOf(content).inMetres(), 0.2);
    content.water.reset();
    EXPECT_DOUBLE_EQ(chart::riseOf(content).inMetres(), 0.0);
}

TEST(GroundColour, IsThatOfTodaysDepthAndPaperWhereItIsDry) {
    ChartContent content = support::starContent();
    auto today = std::make_shared<water::WaterForm>(*content.derived.form);
    content.derived.today = today;
    const Palette& palette = Palette::screen();
    const WaterPoint p = support::starPoint(0.9, 300.0); // 3.8 m
    const auto at = [&](double rise_m) {
        today->rise = units::Length::metres(rise_m);
        return chart::groundAt(content, palette, p);
    };
    EXPECT_EQ(at(0.0), palette.band(1, 7));
    EXPECT_EQ(at(-2.5), palette.band(0, 7));
    EXPECT_EQ(at(3.0), palette.band(3, 7));
    EXPECT_EQ(at(-5.0), palette.paper);
    EXPECT_EQ(chart::groundAt(content, palette, {5000.0, 0.0}), palette.paper);
    EXPECT_EQ(chart::lineOn(palette, palette.band(0, 7)), palette.ink);
    EXPECT_EQ(chart::lineOn(palette, palette.band(6, 7)), palette.card);
}

TEST(UsualLayers, AreAllButTheTracksTheCrossingsTheLogAndTheGraticule) {
    const auto usual = chart::usualLayers();
    for (const LayerKind kind : chart::allLayerKinds) {
        const bool isLeftOut = kind == LayerKind::soundings || kind == LayerKind::crossings ||
                               kind == LayerKind::log || kind == LayerKind::graticule;
        EXPECT_EQ(usual.contains(kind), !isLeftOut) << static_cast<int>(kind);
    }
}

TEST(Backdrop, LeavesFifteenHundredthsOfTheDepthsAtItsStrongest) {
    ChartContent content = support::starContent();
    EXPECT_DOUBLE_EQ(chart::depthOpacity(content), 1.0);
    content.backdrop = std::make_shared<water::Backdrop>();
    content.backdropStrength = 1.0;
    EXPECT_NEAR(chart::depthOpacity(content), 0.15, 1e-12);
    content.backdropStrength = 0.4;
    EXPECT_NEAR(chart::depthOpacity(content), 0.66, 1e-12);
    content.strengths[LayerKind::depth] = 0.5;
    EXPECT_NEAR(chart::depthOpacity(content), 0.33, 1e-12);
    content.shown.erase(LayerKind::backdrop);
    EXPECT_DOUBLE_EQ(chart::depthOpacity(content), 0.5);
    content.strengths.clear();
    EXPECT_DOUBLE_EQ(chart::depthOpacity(content), 1.0);
}

} // namespace
