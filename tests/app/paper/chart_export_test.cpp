// SPDX-License-Identifier: GPL-3.0-or-later
// The chart given away at a chosen scale.
#include "app/chart/chart_painter.h"
#include "app/chart/palette.h"
#include "app/paper/chart_export.h"
#include "tests/app/support/star_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QRegularExpression>

#include <cmath>

namespace {

using paper::exportChart;
using support::ScratchFolder;

constexpr double millimetresPerInch = 25.4;

QImage pictureAt(const ScratchFolder& folder, chart::ChartContent content, double denominator) {
    const auto path = folder.path() / "chart.png";
    const auto saved = exportChart(path, content, denominator);
    EXPECT_TRUE(saved.has_value());
    return QImage(QString::fromStdString(path.string()));
}

/// How many millimetres of the picture a colour spans from left to right.
double spanOf_mm(const QImage& picture, const QColor& colour) {
    int left = picture.width();
    int right = 0;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x) {
            if (picture.pixelColor(x, y) == colour) {
                left = std::min(left, x);
                right = std::max(right, x);
            }
        }
    }
    return 1000.0 * (right - left) / picture.dotsPerMeterX();
}

TEST(ChartExport, AMetreOnTheWaterIsAsLargeAsTheScaleSays) {
    const ScratchFolder folder;
    chart::ChartContent content = support::starContent();
    content.shown = {chart::LayerKind::depth};
    const double water_m = chart::extentOf(content).width_m();
    for (const double denominator : {4000.0, 8000.0}) {
        const QImage picture = pictureAt(folder, content, denominator);
        ASSERT_FALSE(picture.isNull());
        EXPECT_NEAR(picture.dotsPerMeterX() * millimetresPerInch / 1000.0, 300.0, 0.05);
        const QSizeF size = paper::chartSize_mm(content, denominator);
        EXPECT_NEAR(picture.width() * 1000.0 / picture.dotsPerMeterX(), size.width(), 0.2);
        // The outermost of the shallowest band on either side: the water from shore to shore.
        const double span_mm =
            spanOf_mm(picture, chart::Palette::screen().band(0, 7)) * denominator / 1000.0;
        EXPECT_NEAR(span_mm, water_m, 0.03 * water_m) << "1 : " << denominator;
    }
}

TEST(ChartExport, EveryFormatIsWholeAndOfTheSameSize) {
    const ScratchFolder folder;
    const chart::ChartContent content = support::starContent();
    const QSizeF size = paper::chartSize_mm(content, 5000.0);
    for (const char* name : {"chart.pdf", "chart.svg", "CHART.PNG"}) {
        ASSERT_TRUE(exportChart(folder.path() / name, content, 5000.0)) << name;
    }
    const std::string pdf = ScratchFolder::textOf(folder.path() / "chart.pdf");
    EXPECT_TRUE(pdf.starts_with("%PDF-"));
    const auto box = QRegularExpression(R"(/MediaBox \[0 0 ([\d.]+) ([\d.]+)\])")
                         .match(QString::fromLatin1(pdf.data(), static_cast<int>(pdf.size())));
    ASSERT_TRUE(box.hasMatch());
    EXPECT_NEAR(box.captured(1).toDouble() / 72.0 * millimetresPerInch, size.width(), 0.5);
    EXPECT_NEAR(box.captured(2).toDouble() / 72.0 * millimetresPerInch, size.height(), 0.5);
    const QString svg = QString::fromStdString(ScratchFolder::textOf(folder.path() / "chart.svg"));
    const auto width =
        QRegularExpression(R"(<svg width="([\d.]+)mm" height="([\d.]+)mm")").match(svg);
    ASSERT_TRUE(width.hasMatch()) << svg.left(300).toStdString();
    EXPECT_NEAR(width.captured(1).toDouble(), size.width(), 0.5);
    EXPECT_NEAR(width.captured(2).toDouble(), size.height(), 0.5);
    EXPECT_TRUE(svg.trimmed().endsWith("</svg>"));
}

TEST(ChartExport, IsPrintedLightWhateverTheScreenShows) {
    const ScratchFolder folder;
    chart::ChartContent content = support::starContent();
    const QImage light = pictureAt(folder, content, 8000.0);
    content.inks = chart::Inks::dark;
    content.typeScale = 1.5;
    EXPECT_EQ(pictureAt(folder, content, 8000.0), light);
}

TEST(ChartExport, ScaleForA4JustFitsThePage) {
    const chart::ChartContent content = support::starContent();
    const double denominator = paper::scaleForA4(content);
    const QSizeF size = paper::chartSize_mm(content, denominator);
    EXPECT_LE(std::min(size.width(), size.height()), 210.5);
    EXPECT_LE(std::max(size.width(), size.height()), 297.5);
    EXPECT_GT(std::max(size.width(), size.height()), 150.0) << "and is not lost on it";
    EXPECT_EQ(paper::scaleForA4(chart::ChartContent()), 0.0);
}

TEST(ChartExport, RefusesWhatCannotBeWithWhatToDo) {
    const ScratchFolder folder;
    const chart::ChartContent content = support::starContent();
    const auto kindOf = [&](const char* name, const chart::ChartContent& what, double scale) {
        const auto saved = exportChart(folder.path() / name, what, scale);
        EXPECT_FALSE(std::filesystem::exists(folder.path() / name)) << name;
        EXPECT_FALSE(saved.has_value() || saved.error().whatToDo.empty()) << name;
        return saved.has_value() ? base::ErrorKind::cancelled : saved.error().kind;
    };
    EXPECT_EQ(kindOf("a.bmp", content, 5000.0), base::ErrorKind::wrongUse);
    EXPECT_EQ(kindOf("a.png", chart::ChartContent(), 5000.0), base::ErrorKind::wrongUse);
    EXPECT_EQ(kindOf("b.png", content, 1.0), base::ErrorKind::unusableInput);
    EXPECT_EQ(kindOf("b.pdf", content, 1.0), base::ErrorKind::unusableInput);
    EXPECT_EQ(kindOf("c.svg", content, 0.0), base::ErrorKind::wrongUse);
    EXPECT_EQ(kindOf("nowhere/a.png", content, 5000.0), base::ErrorKind::unwritableOutput);
}

} // namespace
