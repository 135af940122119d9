// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/column_dialog.h"

#include <gtest/gtest.h>

#include <QComboBox>

namespace {

using readers::ColumnRole;

readers::TablePreview smallTable() {
    readers::TablePreview preview;
    preview.separator = ';';
    preview.columns = {"a", "b", "c"};
    preview.roles = {ColumnRole::x, ColumnRole::y, ColumnRole::depth};
    preview.rows = {{"3,1", "55,2", "12"}};
    return preview;
}

TEST(ColumnDialog, KeepsWhatWasGuessedWhereNothingIsChanged) {
    const days::survey_day::ColumnDialog dialog("log.csv", smallTable(), nullptr);
    const auto settings = dialog.settings({});
    EXPECT_EQ(settings.columns.x, "1");
    EXPECT_EQ(settings.columns.y, "2");
    EXPECT_EQ(settings.columns.depth, "3");
    EXPECT_TRUE(settings.columns.time.empty());
    EXPECT_EQ(settings.separator, ';');
    EXPECT_EQ(settings.decimalMark, '.');
    EXPECT_EQ(settings.unit, readers::DepthUnit::metres);
}

TEST(ColumnDialog, TakesOtherColumnsUnitAndDecimalMark) {
    const days::survey_day::ColumnDialog dialog("log.csv", smallTable(), nullptr);
    for (QComboBox* box : dialog.findChildren<QComboBox*>()) {
        if (box->currentText() == "metres") {
            box->setCurrentText("feet");
        } else if (box->currentText().startsWith("point")) {
            box->setCurrentIndex(1);
        } else if (box->currentText() == "longitude or east") {
            box->setCurrentText("latitude or north");
        } else if (box->currentText() == "latitude or north") {
            box->setCurrentText("longitude or east");
        }
    }
    const auto settings = dialog.settings({});
    EXPECT_EQ(settings.columns.x, "2");
    EXPECT_EQ(settings.columns.y, "1");
    EXPECT_EQ(settings.decimalMark, ',');
    EXPECT_EQ(settings.unit, readers::DepthUnit::feet);
}

} // namespace
