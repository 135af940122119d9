// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/chart_painter.h"
#include "app/chart/depth_colours.h"
#include "app/chart/palette.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QImage>

#include <cmath>

namespace {

using chart::ChartContent;
using chart::LayerKind;

constexpr QSize size(900, 640);

QImage painted(const ChartContent& content, const chart::ViewFrame& view) {
    QImage image(size, QImage::Format_RGB32);
    QPainter painter(&image);
    chart::paintChart(painter, view, content);
    return image;
}

QImage painted(const ChartContent& content) {
    return painted(content, chart::wholeWater(content, size));
}

/// A plain grey picture of all that the chart shows, and its surroundings.
std::shared_ptr<const water::Backdrop> greyBackdrop(const ChartContent& content) {
    const geo::Box box = chart::extentOf(content).grownBy(500.0);
    auto backdrop = std::make_shared<water::Backdrop>();
    backdrop->whole = box;
    backdrop->window = {box.west_m, box.north_m, 10.0, static_cast<int>(box.width_m() / 10.0),
                        static_cast<int>(box.height_m() / 10.0)};
    backdrop->argb.assign(static_cast<std::size_t>(backdrop->window.cols) *
                              static_cast<std::size_t>(backdrop->window.rows),
                          0xFF808080U);
    return backdrop;
}

TEST(ChartPainter, EveryLayerDrawsSomethingAndNothingWhereSwitchedOff) {
    ChartContent content = support::starContent();
    content.nextLines = std::make_shared<surface::SurveyTrip>(
        surface::SurveyTrip{{{{-200, 0}, {100, 80}, {}, 0, 0, {}}}, {}, {}, {}, {}, {}});
    content.backdrop = greyBackdrop(content);
    content.rates = std::make_shared<const chart::ShownRates>(); // of sections nobody tried
    water::YearsCompared years;
    const grid::GridFrame& frame = content.derived.drawn->depth.frame();
    years.change = {grid::Grid<float>(frame, 1.0F), grid::Grid<float>(frame, 0.3F)};
    content.years = std::make_shared<const water::YearsCompared>(years);
    content.shown.clear();
    const chart::ViewFrame view = chart::wholeWater(support::starContent(), size);
    const QImage bare = painted(content, view);
    for (const LayerKind kind : chart::allLayerKinds) {
        content.shown = {kind};
        EXPECT_NE(painted(content, view), bare) << "layer " << static_cast<int>(kind);
    }
}

TEST(ChartPainter, ADropOffThatBeginsAtTheShoreIsDrawnLikeAnyOther) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::structure};
    const chart::ViewFrame view = chart::wholeWater(content, size);
    const QImage before = painted(content, view);
    const auto with = [&](auto change) {
        auto zones = std::make_shared<structure::ZoneMap>(*content.derived.structure);
        for (structure::Zone& zone : zones->zones) {
            change(zone);
        }
        ChartContent changed = content;
        changed.derived.structure = zones;
        return painted(changed, view);
    };
    EXPECT_EQ(with([](structure::Zone& zone) { std::swap(zone.topEdges, zone.shoreTops); }),
              before);
    EXPECT_NE(with([](structure::Zone& zone) { zone.topEdges.clear(); }), before);
}

TEST(ChartPainter, ABorderFromBankToBankIsDrawnAndTheBanksAreNot) {
    ChartContent content = support::starContent();
    content.derived.outline = std::make_shared<const geo::Outline>(
        geo::Outline::make(
            std::vector<geo::Piece>{{{{-300, -200}, {300, -200}, {300, 200}, {-300, 200}}, {}}},
            *content.water->frame)
            .value());
    auto halves = std::make_shared<sections::SectionMap>(*content.derived.sections);
    halves->sections.resize(2);
    halves->sections[0].pieces = {{{{-300, -200}, {0, -200}, {0, 200}, {-300, 200}}, {}}};
    halves->sections[1].pieces = {{{{0, -200}, {300, -200}, {300, 200}, {0, 200}}, {}}};
    content.derived.sections = halves;
    const chart::ViewFrame view = chart::wholeWater(content, size);
    content.shown = {LayerKind::sections};
    const QImage image = painted(content, view);
    content.shown.clear();
    const QImage bare = painted(content, view);
    const auto isInked = [&](geo::WaterPoint p) {
        const QPoint pixel = view.toScreen(p).toPoint();
        return image.pixel(pixel) != bare.pixel(pixel);
    };
    EXPECT_TRUE(isInked({0, 130}));
    EXPECT_TRUE(isInked({0, -130}));
    EXPECT_FALSE(isInked({300, 20}));
    EXPECT_FALSE(isInked({-150, 200}));
}

TEST(ChartPainter, BandsShowTheColourOfTheirDepth) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::depth};
    // Trusted everywhere, so that nothing is faded.
    auto drawn = std::make_shared<surface::DrawnWater>(*content.derived.drawn);
    grid::Grid<float> halfWidth(drawn->depth.frame(), 0.1F);
    drawn->trust =
        surface::TrustGrid(halfWidth, grid::Grid<surface::TrustName>(drawn->depth.frame()));
    content.derived.drawn = drawn;
    const chart::ViewFrame view = chart::wholeWater(content, size);
    const QImage image = painted(content, view);
    for (const double share : {0.2, 0.6, 0.75, 0.87, 0.97}) {
        const geo::WaterPoint p = support::starPoint(share, 300.0);
        const QColor wanted = chart::colourOf(chart::Palette::screen(), chart::bandsOf(content),
                                              units::Depth::metres(support::starDepth_m(p)));
        EXPECT_EQ(image.pixelColor(view.toScreen(p).toPoint()), wanted) << share;
    }
}

TEST(ChartPainter, AGuessIsPalerThanWhatIsSounded) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::depth};
    const chart::ViewFrame view = chart::wholeWater(content, size);
    const QImage image = painted(content, view);
    const auto lightnessAround = [&](geo::WaterPoint p) {
        const QPoint middle = view.toScreen(p).toPoint();
        double sum = 0.0;
        for (int dx = -6; dx <= 6; ++dx) {
            sum += static_cast<double>(image.pixelColor(middle + QPoint(dx, 0)).lightnessF());
        }
        return sum / 13.0;
    };
    // Alike in depth: one in the patch that nobody sounded, one on a sounded line.
    EXPECT_GT(lightnessAround({-220.0, 60.0}), lightnessAround({220.0, 0.0}) + 0.15);
}

TEST(ChartPainter, AStrongBackdropComesOutAndTheDepthsFade) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::depth, LayerKind::backdrop};
    const chart::ViewFrame view = chart::wholeWater(content, size);
    const QPoint onLand(5, 5);
    const QPoint inWater = view.toScreen(support::starPoint(0.2, 300.0)).toPoint();
    const QColor plain = painted(content, view).pixelColor(inWater);
    content.backdrop = greyBackdrop(content);
    content.backdropStrength = 1.0;
    const QImage strong = painted(content, view);
    EXPECT_EQ(strong.pixelColor(onLand), QColor(0x80, 0x80, 0x80));
    const auto farFromGrey = [](const QColor& colour) {
        return std::abs(colour.red() - 0x80) + std::abs(colour.green() - 0x80) +
               std::abs(colour.blue() - 0x80);
    };
    EXPECT_LT(farFromGrey(strong.pixelColor(inWater)), farFromGrey(plain) / 2);
    content.backdropStrength = 0.0;
    EXPECT_EQ(painted(content, view).pixelColor(inWater), plain);
    content.backdropStrength = 1.0;
    content.shown.erase(LayerKind::backdrop);
    EXPECT_EQ(painted(content, view).pixelColor(inWater), plain) << "hidden";
}

/// A level 4 m below the chart, at which the star is the shore shrunk to the 4 m line.
ChartContent lowStar() {
    ChartContent content = support::starContent();
    auto low = std::make_shared<water::WaterForm>(*content.derived.form);
    low->rise = units::Length::metres(-4.0);
    geo::Ring ring;
    const double share = std::sqrt(1.0 - 4.0 / 20.0);
    for (int angle = 0; angle < 360; ++angle) {
        ring.push_back(support::starPoint(share, angle));
    }
    low->waterLeft = {geo::Piece{ring, {}}};
    content.derived.today = low;
    return content;
}

TEST(ChartPainter, WhatTheWaterHasLeftIsBankAndNoDepth) {
    ChartContent content = lowStar();
    content.shown = {LayerKind::depth, LayerKind::weed, LayerKind::structure};
    const chart::ViewFrame view = chart::wholeWater(content, size);
    const QImage image = painted(content, view);
    const chart::Palette& colours = chart::Palette::screen();
    const QColor bank = chart::mixed(colours.paper, colours.sand, 0.55);
    for (const double angle : {20.0, 140.0, 300.0}) {
        EXPECT_EQ(image.pixelColor(view.toScreen(support::starPoint(0.95, angle)).toPoint()), bank)
            << angle;
        EXPECT_NE(image.pixelColor(view.toScreen(support::starPoint(0.7, angle)).toPoint()), bank)
            << angle;
    }
}

TEST(ChartPainter, NoTextStandsOnText) {
    ChartContent content = support::starContent();
    content.shown = std::set<LayerKind>(chart::allLayerKinds.begin(), chart::allLayerKinds.end());
    content.selection.mark = 1;
    for (const double factor : {1.0, 3.0, 9.0}) {
        QImage image(size, QImage::Format_RGB32);
        QPainter painter(&image);
        const chart::ViewFrame view = chart::wholeWater(content, size)
                                          .centredOn(content.planned->marks[0].place)
                                          .zoomed(factor, {450, 320});
        const chart::LabelSpace labelSpace = chart::paintChart(painter, view, content);
        const auto& taken = labelSpace.taken();
        int labels = 0;
        for (const chart::LabelSpace::Taken& one : taken) {
            labels += one.label != chart::LabelSpace::noLabel ? 1 : 0;
            for (const chart::LabelSpace::Taken& other : taken) {
                const bool isText = one.label != chart::LabelSpace::noLabel;
                EXPECT_FALSE(isText && one.label != other.label && one.box.intersects(other.box))
                    << "at " << one.box.x() << ", " << one.box.y() << ", enlarged " << factor;
            }
        }
        EXPECT_GT(labels, 3);
    }
}

TEST(ChartPainter, TheGreyTwinHasNoColour) {
    ChartContent content = support::starContent();
    content.inks = chart::Inks::grey;
    content.shown = std::set<LayerKind>(chart::allLayerKinds.begin(), chart::allLayerKinds.end());
    const QImage image = painted(content);
    for (int y = 0; y < image.height(); y += 3) {
        for (int x = 0; x < image.width(); x += 3) {
            const QColor pixel = image.pixelColor(x, y);
            ASSERT_EQ(pixel.red(), pixel.green()) << x << ", " << y;
            ASSERT_EQ(pixel.red(), pixel.blue()) << x << ", " << y;
        }
    }
}

TEST(ChartPainter, TheWholeWaterLeavesTheKeyRoom) {
    const ChartContent content = support::starContent();
    const chart::ViewFrame view = chart::wholeWater(content, size);
    const geo::Box box = chart::extentOf(content);
    EXPECT_GE(view.toScreen({box.west_m, 0}).x(), 0.0);
    EXPECT_LE(view.toScreen({box.east_m, 0}).x(), size.width() - 124.0);
    EXPECT_GE(view.toScreen({0, box.north_m}).y(), 0.0);
    EXPECT_LE(view.toScreen({0, box.south_m}).y(), size.height());
}

TEST(ChartPainter, TheSameContentGivesTheSamePicture) {
    EXPECT_EQ(painted(support::starContent()), painted(support::starContent()));
}

TEST(ChartPainter, EmptyContentIsPaper) {
    ChartContent content;
    content.shown = chart::usualLayers();
    const QImage image = painted(content);
    EXPECT_EQ(image.pixelColor(100, 100), chart::Palette::screen().paper);
}

} // namespace
