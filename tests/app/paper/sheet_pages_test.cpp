// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/chart_sheet.h"
#include "app/paper/pdf_file.h"
#include "app/paper/sheet_writer.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"
#include "tests/app/support/star_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using paper::SheetLayout;
using paper::SheetWriter;
using support::Drawn;
using support::RecordedPages;

TEST(RoundScaleTable, IsTheNextOfTheRoundScales) {
    // On 1000 units, 250 mm: so many metres, the denominator at which they fit.
    for (const auto& [length_m, denominator] : {std::pair(250.0, 1000.0),
                                                {250.1, 1250.0},
                                                {312.6, 1500.0},
                                                {376.0, 2000.0},
                                                {501.0, 2500.0},
                                                {626.0, 3000.0},
                                                {751.0, 4000.0},
                                                {1001.0, 5000.0},
                                                {1251.0, 6000.0},
                                                {1501.0, 7500.0},
                                                {1876.0, 10000.0},
                                                {2501.0, 12500.0},
                                                {0.3, 1.25},
                                                {0.0, 1.0}}) {
        EXPECT_DOUBLE_EQ(paper::roundScale(length_m, 1000.0), denominator) << length_m;
    }
    EXPECT_DOUBLE_EQ(paper::unitsPerMetre(1000.0), 4.0) << "a millimetre has four units";
}

TEST(SheetLayoutTable, IsUprightOnThePaperPutIn) {
    const SheetLayout letter = SheetLayout::on(QPageSize(QPageSize::Letter));
    EXPECT_NEAR(letter.page_mm.width(), 215.9, 0.05);
    EXPECT_NEAR(letter.page_mm.height(), 279.4, 0.05);
    EXPECT_EQ(SheetLayout::on(QPageSize(QSizeF(297, 210), QPageSize::Millimeter)).page_mm,
              QSizeF(210, 297));
    EXPECT_EQ(SheetLayout::on(QPageSize()).page_mm, QSizeF(210, 297));
    EXPECT_EQ(SheetLayout::a4(true).page_mm, QSizeF(297, 210));
}

class WriterOnPaper : public testing::Test {
protected:
    /// Baselines of a text in units of the sheet, page by page.
    std::vector<std::pair<int, double>> placesOf(const QString& text) const {
        const double perUnit = pages_.width() / (210.0 * 4.0);
        std::vector<std::pair<int, double>> places;
        for (const Drawn& drawn : pages_.all(Drawn::Kind::text)) {
            if (drawn.text == text) {
                places.emplace_back(drawn.page, drawn.points[0].y() / perUnit);
            }
        }
        return places;
    }
    RecordedPages pages_;
};

TEST_F(WriterOnPaper, ATableTakesItsHeadingToEveryPageAndLosesNoRow) {
    SheetWriter sheet(pages_, SheetLayout::a4(), "footer");
    std::vector<QStringList> rows;
    for (int i = 0; i < 150; ++i) {
        rows.push_back({QString::number(i), QStringLiteral("b%1").arg(i)});
    }
    sheet.table({{"first", 200.0}, {"second", 100.0}}, rows);
    ASSERT_GE(sheet.pages(), 3);
    EXPECT_EQ(placesOf("first").size(), static_cast<std::size_t>(sheet.pages()));
    EXPECT_EQ(placesOf("footer").size(), static_cast<std::size_t>(sheet.pages()));
    for (int i = 0; i < 150; ++i) {
        const auto at = placesOf(QStringLiteral("b%1").arg(i));
        ASSERT_EQ(at.size(), 1U) << i;
        EXPECT_EQ(at[0], placesOf(QString::number(i))[0]) << "in the row of its own";
        EXPECT_LT(at[0].second, sheet.room().bottom()) << i;
        EXPECT_GT(at[0].second, sheet.room().top());
    }
}

TEST_F(WriterOnPaper, TheFootStandsBelowTheRoom) {
    const SheetWriter sheet(pages_, SheetLayout::a4(), "footer");
    const auto footer = placesOf("footer");
    const auto number = placesOf("page 1");
    ASSERT_EQ(footer.size(), 1U);
    ASSERT_EQ(number.size(), 1U);
    EXPECT_GT(footer[0].second, sheet.room().bottom());
    EXPECT_LT(footer[0].second, 4.0 * (297.0 - 12.0));
}

TEST_F(WriterOnPaper, AHeadingGoesOnWithWhatFollowsIt) {
    SheetWriter sheet(pages_, SheetLayout::a4(), {});
    sheet.space(sheet.room().height() - 100.0);
    sheet.heading("Near the end", 60.0);
    EXPECT_EQ(sheet.pages(), 1);
    sheet.heading("Too near", 60.0);
    EXPECT_EQ(sheet.pages(), 2);
    EXPECT_EQ(placesOf("Too near")[0].first, 2);
}

TEST_F(WriterOnPaper, AParagraphTakesTheRoomOfItsLinesAndIsIndented) {
    SheetWriter sheet(pages_, SheetLayout::a4(), {});
    const QFont font = chart::typeface(chart::TypeSize::small, 1.0);
    const double top = sheet.y();
    const QString text = QString("word ").repeated(80).trimmed();
    sheet.paragraph(font, text, 50.0);
    EXPECT_NEAR(sheet.y() - top, paper::heightOf(font, text, sheet.room().width() - 50.0) + 3.0,
                1e-6);
    const double perUnit = pages_.width() / (210.0 * 4.0);
    int lines = 0;
    for (const Drawn& drawn : pages_.all(Drawn::Kind::text)) {
        if (drawn.text.startsWith("word")) {
            ++lines;
            EXPECT_NEAR(drawn.points[0].x() / perUnit, sheet.room().left() + 50.0, 2.0);
        }
    }
    EXPECT_GE(lines, 3);
}

TEST_F(WriterOnPaper, ARuleGoesAcrossTheRoom) {
    SheetWriter sheet(pages_, SheetLayout::a4(), {});
    const double y = sheet.y();
    sheet.rule();
    EXPECT_DOUBLE_EQ(sheet.y(), y + 4.0);
    const auto lines = pages_.all(Drawn::Kind::line);
    ASSERT_EQ(lines.size(), 1U);
    const double perUnit = pages_.width() / (210.0 * 4.0);
    EXPECT_NEAR(lines[0].points[0].x() / perUnit, sheet.room().left(), 1e-6);
    EXPECT_NEAR(lines[0].points[1].x() / perUnit, sheet.room().right(), 1e-6);
    EXPECT_NEAR(lines[0].points[0].y() / perUnit, y, 1e-6);
}

TEST(ChartSheetRead, SaysNameScaleLevelAndThatItIsNotForNavigation) {
    RecordedPages pages;
    const auto content = support::contentToRead(preferences::UnitSystem::metric);
    ASSERT_TRUE(paper::paintChartSheet(pages, content));
    EXPECT_TRUE(pages.lines().contains("Skarrow Water"));
    EXPECT_TRUE(pages.lines().contains("depths at chart level; not for navigation"))
        << pages.lines().join('\n').toStdString();
    chart::ChartContent low = content;
    auto today = std::make_shared<water::WaterForm>(*content.derived.form);
    today->rise = units::Length::metres(-0.35);
    low.derived.today = today;
    RecordedPages lower;
    ASSERT_TRUE(paper::paintChartSheet(lower, low));
    EXPECT_TRUE(lower.lines().contains("depths at −0.35 m from chart level; not for navigation"));
}

/// How long on paper, in millimetres, the frame of the map is drawn round, and the scale beside it.
TEST(ChartSheetRead, TheScaleWrittenIsTheOneDrawn) {
    RecordedPages pages;
    const auto content = support::contentToRead(preferences::UnitSystem::metric);
    ASSERT_TRUE(paper::paintChartSheet(pages, content));
    double denominator = 0.0;
    for (const QString& line : pages.lines()) {
        if (line.startsWith("1 : ")) {
            denominator = QString(line.mid(4)).remove(',').toDouble();
        }
    }
    ASSERT_GT(denominator, 0.0);
    EXPECT_EQ(pages.pageLayout().orientation(),
              content.derived.outline->box().width_m() > content.derived.outline->box().height_m()
                  ? QPageLayout::Landscape
                  : QPageLayout::Portrait);
    // The farthest apart that anything of the water is drawn is the shore, in its true proportion.
    const geo::Box box = content.derived.outline->box();
    const bool isWide = box.width_m() > box.height_m();
    const double pageUnits = 4.0 * (isWide ? 297.0 : 210.0);
    const double perUnit = pages.width() / pageUnits;
    const double expected = box.width_m() * 4000.0 / denominator;
    double nearest = 1e9;
    for (const Drawn& path : pages.all(Drawn::Kind::path)) {
        nearest = std::min(nearest, std::fabs(path.path.boundingRect().width() - expected));
    }
    EXPECT_LT(nearest, 2.0) << "of " << expected << " units; " << perUnit;
}

TEST(PdfFile, IsWrittenWholeWithItsTitleOrNotAtAll) {
    const support::ScratchFolder folder;
    const auto path = folder.path() / "a.pdf";
    const auto pages = paper::savePdf(path, "Skarrow Water", [](QPagedPaintDevice& device) {
        QPainter painter(&device);
        painter.drawLine(0, 0, 100, 100);
        EXPECT_EQ(device.logicalDpiX(), 1200);
        return base::Result<int>(7);
    });
    ASSERT_TRUE(pages);
    EXPECT_EQ(*pages, 7);
    const std::string text = support::ScratchFolder::textOf(path);
    EXPECT_TRUE(text.starts_with("%PDF-"));
    EXPECT_NE(text.find("%%EOF"), std::string::npos);
    // Titles stand in UTF-16 in a PDF.
    std::string wide;
    for (const char c : std::string("Skarrow Water")) {
        wide += '\0';
        wide += c;
    }
    EXPECT_NE(text.find(wide), std::string::npos);
    const auto none = folder.path() / "none.pdf";
    const auto failed = paper::savePdf(none, "x", [](QPagedPaintDevice&) -> base::Result<int> {
        return base::fail(base::ErrorKind::wrongUse, "nothing is planned", "x", "y");
    });
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().kind, base::ErrorKind::wrongUse);
    EXPECT_FALSE(std::filesystem::exists(none));
}

} // namespace
