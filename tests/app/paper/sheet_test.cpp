// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/chart_sheet.h"
#include "app/paper/day_sheet.h"
#include "app/paper/sheet_layout.h"
#include "app/paper/sheet_writer.h"
#include "tests/app/support/star_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QPdfWriter>

#include <algorithm>

namespace {

TEST(SheetLayout, LeavesTheMarginsOfA4) {
    const QRectF room = paper::SheetLayout::a4().room();
    EXPECT_DOUBLE_EQ(room.left() / paper::unitsPerMillimetre, 12.0);
    EXPECT_DOUBLE_EQ(room.right() / paper::unitsPerMillimetre, 198.0);
    EXPECT_DOUBLE_EQ(room.bottom() / paper::unitsPerMillimetre, 277.0);
    EXPECT_GT(paper::SheetLayout::a4(true).room().width(), room.width());
}

TEST(SheetLayout, RoundScalesHoldWhatTheyMust) {
    for (const double length_m : {17.0, 420.0, 1000.0, 1830.0}) {
        const double scale = paper::roundScale(length_m, 700.0);
        EXPECT_LE(length_m * paper::unitsPerMetre(scale), 700.0 * (1.0 + 1e-6)) << length_m;
        EXPECT_GE(length_m * paper::unitsPerMetre(scale), 700.0 / 1.5) << length_m;
    }
    EXPECT_DOUBLE_EQ(paper::roundScale(1000.0, 4000.0), 1000.0);
}

TEST(DaySheet, IsNeverMadeOfAPlanOrAMapThatIsOld) {
    for (const bool isMap : {false, true}) {
        chart::ChartContent content = support::starContent();
        (isMap ? content.age.isMapOld : content.age.isPlanOld) = true;
        QBuffer bytes;
        bytes.open(QIODevice::WriteOnly);
        QPdfWriter device(&bytes);
        const auto made = paper::paintDaySheet(device, content, paper::SheetForm::withPictures);
        ASSERT_FALSE(made.has_value());
        EXPECT_EQ(made.error().what, "the marks are older than the water");
        EXPECT_TRUE(bytes.data().isEmpty());
    }
}

TEST(SheetWriter, WhatDoesNotFitGoesWholeToTheNextPage) {
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    QPdfWriter device(&bytes);
    paper::SheetWriter sheet(device, paper::SheetLayout::a4(), QStringLiteral("footer"));
    ASSERT_TRUE(sheet.isOpen());
    std::vector<QRectF> boxes;
    for (int i = 0; i < 3; ++i) {
        sheet.block(0.6 * sheet.room().height(), [&](const QRectF& box) { boxes.push_back(box); });
    }
    EXPECT_EQ(sheet.pages(), 3);
    for (const QRectF& box : boxes) {
        EXPECT_TRUE(sheet.room().contains(box));
    }
}

TEST(SheetWriter, ALongTableTakesItsHeadingAlong) {
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    QPdfWriter device(&bytes);
    paper::SheetWriter sheet(device, paper::SheetLayout::a4(), {});
    const std::vector<QStringList> rows(120, QStringList{QStringLiteral("row")});
    sheet.table({{QStringLiteral("heading"), 200.0}}, rows);
    EXPECT_GE(sheet.pages(), 2);
    EXPECT_LE(sheet.y(), sheet.room().bottom());
}

TEST(DaySheet, IsAPdfWithAPageForEveryFewMarks) {
    const support::ScratchFolder folder;
    const auto path = folder.path() / "day.pdf";
    const auto pages =
        paper::saveDaySheet(path, support::starContent(), paper::SheetForm::withPictures);
    ASSERT_TRUE(pages) << pages.error().sentence();
    EXPECT_GE(*pages, 3);
    EXPECT_LE(*pages, 6);
    EXPECT_TRUE(support::ScratchFolder::textOf(path).starts_with("%PDF-"));
}

TEST(DaySheet, GrowsWithTheDay) {
    const support::ScratchFolder folder;
    chart::ChartContent content = support::starContent();
    const auto few =
        paper::saveDaySheet(folder.path() / "few.pdf", content, paper::SheetForm::withPictures);
    auto planned = std::make_shared<water::PlannedDay>(*content.planned);
    for (int rank = 6; rank <= 8; ++rank) {
        planned->day.stops.push_back({rank, {}, {}, {}, {}});
    }
    for (int i = 0; i < 60; ++i) {
        planned->rules.emplace_back(
            water::HouseNote{"rule number " + std::to_string(i) +
                             ": a long sentence that the sheet carries in full"});
    }
    content.planned = planned;
    const auto many =
        paper::saveDaySheet(folder.path() / "many.pdf", content, paper::SheetForm::withPictures);
    ASSERT_TRUE(few && many);
    EXPECT_GT(*many, *few);
}

TEST(DaySheet, WithoutAPlanSaysWhatToDo) {
    const support::ScratchFolder folder;
    chart::ChartContent content = support::starContent();
    content.planned.reset();
    const auto pages =
        paper::saveDaySheet(folder.path() / "none.pdf", content, paper::SheetForm::withPictures);
    ASSERT_FALSE(pages);
    EXPECT_EQ(pages.error().kind, base::ErrorKind::wrongUse);
    EXPECT_FALSE(pages.error().whatToDo.empty());
    EXPECT_FALSE(std::filesystem::exists(folder.path() / "none.pdf"));
}

TEST(DaySheet, AFolderThatIsNotThereIsAnErrorAndNoCrash) {
    const auto pages = paper::saveDaySheet("/nowhere/at/all/day.pdf", support::starContent(),
                                           paper::SheetForm::withPictures);
    ASSERT_FALSE(pages);
    EXPECT_EQ(pages.error().kind, base::ErrorKind::unwritableOutput);
}

TEST(ChartSheet, IsOnePage) {
    const support::ScratchFolder folder;
    const auto pages = paper::saveChartSheet(folder.path() / "chart.pdf", support::starContent());
    ASSERT_TRUE(pages) << pages.error().sentence();
    EXPECT_EQ(*pages, 1);
}

TEST(ChartSheet, WithoutAWaterSaysWhatToDo) {
    const support::ScratchFolder folder;
    const auto pages = paper::saveChartSheet(folder.path() / "chart.pdf", chart::ChartContent{});
    ASSERT_FALSE(pages);
    EXPECT_EQ(pages.error().kind, base::ErrorKind::wrongUse);
}

} // namespace
