// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/screen_sheet.h"

#include "app/chart/chart_painter.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

namespace {

using chart::ChartContent;
using chart::ScreenSheet;
using chart::ViewFrame;

const QSizeF size(320, 240);

QImage blank() {
    QImage image(size.toSize(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::red);
    return image;
}

QImage drawn(const ScreenSheet& sheet, const ViewFrame& view) {
    QImage image = blank();
    QPainter painter(&image);
    sheet.draw(painter, view, Qt::blue);
    return image;
}

QImage paintedNow(const ChartContent& content, const ViewFrame& view) {
    QImage image = blank();
    QPainter painter(&image);
    chart::paintChart(painter, view, content);
    return image;
}

class ScreenSheetTest : public testing::Test {
protected:
    const ChartContent content_ = support::starContent();
    const ViewFrame view_ = chart::wholeWater(content_, size);
    ScreenSheet sheet_;
    QSignalSpy painted_{&sheet_, &ScreenSheet::painted};
};

TEST_F(ScreenSheetTest, IsWhatThePainterPaintsByAndBy) {
    EXPECT_TRUE(sheet_.isEmpty());
    QImage paper = blank();
    paper.fill(Qt::blue);
    EXPECT_EQ(drawn(sheet_, view_), paper);
    sheet_.ask(content_, view_, 1.0);
    EXPECT_TRUE(sheet_.isEmpty()) << "it does not hold up who asks";
    sheet_.finish();
    EXPECT_EQ(painted_.count(), 1);
    EXPECT_EQ(drawn(sheet_, view_), paintedNow(content_, view_));
}

TEST_F(ScreenSheetTest, OfManyAskedForTheLastIsShown) {
    ChartContent bare = content_;
    bare.shown = {chart::LayerKind::depth};
    sheet_.ask(content_, view_, 1.0);
    for (int time = 0; time < 20; ++time) {
        sheet_.ask(content_, view_.zoomed(1.0 + time, {10, 10}), 1.0);
    }
    sheet_.ask(bare, view_, 1.0);
    EXPECT_TRUE(sheet_.isAskedFor(view_));
    sheet_.finish();
    EXPECT_EQ(painted_.count(), 2) << "what nobody wants any more is not painted";
    EXPECT_EQ(drawn(sheet_, view_), paintedNow(bare, view_));
    EXPECT_NE(drawn(sheet_, view_), paintedNow(content_, view_));
}

TEST_F(ScreenSheetTest, MovesWithTheViewUntilAnotherIsPainted) {
    sheet_.ask(content_, view_, 1.0);
    sheet_.finish();
    const ViewFrame moved = view_.panned({30, 0});
    EXPECT_FALSE(sheet_.isAskedFor(moved));
    const QImage image = drawn(sheet_, moved);
    EXPECT_EQ(image.copy(30, 0, 290, 240), paintedNow(content_, view_).copy(0, 0, 290, 240));
    EXPECT_EQ(image.pixelColor(3, 3), QColor(Qt::blue));
}

TEST_F(ScreenSheetTest, OfAnotherWaterIsNeverShown) {
    sheet_.ask(content_, view_, 1.0);
    sheet_.finish();
    sheet_.ask(content_, view_, 1.0);
    sheet_.clear();
    EXPECT_TRUE(sheet_.isEmpty());
    sheet_.finish();
    EXPECT_TRUE(sheet_.isEmpty()) << "nor what was being painted of it";
    EXPECT_EQ(painted_.count(), 1);
}

} // namespace
