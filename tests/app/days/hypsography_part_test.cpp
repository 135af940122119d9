// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/hypsography_part.h"

#include "app/widgets/plain_table.h"

#include <gtest/gtest.h>

#include <QChart>
#include <QChartView>
#include <QClipboard>
#include <QGuiApplication>
#include <QLineSeries>
#include <QPushButton>
#include <QTest>

namespace {

using days::survey_day::HypsographyPart;
using days::survey_day::HypsographyView;

HypsographyView smallView() {
    HypsographyView view;
    view.columns = {"Depth, m", "Area, ha", "Volume, 1000 m³"};
    view.heads = view.columns;
    view.rows = {{"0", "4.00", "60.0"}, {"1", "2.00", "30.0"}, {"2", "1.00", "10.0"}};
    view.area = {{4.0, 0.0}, {2.0, 1.0}, {1.0, 2.0}};
    view.volume = {{60.0, 0.0}, {30.0, 1.0}, {10.0, 2.0}};
    return view;
}

TEST(HypsographyPart, CopiesTheWholeTableByKeyAndByButton) {
    HypsographyPart part;
    part.resize(380, 700);
    part.show(smallView());
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&part));
    const QString wanted = smallView().asText();
    auto* table = part.findChild<widgets::PlainTable*>();
    ASSERT_NE(table, nullptr);
    QGuiApplication::clipboard()->clear();
    table->setFocus();
    table->selectRow(1);
    QTest::keyClick(table, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QGuiApplication::clipboard()->text(), wanted);
    QGuiApplication::clipboard()->clear();
    part.findChild<QPushButton*>()->click();
    EXPECT_EQ(QGuiApplication::clipboard()->text(), wanted);
}

TEST(HypsographyPart, DrawsOneCurveForAreaAndOneForVolumeAndTodaysBesideThem) {
    HypsographyPart part;
    part.show(smallView());
    const auto curves = [&part] { return part.findChild<QChartView*>()->chart()->series().size(); };
    EXPECT_EQ(curves(), 2);
    HypsographyView both = smallView();
    both.chartArea = both.area;
    both.chartVolume = both.volume;
    part.show(both);
    EXPECT_EQ(curves(), 4);
    EXPECT_FALSE(part.isHidden());
    part.show(HypsographyView());
    EXPECT_TRUE(part.isHidden());
}

} // namespace
