// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/refresher.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/set_plan.h"
#include "app/widgets/wind_dial.h"
#include "core/wind/beaufort.h"
#include "tests/app/days/tomorrow/plan_figures.h"

#include <gtest/gtest.h>

#include <QDateEdit>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSlider>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>

using preferences::UnitSystem;
using support::expectOnly;
using widgets::AmountField;

namespace {

/// A plan of which no two figures are alike.
void setStrangePlan(marks::Plan& plan) {
    using units::Length;
    plan.day.day = {std::chrono::year(2031), std::chrono::month(5), std::chrono::day(9)};
    plan.day.start = std::chrono::minutes(7 * 60 + 40);
    plan.day.end = std::chrono::minutes(15 * 60 + 5);
    plan.day.wind = {units::Bearing::degrees(47.0), units::Speed::metresPerSecond(7.0)};
    plan.day.levelChange = Length::metres(-0.35);
    plan.day.waterTemperature = units::Temperature::celsius(11.5);
    plan.day.stay = std::chrono::minutes(75);
    plan.tackle.boatSpeed = units::Speed::metresPerSecond(1.8);
    plan.tackle.boatLength = Length::metres(4.3);
    plan.tackle.bowHeight = Length::metres(0.62);
    plan.tackle.bowRope = Length::metres(55.0);
    plan.tackle.sternRope = Length::metres(33.0);
    plan.tackle.scope = 3.5;
    plan.tackle.rods = 3;
    plan.tackle.cast = Length::metres(27.0);
    plan.tackle.overDepth = Length::metres(0.25);
    plan.count = 11;
    double weight = 0.1;
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        plan.weights.set(kind, weight);
        weight += 0.15;
    }
}

class TomorrowFields : public testing::Test {
protected:
    void SetUp() override {
        preferences_.setUnits(UnitSystem::metric);
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
        edits::setPlan(open_, "Set all", setStrangePlan);
        day_ = std::make_unique<days::tomorrow::TomorrowDay>(context_);
    }
    void TearDown() override {
        day_.reset();
        preferences_.setUnits(UnitSystem::metric);
    }

    /// What was changed is shown when the event loop comes round.
    void turn() { day_->findChild<days::Refresher*>()->finish(); }
    template <class Widget>
    Widget* named(const QString& name) {
        turn();
        for (Widget* widget : day_->findChildren<Widget*>()) {
            if (widget->accessibleName() == name) {
                return widget;
            }
        }
        ADD_FAILURE() << "no " << name.toStdString();
        return nullptr;
    }
    void type(const QString& field, const QString& text) {
        auto* line = named<AmountField>(field);
        ASSERT_NE(line, nullptr);
        line->setFocus();
        line->selectAll();
        QTest::keyClick(line, Qt::Key_Delete);
        line->insert(text);
        line->setModified(true);
        QTest::keyClick(line, Qt::Key_Return);
    }
    /// What every amount shows, by the name of its field.
    std::map<QString, QString> shown() {
        turn();
        std::map<QString, QString> texts;
        for (const AmountField* field : day_->findChildren<AmountField*>()) {
            texts[field->accessibleName()] = field->text();
        }
        return texts;
    }
    QString zone() const { return QString::fromStdString(open_.water()->clock.zone()); }
    const marks::Plan& plan() const { return open_.water()->plan; }
    /// Undoes, and expects what was before in the plan and in the fields.
    void expectUndone(const marks::Plan& before, const std::map<QString, QString>& texts) {
        open_.undoStack().undo();
        EXPECT_EQ(plan(), before);
        EXPECT_EQ(shown(), texts);
    }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::DayContext context_{open_, preferences_, chart_};
    std::unique_ptr<days::tomorrow::TomorrowDay> day_;
};

TEST_F(TomorrowFields, EachShowsTheMemberItNames) {
    using Texts = std::map<QString, QString>;
    EXPECT_EQ(shown(), (Texts{{"From", "07:40"},
                              {"To", "15:05"},
                              {"On each mark", "1 h 15"},
                              {"Clock", zone()},
                              {"Wind from", "047°"},
                              {"Wind speed", "7 m/s"},
                              {"Wind turns at", ""},
                              {"Then from", ""},
                              {"Then speed", ""},
                              {"Level", "−0.35 m"},
                              {"Water", "11.5 °C"},
                              {"Cast", "27.0 m"},
                              {"Bow rope", "55.0 m"},
                              {"Stern rope", "33.0 m"},
                              {"Boat length", "4.3 m"},
                              {"Bow height", "0.62 m"},
                              {"Over-depth", "0.25 m"},
                              {"Scope", "3.5"},
                              {"Boat speed", "1.8 m/s"}}));
    preferences_.setUnits(UnitSystem::imperial);
    EXPECT_EQ(shown(), (Texts{{"From", "07:40"},
                              {"To", "15:05"},
                              {"On each mark", "1 h 15"},
                              {"Clock", zone()},
                              {"Wind from", "047°"},
                              {"Wind speed", "16 mph"},
                              {"Wind turns at", ""},
                              {"Then from", ""},
                              {"Then speed", ""},
                              {"Level", "−1.1 ft"},
                              {"Water", "52.7 °F"},
                              {"Cast", "89 ft"},
                              {"Bow rope", "180 ft"},
                              {"Stern rope", "108 ft"},
                              {"Boat length", "14 ft"},
                              {"Bow height", "2.03 ft"},
                              {"Over-depth", "0.82 ft"},
                              {"Scope", "3.5"},
                              {"Boat speed", "4 mph"}}));
    EXPECT_EQ(named<QDateEdit>("Day")->date(), QDate(2031, 5, 9));
    EXPECT_EQ(named<QSpinBox>("Rods")->value(), 3);
    EXPECT_EQ(named<QSpinBox>("How many")->value(), 11);
    EXPECT_NEAR(day_->findChild<widgets::WindDial*>()->from(), 47.0, 1e-9);
}

TEST_F(TomorrowFields, WhatIsTypedReachesJustTheMemberItNamesAndUndoTakesItBack) {
    struct Row {
        const char* field;
        const char* typed;
        const char* member;
        double inMetric;
        double inImperial;
        const char* shownMetric;
        const char* shownImperial;
    };
    constexpr double foot = 0.3048;
    constexpr double mph = 0.44704;
    for (const Row& row :
         {Row{"From", "6:05", "start", 21900, 21900, "06:05", "06:05"},
          {"To", "17:30", "end", 63000, 63000, "17:30", "17:30"},
          {"On each mark", "90 min", "stay", 5400, 5400, "1 h 30", "1 h 30"},
          {"On each mark", "2", "stay", 7200, 7200, "2 h 00", "2 h 00"},
          {"On each mark", "", "stay", -1, -1, "", ""},
          {"Wind from", "312", "wind from", 312, 312, "312°", "312°"},
          {"Wind from", " 8° ", "wind from", 8, 8, "008°", "008°"},
          {"Wind speed", "9", "wind speed", 9, 9 * mph, "9 m/s", "9 mph"},
          {"Wind speed", "12 kn", "wind speed", 12 * 1852.0 / 3600, 12 * 1852.0 / 3600, "6.2 m/s",
           "14 mph"},
          {"Level", "+0.42", "level", 0.42, 0.42 * foot, "+0.42 m", "+0.4 ft"},
          {"Level", "-2", "level", -2, -2 * foot, "−2.00 m", "−2.0 ft"},
          {"Level", "-1ft 6in", "level", -1.5 * foot, -1.5 * foot, "−0.46 m", "−1.5 ft"},
          {"Water", "9 °C", "water", 9, 9, "9.0 °C", "48.2 °F"},
          {"Water", "35", "water", 35, (35 - 32) / 1.8, "35.0 °C", "35.0 °F"},
          {"Water", "", "water", -273, -273, "", ""},
          {"Cast", "36", "cast", 36, 36 * foot, "36.0 m", "36 ft"},
          {"Bow rope", "60", "bow rope", 60, 60 * foot, "60.0 m", "60 ft"},
          {"Stern rope", "40m", "stern rope", 40, 40, "40.0 m", "131 ft"},
          {"Boat length", "11", "boat length", 11, 11 * foot, "11.0 m", "11 ft"},
          {"Bow height", "1.5", "bow height", 1.5, 1.5 * foot, "1.50 m", "1.50 ft"},
          {"Over-depth", "2ft", "over-depth", 2 * foot, 2 * foot, "0.61 m", "2.00 ft"},
          {"Scope", "4,25", "scope", 4.25, 4.25, "4.25", "4.25"},
          {"Boat speed", "5", "boat speed", 5, 5 * mph, "5 m/s", "5 mph"}}) {
        for (const auto units : {UnitSystem::metric, UnitSystem::imperial}) {
            const bool isMetric = units == UnitSystem::metric;
            SCOPED_TRACE(row.field);
            preferences_.setUnits(units);
            const marks::Plan before = plan();
            const auto texts = shown();
            type(row.field, QString::fromUtf8(row.typed));
            expectOnly(before, plan(), row.member, isMetric ? row.inMetric : row.inImperial);
            auto expected = texts;
            expected[row.field] = QString::fromUtf8(isMetric ? row.shownMetric : row.shownImperial);
            EXPECT_EQ(shown(), expected);
            expectUndone(before, texts);
        }
    }
}

TEST_F(TomorrowFields, TheClockIsATimeZoneAndNothingElse) {
    const QString before = zone();
    type("Clock", "Europe/Berlin");
    EXPECT_EQ(zone(), "Europe/Berlin");
    type("Clock", "Berlin time");
    EXPECT_EQ(zone(), "Europe/Berlin");
    EXPECT_EQ(shown()["Clock"], "Berlin time") << "it stays to be mended";
    open_.undoStack().undo();
    EXPECT_EQ(zone(), before);
}

TEST_F(TomorrowFields, AnEndBeforeTheStartIsOfTheNextMorning) {
    type("From", "20:00");
    type("To", "2:15");
    EXPECT_EQ(plan().day.start, std::chrono::hours(20));
    EXPECT_EQ(plan().day.end, std::chrono::hours(26) + std::chrono::minutes(15));
    EXPECT_EQ(shown()["To"], "02:15");
    type("Wind turns at", "1:00");
    EXPECT_EQ(plan().day.windLater->at, std::chrono::hours(25));
    EXPECT_EQ(shown()["Wind turns at"], "01:00");
    type("To", "22:00");
    EXPECT_EQ(plan().day.end, std::chrono::hours(22));
    EXPECT_EQ(plan().day.windLater->at, std::chrono::hours(1)) << "before the boat leaves";
    type("From", "22:00");
    EXPECT_EQ(plan().day.end, std::chrono::hours(22)) << "a day without time is none of 24 hours";
}

TEST_F(TomorrowFields, DateDialSpinBoxesReachTheirMember) {
    const marks::Plan before = plan();
    const auto texts = shown();
    named<QDateEdit>("Day")->setDate(QDate(2032, 2, 29));
    const auto days = std::chrono::sys_days(std::chrono::year(2032) / 2 / 29);
    expectOnly(before, plan(), "day", static_cast<double>(days.time_since_epoch().count()));
    expectUndone(before, texts);
    EXPECT_EQ(named<QDateEdit>("Day")->date(), QDate(2031, 5, 9));
    named<QSpinBox>("Rods")->setValue(5);
    expectOnly(before, plan(), "rods", 5);
    expectUndone(before, texts);
    EXPECT_EQ(named<QSpinBox>("Rods")->value(), 3);
    named<QSpinBox>("How many")->setValue(21);
    expectOnly(before, plan(), "count", 21);
    expectUndone(before, texts);
    EXPECT_EQ(named<QSpinBox>("How many")->value(), 11);
    auto* dial = day_->findChild<widgets::WindDial*>();
    QTest::keyClick(dial, Qt::Key_Right);
    expectOnly(before, plan(), "wind from", 52);
    EXPECT_EQ(named<AmountField>("Wind from")->text(), "052°");
    expectUndone(before, texts);
    EXPECT_NEAR(dial->from(), 47.0, 1e-9);
}

TEST_F(TomorrowFields, TheDialSaysWhereItPointsBeforeItIsLetGo) {
    const marks::Plan before = plan();
    auto* dial = day_->findChild<widgets::WindDial*>();
    dial->resize(112, 112);
    QTest::mousePress(dial, Qt::LeftButton, {}, {100, 56});
    EXPECT_EQ(named<AmountField>("Wind from")->text(), "090°");
    EXPECT_EQ(plan(), before);
    QTest::mouseRelease(dial, Qt::LeftButton, {}, {100, 56});
    expectOnly(before, plan(), "wind from", 90);
}

TEST_F(TomorrowFields, EachTakesItsWholeRangeAndNothingBeyond) {
    struct Row {
        const char* field = nullptr;
        QStringList taken;
        QStringList refused;
    };
    for (const Row& row : {Row{"From", {"0:00", "23:59"}, {"24:00", "7", "7:61", "early", ""}},
                           {"To", {"0:00", "23:59"}, {"24:00", "late", ""}},
                           {"Wind from", {"0", "360", "N", ""}, {"-1", "360.1", "north"}},
                           {"Wind speed", {"0", "40 m/s", ""}, {"-0.1", "40.1 m/s", "6 m"}},
                           {"Level", {"-3 m", "3 m"}, {"high", "3 kg", ""}},
                           {"Water", {"-1", "4", "40", ""}, {"warm", "4 m", "-1.1", "40.1"}},
                           {"Cast", {"5 m", "100 m"}, {"4.99 m", "100.01 m", "far", ""}},
                           {"Bow rope", {"5 m", "200 m"}, {"4.99 m", "200.01 m", ""}},
                           {"Stern rope", {"5 m", "200 m"}, {"4.99 m", "200.01 m", ""}},
                           {"Boat length", {"2 m", "12 m"}, {"1.99 m", "12.01 m", ""}},
                           {"Bow height", {"0 m", "2 m"}, {"-0.01 m", "2.01 m", ""}},
                           {"Over-depth", {"0 m", "3 m"}, {"-0.01 m", "3.01 m", ""}},
                           {"Scope", {"1.5", "10"}, {"1.49", "10.01", "3:1", ""}},
                           {"Boat speed", {"0.3 m/s", "8 m/s"}, {"0.29 m/s", "8.01 m/s", ""}}}) {
        auto* field = named<AmountField>(row.field);
        auto* hint = field->parentWidget()->findChild<QLabel*>();
        ASSERT_NE(hint, nullptr);
        EXPECT_FALSE(hint->text().isEmpty());
        for (const QString& text : row.taken) {
            type(row.field, text);
            EXPECT_FALSE(field->isWrong()) << row.field << ' ' << text.toStdString();
            EXPECT_FALSE(field->isModified());
        }
        const marks::Plan before = plan();
        for (const QString& text : row.refused) {
            type(row.field, text);
            EXPECT_TRUE(field->isWrong()) << row.field << ' ' << text.toStdString();
            EXPECT_EQ(field->text(), text);
            EXPECT_FALSE(hint->isHidden()) << row.field;
            EXPECT_EQ(plan(), before);
        }
        QTest::keyClick(field, Qt::Key_Escape);
        EXPECT_TRUE(hint->isHidden()) << row.field;
    }
}

TEST_F(TomorrowFields, HintsNameTheRangeThatIsTaken) {
    const auto hintOf = [&](const char* field) {
        return named<AmountField>(field)->parentWidget()->findChild<QLabel*>()->text();
    };
    EXPECT_EQ(hintOf("Cast"), "a length from 5.0 m to 100 m, such as 12ft or 3.6 m");
    EXPECT_EQ(hintOf("Bow rope"), "a length from 5.0 m to 200 m, such as 12ft or 3.6 m");
    EXPECT_EQ(hintOf("Boat length"), "a length from 2.0 m to 12.0 m, such as 12ft or 3.6 m");
    EXPECT_EQ(hintOf("Over-depth"), "a length from 0.0 m to 3.0 m, such as 12ft or 3.6 m");
    EXPECT_EQ(hintOf("Scope"), "a number from 1.5 to 10");
    EXPECT_EQ(hintOf("Wind from"),
              "degrees from 0 to 360, or a point such as SW; empty: not known");
    EXPECT_EQ(hintOf("Boat speed"), "a speed from 0.3 to 8 m/s, such as 3 kn");
    EXPECT_EQ(named<QSpinBox>("Rods")->minimum(), 1);
    EXPECT_EQ(named<QSpinBox>("Rods")->maximum(), 8);
    EXPECT_EQ(named<QSpinBox>("How many")->minimum(), 1);
    EXPECT_EQ(named<QSpinBox>("How many")->maximum(), 40);
    EXPECT_EQ(named<AmountField>("Water")->placeholderText(), "not known");
}

/// The name that each slider bears, in the order of allFactorKinds.
const QStringList& sliderNames() {
    static const QStringList names{"depth in your bands", "drop-off in reach", "weed edge in reach",
                                   "humps and holes",     "liking for ripple", "liking for calm",
                                   "catches here",        "seldom fished",     "depth well known"};
    return names;
}

TEST_F(TomorrowFields, EachSliderShowsItsOwnWeight) {
    for (qsizetype i = 0; i < sliderNames().size(); ++i) {
        auto* slider = named<QSlider>(sliderNames()[i]);
        EXPECT_EQ(slider->value(), 2 + 3 * i) << "in twentieths";
        EXPECT_EQ(slider->maximum(), 40);
        EXPECT_EQ(slider->parentWidget()->findChild<QLabel*>()->text(),
                  QString::number(0.1 + 0.15 * static_cast<double>(i), 'f', 2));
    }
}

TEST_F(TomorrowFields, EachSliderWeighsItsOwnReasonAndUsualWeightsPutAllBack) {
    marks::Plan expected = plan();
    const marks::Plan before = plan();
    const int steps = open_.undoStack().count();
    for (std::size_t i = 0; i < marks::allFactorKinds.size(); ++i) {
        auto* slider = named<QSlider>(sliderNames()[static_cast<qsizetype>(i)]);
        slider->setValue(slider->value() + 7);
        const double weight = 0.45 + 0.15 * static_cast<double>(i);
        expected.weights.set(marks::allFactorKinds[i], weight);
        EXPECT_EQ(slider->parentWidget()->findChild<QLabel*>()->text(),
                  QString::number(weight, 'f', 2));
    }
    EXPECT_EQ(open_.undoStack().count(), steps + 1) << "until the hand rests, as one act";
    expectOnly(expected, plan(), "count", 11);
    open_.undoStack().undo();
    EXPECT_EQ(plan(), before);
    EXPECT_EQ(named<QSlider>("catches here")->value(), 20);
    for (auto* button : day_->findChildren<QPushButton*>()) {
        if (button->text() == "Usual weights") {
            button->click();
        }
    }
    EXPECT_EQ(plan().weights, marks::Weights());
    EXPECT_EQ(named<QSlider>("catches here")->value(), 16);
}

/// What the labels in the colour of warnings say.
QStringList warningsOf(const QWidget& widget) {
    QStringList said;
    for (const QLabel* label : widget.findChildren<QLabel*>()) {
        if (label->property("voice").toString() == "wrong" && !label->isHidden() &&
            !label->text().isEmpty()) {
            said << label->text();
        }
    }
    return said;
}

TEST_F(TomorrowFields, WindFromForceFiveAndColdWaterAreToldInTheColourOfWarnings) {
    type("Water", "16");
    type("Wind speed", "16 kn");
    EXPECT_EQ(warningsOf(*day_), QStringList());
    type("Wind speed", "17 kn");
    ASSERT_EQ(warningsOf(*day_).size(), 1);
    EXPECT_TRUE(warningsOf(*day_)[0].startsWith("Force 5: white horses"));
    type("Wind speed", "22 kn");
    EXPECT_TRUE(
        warningsOf(*day_).contains("Force 6 is no weather for a small open boat: stay ashore."));
    type("Wind speed", "F8");
    EXPECT_TRUE(
        warningsOf(*day_).contains("Force 8 is no weather for a small open boat: stay ashore."));
    type("Wind speed", "3");
    type("Water", "4");
    ASSERT_EQ(warningsOf(*day_).size(), 1);
    EXPECT_TRUE(warningsOf(*day_)[0].startsWith("The water is cold (below 15 °C)"));
}

// Source: the middle of force 4 on the Beaufort scale, 11 to 16 knots (Met Office, Fact sheet 6).
TEST_F(TomorrowFields, AForceCanBeChosenWithoutTyping) {
    const auto forces = [this] {
        for (auto* button : day_->findChildren<QPushButton*>()) {
            if (button->text() == "By force...") {
                return button->menu()->actions();
            }
        }
        return QList<QAction*>();
    }();
    ASSERT_EQ(forces.size(), 10);
    EXPECT_EQ(forces[4]->text(), "F4, moderate breeze");
    forces[4]->trigger();
    EXPECT_NEAR(plan().day.wind.speed->inMetresPerSecond(), 13.5 * 1852.0 / 3600.0, 1e-9);
    EXPECT_TRUE(named<AmountField>("Wind speed")->text().startsWith("6.9"));
    forces[0]->trigger();
    EXPECT_EQ(plan().day.wind.speed, units::Speed());
    for (std::size_t force = 0; force < 10; ++force) {
        forces[static_cast<qsizetype>(force)]->trigger();
        EXPECT_EQ(wind::beaufortForce(*plan().day.wind.speed), static_cast<int>(force));
    }
}

TEST_F(TomorrowFields, AWindThatNobodySaidIsEmptyAndSendsToTheForecast) {
    const QString notKnown =
        "How strong the wind will be is not known: look at the forecast before you go out.";
    type("Water", "16");
    for (auto* button : day_->findChildren<QPushButton*>()) {
        if (button->text() == "Wind not known") {
            button->click();
            EXPECT_FALSE(button->isEnabled());
        }
    }
    EXPECT_EQ(plan().day.wind, logbook::Wind());
    EXPECT_EQ(named<AmountField>("Wind from")->text(), "");
    EXPECT_EQ(named<AmountField>("Wind speed")->text(), "");
    EXPECT_EQ(named<AmountField>("Wind speed")->placeholderText(), "not said");
    EXPECT_FALSE(day_->findChild<widgets::WindDial*>()->isKnown());
    EXPECT_EQ(warningsOf(*day_), QStringList{notKnown});
    type("Wind from", "SW");
    EXPECT_EQ(plan().day.wind.speed, std::nullopt) << "a direction makes no calm";
    EXPECT_EQ(warningsOf(*day_), QStringList{notKnown});
    type("Wind speed", "3");
    EXPECT_EQ(warningsOf(*day_), QStringList());
    type("Wind from", "");
    EXPECT_EQ(plan().day.wind.from, std::nullopt);
    EXPECT_EQ(named<AmountField>("Wind from")->placeholderText(), "variable");
    type("Wind speed", "");
    EXPECT_EQ(plan().day.wind, logbook::Wind());
    open_.undoStack().undo();
    EXPECT_NEAR(plan().day.wind.speed.value().inMetresPerSecond(), 3.0, 1e-9);
}

TEST_F(TomorrowFields, ALaterWindIsTypedOnceItHasAnHourAndGoesWithIt) {
    const marks::Plan before = plan();
    EXPECT_FALSE(named<AmountField>("Then from")->isEnabled());
    EXPECT_FALSE(named<AmountField>("Then speed")->isEnabled());
    type("Wind turns at", "1pm");
    expectOnly(before, plan(), "later at", 13.0 * 3600.0);
    EXPECT_EQ(named<AmountField>("Wind turns at")->text(), "13:00");
    const marks::Plan turning = plan();
    type("Then from", "SW");
    expectOnly(turning, plan(), "later from", 225.0);
    EXPECT_EQ(named<AmountField>("Then from")->text(), "225°");
    type("Then speed", "9");
    EXPECT_NEAR(plan().day.windLater.value().wind.speed.value().inMetresPerSecond(), 9.0, 1e-9);
    EXPECT_EQ(plan().day.wind, before.day.wind) << "the first wind stays";
    type("Wind turns at", "14:30");
    EXPECT_EQ(plan().day.windLater.value().at, std::chrono::minutes(14 * 60 + 30));
    EXPECT_EQ(plan().day.windLater.value().wind.from.value().inDegrees(), 225.0);
    type("Then from", "");
    EXPECT_EQ(plan().day.windLater.value().wind.from, std::nullopt);
    EXPECT_EQ(named<AmountField>("Then from")->placeholderText(), "variable");
    type("Wind turns at", "");
    EXPECT_EQ(plan(), before);
    EXPECT_EQ(named<AmountField>("Then speed")->text(), "");
}

TEST_F(TomorrowFields, TakeWindsAndTimesAsPeopleWriteThem) {
    type("Wind from", "SW");
    EXPECT_EQ(plan().day.wind.from.value().inDegrees(), 225.0);
    type("Wind speed", "12 kn");
    EXPECT_NEAR(plan().day.wind.speed.value().inKnots(), 12.0, 1e-9);
    type("From", "0630");
    EXPECT_EQ(plan().day.start, std::chrono::minutes(390));
    type("To", "5pm");
    EXPECT_EQ(plan().day.end, std::chrono::hours(17));
}

TEST_F(TomorrowFields, WhatIsRefusedStaysInItsFieldAndNotInThePlan) {
    const marks::Plan before = plan();
    type("Water", "41 C");
    EXPECT_EQ(plan(), before);
    auto* water = named<AmountField>("Water");
    EXPECT_EQ(water->text(), "41 C");
    EXPECT_TRUE(water->isWrong());
    EXPECT_TRUE(warningsOf(*day_).join(' ').contains("up to 40 °C"));
}

} // namespace
