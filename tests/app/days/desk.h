// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/chart_link.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/survey_day.h"
#include "app/widgets/amount_field.h"
#include "app/widgets/plain_table.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include <stdexcept>

#include <gtest/gtest.h>

namespace support {

/// The survey day on a water of its own, to be shown and worked as a user does.
class Desk : public testing::Test {
protected:
    void SetUp() override {
        preferences_.setUnits(preferences::UnitSystem::metric);
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
        day_.resize(380, 900);
        day_.show();
    }
    /// What was changed is shown when the event loop comes round.
    void turn() { day_.findChild<days::Refresher*>()->finish(); }
    void openStep(int step) { day_.steps().openStep(step); }
    /// The widget of that accessible name or text in the open step.
    template <class Widget>
    Widget& named(const QString& name) {
        turn();
        for (Widget* each : day_.findChildren<Widget*>()) {
            if (each->isVisible() &&
                (each->accessibleName() == name || each->property("text").toString() == name)) {
                return *each;
            }
        }
        throw std::logic_error("nothing to be seen is called " + name.toStdString());
    }
    widgets::AmountField& field(const QString& name) { return named<widgets::AmountField>(name); }
    QPushButton& button(const QString& words) { return named<QPushButton>(words); }
    void type(const QString& name, const QString& text) {
        widgets::AmountField& edit = field(name);
        edit.setFocus();
        edit.selectAll();
        QTest::keyClicks(&edit, text);
        if (text.isEmpty()) {
            QTest::keyClick(&edit, Qt::Key_Delete);
        }
        QTest::keyClick(&edit, Qt::Key_Return);
    }
    /// Whether a label that can be seen says so.
    bool says(const QString& words) {
        turn();
        for (const QLabel* label : day_.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) {
                return true;
            }
        }
        return false;
    }
    static QStringList rowOf(const widgets::PlainTable& table, int row) {
        QStringList words;
        for (int column = 0; column < table.columnCount(); ++column) {
            words << table.words(row, column);
        }
        return words;
    }
    const water::Water& water() { return *open_.water(); }

    /// Keeps what tests set apart from what the user of the machine has set.
    struct OwnSettings {
        OwnSettings() {
            static const QTemporaryDir folder;
            QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, folder.path());
        }
    };
    OwnSettings own_;
    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::survey_day::SurveyDay day_{{open_, preferences_, chart_}};
};

} // namespace support
