// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/palette.h"
#include "app/paper/picture.h"
#include "app/paper/rates_picture.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace {

int pixelsOf(const QImage& image, const QColor& colour) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            count += image.pixelColor(x, y) == colour ? 1 : 0;
        }
    }
    return count;
}

rates::RateTable someRates() {
    rates::RateTable table;
    for (int i = 0; i < 5; ++i) {
        rates::RateRow row;
        row.name = "Section " + std::to_string(i + 1);
        row.fish = 2 * i;
        row.rodHours = 20.0;
        row.rate = rates::rateOf(row.tally());
        table.rows.push_back(row);
    }
    return table;
}

TEST(Picture, HasTheSizeAskedForAndEveryBandOnIt) {
    const chart::ChartContent content = support::starContent();
    const QImage picture = paper::renderPicture(content, {1000, 700});
    EXPECT_EQ(picture.size(), QSize(1000, 700));
    for (std::size_t band = 0; band < 6; ++band) {
        EXPECT_GT(pixelsOf(picture, chart::Palette::screen().band(band, 7)), 300) << band;
    }
    EXPECT_GT(pixelsOf(picture, chart::Palette::screen().rust), 100); // marks
}

TEST(Picture, DrawsTheUsualLayersWhereNoneAreChosen) {
    chart::ChartContent content = support::starContent();
    const QImage usual = paper::renderPicture(content, {640, 480});
    content.shown.clear();
    EXPECT_EQ(paper::renderPicture(content, {640, 480}), usual);
}

TEST(Picture, OfNothingIsStillASheet) {
    EXPECT_EQ(paper::renderPicture(chart::ChartContent{}, {300, 200}).size(), QSize(300, 200));
}

TEST(RatesPicture, BarsGrowWithTheRate) {
    const QImage picture = paper::renderRates(someRates(), QStringLiteral("Fish"), {1000, 400});
    const QColor bar = chart::Palette::screen().depthAt(0.62);
    std::vector<int> widths;
    bool wasBar = false;
    for (int y = 0; y < picture.height(); ++y) {
        int width = 0;
        for (int x = 0; x < picture.width(); ++x) {
            width += picture.pixelColor(x, y) == bar ? 1 : 0;
        }
        if (width > 20 && !wasBar) {
            widths.push_back(width);
        }
        wasBar = width > 20;
    }
    // Some rows are cut by their interval's line; the first line of each bar is not.
    std::vector<int> growing = widths;
    growing.erase(std::unique(growing.begin(), growing.end()), growing.end());
    EXPECT_GE(growing.size(), 4U);
    EXPECT_TRUE(std::is_sorted(growing.begin(), growing.end()));
}

TEST(RatesPicture, AnEmptyTableIsStillASheet) {
    EXPECT_EQ(paper::renderRates({}, QStringLiteral("Fish"), {600, 300}).size(), QSize(600, 300));
}

} // namespace
