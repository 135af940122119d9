// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/ashore_banner.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace {

using chart::ChartContent;
using chart::LayerKind;

/// What the band says on a chart of this wind; empty where there is none.
QString bannerOf(double knots, const std::function<void(ChartContent&)>& change = {}) {
    ChartContent content = support::starContent();
    auto water = std::make_shared<water::Water>(*content.water);
    water->plan.day.wind.speed = units::Speed::knots(knots);
    content.water = water;
    content.shown = {LayerKind::furniture, LayerKind::marks};
    if (change) {
        change(content);
    }
    QImage page(900, 600, QImage::Format_ARGB32);
    QPainter painter(&page);
    chart::LabelSpace labels(QRectF(0.0, 0.0, 900.0, 600.0));
    chart::LayerContext on{
        painter, chart::ViewFrame::showing(content.derived.outline->box(), {900, 600}, 20.0),
        content, chart::Palette::screen(),
        labels,  1.0};
    const auto banner = chart::ashoreBanner(on);
    if (!banner) {
        return {};
    }
    EXPECT_NEAR(banner->box.center().x(), 450.0, 0.51) << "across the top";
    EXPECT_LT(banner->box.bottom(), 60.0);
    page.fill(Qt::white);
    banner->draw(on, banner->box);
    EXPECT_EQ(page.pixelColor(banner->box.topLeft().toPoint() + QPoint(3, 3)).rgb(),
              chart::Palette::screen().rust.rgb());
    return QStringLiteral("drawn");
}

TEST(AshoreBanner, StandsOnTheChartFromForceSixOn) {
    EXPECT_EQ(bannerOf(21.0), QString());
    EXPECT_EQ(bannerOf(22.0), "drawn");
    EXPECT_EQ(bannerOf(36.0), "drawn");
}

TEST(AshoreBanner, IsForTheDayOfTheMarksAndNotForPaper) {
    EXPECT_EQ(bannerOf(36.0, [](ChartContent& c) { c.shown.erase(LayerKind::marks); }), QString());
    EXPECT_EQ(bannerOf(36.0, [](ChartContent& c) { c.inks = chart::Inks::grey; }), QString());
}

} // namespace
